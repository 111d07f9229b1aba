package compare

import (
	"washeve/model/quantity"
	"washeve/planner/water"
)

// Options are what a person can turn on the ways.
type Options struct {
	Rejected quantity.Opt[quantity.Fraction] // by a membrane ahead of the bed; else [water.UsualRejection]
	Drip     quantity.Opt[quantity.Duration] // of the way with a longer drip
	Target   quantity.Opt[quantity.Reading]  // of the way with another target
}

// Knob is the option that a way hangs on; "" where there is none.
type Knob string

// The knobs.
const (
	Rejected Knob = "rejected"
	Drip     Knob = "drip"
	Target   Knob = "target"
)

// Knob is the option that this way hangs on.
func (w Way) Knob() Knob { return w.knob }

// Turned is the options with the knob of a way moved up or down by one step: 1 %
// of the ions, 30 s of drip, 5 ppm of target. Each stays within its ends.
func (o Options) Turned(w Way, by int) Options {
	step := float64(by)
	switch w.knob {
	case Rejected:
		now := o.Rejected.Or(water.UsualRejection)
		o.Rejected = quantity.Some(quantity.Fraction(within(0.01*round(100*float64(now)+step), 0.05, 0.99)))
	case Drip:
		now := w.Case.pause().Or(0)
		o.Drip = quantity.Some(quantity.Duration(within(float64(now)+30*step, 30, 1800)))
	case Target:
		now, _ := w.Case.target().Get()
		now.Number = within(now.Number+5*step, 5, 200)
		o.Target = quantity.Some(now)
	}
	return o
}

func within(v, low, high float64) float64 { return min(max(v, low), high) }

func round(v float64) float64 { return float64(int(v + 0.5)) }

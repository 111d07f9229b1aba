package washday

import (
	"time"

	"washeve/model"
	"washeve/model/quantity"
)

// State is where a wash stands at an instant.
type State struct {
	At      int    // the step that is at hand; past the last one when all are done
	Running bool   // its time runs
	Done    []Done // of each step
	Over    bool
	Early   bool // it was ended before its last step
	Sure    bool // false where a clock went back and a stretch of time was lost

	// Reading is the last one since the step at hand was come to, or since a way out
	// that asks for a new one; Accepted tells that it was taken as good enough.
	Reading  quantity.Opt[quantity.Reading]
	Accepted bool
}

// Done is what was done of a step.
type Done struct {
	Spent   quantity.Duration
	Passed  bool // gone on from
	Skipped bool
	Used    quantity.Volume // of its water
}

// Stand works out from its deeds where a wash stands. Time is the difference of
// moments: nothing is counted, so nothing drifts, and a program that was not there
// meanwhile misses nothing.
func Stand(u *model.Underway, now model.Instant) State {
	f := folding{u: u, State: State{Done: make([]Done, len(u.Steps)), Sure: true}}
	for i := range u.Deeds {
		f.deed(&u.Deeds[i])
	}
	if f.Running && !f.Over {
		f.spend(now)
	}
	for i := range f.Done {
		f.Done[i].Used = used(&u.Steps[i], f.Done[i])
	}
	return f.State
}

// folding is a state on its way through the deeds.
type folding struct {
	State
	u     *model.Underway
	since model.Instant // the water runs, while Running
}

func (f *folding) deed(d *model.Deed) {
	if f.Over {
		return
	}
	switch d.Does {
	case model.WaterOn:
		f.start(d.At)
	case model.WaterOff:
		f.stop(d.At)
	case model.GoOn, model.Skip:
		f.pass(d)
	case model.GoBack:
		f.back(d.At)
	case model.TakeRead:
		f.Reading, f.Accepted = d.Reading, false
	case model.TakeWay:
		f.way(d)
	case model.Accept:
		f.Accepted = true
	case model.EndEarly, model.Finish:
		f.stop(d.At)
		f.Over, f.Early = true, d.Does == model.EndEarly
	}
}

func (f *folding) step() *model.DayStep {
	if f.At < len(f.u.Steps) {
		return &f.u.Steps[f.At]
	}
	return nil
}

func (f *folding) start(at model.Instant) {
	if !f.Running && f.step() != nil {
		f.Running, f.since = true, at
	}
}

func (f *folding) stop(at model.Instant) {
	if f.Running {
		f.spend(at)
		f.Running = false
	}
}

// spend adds the time since the water was turned on.
func (f *folding) spend(now model.Instant) {
	d, sure := now.Since(f.since)
	f.Sure = f.Sure && sure
	f.Done[f.At].Spent += quantity.Duration(d.Seconds())
}

// pass goes on to the next step. A drip begins by itself: nobody turns it on.
func (f *folding) pass(d *model.Deed) {
	f.stop(d.At)
	if f.step() == nil {
		return
	}
	f.Done[f.At].Passed, f.Done[f.At].Skipped = true, d.Does == model.Skip
	f.At++
	f.Reading, f.Accepted = quantity.Opt[quantity.Reading]{}, false
	if s := f.step(); s != nil && s.Kind == model.LetDry && f.Done[f.At].Spent == 0 {
		f.start(d.At)
	}
}

func (f *folding) back(at model.Instant) {
	f.stop(at)
	if f.At == 0 {
		return
	}
	f.At--
	f.Done[f.At].Passed, f.Done[f.At].Skipped = false, false
	f.Reading, f.Accepted = quantity.Opt[quantity.Reading]{}, false
}

// way takes a way out. One that makes the bed read lower asks for a new reading;
// any other lives with the one there is.
func (f *folding) way(d *model.Deed) {
	if asksAgain(d.Way) {
		f.Reading, f.Accepted = quantity.Opt[quantity.Reading]{}, false
		return
	}
	f.Accepted = true
}

// used is the water of a step: its flow over the time that it ran. A step that was
// gone on from without its time taken counts as planned.
func used(s *model.DayStep, d Done) quantity.Volume {
	flow, flows := s.Flow.Get()
	switch {
	case flows && d.Spent > 0:
		return quantity.Volume(float64(flow) * float64(d.Spent))
	case flows && d.Passed && !d.Skipped:
		return s.Volume.Or(0)
	}
	return 0
}

// Seconds is a duration for a clock to show, whole seconds rounded down.
func Seconds(d quantity.Duration) time.Duration {
	return time.Duration(float64(d)*float64(time.Second) + 0.5).Truncate(time.Second)
}

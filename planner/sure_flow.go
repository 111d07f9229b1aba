package planner

import (
	"math"

	"washeve/model/quantity"
)

// UnsafeCap is the code of the warning that the cap by the exchange is no safe flow.
const UnsafeCap = "cap-unsafe"

// surely is the chance that counts as sure.
const surely = 0.9

// tellUnsafeCap says what a cap by the exchange means, and names the flow that is sure, where
// the bed is in doubt: the cap is the flow at which a bed in the middle of what is
// believed just keeps the limit.
func (p *Plan) tellUnsafeCap(l *ledger, r *resin, s stand, a asked) {
	if p.Cap.BoundBy != ByExchange || !p.Cap.Useful() || p.Bed.ChanceLasts >= surely {
		return
	}
	chance := r.chanceAt(s, a, p.Cap.Flow)
	if chance >= surely {
		p.Cap.Sure = quantity.Some(p.Cap.Flow)
		return
	}
	values := []quantity.Value{quantity.AtMost(p.Cap.Flow), quantity.ValueOf(chance)}
	const unsafe = "The cap of %s is no safe flow: it is where one bed in the middle of what is believed comes to the limit by the end of this wash, and held to it this bed lasts with a chance of %s."
	if p.Cap.Sure = r.sureFlow(s, a, p.Cap.Flow); p.Cap.Sure.Given() {
		l.warn(UnsafeCap, unsafe+" Held to %s it lasts with 90%%.", append(values, quantity.AtMost(p.Cap.Sure.Or(0)))...)
		return
	}
	l.warn(UnsafeCap, unsafe+" No flow that a nozzle sprays with gives 90%%.", values...)
}

// sureFlow is the most, from what a nozzle sprays with up to the cap, at which the job keeps
// the limit for sure; to some per cent.
func (r *resin) sureFlow(s stand, a asked, most quantity.Flow) quantity.Opt[quantity.Flow] {
	const steps = 5
	sure := func(f quantity.Flow) bool { return r.chanceAt(s, a, f) >= surely }
	if !sure(leastHeld) {
		return quantity.Opt[quantity.Flow]{}
	}
	low, high := math.Log(float64(leastHeld)), math.Log(float64(most))
	for range steps {
		if middle := (low + high) / 2; sure(quantity.Flow(math.Exp(middle))) {
			low = middle
		} else {
			high = middle
		}
	}
	return quantity.Some(quantity.Flow(math.Exp(low)))
}

// chanceAt is the chance that a job keeps the limit when it is held to a flow.
func (r *resin) chanceAt(s stand, a asked, most quantity.Flow) quantity.Fraction {
	uses := make([]diUse, len(a.uses))
	for i, u := range a.uses {
		uses[i] = diUse{flow: min(u.flow, most), volume: u.volume}
	}
	a.uses, a.main = uses, min(a.main, most)
	if r.behind {
		return quantity.Fraction(r.job(a).InSeries(s.states).ChanceLasts)
	}
	return quantity.Fraction(r.job(a).Outlook(s.states).ChanceLasts)
}

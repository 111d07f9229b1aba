package planner

import "washeve/model/quantity"

// verdictOf judges by the chance; see [Verdict].
func verdictOf(chance quantity.Fraction) Verdict {
	switch {
	case chance >= 0.9:
		return Lasts
	case chance >= 0.5:
		return Tight
	}
	return WillNotLast
}

// InDoubt tells that the plan is called tight for a last reading over the limit which no
// bed explains, while all that is believed of the bed says that it lasts.
func (p *Plan) InDoubt() bool { return p.Verdict == Tight && verdictOf(p.Bed.ChanceLasts) == Lasts }

package planner

import "washeve/model/quantity"

// Verdict says whether the bed lasts the wash.
type Verdict string

// The verdicts, by the chance that the outlet stays under the limit to the end:
// at least 90 %, at least 50 %, below.
const (
	Lasts       Verdict = "lasts"
	Tight       Verdict = "tight"
	WillNotLast Verdict = "will-not-last"
)

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

package learning

import "math"

// Outset is what is believed of a fill before any reading of it.
//
// The capacity factor f is lognormal, cut off at [Reach]. The contact efficiency
// leans to 1 and reaches down to [LeastEfficiency]: e = 0.3 + 0.7 B with B of the
// beta distribution (4, 1), times what past fills taught.
type Outset struct {
	median  float64 // of ln f
	spread  float64 // standard deviation of ln f
	contact contactLesson
}

// Start is what is believed where nothing is known of the user's fills.
func Start() Outset { return Outset{spread: CapacitySpread} }

// Factor is the middle of what is believed of the capacity factor, and the
// standard deviation of its logarithm.
func (o Outset) Factor() (median, spread float64) { return math.Exp(o.median), o.spread }

// The contact efficiency is walked along t from 0 to 1 with e = 0.3 + 0.7 sqrt(t),
// which spaces the steps about evenly over what matters. The beta distribution
// (4, 1) then has the density 2t.
func efficiencyAt(t float64) float64 { return LeastEfficiency + (1-LeastEfficiency)*math.Sqrt(t) }

// contactSteps is how finely a lesson on the contact is kept.
const contactSteps = 24

// contactLesson is ln of how much more likely past fills make each contact, at
// the middles of even steps of t.
type contactLesson [contactSteps]float64

func (l contactLesson) at(t float64) float64 {
	x := math.Min(math.Max(t*contactSteps-0.5, 0), contactSteps-1)
	i := min(int(x), contactSteps-2)
	return l[i] + (x-float64(i))*(l[i+1]-l[i])
}

// lnContact is ln of the density of the contact at t, but for a constant.
func (o Outset) lnContact(t float64) float64 { return math.Log(2*t) + o.contact.at(t) }

// efficiencies gives n contacts of equal weight: the quantiles at the middles of
// n equal parts.
func (o Outset) efficiencies(n int) []float64 {
	const steps = 960
	below := make([]float64, steps+1)
	for i := range steps {
		below[i+1] = below[i] + math.Exp(o.lnContact((float64(i)+0.5)/steps))
	}
	out := make([]float64, n)
	i := 0
	for j := range out {
		want := (float64(j) + 0.5) / float64(n) * below[steps]
		for below[i+1] < want {
			i++
		}
		out[j] = efficiencyAt((float64(i) + (want-below[i])/(below[i+1]-below[i])) / steps)
	}
	return out
}

// Belief spreads the outset over a grid of hypotheses.
func (o Outset) Belief() Belief {
	const factors, efficiencies = 31, 5
	belief := make(Belief, 0, factors*efficiencies)
	contacts := o.efficiencies(efficiencies)
	total := 0.0
	for i := range factors {
		z := Reach * (2*float64(i)/(factors-1) - 1)
		for _, e := range contacts {
			h := Hypothesis{Factor: math.Exp(o.median + o.spread*z), Efficiency: e, Weight: math.Exp(-z * z / 2)}
			total += h.Weight
			belief = append(belief, h)
		}
	}
	for i := range belief {
		belief[i].Weight /= total
	}
	return belief
}

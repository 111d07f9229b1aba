package trip

import (
	"washeve/model/quantity"
	"washeve/planner"
)

// Order is what one fill of resin does of the washes that it is to serve, one after the
// other, and in which order it does most of them.
//
// All washes together take the same of a bed in any order, so that the order hardly
// decides whether it does them all. What it decides is which of them carries the risk: the
// last. So it matters where the washes differ in what they ask of a worn bed. One of a
// tighter limit, or of a faster flow, needs more of the bed between its front and its
// outlet: ln(feed/limit) over the transfer units, whatever the bed's contact is. To do the
// neediest first is then best in every state of the bed, by Jackson's rule for jobs with
// due dates (Jackson, Scheduling a production line to minimize maximum tardiness, 1955;
// MEMORY), but for what changes of flow do to the layer at work. Where one fill does not
// do all of them whatever the order, the lightest first does most (Smith's rule, 1956;
// MEMORY).
type Order struct {
	Fill   int    // as [WashPlan.Fill]
	Stated []Turn // those of the fill that take DI water, as they stand
	Free   []int  // index in [Plan.Washes] of those that could change places, as they stand
	Tried  int    // orders; 0 where fewer than two could
	ByRule bool   // not all orders were tried, but those of the rules
	Whole  bool   // some order does all washes more likely than not: the best is then the one with the best chance of all; else the one that does most of them

	Best  []Turn            // the best order of those that were tried
	Worst quantity.Fraction // the least chance of all, of those that were tried
	Least float64           // washes done, on average, in the order that does fewest
}

// Turn is a wash in its order.
type Turn struct {
	Wash  int               // index in [Plan.Washes]
	SoFar quantity.Fraction // chance that this and those of the fill before it end on spec
}

// Worth of an order: what one may gain by another before it is worth a word.
const (
	pointsWorth = 0.05 // of the chance of all
	washesWorth = 0.25 // on average, where one fill does not do them all
)

// mostTried is how many washes have all their orders tried.
const mostTried = 4

// All is the chance that all turns end on spec; 0 of none.
func All(turns []Turn) quantity.Fraction {
	if len(turns) == 0 {
		return 0
	}
	return turns[len(turns)-1].SoFar
}

// Done is how many washes end on spec before the first that does not, on average.
func Done(turns []Turn) float64 {
	sum := 0.0
	for _, at := range turns {
		sum += float64(at.SoFar)
	}
	return sum
}

// Until is how many of the first turns end on spec, all of them, with a chance.
func Until(turns []Turn, chance quantity.Fraction) int {
	for i, at := range turns {
		if at.SoFar < chance {
			return i
		}
	}
	return len(turns)
}

// Verdict says whether the fill does them all as they stand.
func (o *Order) Verdict() planner.Verdict { return planner.VerdictOf(All(o.Stated)) }

// whole tells that a chance of all is no flat no.
func whole(chance quantity.Fraction) bool { return planner.VerdictOf(chance) != planner.WillNotLast }

// Points is what the order matters: from the worst of the tried ones to the best, as a
// chance of all where Whole, else in washes.
func (o *Order) Points() float64 {
	if o.Whole {
		return float64(All(o.Best) - o.Worst)
	}
	return Done(o.Best) - o.Least
}

// Gains is what the best order has over the one that stands, in the same measure.
func (o *Order) Gains() float64 {
	if o.Whole {
		return float64(All(o.Best) - All(o.Stated))
	}
	return Done(o.Best) - Done(o.Stated)
}

func (o *Order) worth() float64 {
	if o.Whole {
		return pointsWorth
	}
	return washesWorth
}

// Any tells that the order does not matter: so little as no one would notice.
func (o *Order) Any() bool { return o.Tried > 0 && o.Points() < o.worth() && !o.Advised() }

// Advised tells that another order than the one that stands is worth the change.
func (o *Order) Advised() bool { return o.Tried > 0 && o.Gains() >= o.worth() }

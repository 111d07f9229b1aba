package planner

import (
	"fmt"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Reasons tells where the numbers of a shortage come from.
func (s *Shortage) Reasons() []Reason {
	l := &ledger{}
	h := &s.Share
	l.explain(quantityReason("the bed gives", h.Gives, "what so great a part of all that may be true of the bed still gives at this flow before the outlet passes the limit, less the flush", practice("the same belief as the chance of lasting"),
		input("confidence", h.Confidence), input("flow", h.Flow), input("flush", h.Flush)))
	l.explain(quantityReason("DI for all faces", h.Needs, "each face's own: going over it once or replacing its film, whichever is more", practice("as in the plan")))
	l.explain(wordsReason("spots spared", fmt.Sprintf("%.0f %%", 100*float64(h.Spared)), "sum over the surfaces of area x how much a spot shows x bands of spots between softened water and DI, for the faces that get DI; over the same for all", practice("bands: none, faint, seen, towel"),
		tag.Text("without pins", fmt.Sprintf("%.0f %%", 100*float64(h.Unpinned)), tag.Source{})))
	l.explain(wordsReason("who gets DI", facesWords(h.Order()), "of all sets of faces that the gallons are enough for, the one that spares most; of equal ones that of least water. Each flow that may serve is tried; of equal ones the fastest", memory("0-1 knapsack, branch and bound: Kolesar 1967, Dantzig's bound 1957"),
		input("flow that the sprayer draws", h.Drawn)))
	l.explain(quantityReason("towel", TowelRate, "area over this rate", practice("a person with two towels")))
	for _, f := range h.Faces {
		l.explain(quantityReason(string(f.Name)+": chance to get there", f.Reaches, "the part of all that may be true of the bed in which it gives the flush, this face and all before it in the list", practice("rinsed in this order, at this flow"), input("this face takes", f.Needs)))
	}
	for i := range s.Ways {
		s.Ways[i].reason(l)
	}
	return l.reasons
}

// reason says how a way's numbers were found.
func (w *WayOut) reason(l *ledger) {
	if w.Not.Code != "" {
		return
	}
	how := "the whole plan made with this stated"
	switch w.Code {
	case WayResin:
		how = "the whole plan made for a bed with new resin, of which is believed what past fills taught"
	case WayTwoFills:
		how = "over all that may be true of this fill: what it gives, and the part of new fills that give the rest"
	case WayBuy:
		how = "the bed gives its gallons with the confidence asked for; the rest is bought"
	}
	l.explain(quantityReason(w.Name+": chance", w.Chance, how, practice("the same belief as the plan's"), input("DI water", w.DI.Volume), input("DI minutes", w.DI.Duration), input("by towel", w.Towels)))
}

// Total is the time of a way that runs DI water and dries by towel.
func (w *WayOut) Total() quantity.Duration { return w.DI.Duration + w.Towel }

package planner

import (
	"math"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/planner/tag"
)

// kin is what the fills of one tank teach of those of another with resin of the same
// kind: how far the capacity that is stated of it, and the load that is reckoned, are off
// belongs to the resin, the water and the hand that fills, and not to the size of a tank.
type kin struct {
	bed     string
	resin   kind
	last    model.Moment // of the tank's last entry
	lessons func() []learning.Lesson
	next    func() *FillPast // a fresh fill of it, as these teach
}

// kind is what makes fills of two tanks alike: the resin's state, and the capacity that is
// stated of so much of it.
type kind struct {
	state   model.ResinState
	density float64
}

// kindOf is that of a bed whose resin is decided.
func kindOf(b model.Bed, r *resin) kind {
	k := kind{b.State, float64(r.stated) / float64(r.tank.Resin)}
	if k.state == "" {
		k.state = model.NewResin
	}
	return k
}

func (k kind) like(other kind) bool {
	return k.state == other.state && math.Abs(k.density-other.density) <= rounding*other.density
}

// kinOf gives the other tank of a kind that was used last of those whose fills taught
// anything; nil where there is none.
func (p *Past) kinOf(bed string, resin kind) *kin {
	if p == nil {
		return nil
	}
	for i := range p.kin {
		k := &p.kin[i]
		if k.resin.like(resin) && !strings.EqualFold(k.bed, bed) && slices.ContainsFunc(k.lessons(), learning.Lesson.Taught) {
			return k
		}
	}
	return nil
}

// kin is the other tank whose fills teach of the one of the wash, which the log knows
// nothing of; nil where there is none, or the fill is said to be in use.
func (m *making) kin() *kin {
	if m.bed.SoFar.Or(0) > 0 || m.bed.LastReading.Given() {
		return nil
	}
	return m.past.kinOf(m.bed.Name, kindOf(m.bed, &m.resin))
}

// standsAsTaught is how a tank stands that another one teaches of.
func (m *making) standsAsTaught(flow quantity.Flow) (stand, bool) {
	k := m.kin()
	if k == nil {
		return stand{}, false
	}
	m.resin.statedAge(&m.ledger, m.bed, penScale(m.pen), flow)
	m.assume(Assumption{Name: taughtByKin, Words: k.bed, Source: tag.Source{Tag: tag.Yours, Text: "your log: fresh resin of the same kind is taken to hold as much by its volume as the fills there have shown"}})
	return k.next().stand, true
}

// taughtByKin is what the assumptions call the tank whose fills teach of this one's.
const taughtByKin = "bed judged by the fills of"

package planner

import (
	"slices"
	"strings"

	"washeve/model/quantity"
)

// The codes of the warnings that the log and what is stated do not go together, though every
// reading fits.
const (
	// LoadInDoubt is a fill that holds far more than is stated of it, which the hardness alone
	// would explain.
	LoadInDoubt = "load-in-doubt"
	// OtherGallons are logged washes that took far more, or far less, than the plan takes.
	OtherGallons = "other-gallons"
)

// Remarks are the warnings of the plan that tell of the log beside what is stated:
// [LoadInDoubt] and [OtherGallons].
func (p *Plan) Remarks() []Note {
	return slices.DeleteFunc(slices.Clone(p.Warnings), func(n Note) bool { return n.Code != LoadInDoubt && n.Code != OtherGallons })
}

// remark warns of what the log says beside what is stated.
func (p *Plan) remark(m *making) {
	past := m.past.Bed(m.bed.Name)
	if past == nil {
		return
	}
	if !m.setting.Fresh && m.setting.Rejected <= 0 {
		p.remarkLoad(m, past.Present())
	}
	p.remarkGallons(m, past)
}

// What makes a load doubtful. PRACTICE: the factor is more than one spread over what is
// stated, the pen's load is well over the hardness, and the one is the other's within a
// quarter.
const (
	doubtfulFactor  = 1.5
	doubtfulLoad    = 1.25
	explainedWithin = 1.25
)

// remarkLoad tells of a fill that holds too much for the load that the pen makes of its water.
// Water that is harder to the pen than to the strip is legitimate, so both causes are told.
func (p *Plan) remarkLoad(m *making, f *FillPast) {
	factor, hardness := f.posterior.Factor[1], p.Raw.Hardness
	over := float64(p.Raw.Load) / float64(hardness)
	if f.posterior.Used == 0 || !p.Raw.HardnessSaid || factor < doubtfulFactor || over < doubtfulLoad || factor > over*explainedWithin {
		return
	}
	m.warn(LoadInDoubt, "By its readings this resin holds %s of what is stated of it. Its load is counted from the pen, %s; the hardness of the water is %s, and if that were the whole load, the resin would hold about what is stated. Is the pen right, and its scale? Read the tap with another pen, or ask for the TDS in the water report. If the pen is right the water holds sodium beside its hardness, and the resin is better than stated.",
		quantity.ValueOf(quantity.Fraction(factor)), quantity.ValueOf(quantity.Hardness(p.Raw.Load)), quantity.ValueOf(hardness))
}

const (
	lastDraws = 3   // that are set against a plan
	farOff    = 2.0 // times as much, or that part of it. PRACTICE
)

// remarkGallons tells of washes that took other gallons than the plan does: what goes by the
// plan, and what by the log, then speaks of two different washes.
func (p *Plan) remarkGallons(m *making, past *BedPast) {
	var last []quantity.Volume
	for _, d := range slices.Backward(past.Draws) {
		if d.Vehicle != "" && !strings.EqualFold(d.Vehicle, p.Vehicle) {
			continue
		}
		if last = append(last, d.Volume); len(last) == lastDraws {
			break
		}
	}
	plan := p.Through()
	if len(last) == 0 || plan <= 0 {
		return
	}
	slices.Sort(last)
	if least, most := last[0], last[len(last)-1]; least <= farOff*plan && farOff*most >= plan {
		return
	}
	were := "Your last wash with this bed"
	if len(last) > 1 {
		were = "Your last washes with this bed"
	}
	m.warn(OtherGallons, were+" took %s of DI water, and this plan takes %s with its flush. The chance, the cost and the fills a year go by the plan; the day on which the bed ends goes by the pace of the log. If you go on as you did, state it so: the coverage of the sprayer, the passes, or the stages that get DI.",
		quantity.ValueOf(last[len(last)/2]), quantity.ValueOf(plan))
}

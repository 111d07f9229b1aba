package planner

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/flow"
	"washeve/planner/rinse"
	"washeve/planner/tag"
)

// plumbing is everything between the tap and the spray: which tanks a water
// goes through, and what flows.
type plumbing struct {
	supply      flow.Supply
	hoses       []model.Hose
	softener    *flow.Packing
	bed         flow.Packing
	behind      bool // a second tank like the bed stands behind it
	temperature quantity.Temperature
	feedsBed    bool // the softener stands ahead of the bed
	tools       []tool
	main        string // name of the sprayer of the wash
}

// tool is one sprayer, or the hand, with the flow it takes of each water.
type tool struct {
	name     string
	kind     model.Tool
	coverage quantity.Opt[quantity.Coverage]
	end      flow.Sprayer
	flows    map[model.Water]quantity.Flow
	past     *Past
	drawn    quantity.Flow // of DI water where nothing holds it
	held     float64       // DI flow that is held to over that, at most 1
}

func (t tool) flowOf(w model.Water) quantity.Flow { return t.flows[w] }

// rate is how fast a stage goes over the body. Where the DI water is held to less
// than the sprayer draws, the hand goes slower with it: what wets every spot once
// is water over an area. PRACTICE.
func (t tool) rate(s model.Stage) (quantity.Coverage, tag.Source) {
	rate, source := t.ownRate(s)
	if s.Water == model.DI && t.held < 1 {
		return quantity.Coverage(float64(rate) * t.held), practice("slower with the flow that the DI water is held to")
	}
	return rate, source
}

// ownRate is the rate at the flow that the sprayer draws: as the wash states it,
// as the log of such stages teaches, as the sprayer states it, or a usual one.
func (t tool) ownRate(s model.Stage) (quantity.Coverage, tag.Source) {
	if stated, given := s.Coverage.Get(); given {
		return stated, yours
	}
	usual := t.coverage.Or(rinse.UsualCoverage(s, t.kind))
	if pace, learned := t.past.pace(t.name, s.Name, usual); learned {
		return pace.P50, tag.Source{Tag: tag.Yours, Text: fmt.Sprintf("learned from %d logged stages", pace.Count)}
	}
	if t.coverage.Given() {
		return usual, yours
	}
	return usual, practice("a steady hand; your own logged washes are better")
}

// layPlumbing decides the chain and finds what every sprayer draws from it.
func layPlumbing(l *ledger, c chosen, r resin, temperature quantity.Temperature) plumbing {
	p := plumbing{
		supply: flow.SupplyOf(&c.place), temperature: temperature,
		bed: packing(r.tank.Resin, r.tank.Diameter), behind: r.behind,
	}
	for _, a := range p.supply.Assumed {
		l.assume(a)
	}
	l.warnings = append(l.warnings, p.supply.Contradictions...)
	p.hoses = layHoses(l, c.hoses)
	if s := c.softener; s != nil {
		resin := softenerResin(l, s)
		packed := packing(resin, take(l, "softener tank diameter", s.Diameter, bed.UsualDiameter(resin), practice("the proportions of half a cubic foot in 8 in")))
		p.softener = &packed
		feeds := takeWords(l, "bed fed through softener", string(c.wash.Feed), string(model.Yes), practice("the softener stands ahead of the bed"))
		p.feedsBed = model.Answer(feeds) == model.Yes
	}
	if held, given := c.wash.DIFlow.Get(); given {
		l.assume(Assumption{Name: "DI held to", Value: quantity.ValueOf(held), Source: yours})
	}
	p.addTools(l, c)
	return p
}

// softenerResin is the volume by which the softener takes pressure: as stated, else of what
// its capacity may stand for the end that takes the more. PRACTICE: [bed.SoftenerRange].
func softenerResin(l *ledger, s *model.Softener) quantity.Volume {
	if resin, given := s.Resin.Get(); given {
		return resin
	}
	least, most := bed.SoftenerRange()
	low, high := most.For(s.Capacity.Or(0)), least.For(s.Capacity.Or(0))
	l.assume(Assumption{Name: "softener resin volume, at the least", Value: low.AsResin(), Source: practice("its capacity at 30000 gr/ft3, the most of the trade's salt table; the pressure is worked out with the end of the two that takes more of it, and nothing else rests on them")})
	l.assume(Assumption{Name: "softener resin volume, at the most", Value: high.AsResin(), Source: practice("its capacity at 20000 gr/ft3, the least of the trade's salt table")})
	if s.Diameter.Given() {
		return high // a higher column in the same tank
	}
	return low // a smaller tank
}

func packing(resin quantity.Volume, diameter quantity.Length) flow.Packing {
	return flow.Packing{Resin: resin, Diameter: diameter, Bead: bed.Bead, Voids: bed.Voids}
}

// addTools works out every sprayer of the rig, the one of the wash first.
func (p *plumbing) addTools(l *ledger, c chosen) {
	first := model.Sprayer{Name: "small pressure washer", Tool: model.PressureWasher}
	if c.sprayer != nil {
		first = *c.sprayer
	}
	p.main = first.Name
	for _, s := range append([]model.Sprayer{first}, c.sprayers...) {
		if _, known := p.find(s.Name); known {
			continue
		}
		t := tool{name: s.Name, kind: s.Tool, coverage: s.Coverage, end: flow.SprayerOf(&s), past: c.past}
		if len(p.tools) == 0 {
			for _, a := range t.end.Assumed {
				l.assume(a)
			}
		}
		t.flows = map[model.Water]quantity.Flow{}
		for _, w := range []model.Water{model.Raw, model.Softened, model.DI} {
			t.flows[w] = flow.Operate(p.chain(t.end, w)).Flow
		}
		t.holdTo(c.wash.DIFlow)
		p.tools = append(p.tools, t)
	}
	p.tools = append(p.tools, tool{name: model.ByHand, past: c.past, held: 1})
}

// holdTo holds the DI water to a flow, where the sprayer draws more.
func (t *tool) holdTo(limit quantity.Opt[quantity.Flow]) {
	t.drawn, t.held = t.flows[model.DI], 1
	if most, given := limit.Get(); given && most < t.drawn {
		t.flows[model.DI], t.held = most, float64(most/t.drawn)
	}
}

func (p *plumbing) find(name string) (tool, bool) {
	for _, t := range p.tools {
		if strings.EqualFold(t.name, name) {
			return t, true
		}
	}
	return tool{}, false
}

// toolOf is the sprayer of a stage, that of the wash where it names none.
func (p *plumbing) toolOf(s model.Stage) tool {
	if t, known := p.find(s.Sprayer); known && (t.name != model.ByHand || s.Water != model.DI) {
		return t
	}
	t, _ := p.find(p.main)
	return t
}

// washes tells whether a pressure washer is used in any stage.
func (p *plumbing) washes(stages []model.Stage) bool {
	return slices.ContainsFunc(stages, func(s model.Stage) bool { return p.toolOf(s).end.Tool == model.PressureWasher })
}

// through tells which tanks a water goes through.
func (p *plumbing) through(w model.Water) (softener, di bool) {
	softener = p.softener != nil && (w == model.Softened || w == model.DI && p.feedsBed)
	return softener, w == model.DI
}

// valves states how the tanks stand for a water.
func (p *plumbing) valves(w model.Water) []Valve {
	softener, di := p.through(w)
	valves := []Valve{{Unit: BedUnit, Through: di}}
	if p.softener != nil {
		valves = append([]Valve{{Unit: SoftenerUnit, Through: softener}}, valves...)
	}
	return valves
}

// chain is the way of a water from the supply to an end.
func (p *plumbing) chain(end flow.Sprayer, w model.Water) flow.Chain {
	softener, di := p.through(w)
	elements := flow.HosesIn(model.SupplyRun, p.hoses)
	if softener {
		elements = append(elements, flow.Tank("softener", *p.softener, p.temperature))
	}
	elements = append(elements, flow.HosesIn(model.MiddleRun, p.hoses)...)
	if di {
		elements = append(elements, flow.Tank("DI bed", p.bed, p.temperature))
		if p.behind {
			elements = append(elements, flow.Tank("second DI bed", p.bed, p.temperature))
		}
	}
	elements = append(elements, flow.HosesIn(model.SprayRun, p.hoses)...)
	return flow.Chain{Supply: p.supply, Elements: elements, Sprayer: end}
}

// check sets the sprayer that DI runs through against the cap and the supply.
func (p *plumbing) check(t tool, limit quantity.Flow) (SprayerCheck, quantity.Pressure, flow.Operating) {
	chain := p.chain(t.end, model.DI)
	at := flow.Operate(chain)
	drawn := t.flowOf(model.DI)
	return SprayerCheck{
		Name: t.name, Flow: drawn, Draws: t.drawn, WithinCap: drawn <= limit && limit > 0,
		OpenHose: flow.OpenHose(chain), PressureLeft: at.Pressure, PressureNeed: at.Need, Enough: at.Enough,
	}, p.bed.Drop(drawn, p.temperature), at
}

// pressureCap is the most flow that pressure allows through the bed.
func (p *plumbing) pressureCap(t tool) quantity.Flow {
	return flow.LimitOf(p.chain(t.end, model.DI), p.bed, p.temperature).Flow()
}

// hoseAfterBed is what stands in the hoses between bed and sprayer.
func (p *plumbing) hoseAfterBed() quantity.Volume {
	total := quantity.Volume(0)
	for _, h := range p.hoses {
		if h.Run == model.SprayRun {
			bore := h.Bore.Or(0)
			total += quantity.Volume(math.Pi / 4 * float64(bore) * float64(bore) * float64(h.Length.Or(0)))
		}
	}
	return total
}

// scaleOf is the scale that ppm are shown on: that of the limit, else of the
// pen, else the usual one.
func scaleOf(limit quantity.Opt[quantity.Reading], pen model.Pen, usual quantity.Scale) (quantity.Scale, tag.Source) {
	for _, s := range []quantity.Scale{limit.Or(quantity.Reading{}).Scale, pen.Scale.Or(quantity.ScaleUnsaid)} {
		if s != quantity.ScaleUnsaid && s != quantity.ScaleConductivity {
			return s, yours
		}
	}
	return usual, practice("most pens")
}

package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/flow"
	"washeve/planner/rinse"
	"washeve/planner/water"
)

// What a wash aims at where nobody says, in ppm on the pen's scale. PRACTICE.
const (
	UsualLimit  = 10 // at the bed's outlet
	UsualTarget = 10 // in the film that dries
)

// aims are what the wash is held to.
type aims struct {
	scale         quantity.Scale
	limit, target float64 // ppm on scale
}

// Make plans a wash. Without a vehicle's length and height, a bed's resin volume
// and a TDS there is no plan: the error is then a [*Missing] that says what is
// lacking. Everything else has a default, which the plan lists.
func Make(rig model.Rig, places model.Places, wash model.Wash) (Plan, error) {
	c, err := choose(rig, places, wash)
	if err != nil {
		return Plan{}, err
	}
	l := &ledger{}
	raw, soft := analyse(l, c)
	faces := measureBody(l, c, raw.Temperature)
	feed := raw
	if c.softener != nil && c.wash.Feed != model.No {
		feed = soft
	}
	aim := decideAims(l, c)
	r := decideResin(l, c.bed, feed, penScale(c.pen))
	chain := layPlumbing(l, c, r, raw.Temperature)
	stages := stagesOf(l, c)
	main := chain.toolOf(mainStage(stages))
	against := rinser{
		raw: raw.PPM(aim.scale).Number, softened: soft.PPM(aim.scale).Number,
		target: aim.target, quick: 1, mixing: rinse.MixingEfficiency,
	}
	if c.softener == nil {
		against.softened = against.raw
	}
	before := r.decideAge(l, c.bed, aim.scale, main.flowOf(model.DI))
	ask := asked{
		main: main.flowOf(model.DI), limit: aim.limit, scale: aim.scale, feed: feed.PPM(aim.scale).Number,
		loadOff: loadSpread(feed),
	}
	against.clean = before.outlet(r, ask)
	done := work(l, stages, faces, chain, against)
	flush := flushOf(l, c.bed, r, chain)
	ask.uses, ask.volume = askBed(done, flush, ask.main)

	p := Plan{
		Wash: wash.Name, Date: wash.Date, Vehicle: c.vehicle.Name, Place: c.place.Name, BedName: c.bed.Name,
		Raw: waterOf(raw, aim.scale), Softened: waterOf(soft, aim.scale),
		Stages: done.stages, Faces: done.faces, Claim: r.claim, Cautions: cautions(c),
		Limit: quantity.PPM(aim.limit, aim.scale), Target: quantity.PPM(aim.target, aim.scale),
	}
	p.Bed = r.foresee(before, ask)
	p.Cap = r.caps(l, bedLimits{c.bed.MaxFlow, c.bed.ContactTime}, before, ask, chain.pressureCap(main))
	var at flow.Operating
	p.Sprayer, p.Bed.DropAcross, at = chain.check(main, p.Cap.Flow)
	p.DI, p.Soft, p.Untreated = done.totals()
	p.Flush = Use{Volume: flush, Duration: ask.main.Time(flush)}
	p.settleFaces(stages, faces, against)
	p.vary(stages, faces, chain, against, c)
	p.Softener = lookAtSoftener(l, c, raw, p.throughSoftener(chain, ask))
	p.Cost = price(c.bed.Price, r, ask.volume)
	p.Verdict = verdictOf(p.Bed.ChanceLasts)
	p.tell(l, c, r, raw, ask, at)
	p.reason(l, r, feed, before, ask, faces)
	p.Assumptions, p.Reasons, p.Warnings = l.assumptions, l.reasons, l.warnings
	p.Constants = constants()
	return p, nil
}

func analyse(l *ledger, c chosen) (raw, soft water.Analysis) {
	raw = water.Analyse(water.FactsOf(&c.place, penScale(c.pen)))
	l.assumptions = append(l.assumptions, raw.Assumed...)
	return raw, water.Soften(raw)
}

func penScale(p model.Pen) quantity.Scale { return p.Scale.Or(quantity.ScaleUnsaid) }

// loadSpread is how far the load may be off, as a spread of its logarithm: the
// analysis gives the ends, taken as two standard deviations away.
func loadSpread(a water.Analysis) float64 {
	if a.Load <= 0 {
		return 0
	}
	return float64(a.High-a.Low) / 4 / float64(a.Load)
}

func decideAims(l *ledger, c chosen) aims {
	limit := c.wash.Limit
	if !limit.Given() {
		limit = c.defaults.Limit
	}
	scale, source := scaleOf(limit, c.pen, water.DefaultScale())
	l.assume(Assumption{Name: "pen's scale", Words: scale.String(), Source: source})
	return aims{
		scale:  scale,
		limit:  takePPM(l, "outlet limit", limit, UsualLimit, scale),
		target: takePPM(l, "target in the film", c.wash.Target, UsualTarget, scale),
	}
}

func takePPM(l *ledger, name string, given quantity.Opt[quantity.Reading], usual float64, scale quantity.Scale) float64 {
	reading, ok := given.Get()
	source := yours
	if !ok {
		reading, source = quantity.PPM(usual, scale), practice("no spots are seen under 10 ppm")
	}
	v := ppmOn(scale, reading.WithScale(scale))
	l.assume(ppmAssumption(name, v, scale, source))
	return v
}

// mainStage is the final rinse, else the last stage with DI, else the last.
func mainStage(stages []model.Stage) model.Stage {
	best := model.Stage{}
	for _, s := range stages {
		if s.Water == model.DI && !(best.Final && best.Water == model.DI) || best.Water == "" {
			best = s
		}
	}
	return best
}

// outlet is what the bed gives at the start, in ppm, for the bed in the middle
// of what is believed.
func (s stand) outlet(r resin, a asked) float64 {
	return a.feed * s.middle.Column.Outlet(s.middle.Efficiency*r.units(a.main))
}

func flushOf(l *ledger, b model.Bed, r resin, chain plumbing) quantity.Volume {
	free := take(l, "bed free space", b.FreeSpace, quantity.Volume(bed.FreeShare)*r.tank.Resin, practice("a tank filled to two thirds"))
	return bed.FlushFactor * r.tank.Standing(free, chain.hoseAfterBed())
}

func waterOf(a water.Analysis, scale quantity.Scale) Water {
	return Water{
		Conductivity: a.Conductivity, TDS: a.PPM(scale), Hardness: a.Hardness(), HardnessSaid: a.HardnessSaid,
		Load: a.Effective(), Temperature: a.Temperature,
	}
}

// settleFaces works out what is left on the faces with the bed's outlet at the
// end of the job, which is the worst the last face gets.
func (p *Plan) settleFaces(stages []model.Stage, faces []face, against rinser) {
	against.clean = max(against.clean, p.Bed.OutletAtEnd.P50)
	for i := range p.Faces {
		p.Faces[i].settle(faces[i].shares, against.dirtyOf(stages, faces[i].side), against.clean)
	}
}

// throughSoftener is the water that the wash sends through the softener.
func (p *Plan) throughSoftener(chain plumbing, a asked) quantity.Volume {
	total := p.Soft.Volume
	if chain.feedsBed {
		total += a.volume
	}
	return total
}

func verdictOf(chance quantity.Fraction) Verdict {
	switch {
	case chance >= 0.9:
		return Lasts
	case chance >= 0.5:
		return Tight
	}
	return WillNotLast
}

// vary works the rinse out again with a quicker and a slower hand, and with a
// longer drip.
func (p *Plan) vary(stages []model.Stage, faces []face, chain plumbing, against rinser, c chosen) {
	const hand = 1.25 // PRACTICE: a person's pace from one wash to the next
	volume := func(r rinser, faces []face) quantity.Volume {
		di, _, _ := work(&ledger{}, stages, faces, chain, r).totals()
		return di.Volume
	}
	quick, slow := against, against
	quick.quick, quick.mixing = hand, rinse.MixingEfficiency*1.4
	slow.quick, slow.mixing = 1/hand, rinse.MixingEfficiency/1.4
	p.DIBand = Band[quantity.Volume]{P10: volume(quick, faces), P50: p.DI.Volume, P90: volume(slow, faces)}
	pause := c.wash.Pause.Or(UsualPause)
	p.Drip = Drip{Pause: pause, Longer: max(2*pause, 2*quantity.Minute)}
	c.wash.Pause = quantity.Some(p.Drip.Longer)
	dripped := measureBody(&ledger{}, c, p.Raw.Temperature)
	p.Drip.Saves = p.DI.Volume - volume(against, dripped)
}

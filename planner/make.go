package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/drying"
	"washeve/planner/flow"
	"washeve/planner/learning"
	"washeve/planner/rinse"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// Make plans a wash. Without a vehicle's length and height, a bed's resin volume
// and a TDS there is no plan: the error is then a [*Missing] that says what is
// lacking. Everything else has a default, which the plan lists.
func Make(rig model.Rig, places model.Places, wash model.Wash) (Plan, error) {
	return makePlan(rig, places, wash, direct(nil))
}

// sources is what a plan is made from beside the nouns.
type sources struct {
	day   forecaster
	age   ager
	curve curver
	past  *Past // nil where there is no log

	setting Setting
}

// direct works everything out anew.
func direct(past *Past) sources {
	return sources{day: drying.Day, age: standAt, curve: learning.Curve, past: past}
}

// making is a plan on its way: what was decided, step by step.
type making struct {
	ledger
	chosen

	foretells forecaster
	ages      ager

	raw, soft, feed water.Analysis
	faces           []face
	aim             aims
	resin           resin
	since           sinceSalt  // what ran through the softener
	sinceFrom       tag.Source // who says so
	tookFrom        tag.Source // whose hardness that was
	chain           plumbing
	stages          []model.Stage
	main            tool // that the final rinse is done with
	against         rinser
	before          stand
	ask             asked
	done            program
	flush           quantity.Volume
	drips           []drip
	plan            Plan
}

func makePlan(rig model.Rig, places model.Places, wash model.Wash, from sources) (Plan, error) {
	m, err := answered(rig, places, wash, from)
	if err != nil {
		return Plan{}, err
	}
	m.account()
	return m.plan, nil
}

// answered makes the numbers of a plan, without what is told of them, and keeps
// what they were made from.
func answered(rig model.Rig, places model.Places, wash model.Wash, from sources) (*making, error) {
	m, err := begin(rig, places, wash, from)
	if err != nil {
		return nil, err
	}
	m.answer()
	return m, nil
}

// begin settles everything that the plan's answer rests on.
func begin(rig model.Rig, places model.Places, wash model.Wash, from sources) (*making, error) {
	c, err := choose(rig, places, wash)
	if err != nil {
		return nil, err
	}
	c.past, c.setting = from.past, from.setting
	m := &making{ledger: newLedger(), chosen: c, foretells: from.day, ages: from.age}
	m.remember()
	m.decide()
	m.resin.draws = from.curve
	m.rinse()
	return m, nil
}

// decide settles waters, faces, bed, pipes, stages and the day.
func (m *making) decide() {
	l, c := &m.ledger, m.chosen
	m.raw, m.soft = analyse(l, c)
	m.faces = measureBody(l, c, m.raw.Temperature)
	m.feed = c.setting.purified(feedOf(c, m.raw, m.soft))
	m.aim = decideAims(l, c)
	m.resin = decideResin(l, c.bed, c.sized, m.feed, penScale(c.pen))
	m.resin.behind = c.setting.Behind
	m.chain = layPlumbing(l, c, m.resin, m.raw.Temperature)
	m.stages = stagesOf(l, c)
	m.plan.Day, m.plan.DayNote = foretell(l, c, m.stages, m.faces, m.chain, m.foretells)
	m.drips = m.plan.Day.settle(m.stages, m.faces)
	m.main = m.chain.toolOf(mainStage(m.stages))
}

// rinse works through the stages, and gathers what they ask of the bed.
func (m *making) rinse() {
	m.rinseFrom(m.stands(m.main.drawn)) // where nobody wrote down how the bed has run so far
}

// rinseFrom is rinse with a bed that stands so.
func (m *making) rinseFrom(before stand) {
	l := &m.ledger
	flow := m.main.flowOf(model.DI)
	m.against = rinserOf(m.chosen, m.raw, m.soft, m.aim)
	m.before = before
	m.ask = asked{
		main: flow, limit: m.aim.limit, scale: m.aim.scale, feed: m.feed.PPM(m.aim.scale).Number,
		loadOff: loadSpread(m.feed),
	}
	m.against.clean = m.ask.feed * m.resin.outletAfter(m.before, 0, flow)
	m.done = work(l, m.stages, m.faces, m.chain, m.against)
	m.flush = flushOf(l, m.bed, m.resin, m.chain)
	m.ask.uses, m.ask.volume = askBed(m.done, m.flush, flow)
}

// answer fills the plan in.
func (m *making) answer() {
	l, c, p := &m.ledger, m.chosen, &m.plan
	p.Wash, p.Date, p.Vehicle, p.Place, p.BedName = c.wash.Name, c.wash.Date, c.vehicle.Name, c.place.Name, c.bed.Name
	p.Raw, p.Softened = waterOf(m.raw, m.aim.scale), waterOf(m.soft, m.aim.scale)
	p.Limit, p.Target = quantity.PPM(m.aim.limit, m.aim.scale), quantity.PPM(m.aim.target, m.aim.scale)
	p.BedBehind, p.stood, p.read = c.softensFeed(), m.before, c.lastRead()
	p.Stages, p.Faces, p.Claim = m.done.stages, m.done.faces, m.resin.claim
	p.Bed = m.resin.foresee(m.before, m.ask)
	p.Cap = m.resin.caps(l, bedLimits{c.bed.MaxFlow, c.bed.ContactTime}, m.before, m.ask, m.chain.pressureCap(m.main))
	p.DI, p.Soft, p.Untreated = m.done.totals()
	p.Flush = Use{Volume: m.flush, Duration: m.ask.main.Time(m.flush)}
	p.settleFaces(m.faces, m.against)
	p.vary(m.stages, m.faces, m.chain, m.against, c)
	p.Softener = m.lookAtSoftener(p.throughSoftener(m.chain, m.ask))
	p.Cost, p.Verdict = price(c.bed.Price, p.Bed.Fill, m.ask.volume), m.verdict(p.Bed.ChanceLasts)
}

// verdict goes by the chance. But a last reading over the limit that no bed
// explains leaves the bed in doubt, whatever is believed of it.
func (m *making) verdict(chance quantity.Fraction) Verdict {
	v := verdictOf(chance)
	if v == Lasts && m.before.odd > m.aim.limit {
		return Tight
	}
	return v
}

// account writes down what to heed, and where everything comes from.
func (m *making) account() {
	l, p := &m.ledger, &m.plan
	var at flow.Operating
	p.Sprayer, p.Bed.DropAcross, at = m.chain.check(m.main, p.Cap.Flow)
	for _, s := range p.Stages {
		p.Sprayer.WithinCap = p.Sprayer.WithinCap && (s.Water != model.DI || s.Flow <= p.Cap.Flow)
	}
	p.tell(l, m.chosen, m.resin, m.chain, m.raw, m.ask, at)
	p.tellUnsafeCap(l, &m.resin, m.before, m.ask)
	p.tellDay(l, m.drips)
	m.tellPast()
	p.remark(m)
	p.tellMisplaced(l, m.chosen)
	p.reason(l, m.resin, m.feed, m.before, m.ask, m.faces)
	p.Cautions = cautions(m.chain.washes(m.stages))
	p.Assumptions, p.Reasons, p.Warnings = l.assumptions, l.reasons, l.warnings
	p.Constants = constants()
	inTurn(p.Warnings)
}

// feedOf is the water that the bed is fed with.
func feedOf(c chosen, raw, soft water.Analysis) water.Analysis {
	if c.softensFeed() {
		return soft
	}
	return raw
}

func (c chosen) softensFeed() bool { return c.softener != nil && c.wash.Feed != model.No }

// rinserOf is what the final rinse works against, the bed's outlet apart.
func rinserOf(c chosen, raw, soft water.Analysis, aim aims) rinser {
	r := rinser{
		raw: raw.PPM(aim.scale).Number, softened: soft.PPM(aim.scale).Number,
		target: aim.target, quick: 1, mixing: rinse.MixingEfficiency, only: c.wash.DISurfaces,
	}
	if c.softener == nil {
		r.softened = r.raw
	}
	return r
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

// mainStage is the final rinse, else the last stage with DI, else the first.
func mainStage(stages []model.Stage) model.Stage {
	best := model.Stage{}
	for _, s := range stages {
		if s.Water == model.DI && !(best.Final && best.Water == model.DI) || best.Water == "" {
			best = s
		}
	}
	return best
}

func flushOf(l *ledger, b model.Bed, r resin, chain plumbing) quantity.Volume {
	free := take(l, "bed free space", b.FreeSpace, quantity.Volume(bed.FreeShare)*r.tank.Resin, practice("a tank filled to two thirds"))
	hose := chain.hoseAfterBed()
	return bed.FlushFactor * (quantity.Volume(r.beds())*r.tank.Standing(free, 0) + hose)
}

func waterOf(a water.Analysis, scale quantity.Scale) Water {
	return Water{
		Conductivity: a.Conductivity, TDS: a.PPM(scale), Hardness: a.Hardness(), HardnessSaid: a.HardnessSaid,
		Load: a.Effective(), Temperature: a.Temperature,
	}
}

// settleFaces works out what is left on the faces with the bed's outlet at the
// end of the job, which is the worst the last face gets.
func (p *Plan) settleFaces(faces []face, against rinser) {
	against.clean = max(against.clean, p.Bed.OutletAtEnd.P50)
	for i := range p.Faces {
		p.Faces[i].settle(faces[i].shares, against.clean, against.only)
		p.Faces[i].Dries = p.Day.dries(faces[i].side)
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

// hand is how much quicker or slower a person is from one wash to the next.
// PRACTICE.
const hand = 1.25

// vary works the rinse out again with a quicker and a slower hand, and with a
// longer drip.
func (p *Plan) vary(stages []model.Stage, faces []face, chain plumbing, against rinser, c chosen) {
	volume := func(r rinser, faces []face) quantity.Volume {
		di, _, _ := work(nil, stages, faces, chain, r).totals()
		return di.Volume
	}
	quick, slow := against, against
	quick.quick, quick.mixing = hand, rinse.MixingEfficiency*1.4
	slow.quick, slow.mixing = 1/hand, rinse.MixingEfficiency/1.4
	p.DIBand = Band[quantity.Volume]{P10: volume(quick, faces), P50: p.DI.Volume, P90: volume(slow, faces)}
	pause := c.wash.Pause.Or(UsualPause)
	p.Drip = Drip{Pause: pause, Longer: max(2*pause, 2*quantity.Minute)}
	c.wash.Pause = quantity.Some(p.Drip.Longer)
	dripped := measureBody(nil, c, p.Raw.Temperature)
	p.Day.bound(stages, dripped)
	p.Drip.Saves = p.DI.Volume - volume(against, dripped)
}

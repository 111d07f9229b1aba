package planner

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/learning"
)

// asked is what the wash asks of the bed: the flush and the DI stages, and the
// limit they are held to.
type asked struct {
	uses    []diUse
	main    quantity.Flow // of the final rinse
	volume  quantity.Volume
	limit   float64 // ppm on scale
	feed    float64 // ppm on scale
	scale   quantity.Scale
	loadOff float64 // spread of ln(load)
}

// fraction is the limit over the feed, at most one.
func (a asked) fraction() float64 {
	if a.needless() {
		return 1
	}
	return a.limit / a.feed
}

// needless tells that the feed itself keeps the limit.
func (a asked) needless() bool { return a.feed <= a.limit }

// askBed joins the flush and the stages; what runs at one flow is one use.
func askBed(p program, flush quantity.Volume, main quantity.Flow) ([]diUse, quantity.Volume) {
	var uses []diUse
	total := quantity.Volume(0)
	add := func(u diUse) {
		if u.volume <= 0 || u.flow <= 0 {
			return
		}
		total += u.volume
		if n := len(uses); n > 0 && uses[n-1].flow == u.flow {
			uses[n-1].volume += u.volume
			return
		}
		uses = append(uses, u)
	}
	if len(p.di) > 0 {
		add(diUse{main, flush})
	}
	for _, u := range p.di {
		add(u)
	}
	return uses, total
}

func (r *resin) job(a asked) learning.Job {
	j := learning.Job{Main: r.use(quantity.Gallon, a.main), Limit: a.fraction(), LoadSpread: a.loadOff}
	for _, u := range a.uses {
		j.Uses = append(j.Uses, r.use(u.volume, u.flow))
	}
	return j
}

// foresee works out the bed's outlook.
func (r *resin) foresee(s stand, a asked) BedOutlook {
	out, curve := r.outlook(r.job(a), s, a)
	n := s.middle.Efficiency * r.units(a.main)
	if endless := math.Inf(1); a.needless() {
		out.Remaining, out.ChanceLasts = learning.Quantiles{endless, endless, endless}, 1
	}
	after := s.middle.Column
	for _, u := range a.uses {
		use := r.use(u.volume, u.flow)
		after = after.Feed(s.middle.Efficiency*use.Units, use.Capacities/s.middle.Factor)
	}
	return BedOutlook{
		Resin: r.tank.Resin, Capacity: r.stated, Whole: r.whole,
		Used:        r.whole * quantity.Capacity(s.used()),
		ContactTime: quantity.Duration(r.beds()) * r.tank.ContactTime(a.main), Units: n, SoFar: s.soFar,
		Remaining:   Band[quantity.Volume]{gallons(out.Remaining[0]), gallons(out.Remaining[1]), gallons(out.Remaining[2])},
		ChanceLasts: quantity.Fraction(out.ChanceLasts),
		OutletNow:   ppmBand(out.Now, a.feed), OutletAtEnd: ppmBand(out.AtEnd, a.feed),
		Before: layersOf(s.middle.Column), After: layersOf(after),
		Curve: curve, Fill: r.fill(s, a, gallons(out.Remaining[1])), StatedFill: r.statedFill(a),
	}
}

// used is what the fill has taken, in stated capacities: what it was given, as counted, so
// that no reading moves it, and no more than a bed in the middle of what is believed holds.
// Where nobody counted it is what a reading makes likely.
func (s *stand) used() float64 {
	if s.fed <= 0 {
		return s.middle.Factor * s.middle.Column.Used()
	}
	return min(s.fed, s.middle.Factor)
}

// outlook is that of the bed with its curve, or of the two of them, which have
// none.
func (r *resin) outlook(j learning.Job, s stand, a asked) (learning.Outlook, []CurvePoint) {
	if r.behind {
		return j.InSeries(s.states), nil
	}
	return j.Outlook(s.states), r.curve(s, a)
}

func gallons(v float64) quantity.Volume { return quantity.Volume(v) * quantity.Gallon }

func ppmBand(q learning.Quantiles, feed float64) Band[float64] {
	return Band[float64]{q[0] * feed, q[1] * feed, q[2] * feed}
}

// curve is the outlet over the gallons of a whole fill at this flow and water,
// as far as the more lasting half goes.
func (r *resin) curve(s stand, a asked) []CurvePoint {
	const points = 40
	all := r.load.Supply(r.whole)
	end := max(1.35*all, s.soFar+a.volume*1.1)
	fed, curve := make([]float64, points), make([]CurvePoint, points)
	for i := range fed {
		curve[i].Volume = end * quantity.Volume(float64(i)/(points-1))
		fed[i] = r.capacities(curve[i].Volume)
	}
	for i, q := range r.draws(s.belief, r.units(a.main), fed) {
		curve[i].Outlet = ppmBand(q, a.feed)
	}
	return curve
}

// exchangeCap is the flow at which the outlet would pass the limit at the end
// of this job: with the bed as it stands in the middle of what is believed. It
// is zero where no flow keeps the limit, and false where every flow does.
func (r *resin) exchangeCap(s stand, a asked) (quantity.Flow, bool) {
	const lowest, highest = 0.02 * quantity.GPM, 60 * quantity.GPM
	passes := func(f quantity.Flow) bool { return r.outletAfter(s, a.volume, f) > a.fraction() }
	if passes(lowest) {
		return 0, true
	}
	if !passes(highest) {
		return highest, false
	}
	low, high := math.Log(float64(lowest)), math.Log(float64(highest))
	for range 32 {
		if middle := (low + high) / 2; passes(quantity.Flow(math.Exp(middle))) {
			high = middle
		} else {
			low = middle
		}
	}
	return quantity.Flow(math.Exp(low)), true
}

// FaceVelocity is the most flow over the bed's cross section. PUBLISHED:
// AWWA/ASCE, Water Treatment Plant Design, 4th ed., 2005: beads suffer above
// about 20 gpm/ft2, design near 15.
const FaceVelocity = 15 * quantity.GPMPerSquareFoot

// ContactTime is the least empty-bed contact time. PRACTICE.
const ContactTime = 90 * quantity.Second

// caps lists the limits that apply, and finds the one that binds.
func (r *resin) caps(l *ledger, in bedLimits, s stand, a asked, pressure quantity.Flow) FlowCap {
	contact := take(l, "least contact time", in.contact, ContactTime, practice("half a cubic foot at 2.5 gpm"))
	list := []Cap{
		{ByContactTime, quantity.Flow(r.beds() * float64(r.tank.Resin) / float64(contact))},
		{ByFaceVelocity, quantity.Flow(float64(FaceVelocity) * float64(r.tank.Area()))},
	}
	if most, given := in.most.Get(); given {
		list = append([]Cap{{ByRating, most}}, list...)
	}
	if flow, applies := r.exchangeCap(s, a); applies {
		list = append(list, Cap{ByExchange, flow})
	}
	list = append(list, Cap{ByPressure, pressure})
	least := list[0]
	for _, c := range list[1:] {
		if c.Flow < least.Flow {
			least = c
		}
	}
	return FlowCap{Flow: least.Flow, BoundBy: least.Name, Caps: list, JugSeconds: least.Flow.Time(quantity.Gallon)}
}

// bedLimits are the maker's and the user's own limits.
type bedLimits struct {
	most    quantity.Opt[quantity.Flow]
	contact quantity.Opt[quantity.Duration]
}

// lookAtSoftener works out what is left in the softener.
func (m *making) lookAtSoftener(takes quantity.Volume) *SoftenerOutlook {
	l, c, since := &m.ledger, m.chosen, m.sinceFrom
	if c.softener == nil {
		return nil
	}
	s := c.softener
	resin, sized := s.Resin.Get()
	if sized {
		l.assume(Assumption{Name: "softener resin volume", Value: s.Resin.Or(0).AsResin(), Source: yours})
	}
	capacity, stated := s.Capacity.Get()
	salt, dosed := s.Salt.Get()
	if stated {
		take(l, "softener capacity", s.Capacity, 0, yours)
	} else {
		salt, dosed = take(l, "softener salt", s.Salt, bed.UsualSalt, practice("a usual regeneration")), true
		capacity = bed.SoftenerCapacity(salt).Of(resin)
		l.assume(Assumption{Name: "softener capacity", Value: quantity.ValueOf(capacity), Source: practice("20000 gr/ft3 at 6 lb/ft3 of salt, 24000 at 8, 27000 at 10, 30000 at 15")})
	}
	soFar, counted := s.SoFar.Get()
	if !counted {
		since = practice("freshly regenerated")
	}
	l.assume(Assumption{Name: "softener gallons since salt", Value: quantity.ValueOf(soFar), Source: since})
	hardness := quantity.Load(m.raw.Hardness())
	whole := hardness.Supply(capacity)
	left := whole
	if taken := m.since.takenAt(hardness); taken > 0 {
		l.assume(Assumption{Name: "softener has taken", Value: quantity.ValueOf(taken), Source: m.tookFrom})
		left = hardness.Supply(max(capacity-taken, 0))
	}
	out := &SoftenerOutlook{
		Name: s.Name, Capacity: capacity, Whole: whole, Remaining: left, Takes: takes, Lasts: left >= takes,
		Resin: s.Resin, Share: quantity.Fraction(hardness.In(takes) / capacity), Price: s.Price,
	}
	switch {
	case !sized:
		l.assume(Assumption{Name: "salt of a regeneration", Words: NeedsVolume, Source: practice("salt is dosed by the volume of the resin")})
	case dosed:
		out.Salt = quantity.Some(quantity.Mass(float64(salt) * float64(resin)))
	}
	return out
}

// price works the cost out: the price of a fill over the gallons that it gives in all.
func price(given quantity.Opt[quantity.Money], fill, through quantity.Volume) Cost {
	money, known := given.Get()
	if !known || !(fill > 0) {
		return Cost{}
	}
	perGallon := money.Amount() / fill.Gallons()
	return Cost{Known: true, Fill: given, Currency: money.Currency, PerGallon: perGallon, Wash: perGallon * through.Gallons()}
}

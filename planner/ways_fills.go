package planner

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/water"
)

// refreshed is the plan with new resin in the tank: what is believed of it is
// what past fills taught, the one in the tank among them.
func (s *Sharing) refreshed(wash model.Wash) (*making, error) {
	from := s.sources()
	from.setting = Setting{Fresh: true}
	return answered(s.rig, s.places, wash, from)
}

func (w ways) newResin() (WayOut, error) {
	way := WayOut{Code: WayResin, Name: "new resin first"}
	made := w.fresh
	way = w.of(way, made)
	way.Buy = Outlay{Needed: true, Price: w.base.bed.Price}
	way = say(way, "change the resin before the wash; half of such fills give %s", "nothing of the old resin, which is used up", quantity.ValueOf(made.plan.Bed.Remaining.P50))
	if left := w.base.plan.Bed.Remaining.P50; left > worthSaving {
		way.Lost.Format, way.Lost.Values = "the %s that half of such beds still give", []quantity.Value{quantity.ValueOf(left)}
	}
	return way, nil
}

// twoFills uses the resin up to its limit, changes it, and goes on.
func (w ways) twoFills() (WayOut, error) {
	way := WayOut{Code: WayTwoFills, Name: "two fills"}
	if len(w.base.ask.uses) == 0 {
		return w.not(way, "nothing is asked of the bed"), nil
	}
	made := w.fresh
	way = w.of(way, w.base)
	flush, di := w.base.flush, w.base.plan.DI.Volume
	chance := w.base.reserve().OverTwoFills(made.reserve(), di.Gallons(), flush.Gallons())
	if w.base.ask.needless() {
		chance = 1
	}
	way.Chance = quantity.Fraction(chance)
	way.Verdict = verdictOf(way.Chance)
	way.Buy = Outlay{Needed: true, Price: w.base.bed.Price}
	way.Resin = price(w.base.bed.Price, w.base.plan.Bed.Fill, w.base.ask.volume+flush)
	first := min(max(w.base.plan.Bed.Remaining.P50-flush, 0), di)
	if first < worthSaving {
		return w.not(way, "this fill gives hardly more than its flush: that is new resin first"), nil
	}
	if first == di {
		return say(way, "use this fill for all %s; where the pen shows the limit before, change the resin, flush %s and go on", "a change of resin in the middle, with the body kept wet",
			quantity.ValueOf(first), quantity.ValueOf(flush)), nil
	}
	return say(way, "use this fill until the pen shows the limit, about %s on, then change the resin, flush %s and go on", "a change of resin in the middle, with the body kept wet",
		quantity.ValueOf(first), quantity.ValueOf(flush)), nil
}

// buy gives the faces that the bed has no water for bought water.
func (w ways) buy() (WayOut, error) {
	way := WayOut{Code: WayBuy, Name: "buy DI water"}
	a := w.base.ask
	gives := servable{flow: w.base.main.flowOf(model.DI), made: w.base, reserve: w.base.reserve()}.gives(w.share.Confidence)
	lacks := w.base.plan.DI.Volume - gives
	if a.needless() || lacks <= 0 {
		return w.not(way, "the bed has enough"), nil
	}
	way = w.of(way, w.base)
	through := w.base.flush + gives
	way.Chance = quantity.Fraction(w.base.reserve().Chance(through.Gallons()))
	if gives <= 0 {
		through, way.Chance = 0, 1 // nothing is asked of the bed
	}
	way.Verdict = verdictOf(way.Chance)
	way.Buy = Outlay{Needed: true, Price: times(w.base.defaults.DIPrice, lacks)}
	way.Resin = price(w.base.bed.Price, w.base.plan.Bed.Fill, through)
	weight := quantity.Mass(float64(lacks) * float64(water.Density(w.base.raw.Temperature)))
	return say(way, "buy %s, %s to carry; the bed gives %s", "the carrying, and a pump and a sprayer for it", quantity.ValueOf(lacks), quantity.ValueOf(weight), quantity.ValueOf(gives)), nil
}

// times is the price of so many gallons, rounded up to a hundredth. A price that
// is not stated is not known.
func times(perGallon quantity.Opt[quantity.Money], v quantity.Volume) quantity.Opt[quantity.Money] {
	each, known := perGallon.Get()
	if !known {
		return quantity.Opt[quantity.Money]{}
	}
	const rounding = 1e-9
	all := math.Ceil(float64(each.Hundredths)*v.Gallons() - rounding)
	return quantity.Some(quantity.Money{Hundredths: int64(all), Currency: each.Currency})
}

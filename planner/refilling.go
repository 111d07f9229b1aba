package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/learning"
	"washeve/planner/water"
)

// RefillFigures is what a change of resin needs, for the tank as it is.
type RefillFigures struct {
	Resin     quantity.Volume
	Depth     quantity.Length // of the resin
	Freeboard quantity.Length // left free over it, under the neck
	Water     quantity.Mass   // in the full tank: the most that draining saves
	FirstFlow quantity.Flow
	FirstTime quantity.Duration // until the air is out
	Fresh     float64           // most ppm of the first reading in nine of ten, at the job's flow
	FreshFast float64           // and at the faster flow
	AfterJob  float64           // of the second, at the end of the first wash
	PenOff    float64           // ppm that a pen may be off
}

// finest is the least ppm that a pen tells from nothing. PRACTICE.
const finest = 1

func refillFigures(r *resin, a asked, b model.Bed) RefillFigures {
	free := b.FreeSpace.Or(quantity.Volume(bed.FreeShare) * r.tank.Resin)
	f := RefillFigures{
		Resin: r.tank.Resin, Depth: r.tank.Depth(), Freeboard: r.tank.Freeboard(free),
		Water: r.tank.WaterWeight(free, water.Density(r.feed.Temperature)), FirstFlow: r.tank.FirstFlow(),
	}
	f.FirstTime = f.FirstFlow.Time(r.tank.Standing(free, 0))
	quick := quantity.Flow(float64(quickService) * float64(r.tank.Resin))
	job := learning.Curve(learning.Prior(), r.units(a.main), []float64{0, r.capacities(a.volume)})
	most := func(q learning.Quantiles) float64 { return max(ppmBand(q, a.feed).P90, finest) }
	f.Fresh, f.AfterJob, f.PenOff = most(job[0]), most(job[1]), learning.PenError
	f.FreshFast = most(learning.Curve(learning.Prior(), r.units(quick), []float64{0})[0])
	return f
}

// Refilling is [Ahead.Refill] for another amount of resin in the same tank.
func Refilling(rig model.Rig, places model.Places, wash model.Wash, resin quantity.Volume) (RefillFigures, error) {
	m, err := begin(rig, places, wash, direct(nil))
	if err != nil {
		return RefillFigures{}, err
	}
	m.bed.Resin = quantity.Some(resin)
	r := decideResin(nil, m.bed, m.sized, m.feed, penScale(m.pen))
	return refillFigures(&r, m.ask, m.bed), nil
}

// Bags is the resin to buy for a fill.
type Bags = bed.Bags

// UsualBag is the bag where nobody says.
const UsualBag = bed.UsualBag

// BagsFor is how many bags of a size a fill takes.
func BagsFor(resin, bag quantity.Volume) Bags { return bed.BagsFor(resin, bag) }

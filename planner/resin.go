package planner

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/learning"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// resin is the bed of the rig with everything about it decided.
type resin struct {
	tank   bed.Tank
	share  quantity.Fraction // cation resin
	rated  bed.Rated
	stated quantity.Capacity // operating
	source tag.Source        // of the stated one
	whole  quantity.Capacity // stoichiometric
	claim  *Claim
	feed   water.Analysis
	load   quantity.Load        // of the feed
	ions   quantity.Diffusivity // of the slowest ion in it
	behind bool                 // a second tank like it stands behind, freshly filled
	draws  curver
}

// curver draws what is believed of a fill as a curve; see [learning.Curve].
type curver func(b learning.Belief, units float64, capacities []float64) []learning.Quantiles

// decideResin turns the ways of stating a bed into one. A tank whose width nobody states is
// as wide as is usual for so much resin as it is sized for: what the rig states of it, which
// stays whatever is filled in.
func decideResin(l *ledger, b model.Bed, sized quantity.Volume, feed water.Analysis, pen quantity.Scale) resin {
	volume, source, proportions := b.Resin.Or(0), yours, "the proportions of half a cubic foot in 8 in"
	if differ(volume, sized) {
		source, proportions = fromLog, proportions+", for the rig's resin volume"
	}
	l.assume(Assumption{Name: "bed resin volume", Value: volume.AsResin(), Source: source})
	r := resin{draws: learning.Curve}.on(feed)
	r.tank = bed.Tank{
		Resin:    volume,
		Diameter: take(l, "bed tank diameter", b.Diameter, bed.UsualDiameter(sized), practice(proportions)),
	}
	r.share = take(l, "bed cation share", b.CationShare, bed.CationShare, tag.Source{Tag: tag.Published, Text: "DOE-HDBK-1015/2-93, Chemistry, module 4: about 2 parts cation to 3 parts anion resin"})
	r.rated = bed.Rated{
		Flow:     take(l, "bed rated flow", b.RatedFlow, quantity.Flow(float64(bed.RatedService)*float64(volume)), practice("3 gpm/ft3")),
		EndPoint: take(l, "bed end point", b.EndPoint, bed.EndPoint, practice("outlet at 5 % of the feed")),
	}
	r.rated.Units = learning.UsualContact * r.tank.Units(r.rated.Flow, water.Diffusivity(water.Sodium, quantity.Celsius(25)), r.share)
	r.stateCapacity(l, b, pen)
	return r
}

// stateCapacity takes the way in which the user states the capacity, or the
// usual capacity of such resin.
func (r *resin) stateCapacity(l *ledger, b model.Bed, pen quantity.Scale) {
	volume := r.tank.Resin
	state := model.ResinState(takeWords(l, "bed resin", string(b.State), string(model.NewResin), practice("what most people fill in")))
	usual := bed.PerVolume(state)
	goodFor, claimed := b.GoodFor.Get()
	claimedOn, onKnownWater := b.GoodForTDS.Get()
	rating, rated := b.Rating.Get()
	switch {
	case rated:
		r.stated = rating.Total
		if rating.PerVolume > 0 {
			r.stated = rating.PerVolume.Of(volume)
		}
		r.source = yours
	case b.CationCapacity.Given() && b.AnionCapacity.Given():
		r.fromData(l, b)
	case claimed && onKnownWater:
		on := water.Analyse(water.Facts{TDS: claimedOn, Pen: pen})
		r.stated = on.Load.In(goodFor)
		r.source = tag.Source{Tag: tag.Yours, Text: "your gallons times the load of the water they are for"}
	default:
		r.stated = usual.Of(volume)
		r.source = practice("10000 gr/ft3 for new resin, 9000 regenerated")
	}
	l.assume(Assumption{Name: "bed capacity", Value: quantity.ValueOf(r.stated), Source: r.source})
	if r.whole == 0 {
		r.whole = r.rated.Stoichiometric(r.stated)
	}
	if claimed && r.load > 0 {
		r.claim = &Claim{Stated: goodFor, Implied: bed.ImpliedFeed(r.stated, goodFor), Here: r.load.Supply(r.stated)}
	}
}

func (r *resin) fromData(l *ledger, b model.Bed) {
	sheet := practice("resin in good order")
	data := bed.ResinData{
		Cation: take(l, "cation resin capacity", b.CationCapacity, 0, yours), Anion: take(l, "anion resin capacity", b.AnionCapacity, 0, yours),
		CationRegenerated: take(l, "cation regenerated", b.CationRegenerated, 0.99, sheet),
		AnionRegenerated:  take(l, "anion regenerated", b.AnionRegenerated, 0.90, sheet),
		CationShare:       r.share,
	}
	r.whole, _ = data.Whole(r.tank.Resin)
	r.stated = r.rated.Operating(r.whole)
	r.source = tag.Source{Tag: tag.Yours, Text: "the scarcer of the two resins, less what has not been used when the end point comes"}
}

// rounding is how far two amounts of resin may differ that are one, written otherwise: half
// a cubic foot is sold as 14 L. PRACTICE.
const rounding = 0.02

// differ tells that two amounts of resin differ by more than rounding.
func differ(a, b quantity.Volume) bool {
	return math.Abs(float64(a-b)) > rounding*float64(b)
}

// on is the resin on a feed.
func (r resin) on(feed water.Analysis) resin {
	r.feed, r.load, r.ions = feed, feed.Effective(), feed.Diffusivity()
	return r
}

// units at a flow, of a perfect bed on this feed.
func (r *resin) units(f quantity.Flow) float64 { return r.tank.Units(f, r.ions, r.share) }

// capacities is what v of this feed takes, over the whole capacity.
func (r *resin) capacities(v quantity.Volume) float64 {
	return float64(r.load.In(v)) / float64(r.whole)
}

// use is v of this feed at a flow.
func (r *resin) use(v quantity.Volume, f quantity.Flow) learning.Use {
	return learning.Use{Capacities: r.capacities(v), Units: r.units(f)}
}

// ppmOn is a reading on another scale.
func ppmOn(scale quantity.Scale, r quantity.Reading) float64 {
	if r.Scale == scale {
		return r.Number
	}
	return water.PPM(water.Conductivity(r, scale), scale).Number
}

// layersOf gives the layers of a column: the working layer reaches to where the
// resin is loaded to 5 %.
func layersOf(c bed.Column) Layers {
	const working = 0.05
	spent := c.Spent()
	if c.Loading(spent) <= working {
		return Layers{Spent: quantity.Fraction(spent), Fresh: quantity.Fraction(1 - spent)}
	}
	low, high := spent, 1.0
	if c.Loading(1) > working {
		low = 1
	}
	for range 40 {
		middle := (low + high) / 2
		if c.Loading(middle) > working {
			low = middle
		} else {
			high = middle
		}
	}
	end := math.Min(low, 1)
	return Layers{Spent: quantity.Fraction(spent), Working: quantity.Fraction(end - spent), Fresh: quantity.Fraction(1 - end)}
}

package planner

import (
	"math"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/drying"
	"washeve/planner/learning"
	"washeve/planner/water"
)

// Season is the bed before many washes: what a trip is planned from. It is worked
// out when the rig or the log changes, not at every key.
type Season struct {
	Bed     model.Bed                    // as it is filled now
	States  []learning.State             // how it may stand, all of one weight
	Refills learning.Refills             // the fills that may follow
	Price   quantity.Opt[quantity.Money] // of the fill in the tank
	Resin   quantity.Volume
	Units   float64        // of a perfect bed at the usual flow and water
	Scale   quantity.Scale // of the limit

	stands  stand
	next    stand // of the fill that follows the one in the tank
	past    *Past
	setting Setting
	pen     quantity.Scale
	home    home
}

// Seasoned works out how the bed of a wash stands, in [learning.EvenStates] states.
// Errors are those of [Make].
func Seasoned(rig model.Rig, places model.Places, wash model.Wash, past *Past) (Season, error) {
	return SeasonedIn(Setting{}, nil, rig, places, wash, past)
}

// SeasonedIn is [Seasoned] in a setting, which says what stands around the bed and
// whether the softener is salted; new resin is a change in the season, and
// [Setting.As] is of one wash. In its place as is a season before which the bed
// stood as it does before this one; of another bed, or nil, it says nothing.
func SeasonedIn(set Setting, as *Season, rig model.Rig, places model.Places, wash model.Wash, past *Past) (Season, error) {
	c, err := choose(rig, places, wash)
	if err != nil {
		return Season{}, err
	}
	set.As, set.Fresh = nil, false
	if as != nil && strings.EqualFold(as.Bed.Name, c.bed.Name) {
		s := *as
		s.setting, s.pen, s.Scale = set, penScale(c.pen), decideAims(new(ledger), c).scale
		return s, nil
	}
	c.past = past
	m := &making{chosen: c, foretells: noDay, ages: standAt}
	m.remember()
	m.decide()
	flow := m.main.flowOf(model.DI)
	s := Season{
		Bed: m.bed, Price: m.bed.Price, Resin: m.resin.tank.Resin,
		Units: m.resin.units(flow), Scale: m.aim.scale, pen: penScale(c.pen), stands: m.stands(m.main.drawn), past: past, setting: set, home: c.home,
	}
	if history := past.Bed(m.bed.Name); history != nil {
		fill := history.Present()
		s.Price, s.next = fill.Price, history.next().stand
		s.States, s.Refills = fill.posterior.Many(), fill.posterior.Outset().Refills()
	} else if k := m.kin(); k != nil {
		fill := k.next()
		s.next = fill.stand
		s.States, s.Refills = fill.posterior.Many(), fill.posterior.Outset().Refills()
	} else {
		s.next = standAt(learning.Age{})
		s.States, s.Refills = m.fresh(m.main.drawn), learning.Start().Refills()
	}
	return s, nil
}

// fresh gives the states of a bed that the log knows nothing of.
func (m *making) fresh(flow quantity.Flow) []learning.State {
	told := m.resin.statedAge(&ledger{}, m.bed, penScale(m.pen), flow)
	var fill learning.Fill
	gallons, counted := told.gallons.Get()
	if gallons > 0 {
		fill.Uses = []learning.Use{m.resin.use(gallons, flow)}
	}
	if reading, read := told.reading.Get(); read {
		e := learning.Evidence{Read: ppmOn(m.aim.scale, reading), Feed: m.feed.PPM(m.aim.scale).Number, Units: m.resin.units(told.at)}
		if !counted {
			return learning.Start().AtAnyAge(e)
		}
		fill.Readings = []learning.Reading{{Evidence: e, After: len(fill.Uses)}}
	}
	return learning.Start().Learn(fill).Many()
}

// noDay is the forecaster of a day that is too far off to tell.
func noDay(drying.Input) (drying.Forecast, error) { return drying.Forecast{}, nil }

// Raw is what the pen shows of a place's water, in ppm on the scale of the limit; false
// where the place does not say.
func (s *Season) Raw(p model.Place) (ppm float64, known bool) {
	if !p.TDS.Given() {
		return 0, false
	}
	return water.Analyse(water.FactsOf(&p, s.pen)).PPM(s.Scale).Number, true
}

// Demand is what one wash asks of the rig, however the bed stands by then.
type Demand struct {
	DI, Soft, Untreated, Flush Use

	Uses       []learning.Use  // of the bed: the flush and the DI stages
	Main       learning.Use    // one gallon at the flow of the final rinse
	Through    quantity.Volume // the bed
	Feed       float64         // ppm on the limit's scale
	Raw        float64         // ppm of the water before the softener
	Limit      float64         // ppm
	Scale      quantity.Scale
	LoadSpread float64 // of ln(load)
	Ample      bool    // covering the faces takes more DI water than the target asks for, on all that get a final rinse of it
	Part       float64 // of the fill in the tank that the wash uses up, over all that it gives, in the middle of what is believed; +Inf where none keeps the limit
	NextPart   float64 // likewise of a fill that follows it

	Softener *SoftenerDemand // nil where there is none
	Flow     quantity.Flow   // of the final rinse
}

// SoftenerDemand is what a wash takes from the softener.
type SoftenerDemand struct {
	Name     string
	Capacity quantity.Capacity // between regenerations
	Before   quantity.Capacity // taken since the last regeneration, by the rig or the log
	Takes    quantity.Capacity
	Salt     quantity.Mass // of one regeneration; NaN where the volume of its resin is not stated
	Price    quantity.Opt[quantity.Money]
}

// Demand works it out. The bed is taken as it stands now for the water of the
// final rinse, which is the same over its life but for the last of it.
func (s *Season) Demand(rig model.Rig, places model.Places, wash model.Wash) (Demand, error) {
	m, err := s.making(rig, places, wash)
	if err != nil {
		return Demand{}, err
	}
	d := s.demand(m)
	d.DI, d.Soft, d.Untreated = m.done.totals()
	d.Ample = m.done.ample()
	if len(m.done.di) > 0 {
		d.Flush = Use{Volume: m.flush, Duration: m.ask.main.Time(m.flush)}
	}
	d.Softener = m.softenerDemand(d.Soft.Volume)
	return d, nil
}

// Draw is the demand of another user of the bed, who takes a volume of DI water
// at a flow and reads no pen, so nothing is flushed.
func (s *Season) Draw(rig model.Rig, places model.Places, wash model.Wash, volume quantity.Volume, flow quantity.Opt[quantity.Flow]) (Demand, error) {
	wash.Stages = nil
	m, err := s.making(rig, places, wash)
	if err != nil {
		return Demand{}, err
	}
	at := flow.Or(m.ask.main)
	m.ask.uses, m.ask.volume, m.ask.main = []diUse{{at, volume}}, volume, at
	d := s.demand(m)
	d.DI = Use{Volume: volume, Duration: at.Time(volume)}
	d.Softener = m.softenerDemand(0)
	return d, nil
}

// making is a wash of no day on the bed as it stands now; see [undated].
func (s *Season) making(rig model.Rig, places model.Places, wash model.Wash) (*making, error) {
	c, err := choose(rig, places, wash)
	if err != nil {
		return nil, err
	}
	c.past, c.setting, c.home = s.past, s.setting, s.home
	m := undated(c)
	m.rinseFrom(s.stands)
	return m, nil
}

// undated is a wash of no day, decided up to its final rinse, which goes by how its bed
// stands.
func undated(c chosen) *making {
	c.wash.Date = quantity.Opt[model.Date]{}
	m := &making{chosen: c, foretells: noDay, ages: standAt}
	m.remember()
	m.decide()
	return m
}

func (s *Season) demand(m *making) Demand {
	job := m.resin.job(m.ask)
	return Demand{
		Uses: job.Uses, Main: job.Main, Through: m.ask.volume, Feed: m.ask.feed, Raw: m.raw.PPM(m.ask.scale).Number, Limit: m.ask.limit, Scale: m.ask.scale,
		LoadSpread: m.ask.loadOff, Part: float64(m.ask.volume / m.resin.fillOf(s.stands, m.ask)), NextPart: float64(m.ask.volume / m.resin.fillOf(s.next, m.ask)), Flow: m.ask.main,
	}
}

// softenerDemand is what the softened stages take, and the bed's feed where it
// goes through the softener.
func (m *making) softenerDemand(soft quantity.Volume) *SoftenerDemand {
	if m.softener == nil {
		return nil
	}
	if m.chain.feedsBed {
		soft += m.ask.volume
	}
	hardness := quantity.Load(m.raw.Hardness())
	resin, dose := m.softener.Resin.Or(quantity.Volume(math.NaN())), m.softener.Salt.Or(bed.UsualSalt)
	return &SoftenerDemand{
		Name: m.softener.Name, Capacity: m.softener.Capacity.Or(bed.SoftenerCapacity(dose).Of(resin)),
		Before: m.since.takenAt(hardness), Takes: hardness.In(soft), Salt: quantity.Mass(float64(dose) * float64(resin)),
		Price: m.softener.Price,
	}
}

// VerdictOf says whether a bed lasts, by its chance; see [Verdict].
func VerdictOf(chance quantity.Fraction) Verdict { return verdictOf(chance) }

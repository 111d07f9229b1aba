package compare

import (
	"math"
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
	"washeve/planner/trip"
)

// Figures are what a way comes to. What is not known is not given.
type Figures struct {
	Plan planner.Plan // behind the figures; of a trip, that of its first wash
	Trip *trip.Plan   // nil of a wash; the figures of a trip that are not here are in it

	DI       quantity.Volume // on the vehicle
	Through  quantity.Volume // the bed, the flush included
	Softened quantity.Volume
	Raw      quantity.Volume
	Water    quantity.Volume // in all, the flush included
	Time     quantity.Duration
	Chance   quantity.Fraction
	AtEnd    float64 // ppm at the outlet, in the middle of what is believed
	Film     float64 // ppm in the film of the worst face that is finally rinsed
	Spots    planner.Spots
	Resin    quantity.Bill // the wash's share of a fill
	Salt     quantity.Bill // and of a regeneration
	Fill     quantity.Volume
	Year     quantity.Opt[float64] // fills a year
	Weight   quantity.Opt[quantity.Mass]
	SoftLeft quantity.Opt[quantity.Volume]
}

// Together is resin and salt.
func (f Figures) Together() quantity.Bill { return f.Resin.Plus(f.Salt) }

// Answerer works the figures of a case out. [OneWash] does for a wash, [OneTrip] for
// all washes of a trip together.
type Answerer interface {
	Answer(Case) (Figures, error)
}

// OneWash answers for one wash, with what the log teaches. It is not for two
// goroutines at once.
type OneWash struct {
	memory planner.Memory
	washes Yearly
}

// NewOneWash makes it; past is nil where there is no log.
func NewOneWash(past *planner.Past, washes Yearly) *OneWash {
	return &OneWash{memory: planner.Memory{Past: past}, washes: washes}
}

// SofteningWeight is the weight of moist softening resin by volume, as it
// comes. PRACTICE: about 50 lb/ft3.
const SofteningWeight = 50 * quantity.Density(quantity.PoundPerCubicFoot)

// Answer plans the wash and takes the figures from its plan.
func (w *OneWash) Answer(c Case) (Figures, error) {
	p, err := w.memory.MakeIn(c.Setting, c.Rig, c.Places, c.Wash)
	if err != nil {
		return Figures{}, err
	}
	f := Figures{
		Plan: p, DI: p.DI.Volume, Through: p.DI.Volume, Chance: p.Bed.ChanceLasts, AtEnd: p.Bed.OutletAtEnd.P50, Fill: p.Bed.Fill,
		Softened: p.Soft.Volume, Raw: p.Untreated.Volume,
		Water: p.DI.Volume + p.Soft.Volume + p.Untreated.Volume,
		Time:  p.DI.Duration + p.Soft.Duration + p.Untreated.Duration,
	}
	if p.DI.Volume > 0 {
		f.Through, f.Water, f.Time = f.Through+p.Flush.Volume, f.Water+p.Flush.Volume, f.Time+p.Flush.Duration
	}
	f.rinsed()
	f.cost(c)
	f.carry(c)
	if n, known := w.washes.Number.Get(); known && f.Fill > 0 {
		f.Year = quantity.Some(n * float64(f.Through/f.Fill))
	}
	return f, nil
}

// rinsed takes the worst of the faces that get the final rinse.
func (f *Figures) rinsed() {
	var last []model.Side
	for i, s := range f.Plan.Stages {
		if s.Final || i == len(f.Plan.Stages)-1 && len(last) == 0 {
			last = append(last, s.Faces...)
		}
	}
	f.Spots = planner.NoSpots
	for _, face := range f.Plan.Faces {
		if !slices.Contains(last, face.Name) {
			continue
		}
		f.Film = max(f.Film, face.PPMLeft)
		if spotRank(face.Spots) > spotRank(f.Spots) {
			f.Spots = face.Spots
		}
	}
}

func spotRank(s planner.Spots) int {
	return slices.Index([]planner.Spots{planner.NoSpots, planner.Faint, planner.Seen, planner.Towel}, s)
}

// cost is the wash's share of a fill of resin and of a regeneration.
func (f *Figures) cost(c Case) {
	price := f.Plan.Cost.Fill
	if !price.Given() {
		price = bedPrice(c, f.Plan.BedName)
	}
	f.Resin = f.Resin.Add("a fill of resin", price, part(f.Through, f.Fill))
	if s := f.Plan.Softener; s != nil {
		f.Salt = f.Salt.Add("a regeneration's salt", s.Price, float64(s.Share))
		if left := s.Remaining - s.Takes; !math.IsInf(float64(left), 0) {
			f.SoftLeft = quantity.Some(max(left, 0))
		}
	}
}

// part is v over a whole that may be nothing.
func part(v, whole quantity.Volume) float64 {
	if v == 0 {
		return 0
	}
	return float64(v / whole)
}

func bedPrice(c Case, name string) quantity.Opt[quantity.Money] {
	if at := model.Find(c.Rig.Names("bed"), name); at >= 0 {
		return c.Rig.Beds[at].Price
	}
	return quantity.Opt[quantity.Money]{}
}

// carry adds up what is carried: resin as shipped, softening resin, and the salt
// of one regeneration. Tanks and the water in them are not counted.
func (f *Figures) carry(c Case) {
	if c.Setting.Rejected > 0 {
		return // a membrane has a weight that nobody stated
	}
	resin := f.Plan.Bed.Resin
	if c.Setting.Behind {
		resin *= 2
	}
	weight := (bed.ShippedLow + bed.ShippedHigh) / 2 * quantity.Density(resin)
	if s := f.Plan.Softener; s != nil {
		salt, known := s.Salt.Get()
		if !known {
			return
		}
		weight += SofteningWeight*quantity.Density(s.Resin.Or(0)) + quantity.Density(salt)
	}
	f.Weight = quantity.Some(quantity.Mass(weight))
}

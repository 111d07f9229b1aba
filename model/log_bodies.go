package model

import (
	"fmt"

	"washeve/model/quantity"
)

// WashDone is a wash as it was done, with what was planned for it. Its gallons
// are those of the whole wash: the gallons of a [StageDone] are part of them.
type WashDone struct {
	Plan     string // name of the planned wash
	Place    string
	Vehicle  string
	Bed      string
	Softener string
	Feed     Answer // was the bed fed through the softener
	Sprayer  string

	DI, Softened, Raw quantity.Opt[quantity.Volume]
	Flow              quantity.Opt[quantity.Flow] // through the bed
	Duration          quantity.Opt[quantity.Duration]
	Area              quantity.Opt[quantity.Area]
	Temperature       quantity.Opt[quantity.Temperature] // of the water

	PlannedDI, PlannedSoftened, PlannedRaw quantity.Opt[quantity.Volume]
	PlannedFlow                            quantity.Opt[quantity.Flow]
	PlannedDuration                        quantity.Opt[quantity.Duration]
}

// Kind is [WashKind].
func (*WashDone) Kind() Kind { return WashKind }

// Fields lists what can be stated of a wash that was done.
func (w *WashDone) Fields() []Field {
	return []Field{
		name("plan", "planned wash", "name of the wash as planned", "Friday wash", &w.Plan),
		name("place", "place", "where the water came from", "home", &w.Place).refersTo("place"),
		name("vehicle", "vehicle", "what was washed", "our coach", &w.Vehicle).refersTo("vehicle"),
		name("bed", "bed", "DI bed that gave the water", "half-foot tank", &w.Bed).refersTo("bed"),
		name("softener", "softener", "softener that was used; none where there was none", "bay softener", &w.Softener).refersTo("softener"),
		choice("di_through_softener", "bed fed through softener", "was the softener in the line ahead of the DI bed", []Answer{Yes, No}, &w.Feed),
		name("sprayer", "sprayer", "sprayer of the final rinse", "small pressure washer", &w.Sprayer).refersTo("sprayer"),
		gallons("di", "DI water", "DI water used in all, the flush too", &w.DI),
		gallons("softened", "softened water", "softened water used, the bed's feed apart", &w.Softened),
		gallons("raw", "raw water", "raw water used, the bed's feed apart", &w.Raw),
		flow("flow", "flow", "flow through the bed", &w.Flow),
		minutes("duration", "time", "how long the wash took", &w.Duration),
		measure("area", "area", "area that was washed", "1100 ft2", "1 ft2", "20000 ft2", &w.Area),
		waterTemperature(&w.Temperature),
		gallons("planned_di", "planned DI water", "DI water that was planned, the flush too", &w.PlannedDI),
		gallons("planned_softened", "planned softened water", "softened water that was planned", &w.PlannedSoftened),
		gallons("planned_raw", "planned raw water", "raw water that was planned", &w.PlannedRaw),
		flow("planned_flow", "planned flow", "flow through the bed that was planned", &w.PlannedFlow),
		minutes("planned_duration", "planned time", "how long it was planned to take", &w.PlannedDuration),
	}
}

// StageDone is one stage of a wash as it was done, written when it ends.
type StageDone struct {
	Wash    string // identifier of the [WashDone], which may be written later
	Stage   string
	Place   string
	Vehicle string
	Bed     string
	Sprayer string
	Water   Water

	Used     quantity.Opt[quantity.Volume]
	Flow     quantity.Opt[quantity.Flow]
	Duration quantity.Opt[quantity.Duration]
	Area     quantity.Opt[quantity.Area] // gone over, times the passes

	PlannedUsed     quantity.Opt[quantity.Volume]
	PlannedDuration quantity.Opt[quantity.Duration]
}

// Kind is [StageKind].
func (*StageDone) Kind() Kind { return StageKind }

// Fields lists what can be stated of a stage that was done.
func (s *StageDone) Fields() []Field {
	return []Field{
		partField(&s.Wash),
		name("stage", "stage", "what was done", "final rinse", &s.Stage).required(),
		name("place", "place", "where the water came from", "home", &s.Place).refersTo("place"),
		name("vehicle", "vehicle", "what was washed", "our coach", &s.Vehicle).refersTo("vehicle"),
		name("bed", "bed", "DI bed that gave the water, where it was DI", "half-foot tank", &s.Bed).refersTo("bed"),
		name("sprayer", "sprayer", "sprayer of this stage", "small pressure washer", &s.Sprayer).refersTo("sprayer"),
		choice("water", "water", "raw, softened or di", []Water{Raw, Softened, DI}, &s.Water),
		gallons("used", "water used", "water used in this stage", &s.Used),
		flow("flow", "flow", "flow of this stage", &s.Flow),
		minutes("duration", "time", "how long the stage took", &s.Duration),
		measure("area", "area", "area gone over, times the passes", "1100 ft2", "1 ft2", "20000 ft2", &s.Area),
		gallons("planned_used", "planned water", "water that was planned", &s.PlannedUsed),
		minutes("planned_duration", "planned time", "how long it was planned to take", &s.PlannedDuration),
	}
}

// Point is where in the chain a reading is taken.
type Point string

// The points, from the tap on.
const (
	AtTap         Point = "tap"
	AfterSoftener Point = "after softener"
	AfterBed      Point = "after bed"
)

// Sample is a reading: what a pen showed, and how it was taken.
type Sample struct {
	Point       Point
	Reading     quantity.Opt[quantity.Reading]
	Place       string
	Bed         string
	Pen         string
	Temperature quantity.Opt[quantity.Temperature]
	Flow        quantity.Opt[quantity.Flow]
	Flushed     Answer                        // No is the first cup after standing
	FlushWater  quantity.Opt[quantity.Volume] // run through the bed for this reading alone
	SoFar       quantity.Opt[quantity.Volume]
	Anyway      Answer // use it although it was not flushed
	Feed        Answer // was the bed fed through the softener
	Wash        string // identifier of the [WashDone] in which it was taken; "" where in none
}

// Kind is [ReadingKind].
func (*Sample) Kind() Kind { return ReadingKind }

// Counts tells whether the reading says what the water really is: standing
// water in a bed goes on being cleaned, so a first cup lies.
func (s *Sample) Counts() bool {
	return s.Point != AfterBed || s.Flushed == Yes || s.Anyway == Yes
}

// Contradictions finds statements that cannot be true together.
func (s *Sample) Contradictions() []Fault {
	if !s.FlushWater.Given() || s.Point == AfterBed || s.Point == "" {
		return nil
	}
	return []Fault{{Key: "flush_water", Unused: true, Problem: fmt.Sprintf("is DI water that a bed gave, which a reading with the point %q takes none of; leave it out, or write the point %q", s.Point, AfterBed)}}
}

// Fields lists what can be stated of a reading.
func (s *Sample) Fields() []Field {
	return []Field{
		choice("point", "point", "where in the chain: tap, after softener or after bed", []Point{AtTap, AfterSoftener, AfterBed}, &s.Point).required(),
		reading("reading", "reading", "what the pen shows, with its scale, or the conductivity", 5000, &s.Reading).required(),
		name("place", "place", "where the water comes from", "home", &s.Place).refersTo("place"),
		name("bed", "bed", "DI bed that was read", "half-foot tank", &s.Bed).refersTo("bed"),
		name("pen", "pen", "pen that was used", "yellow pen", &s.Pen).refersTo("pen"),
		waterTemperature(&s.Temperature),
		flow("flow", "flow", "flow while it was read", &s.Flow),
		choice("flushed", "flushed", "yes where the standing water was out; no for a first cup", []Answer{Yes, No}, &s.Flushed),
		measure("flush_water", "flush water", "DI water run out for this reading alone, counted by no wash; the bed has given it too", "4 gal", "0 gal", "1000 gal", &s.FlushWater),
		measure("gallons_so_far", "gallons so far", "DI water that this fill had given by then, the flush too, by a meter or as known", "300 gal", "0 gal", "1000000 gal", &s.SoFar),
		choice("use_anyway", "use anyway", "yes to learn from it although it was not flushed", []Answer{Yes, No}, &s.Anyway),
		choice("di_through_softener", "bed fed through softener", "was the softener in the line ahead of the DI bed", []Answer{Yes, No}, &s.Feed),
		partField(&s.Wash),
	}
}

// Refill is a change of resin: the fill before it ends here.
type Refill struct {
	Bed    string
	Resin  quantity.Opt[quantity.Volume]
	State  ResinState
	Lot    string
	Rating quantity.Opt[Rating]
	Price  quantity.Opt[quantity.Money]
}

// Kind is [ResinKind].
func (*Refill) Kind() Kind { return ResinKind }

// Fields lists what can be stated of a change of resin.
func (r *Refill) Fields() []Field {
	return []Field{
		name("bed", "bed", "DI bed that was filled", "half-foot tank", &r.Bed).required().refersTo("bed"),
		measure("resin", "resin volume", "mixed-bed resin put in", "0.5 ft3", "0.02 ft3", "10 ft3", &r.Resin),
		choice("resin_state", "resin", "new resin, or resin that a plant has regenerated", []ResinState{NewResin, RegeneratedResin}, &r.State),
		name("lot", "lot", "lot number on the bag", "24-0718", &r.Lot),
		rating(&r.Rating),
		field("price", "price", "what this fill cost", "$185", &r.Price, quantity.ParseMoney, quantity.Money.String),
	}
}

// Regeneration is a softener regenerated with salt.
type Regeneration struct {
	Softener string
	Salt     quantity.Opt[quantity.Mass]
}

// Kind is [SaltKind].
func (*Regeneration) Kind() Kind { return SaltKind }

// Fields lists what can be stated of a regeneration.
func (r *Regeneration) Fields() []Field {
	return []Field{
		name("softener", "softener", "softener that was regenerated", "bay softener", &r.Softener).required().refersTo("softener"),
		measure("salt", "salt", "salt that was used", "4 lb", "0.1 lb", "400 lb", &r.Salt),
	}
}

// partField is the wash that an entry is a part of.
func partField(at *string) Field {
	return idField("wash", "wash", "the wash that this was a part of, by its id in the log", at)
}

func gallons(key, label, help string, at *quantity.Opt[quantity.Volume]) Field {
	return measure(key, label, help, "30 gal", "0 gal", "100000 gal", at)
}

func flow(key, label, help string, at *quantity.Opt[quantity.Flow]) Field {
	return measure(key, label, help, "1.3 gpm", "0.05 gpm", "100 gpm", at)
}

func minutes(key, label, help string, at *quantity.Opt[quantity.Duration]) Field {
	return measure(key, label, help, "25 min", "0 s", "3 d", at)
}

func waterTemperature(at *quantity.Opt[quantity.Temperature]) Field {
	return measure("temperature", "water temperature", "what a thermometer shows in the stream", "68 F", "33 F", "140 F", at)
}

func (w *WashDone) copied() Body     { c := *w; return &c }
func (s *StageDone) copied() Body    { c := *s; return &c }
func (s *Sample) copied() Body       { c := *s; return &c }
func (r *Refill) copied() Body       { c := *r; return &c }
func (r *Regeneration) copied() Body { c := *r; return &c }

func (w *WashDone) reset()     { *w = WashDone{} }
func (s *StageDone) reset()    { *s = StageDone{} }
func (s *Sample) reset()       { *s = Sample{} }
func (r *Refill) reset()       { *r = Refill{} }
func (r *Regeneration) reset() { *r = Regeneration{} }

package model

import (
	"cmp"
	"fmt"

	"washeve/model/quantity"
)

// Stop is where the vehicle stands from a day on, until the next stop. Its water
// is that of a place or, where that is not known, anything in a band.
type Stop struct {
	Date         quantity.Opt[Date]
	Name         string
	Place        string
	LowTDS       quantity.Opt[quantity.Reading]
	HighTDS      quantity.Opt[quantity.Reading]
	LowHardness  quantity.Opt[quantity.Hardness]
	HighHardness quantity.Opt[quantity.Hardness]
	Hookup       Hookup
	OnHand       quantity.Opt[quantity.Volume]
	Limits       Limits
}

// Fields lists what can be stated of a stop.
func (s *Stop) Fields() []Field {
	const tank = "water in the vehicle's tank when you get there"
	return []Field{
		dayField("from", "day on which you get there", "2026-06-12", &s.Date).required(),
		name("name", "name", "what you call this stop, where its water is no place of yours", "the lake", &s.Name),
		name("place", "place", "place whose water it has; left out, the water is unknown", "home", &s.Place).refersTo("place"),
		reading("tds_low", "TDS, at least", "of an unknown water: what a pen might show, at the least", 3000, &s.LowTDS),
		reading("tds_high", "TDS, at most", "of an unknown water: what a pen might show, at the most", 3000, &s.HighTDS),
		measure("hardness_low", "hardness, at least", "of an unknown water", "4 gr/gal", "0 gr/gal", "120 gr/gal", &s.LowHardness),
		measure("hardness_high", "hardness, at most", "of an unknown water", "25 gr/gal", "0 gr/gal", "120 gr/gal", &s.HighHardness),
		choice("water_from", "water from", "a hose to a tap, or only the vehicle's tank", []Hookup{FullHookup, TankOnly}, &s.Hookup),
		measure("on_hand", "water on hand", tank, "100 gal", "1 gal", "2000 gal", &s.OnHand),
		choice("washing", "limits on washing", "none; rinse only: no soap and no brush; not allowed", []Limits{NoLimits, RinseOnly, NotAllowed}, &s.Limits),
	}
}

// Unknown tells that the stop's water is a band and not a place's.
func (s *Stop) Unknown() bool { return s.Place == "" }

// Called is the stop's own name, else its place's, else its day.
func (s *Stop) Called() string {
	if date, given := s.Date.Get(); given && s.Name == "" && s.Place == "" {
		return "stop of " + date.String()
	}
	return cmp.Or(s.Name, s.Place, "a stop")
}

// Contradictions finds statements that cannot be true together.
func (s *Stop) Contradictions() []Fault {
	var faults []Fault
	fault := func(key, format string, args ...any) {
		faults = append(faults, Fault{Key: key, Problem: fmt.Sprintf(format, args...)})
	}
	lacks := func(key, other string) {
		faults = append(faults, Fault{Key: key, Lacks: true, Problem: "goes with " + other + ", which is missing"})
	}
	low, hasLow := s.LowTDS.Get()
	high, hasHigh := s.HighTDS.Get()
	switch {
	case s.Place != "" && (hasLow || hasHigh):
		fault("place", "%q has a water of its own; leave out the place or the band of tds", s.Place)
	case hasLow && !hasHigh:
		lacks("tds_low", "tds_high")
	case hasHigh && !hasLow:
		lacks("tds_high", "tds_low")
	case hasLow && low.Scale == high.Scale && low.Number > high.Number:
		fault("tds_high", "%q is under tds_low, %q; change them about", s.HighTDS.Words(), s.LowTDS.Words())
	case hasLow && low.Scale != high.Scale:
		fault("tds_high", "%q is on another scale than tds_low, %q; state both on one", s.HighTDS.Words(), s.LowTDS.Words())
	}
	soft, hasSoft := s.LowHardness.Get()
	hard, hasHard := s.HighHardness.Get()
	switch {
	case s.Place != "" && (hasSoft || hasHard):
		fault("place", "%q has a water of its own; leave out the place or the band of hardness", s.Place)
	case hasSoft && !hasHard:
		lacks("hardness_low", "hardness_high")
	case hasHard && !hasSoft:
		lacks("hardness_high", "hardness_low")
	case hasSoft && soft > hard:
		fault("hardness_high", "%q is under hardness_low, %q; change them about", s.HighHardness.Words(), s.LowHardness.Words())
	}
	if s.Hookup == TankOnly && !s.OnHand.Given() {
		faults = append(faults, Fault{Key: "on_hand", Lacks: true, Problem: `is missing, and this stop has its tank only; write for example on_hand = "100 gal", or "380 L"`})
	}
	return faults
}

// TripWash is a wash of the trip, or another use of the bed.
type TripWash struct {
	Date    quantity.Opt[Date]
	Name    string
	Place   string // of its stop, or that stop's own name; "" for the last one of its day
	Vehicle string
	Like    string
	Dirt    Dirt
	DI      quantity.Opt[quantity.Volume]
	Flow    quantity.Opt[quantity.Flow]
	Stages  []Stage
}

// Fields lists what can be stated of a wash of a trip, its stages apart.
func (w *TripWash) Fields() []Field {
	return []Field{
		dayField("date", "day of the wash", "2026-06-14", &w.Date).required(),
		name("name", "name", "what you call it: the wash, or who else draws from the bed", "truck windows", &w.Name),
		name("place", "at the stop", "place or name of its stop, where you stand at more than one that day; left out, the last that you come to", "home", &w.Place).refersTo("place"),
		name("vehicle", "vehicle", "what is washed", "our coach", &w.Vehicle).refersTo("vehicle"),
		name("like", "like the wash", "a wash of yours that it is done like: stages, sprayer, pause", "Friday wash", &w.Like).refersTo("wash"),
		choice("dirt", "dirt", "how dirty it will be: it sets the water of all but the final rinse", []Dirt{LightDirt, UsualDirt, HeavyDirt}, &w.Dirt),
		measure("di", "DI water, in all", "of another user of the bed (truck, windows, furniture): the DI water it takes", "6 gal", "0.1 gal", "500 gal", &w.DI),
		measure("flow", "flow of that", "flow at which that water is drawn", "1.4 gpm", "0.05 gpm", "40 gpm", &w.Flow),
	}
}

// Called is the name of the wash, else of what is washed.
func (w *TripWash) Called() string {
	if w.Name == "" && w.DI.Given() {
		return "other use"
	}
	return cmp.Or(w.Name, w.Vehicle, w.Like, "wash")
}

// Contradictions finds statements that cannot be true together.
func (w *TripWash) Contradictions() []Fault {
	var faults []Fault
	if w.DI.Given() && (w.Like != "" || len(w.Stages) > 0) {
		faults = append(faults, Fault{Key: "di", Problem: "is for another user of the bed; a wash has its stages instead: leave one out"})
	}
	if w.Flow.Given() && !w.DI.Given() {
		faults = append(faults, Fault{Key: "flow", Lacks: true, Problem: "goes with di, which is missing; the flow of a wash is its sprayer's"})
	}
	if w.Like != "" && len(w.Stages) > 0 {
		faults = append(faults, Fault{Key: "like", Problem: "goes with no stages of its own: leave out one of the two"})
	}
	return faults
}

// ResinChange is a change of the bed's resin, before the washes of its day.
type ResinChange struct {
	Date  quantity.Opt[Date]
	Price quantity.Opt[quantity.Money]
}

// Fields lists what can be stated of a planned change.
func (c *ResinChange) Fields() []Field {
	return []Field{
		dayField("date", "day of the change, before the washes of that day", "2026-06-20", &c.Date).required(),
		field("price", "price", "what this fill of resin costs; left out, what the bed's does", "$185", &c.Price, quantity.ParseMoney, quantity.Money.String),
	}
}

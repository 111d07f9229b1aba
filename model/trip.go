package model

import (
	"cmp"
	"maps"
	"slices"

	"washeve/model/quantity"
)

// Hookup is how a stop gives water.
type Hookup string

// The ways: a hose to a tap, or only what is in the vehicle's own tank.
const (
	FullHookup Hookup = "hook-up"
	TankOnly   Hookup = "tank only"
)

// Limits is what a stop allows of washing.
type Limits string

// The limits.
const (
	NoLimits   Limits = "none"
	RinseOnly  Limits = "rinse only"
	NotAllowed Limits = "not allowed"
)

// Dirt is how dirty the vehicle is when it is washed.
type Dirt string

// The scale of dirt.
const (
	LightDirt Dirt = "light"
	UsualDirt Dirt = "usual"
	HeavyDirt Dirt = "heavy"
)

// DIFor is which stages of a trip's washes get DI water.
type DIFor string

// What they may be; left out, each wash has its own.
const (
	DIForAll  DIFor = "every stage"
	DIForLast DIFor = "last rinse only"
)

// Trip is a dated list of stops, of washes and other uses of one bed, and of the
// changes of its resin that are planned.
type Trip struct {
	Name     string
	Bed      string
	Softener string
	Feed     Answer // is the DI bed fed through the softener
	Lead     quantity.Opt[quantity.Duration]
	Carry    Answer // is the resin carried from the start, or does it come along the way
	Limit    quantity.Opt[quantity.Reading]

	// What all washes of the trip do otherwise than they say themselves.
	DIFor   DIFor
	Sprayer string // of the stages with DI water
	Pause   quantity.Opt[quantity.Duration]
	Target  quantity.Opt[quantity.Reading]

	Fill Answer // is the tank still to be filled, with resin that is ordered for the trip

	Stops   []Stop
	Washes  []TripWash
	Changes []ResinChange
}

// Fields lists what can be stated of a trip, its stops, washes and changes apart.
func (t *Trip) Fields() []Field {
	return []Field{
		name("name", "name", "what you call this trip", "June on the road", &t.Name),
		name("bed", "bed", "DI bed that goes along", "half-foot tank", &t.Bed).refersTo("bed"),
		name("softener", "softener", "softener that goes along; none where you have none", "bay softener", &t.Softener).refersTo("softener"),
		choice("di_through_softener", "bed fed through softener", "is the softener in the line ahead of the DI bed", []Answer{Yes, No}, &t.Feed),
		measure("lead_time", "lead time of resin", "how long ordered resin takes to come", "10 d", "0 d", "365 d", &t.Lead),
		choice("carry_resin", "resin carried from the start", "yes: it must be there when you leave; no: it comes to you along the way", []Answer{Yes, No}, &t.Carry),
		reading("limit", "outlet limit", "outlet reading at which you stop using the bed", 200, &t.Limit),
		choice("di_for", "DI water for", "of all washes of this trip: every sprayed stage, or the last rinse only; left out, as each wash has it", []DIFor{DIForAll, DIForLast}, &t.DIFor),
		name("di_sprayer", "sprayer of the DI water", "of all washes of this trip; left out, as each wash has it", "small pressure washer", &t.Sprayer).refersTo("sprayer"),
		measure("pause", "drip before final rinse", "of all washes of this trip: how long the vehicle drips; left out, as each wash has it", "2 min", "0 s", "30 min", &t.Pause),
		reading("target", "target in the film", "of all washes of this trip: what the water left on the faces may carry", 200, &t.Target),
		choice("fill_first", "tank still to be filled", "yes: it is bought empty, and its resin ordered for this trip, until the log holds a fill of it", []Answer{Yes, No}, &t.Fill),
	}
}

// Otherwise lists in words what all washes of the trip do otherwise than they say
// themselves. Minutes and ppm are the same in US and metric units.
func (t *Trip) Otherwise() []string {
	var words []string
	if t.DIFor != "" {
		words = append(words, "DI water for "+map[DIFor]string{DIForAll: "every stage", DIForLast: "the last rinse only"}[t.DIFor])
	}
	if t.Sprayer != "" {
		words = append(words, "DI water by "+t.Sprayer)
	}
	if pause, given := t.Pause.Get(); given {
		words = append(words, "drip "+cmp.Or(t.Pause.Words(), quantity.Show(pause, quantity.US)))
	}
	if target, given := t.Target.Get(); given {
		words = append(words, "target "+target.String())
	}
	return words
}

// Compare orders days: below zero where d is before other.
func (d Date) Compare(other Date) int {
	return cmp.Or(cmp.Compare(d.Year, other.Year), cmp.Compare(d.Month, other.Month), cmp.Compare(d.Day, other.Day))
}

// Days are the first and the last day of the trip; false where none is stated.
func (t *Trip) Days() (first, last Date, known bool) {
	var days []Date
	add := func(d quantity.Opt[Date]) {
		if day, given := d.Get(); given {
			days = append(days, day)
		}
	}
	for i := range t.Stops {
		add(t.Stops[i].Date)
	}
	for i := range t.Washes {
		add(t.Washes[i].Date)
	}
	for i := range t.Changes {
		add(t.Changes[i].Date)
	}
	if len(days) == 0 {
		return first, last, false
	}
	return slices.MinFunc(days, Date.Compare), slices.MaxFunc(days, Date.Compare), true
}

// Clone is a trip that shares nothing with this one.
func (t Trip) Clone() Trip {
	t.Stops, t.Washes, t.Changes = slices.Clone(t.Stops), slices.Clone(t.Washes), slices.Clone(t.Changes)
	for i := range t.Washes {
		t.Washes[i].Stages = slices.Clone(t.Washes[i].Stages)
		for j := range t.Washes[i].Stages {
			t.Washes[i].Stages[j].Faces = slices.Clone(t.Washes[i].Stages[j].Faces)
		}
	}
	return t
}

// Faults finds what is wrong in the trip, given the names in the rig, the places
// and the washes that it may be like. Names are not looked up in what is nil: it
// is unknown. The stages count as the section "wash.stage", through all washes.
func (t *Trip) Faults(rig *Rig, places Places, washes []string) []Fault {
	known := map[string][]string{}
	if places != nil {
		known["place"] = places.Names()
	}
	if washes != nil {
		known["wash"] = washes
	}
	if rig != nil {
		for _, s := range rig.sections() {
			known[s.name] = s.names
		}
		known["softener"] = append(known["softener"], NoSoftener)
		known["sprayer"] = append(known["sprayer"], ByHand)
	}
	of := maps.Clone(known) // of a wash: its place is one of the trip's stops
	delete(of, "place")
	faults := append(faultsOf("", 0, t), unknownYet("", 0, t.Fields(), known)...)
	for i := range t.Stops {
		faults = append(faults, faultsOf("stop", i, &t.Stops[i])...)
		faults = append(faults, unknownYet("stop", i, t.Stops[i].Fields(), known)...)
	}
	stage := 0
	for i := range t.Washes {
		w := &t.Washes[i]
		faults = append(faults, faultsOf("wash", i, w)...)
		faults = append(faults, unknownYet("wash", i, w.Fields(), of)...)
		faults = append(faults, t.homeless(i)...)
		for j := range w.Stages {
			faults = append(faults, faultsOf("wash.stage", stage, &w.Stages[j])...)
			faults = append(faults, unknownYet("wash.stage", stage, w.Stages[j].Fields(), known)...)
			stage++
		}
	}
	for i := range t.Changes {
		faults = append(faults, faultsOf("change", i, &t.Changes[i])...)
	}
	return faults
}

// unknownYet are the names that nothing has. They are lacks and no errors: a trip is
// written long before, and what it names may get another name meanwhile.
func unknownYet(section string, index int, fields []Field, known map[string][]string) []Fault {
	faults := dangling(section, index, fields, known)
	for i := range faults {
		faults[i].Lacks = true
	}
	return faults
}

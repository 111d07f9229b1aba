package model

import (
	"fmt"
	"strings"

	"washeve/model/quantity"
)

// Rig is what a person owns: the vehicles and everything that brings water to
// them.
type Rig struct {
	Vehicles  []Vehicle
	Beds      []Bed
	Softeners []Softener
	Sprayers  []Sprayer
	Hoses     []Hose
	Pens      []Pen
	Defaults  Defaults
}

// Currency is that of the first price that is stated; "" where none is.
func (r *Rig) Currency() string {
	for i := range r.Beds {
		if price, given := r.Beds[i].Price.Get(); given {
			return price.Currency
		}
	}
	for i := range r.Softeners {
		if price, given := r.Softeners[i].Price.Get(); given {
			return price.Currency
		}
	}
	return r.Defaults.DIPrice.Or(quantity.Money{}).Currency
}

// Softener is a bed of cation resin in the sodium form.
type Softener struct {
	Name     string
	Resin    quantity.Opt[quantity.Volume]
	Diameter quantity.Opt[quantity.Length]
	Salt     quantity.Opt[quantity.Dose]
	Capacity quantity.Opt[quantity.Capacity]
	SoFar    quantity.Opt[quantity.Volume] // since the last regeneration
	Price    quantity.Opt[quantity.Money]  // of the salt of a regeneration
}

// Fields lists what can be stated of a softener. It needs its resin's volume or, as it is
// printed on many, its capacity.
func (s *Softener) Fields() []Field {
	resin := measure("resin", "resin volume", "softening resin in the tank; not needed where the capacity is stated", "0.5 ft3", "0.02 ft3", "10 ft3", &s.Resin)
	if !s.Capacity.Given() {
		resin = resin.required()
		resin.Instead = `capacity = "10000 gr"`
	}
	return []Field{
		name("name", "name", "what you call this softener", "bay softener", &s.Name).required(),
		resin,
		measure("diameter", "tank diameter", "inside diameter of the tank", "8 in", "2 in", "36 in", &s.Diameter),
		measure("salt", "salt per regeneration", "salt used per volume of resin at each regeneration; it sets the capacity", "8 lb/ft3", "2 lb/ft3", "30 lb/ft3", &s.Salt),
		measure("capacity", "capacity", "grains it takes out between regenerations, as printed on it; enough where the volume is not known", "12000 gr", "100 gr", "400000 gr", &s.Capacity),
		measure("gallons_so_far", "gallons since salt", "water that has passed since the last regeneration", "120 gal", "0 gal", "100000 gal", &s.SoFar),
		field("price", "price of a regeneration", "what the salt of one regeneration costs you", "$6", &s.Price, quantity.ParseMoney, quantity.Money.String),
	}
}

// Tool is the kind of a sprayer.
type Tool string

// The kinds of sprayer.
const (
	PressureWasher Tool = "pressure washer"
	Nozzle         Tool = "nozzle"
	OpenHose       Tool = "open hose"
)

// Sprayer is what puts water on the vehicle.
type Sprayer struct {
	Name     string
	Tool     Tool
	Flow     quantity.Opt[quantity.Flow]
	Pressure quantity.Opt[quantity.Pressure]
	Number   quantity.Opt[float64]
	Coverage quantity.Opt[quantity.Coverage]
}

// Fields lists what can be stated of a sprayer.
func (s *Sprayer) Fields() []Field {
	return []Field{
		name("name", "name", "what you call this sprayer", "small pressure washer", &s.Name).required(),
		choice("tool", "kind", "a pressure washer draws its own flow; a nozzle or an open hose takes what the pressure pushes", []Tool{PressureWasher, Nozzle, OpenHose}, &s.Tool),
		measure("flow", "flow", "rated flow of a pressure washer, or the flow of a nozzle at its pressure", "1.4 gpm", "0.1 gpm", "40 gpm", &s.Flow),
		measure("pressure", "pressure", "pressure at which the flow or the nozzle is rated", "1600 psi", "5 psi", "6000 psi", &s.Pressure),
		number("nozzle_number", "nozzle number", "orifice number: gpm at 4000 psi", "3", 0.5, 200, &s.Number),
		measure("coverage", "coverage rate", "area you go over in a minute, one pass", "40 ft2/min", "2 ft2/min", "1000 ft2/min", &s.Coverage),
	}
}

// Run is the part of the chain that a hose serves.
type Run string

// The runs, from the tap on.
const (
	SupplyRun Run = "supply" // tap to the first tank
	MiddleRun Run = "middle" // softener to DI bed
	SprayRun  Run = "spray"  // last tank to sprayer
)

// Hose is one length of hose.
type Hose struct {
	Name   string
	Bore   quantity.Opt[quantity.Length]
	Length quantity.Opt[quantity.Length]
	Run    Run
}

// Fields lists what can be stated of a hose.
func (h *Hose) Fields() []Field {
	return []Field{
		name("name", "name", "what you call this hose", "blue hose", &h.Name).required(),
		measure("bore", "bore", "inside diameter", "5/8 in", "1/8 in", "3 in", &h.Bore).required(),
		measure("length", "length", "length of the hose", "50 ft", "3 in", "1000 ft", &h.Length).required(),
		choice("run", "where", "supply: tap to first tank; middle: softener to bed; spray: last tank to sprayer", []Run{SupplyRun, MiddleRun, SprayRun}, &h.Run),
	}
}

// Pen is a TDS or conductivity pen.
type Pen struct {
	Name  string
	Scale quantity.Opt[quantity.Scale]
}

// Fields lists what can be stated of a pen.
func (p *Pen) Fields() []Field {
	return []Field{
		name("name", "name", "what you call this pen", "yellow pen", &p.Name).required(),
		field("scale", "scale", "the scale printed on the pen or in its leaflet", "NaCl", &p.Scale, quantity.ParseScale, quantity.Scale.String).required(),
	}
}

// Faults finds what is wrong across the rig: names missing, doubled or
// dangling, statements that contradict. Places are needed to check their names;
// nil means that they are unknown, and their names are not checked. The faces
// count as the section "vehicle.face", through all vehicles.
func (r *Rig) Faults(places []string) []Fault {
	var faults []Fault
	known := map[string][]string{}
	if places != nil {
		known["place"] = places
	}
	for _, s := range r.sections() {
		for i, item := range s.items {
			faults = append(faults, faultsOf(s.name, i, item)...)
		}
		known[s.name] = s.names
		faults = append(faults, doubled(s.name, s.names)...)
	}
	face := 0
	for i := range r.Vehicles {
		for j := range r.Vehicles[i].Faces {
			faults = append(faults, faultsOf("vehicle.face", face, &r.Vehicles[i].Faces[j])...)
			face++
		}
	}
	return append(faults, dangling("defaults", 0, r.Defaults.Fields(), known)...)
}

// Item is a noun with fields.
type Item interface{ Fields() []Field }

// Checker is a noun whose statements can contradict each other.
type Checker interface{ Contradictions() []Fault }

// Names lists the names in a section: "vehicle", "bed", "softener", "sprayer",
// "hose" or "pen".
func (r *Rig) Names(of string) []string {
	for _, s := range r.sections() {
		if s.name == of {
			return s.names
		}
	}
	return nil
}

type section struct {
	name  string
	items []Item
	names []string
}

func (r *Rig) sections() []section {
	return []section{
		sectionOf("vehicle", r.Vehicles, func(v *Vehicle) (Item, string) { return v, v.Name }),
		sectionOf("bed", r.Beds, func(b *Bed) (Item, string) { return b, b.Name }),
		sectionOf("softener", r.Softeners, func(s *Softener) (Item, string) { return s, s.Name }),
		sectionOf("sprayer", r.Sprayers, func(s *Sprayer) (Item, string) { return s, s.Name }),
		sectionOf("hose", r.Hoses, func(h *Hose) (Item, string) { return h, h.Name }),
		sectionOf("pen", r.Pens, func(p *Pen) (Item, string) { return p, p.Name }),
	}
}

func sectionOf[T any](name string, all []T, as func(*T) (Item, string)) section {
	s := section{name: name, items: make([]Item, len(all)), names: make([]string, len(all))}
	for i := range all {
		s.items[i], s.names[i] = as(&all[i])
	}
	return s
}

func faultsOf(section string, index int, item Item) []Fault {
	return faultsIn(section, index, item, item.Fields())
}

// faultsIn is faultsOf an item whose fields are listed already.
func faultsIn(section string, index int, item Item, fields []Field) []Fault {
	var faults []Fault
	for _, f := range fields {
		if f.Required && !f.Given() {
			faults = append(faults, missing(section, index, f))
		}
	}
	if c, ok := item.(Checker); ok {
		for _, f := range c.Contradictions() {
			f.Section, f.Index = section, index
			faults = append(faults, f)
		}
	}
	return faults
}

func missing(section string, index int, f Field) Fault {
	problem := fmt.Sprintf("is missing; write for example %s = %q", f.Key, f.Example)
	if f.Instead != "" {
		problem += " or, where that is what you know, " + f.Instead
	}
	return Fault{Section: section, Index: index, Key: f.Key, Lacks: true, Problem: problem}
}

func doubled(section string, names []string) []Fault {
	var faults []Fault
	first := map[string]int{}
	for i, n := range names {
		if n == "" {
			continue
		}
		key := strings.ToLower(n)
		if j, seen := first[key]; seen {
			faults = append(faults, Fault{Section: section, Index: i, Key: "name", Problem: fmt.Sprintf("%q is the name of %s %d already; give each its own name", n, section, j+1)})
			continue
		}
		first[key] = i
	}
	return faults
}

func dangling(section string, index int, fields []Field, known map[string][]string) []Fault {
	var faults []Fault
	for _, f := range fields {
		names, checked := known[f.Refers]
		if f.Refers == "" || !f.Given() || !checked || Find(names, f.Text()) >= 0 {
			continue
		}
		faults = append(faults, Fault{Section: section, Index: index, Key: f.Key, Problem: nobody(f.Refers, f.Text(), names)})
	}
	return faults
}

func nobody(section, text string, names []string) string {
	if len(names) == 0 {
		return fmt.Sprintf("no %s is called %q: there is no %s yet", section, text, section)
	}
	return fmt.Sprintf("no %s is called %q; there is %s", section, text, strings.Join(names, ", "))
}

// Find gives the index of a name, whatever its capitals, or -1.
func Find(names []string, wanted string) int {
	for i, n := range names {
		if strings.EqualFold(n, wanted) {
			return i
		}
	}
	return -1
}

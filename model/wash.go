package model

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"washeve/model/quantity"
)

// Water is what a stage is done with.
type Water string

// The three waters.
const (
	Raw      Water = "raw"
	Softened Water = "softened"
	DI       Water = "di"
)

// Position is how the slide-outs stand while washing.
type Position string

// The positions.
const (
	SlidesIn  Position = "in"
	SlidesOut Position = "out"
)

// Answer is yes or no.
type Answer string

// The answers.
const (
	Yes Answer = "yes"
	No  Answer = "no"
)

// Date is a day, without an hour or a zone.
type Date struct {
	Year  int
	Month time.Month
	Day   int
}

// ParseDate reads a day such as 2026-06-12, which is all that files hold; what a person
// types goes through [ComingDay] or [PastDay]. Errors are of type [*quantity.ParseError].
func ParseDate(text string) (Date, error) {
	t, err := time.Parse(time.DateOnly, strings.TrimSpace(text))
	if err != nil || t.Year() < 1990 || t.Year() > 2200 {
		wrong := &quantity.ParseError{What: "date", Text: text, Reason: noDay, Example: "2026-06-12"}
		if reason, meant := slashedDay(strings.TrimSpace(text)); reason != "" {
			wrong.Reason = reason
			if len(meant) > 0 && meant[0].year > 0 {
				wrong.Example = offered(meant, "")
			}
		}
		return Date{}, wrong
	}
	return Date{t.Year(), t.Month(), t.Day()}, nil
}

func (d Date) String() string { return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day) }

// Wash is one wash to be planned.
type Wash struct {
	Name     string
	Date     quantity.Opt[Date]
	Place    string
	Vehicle  string
	Bed      string
	Softener string
	Sprayer  string
	Slides   Position
	Feed     Answer // is the DI bed fed through the softener
	Pause    quantity.Opt[quantity.Duration]
	Limit    quantity.Opt[quantity.Reading]
	Target   quantity.Opt[quantity.Reading]

	// The day: where the nose points, when it begins, and the weather.
	Heading    quantity.Opt[Heading]
	Start      quantity.Opt[TimeOfDay]
	Low        quantity.Opt[quantity.Temperature]
	High       quantity.Opt[quantity.Temperature]
	Humidity   quantity.Opt[quantity.Fraction]
	HumidityAt quantity.Opt[TimeOfDay]
	DewPoint   quantity.Opt[quantity.Temperature]
	Wind       quantity.Opt[quantity.Speed]
	Sky        Sky
	Shades     []Shade

	// Where the DI water goes when the bed is short of it.
	DIFaces    []Side    // these get it whatever else falls short
	TowelFaces []Side    // these get softened water and a towel
	DISurfaces []Surface // it goes on these alone; on all where none is named
	DIFlow     quantity.Opt[quantity.Flow]
	Confidence quantity.Opt[quantity.Fraction] // that the gallons shared out are there

	Stages []Stage
}

// Fields lists what can be stated of a wash, its shades and stages apart.
func (w *Wash) Fields() []Field {
	return slices.Concat([]Field{
		name("name", "name", "what you call this wash", "Friday wash", &w.Name),
		dayField("date", "day of the wash", "2026-06-12", &w.Date),
		name("place", "place", "where the water comes from", "home", &w.Place).refersTo("place"),
		name("vehicle", "vehicle", "what is washed", "our coach", &w.Vehicle).refersTo("vehicle"),
		name("bed", "bed", "DI bed in use", "half-foot tank", &w.Bed).refersTo("bed"),
		name("softener", "softener", "softener in use; none where you have none", "bay softener", &w.Softener).refersTo("softener"),
		name("sprayer", "sprayer", "sprayer for stages that name none", "small pressure washer", &w.Sprayer).refersTo("sprayer"),
		choice("slide_outs", "slide-outs pushed", "in or out while washing", []Position{SlidesIn, SlidesOut}, &w.Slides),
		choice("di_through_softener", "bed fed through softener", "is the softener in the line ahead of the DI bed", []Answer{Yes, No}, &w.Feed),
		measure("pause", "drip before final rinse", "how long the vehicle drips before the final rinse", "60 s", "0 s", "30 min", &w.Pause),
		reading("limit", "outlet limit", "outlet reading at which you stop using the bed", 200, &w.Limit),
		reading("target", "target in the film", "what the water left on the faces may carry", 200, &w.Target),
	}, w.shareFields(), w.dayFields())
}

// Stage is one step of a wash: which faces, with which water, from which
// sprayer.
type Stage struct {
	Name     string
	Faces    []Side
	Water    Water
	Sprayer  string
	Passes   quantity.Opt[float64]
	Coverage quantity.Opt[quantity.Coverage]
	Final    bool // this stage replaces the film: the final rinse
}

// Fields lists what can be stated of a stage.
func (s *Stage) Fields() []Field {
	return []Field{
		name("name", "name", "what is done", "final rinse", &s.Name).required(),
		facesField("faces", "faces", "which faces; all where none is named", "left, right, front", nil, &s.Faces),
		choice("water", "water", "raw, softened or di", []Water{Raw, Softened, DI}, &s.Water).required(),
		name("sprayer", "sprayer", "sprayer of this stage", "small pressure washer", &s.Sprayer).refersTo("sprayer"),
		number("passes", "passes", "how often the water goes over each spot", "1", 0, 10, &s.Passes),
		measure("coverage", "coverage rate", "area you go over in a minute, one pass", "40 ft2/min", "2 ft2/min", "1000 ft2/min", &s.Coverage),
		finalField(&s.Final),
	}
}

func finalField(at *bool) Field {
	return Field{
		Key: "final", Label: "final rinse", Help: "yes where this stage replaces the film and then dries", Example: "yes",
		Choices: []string{string(Yes), string(No)},
		value:   yes{"final rinse", at},
	}
}

// yes is a value that is said where it holds.
type yes struct {
	label string
	at    *bool
}

func (v yes) text() string {
	if *v.at {
		return string(Yes)
	}
	return ""
}

func (v yes) set(text string) error {
	switch Answer(strings.ToLower(strings.TrimSpace(text))) {
	case Yes:
		*v.at = true
	case No:
		*v.at = false
	default:
		return &quantity.ParseError{What: v.label, Text: text, Reason: "is none of the choices", Choices: []string{string(Yes), string(No)}}
	}
	return nil
}

func (v yes) clear() { *v.at = false }

// Faults finds what is wrong in the wash, given the names in the rig and the
// places. Names are not looked up in a nil rig or nil places: they are unknown.
func (w *Wash) Faults(rig *Rig, places Places) []Fault {
	known := map[string][]string{}
	if places != nil {
		known["place"] = places.Names()
	}
	if rig != nil {
		for _, s := range rig.sections() {
			known[s.name] = s.names
		}
		known["softener"] = append(known["softener"], NoSoftener)
		known["sprayer"] = append(known["sprayer"], ByHand)
	}
	fields := w.Fields()
	faults := append(faultsIn("", 0, w, fields), dangling("", 0, fields, known)...)
	for i := range w.Shades {
		faults = append(faults, faultsOf("shade", i, &w.Shades[i])...)
	}
	for i := range w.Stages {
		fields := w.Stages[i].Fields()
		faults = append(faults, faultsIn("stage", i, &w.Stages[i], fields)...)
		faults = append(faults, dangling("stage", i, fields, known)...)
	}
	return faults
}

// Names that stand for nothing in the rig.
const (
	// NoSoftener is the softener of a wash that is done without one.
	NoSoftener = "none"
	// ByHand is the sprayer of a stage that is done with a mitt.
	ByHand = "by hand"
)

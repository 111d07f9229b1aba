package drying

import (
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/clock"
	"washeve/planner/drying/sun"
	"washeve/planner/tag"
)

// Step is the time between two looks at the day.
const Step = 15 * quantity.Minute

// Forecast is the day, told ahead.
type Forecast struct {
	Date  model.Date
	Sun   sun.Day
	Dawn  quantity.Opt[time.Time] // first and last step with light to work by
	Dusk  quantity.Opt[time.Time]
	Steps []Moment // every 15 minutes of the whole day

	Starts []Start  // for each step with light
	Sunlit []Sunlit // when the sun is on each face

	// Job is how long all faces take, one after the other.
	Job     quantity.Opt[quantity.Duration]
	Windows []Window // when no face hurries anyone, whichever is done

	// Recommended is the first start with the sun up at its begin and its end that leaves
	// no face in a hurry while its turn comes, else the best as [Start.Better] has it; not given where the weather is not
	// known or forbids washing all day. NotBefore and NotAfter are the first and
	// the last start about it that hurry nobody; not given where each does.
	Recommended quantity.Opt[Start]
	NotBefore   quantity.Opt[time.Time]
	NotAfter    quantity.Opt[time.Time]

	Limits  []Limit
	Notes   []tag.Note // polar day or night, clocks that change
	Unknown []string   // what is needed and was not known, and what that leaves open
	Assumed []string   // what was taken for what was not stated

	place   sun.Place
	hours   clock.Day
	faces   []Face
	spells  [][]spell   // of each step, of each face
	sunsets []time.Time // that a face's sun may end at
}

// Moment is the state of all faces at an instant.
type Moment struct {
	At       time.Time
	Label    string // clock time, as [clock.Day.Label] writes it
	FullHour bool
	Light    bool // enough to work by: the sun above -6 deg
	Up       bool // the sun is up
	Sun      sun.Position
	Air      quantity.Opt[quantity.Temperature]
	WetBulb  quantity.Opt[quantity.Temperature]
	Faces    []FaceMoment // in the order of the input

	forbidden string // what keeps anyone from washing, or ""
}

// FaceMoment is the state of one face at an instant. What the input leaves
// open is not given.
type FaceMoment struct {
	Side       model.Side
	Known      bool // whether sun or shade is known: false without a heading
	Sunlit     bool // the beam reaches it
	Shaded     bool // something the user named keeps the sun off
	Irradiance quantity.Irradiance
	Dry        quantity.Opt[quantity.Temperature] // of the dry panel
	Wet        quantity.Opt[quantity.Temperature] // of the wet panel
	Dries      quantity.Opt[quantity.Duration]    // how long the film lasts; +Inf where it does not dry
	Section    quantity.Opt[quantity.Area]        // largest that can be soaped and rinsed before it dries
	Hurries    bool                               // the rinse of the whole face takes longer than its film lasts

	evaporation quantity.Evaporation // from the wet panel, where that is given
}

// Day foretells a day. It fails where date, zone or place are not known or
// something contradicts; all else may be missing.
func Day(in Input) (Forecast, error) {
	p, err := PanelsOf(in)
	if err != nil {
		return Forecast{}, err
	}
	return p.forecast(in), nil
}

func (f *Forecast) light() {
	for i := range f.Steps {
		if !f.Steps[i].Light {
			continue
		}
		if !f.Dawn.Given() {
			f.Dawn = quantity.Some(f.Steps[i].At)
		}
		f.Dusk = quantity.Some(f.Steps[i].At)
	}
}

// Face finds a side in the moment.
func (m Moment) Face(side model.Side) (FaceMoment, bool) {
	for _, f := range m.Faces {
		if f.Side == side {
			return f, true
		}
	}
	return FaceMoment{}, false
}

// At is the last step not after t, or nothing where t is before the day.
func (f Forecast) At(t time.Time) (Moment, bool) {
	for i := len(f.Steps) - 1; i >= 0; i-- {
		if !f.Steps[i].At.After(t) {
			return f.Steps[i], true
		}
	}
	return Moment{}, false
}

func notes(day clock.Day, course sun.Day) []tag.Note {
	var out []tag.Note
	if word := day.Word(); word != "" {
		out = append(out, tag.Note{Code: "clocks-change", Format: word})
	}
	switch course.Kind {
	case sun.PolarDay:
		out = append(out, tag.Note{Code: "polar-day", Format: "the sun does not set on this day"})
	case sun.PolarNight:
		out = append(out, tag.Note{Code: "polar-night", Format: "the sun does not rise on this day"})
	}
	return out
}

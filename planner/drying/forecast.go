package drying

import (
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/clock"
	"washeve/planner/drying/panel"
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

	Orders []Order  // for each full hour with light
	Sunlit []Sunlit // when the sun is on each face

	// Job is how long all faces take at the person's pace.
	Job     quantity.Opt[quantity.Duration]
	Windows []Window // when no face hurries anyone
	// NotBefore and NotAfter bound the start of a job that fits a window: the
	// earliest start, and the latest. Neither is given where no window is long
	// enough, or not enough is known.
	NotBefore quantity.Opt[time.Time]
	NotAfter  quantity.Opt[time.Time]

	Limits  []Limit
	Notes   []tag.Note // polar day or night, clocks that change
	Unknown []string   // what was not known, and what that leaves open
}

// Moment is the state of all faces at an instant.
type Moment struct {
	At       time.Time
	Label    string // clock time, as [clock.Day.Label] writes it
	FullHour bool
	Light    bool // enough to work by: the sun above -6 deg
	Sun      sun.Position
	Air      quantity.Opt[quantity.Temperature]
	WetBulb  quantity.Opt[quantity.Temperature]
	Faces    []FaceMoment // in the order of the input
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
	Hurries    bool                               // the whole face takes longer than its film lasts
}

// Day foretells a day. It fails where date, zone or place are not known or
// something contradicts; all else may be missing.
func Day(in Input) (Forecast, error) {
	if err := in.check(); err != nil {
		return Forecast{}, err
	}
	hours, err := clock.NewDay(in.Date, in.Zone)
	if err != nil {
		return Forecast{}, err
	}
	f := Forecast{
		Date:    in.Date,
		Sun:     in.Place.Day(hours.Start(), hours.End()),
		Unknown: in.unknown(),
	}
	scene, err := newScene(in, hours, f.Sun)
	if err != nil {
		return Forecast{}, err
	}
	f.Steps = scene.moments()
	f.light()
	f.Notes = notes(hours, f.Sun)
	f.Orders = ordersOf(f.Steps)
	f.Sunlit = sunlitOf(f.Steps)
	f.Job = in.job()
	f.Windows = windowsOf(f.Steps, f.Job)
	f.NotBefore, f.NotAfter = starts(f.Windows)
	f.Limits = in.limits(f.Steps)
	return f, nil
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

// section is the area covered in the time the film lasts, at most the face.
func section(lasts quantity.Duration, pace quantity.Coverage, face Face) quantity.Area {
	area := pace.Area(lasts)
	if whole, given := face.Area.Get(); given {
		return min(area, whole)
	}
	return area
}

// dryTimes fills in what the film does on a face of a wet panel.
func (m *FaceMoment) dryTimes(in *Input, face Face, wet panel.Wet) {
	film, given := face.Film.Get()
	if !given {
		return
	}
	lasts := panel.DryTime(film, wet.Evaporation)
	m.Dries = quantity.Some(lasts)
	pace, paced := in.Coverage.Get()
	if !paced {
		return
	}
	m.Section = quantity.Some(section(lasts, pace, face))
	if area, stated := face.Area.Get(); stated {
		m.Hurries = pace.Time(area) > lasts
	}
}

package drying

import (
	"reflect"
	"slices"

	"washeve/model/quantity"
	"washeve/planner/drying/clock"
	"washeve/planner/drying/panel"
)

// Panels is what a day does to the panels of a vehicle, whatever the work on them: sun
// and shade, how warm each panel is, and how fast water leaves it.
type Panels struct {
	of   Input // without the work
	base Forecast
}

// PanelsOf works out the panels. It fails where [Day] does.
func PanelsOf(in Input) (Panels, error) {
	if err := in.check(); err != nil {
		return Panels{}, err
	}
	hours, err := clock.NewDay(in.Date, in.Zone)
	if err != nil {
		return Panels{}, err
	}
	f := Forecast{
		Date:  in.Date,
		Sun:   in.Place.Day(hours.Start(), hours.End()),
		place: in.Place,
		hours: hours,
		faces: in.Faces,
	}
	scene, err := newScene(in, hours, f.Sun)
	if err != nil {
		return Panels{}, err
	}
	f.Steps = scene.moments()
	f.light()
	f.Notes = notes(hours, f.Sun)
	f.sunsets = f.sets()
	f.Sunlit = f.sunlit()
	f.spells = f.sunAndShade()
	f.Limits = in.limits(f.Steps)
	return Panels{of: in.withoutWork(), base: f}, nil
}

// Serve tells whether the panels are those of an input, whose work may be another.
func (p Panels) Serve(in Input) bool {
	return reflect.DeepEqual(p.of, in.withoutWork())
}

// Day foretells the day for the work of an input that the panels serve.
func (p Panels) Day(in Input) (Forecast, error) {
	if err := in.check(); err != nil {
		return Forecast{}, err
	}
	return p.forecast(in), nil
}

// forecast is the day for an input that was checked.
func (p Panels) forecast(in Input) Forecast {
	f := p.base
	f.faces = in.Faces
	f.Unknown, f.Assumed, f.Job = in.unknown(), in.assumed(), in.job()
	f.Steps = slices.Clone(f.Steps)
	f.work()
	f.Windows = windowsOf(f.Steps)
	f.begin()
	return f
}

// withoutWork is the input with faces that nothing is to be done on.
func (in Input) withoutWork() Input {
	faces := make([]Face, len(in.Faces))
	for i, f := range in.Faces {
		faces[i] = Face{Side: f.Side, Colour: f.Colour}
	}
	in.Faces = faces
	return in
}

// work fills in what the day leaves of each film, in faces of its own.
func (f *Forecast) work() {
	n := len(f.faces)
	all := make([]FaceMoment, 0, len(f.Steps)*n) // one piece for all steps
	for i := range f.Steps {
		all = append(all, f.Steps[i].Faces...)
		f.Steps[i].Faces = all[i*n : (i+1)*n : (i+1)*n]
	}
	rates := make([]quantity.Evaporation, len(f.Steps))
	for n, face := range f.faces {
		film, given := face.Film.Get()
		if !given || !f.Steps[0].Faces[n].Wet.Given() {
			continue
		}
		for i := range f.Steps {
			rates[i] = f.Steps[i].Faces[n].evaporation
		}
		for i, lasts := range panel.DryTimes(film, rates, Step) {
			f.Steps[i].Faces[n].lasts(lasts, face)
		}
	}
}

// lasts fills in what follows from how long the film of a face lasts.
func (m *FaceMoment) lasts(dries quantity.Duration, face Face) {
	m.Dries = quantity.Some(dries)
	if pace, paced := face.Pace.Get(); paced {
		m.Section = quantity.Some(section(dries, pace, face))
	}
	m.Hurries = face.Rinse.Or(0) > dries
}

// section is the area covered in the time the film lasts, at most the face.
func section(lasts quantity.Duration, pace quantity.Coverage, face Face) quantity.Area {
	area := pace.Area(lasts)
	if whole, given := face.Area.Get(); given {
		return min(area, whole)
	}
	return area
}

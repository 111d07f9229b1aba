package drying

import (
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/air"
	"washeve/planner/drying/clock"
	"washeve/planner/drying/heading"
	"washeve/planner/drying/panel"
	"washeve/planner/drying/sky"
	"washeve/planner/drying/sun"
)

// scene is what a whole day has in common.
type scene struct {
	in        Input
	hours     clock.Day
	course    sun.Day
	elevation quantity.Length
	cloud     model.Sky
	heading   model.Heading
	headed    bool
	warmth    air.Swing
	pressure  quantity.Pressure
	dew       quantity.Temperature
	wind      quantity.Speed
	weathered bool // all that drying needs is known
	warmed    bool // the air's temperature is known
}

func newScene(in Input, hours clock.Day, course sun.Day) (*scene, error) {
	s := &scene{in: in, hours: hours, course: course, elevation: in.Elevation.Or(0), cloud: in.Weather.Sky}
	s.heading, s.headed = in.Heading.Get()
	s.pressure = air.StandardPressure(s.elevation)
	low, okLow := in.Weather.Low.Get()
	high, okHigh := in.Weather.High.Get()
	if s.warmed = okLow && okHigh; !s.warmed {
		return s, nil
	}
	s.warmth = air.NewSwing(low, high, course)
	dew, damp, err := s.dewPoint()
	if err != nil {
		return nil, err
	}
	wind, blown := in.Weather.atVehicle()
	s.dew, s.wind = dew, wind
	s.weathered = damp && blown
	return s, nil
}

// dewPoint of the day: stated, or that of the relative humidity at its hour. It
// is held through the day, as it mostly is while the same air stays. Without an
// hour the humidity is that of the mean of low and high; at an hour that comes
// twice the first is taken.
func (s *scene) dewPoint() (dew quantity.Temperature, given bool, err error) {
	w := s.in.Weather
	if dew, given := w.DewPoint.Get(); given {
		return dew, true, nil
	}
	humidity, given := w.Humidity.Get()
	if !given {
		return 0, false, nil
	}
	warm := (w.Low.Or(0) + w.High.Or(0)) / 2
	if hour, stated := w.HumidityAt.Get(); stated {
		found, err := s.hours.At(hour)
		if err != nil {
			return 0, false, err
		}
		warm = s.warmth.At(found[0])
	}
	return air.OfHumidity(warm, humidity, s.pressure).DewPoint(), true, nil
}

func (s *scene) moments() []Moment {
	instants := s.hours.Every(Step)
	faces := make([]FaceMoment, len(instants)*len(s.in.Faces))
	out := make([]Moment, len(instants))
	for i, at := range instants {
		n := len(s.in.Faces)
		out[i] = s.moment(at, faces[i*n:(i+1)*n:(i+1)*n])
	}
	return out
}

func (s *scene) moment(at time.Time, faces []FaceMoment) Moment {
	shown := model.TimeOfDayAt(at)
	m := Moment{At: at, Label: s.hours.Label(at), FullHour: shown.Minute == 0, Sun: s.in.Place.At(at), Faces: faces}
	m.Light, m.Up = m.Sun.Altitude > sun.Twilight, s.course.Up(at)
	now := outdoors{shown: shown, altitude: m.Sun.Apparent(), azimuth: m.Sun.Azimuth}
	now.light = sky.FromClear(m.Sun, s.elevation).Under(s.cloud)
	if s.warmed {
		m.Air = quantity.Some(s.warmth.At(at))
	}
	if s.weathered {
		state := air.OfDew(m.Air.Or(0), s.dew, s.pressure)
		now.around = panel.Around(state, s.wind, sky.Emissivity(state.DewPoint(), s.cloud))
		m.WetBulb = quantity.Some(now.around.WetBulb())
	}
	for i := range s.in.Faces {
		s.face(&faces[i], s.in.Faces[i], &now)
	}
	m.forbidden = m.forbids()
	return m
}

// outdoors is what all faces share at an instant.
type outdoors struct {
	shown             model.TimeOfDay
	altitude, azimuth quantity.Angle // of the sun as seen
	light             sky.Light
	around            panel.Surroundings
	balanced          [8]balance // the loads met so far: faces in the shade are alike
	met               int
}

type balance struct {
	load panel.Load
	wet  panel.Wet
}

// wet is the panel in balance under a load.
func (o *outdoors) wet(l panel.Load) panel.Wet {
	for i := range o.met {
		if o.balanced[i].load == l {
			return o.balanced[i].wet
		}
	}
	wet := o.around.Wet(l)
	if o.met < len(o.balanced) {
		o.balanced[o.met] = balance{l, wet}
		o.met++
	}
	return wet
}

func (s *scene) face(m *FaceMoment, face Face, now *outdoors) {
	m.Side = face.Side
	m.Known = s.headed || face.Side == model.Roof
	if !m.Known {
		return
	}
	for _, shade := range s.in.Shades {
		m.Shaded = m.Shaded || (shade.Side == face.Side && shade.Covers(now.shown))
	}
	view := sky.ViewOf(face.Side == model.Roof, m.Shaded)
	share := now.light.On(heading.CosIncidence(s.heading, face.Side, now.altitude, now.azimuth), view, m.Shaded)
	m.Sunlit = share.Beam > 0
	m.Irradiance = share.Total()
	if !s.weathered {
		return
	}
	wet := now.wet(panel.Load{Absorbed: m.Irradiance * quantity.Irradiance(panel.Absorptance(face.Colour)), SkyView: view.Sky})
	m.Dry, m.Wet = quantity.Some(wet.Dry), quantity.Some(wet.Temperature)
	m.evaporation = wet.Evaporation
}

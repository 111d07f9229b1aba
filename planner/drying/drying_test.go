package drying_test

import (
	"math"
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/planner/drying/sun"
)

const deg = quantity.Degree

func zone(name string) *time.Location {
	loc, err := time.LoadLocation(name)
	if err != nil {
		panic(err)
	}
	return loc
}

// pace is that of everybody here, for a section and for the rinse.
const pace = 40 * quantity.SquareFootPerMinute

// coach is a June day at Oklahoma City, nose to the north: left faces west.
func coach() drying.Input {
	areas := map[model.Side]quantity.Area{model.Left: 32, model.Right: 32, model.Front: 7, model.Rear: 7, model.Roof: 30}
	faces := make([]drying.Face, 0, len(areas))
	for _, side := range model.Sides() {
		faces = append(faces, drying.Face{
			Side: side, Area: quantity.Some(areas[side]),
			Film: quantity.Some(60 * quantity.MillilitrePerSquareMetre), Colour: model.DarkColour,
		})
	}
	in := drying.Input{
		Date: model.Date{Year: 2026, Month: 6, Day: 12}, Zone: zone("America/Chicago"),
		Elevation: quantity.Some(quantity.Length(365)),
		Place:     sun.Place{Latitude: 35.47 * deg, Longitude: -97.52 * deg},
		Heading:   quantity.Some(model.HeadingOf(0)),
		Faces:     faces,
		Weather: drying.Weather{
			Low: quantity.Some(quantity.Celsius(18)), High: quantity.Some(quantity.Celsius(32)),
			DewPoint: quantity.Some(quantity.Celsius(15)), Wind: quantity.Some(2 * quantity.MetrePerSecond),
			Sky: model.ClearSky,
		},
	}
	atPace(in, pace)
	return in
}

// atPace sets how fast the hand goes.
func atPace(in drying.Input, pace quantity.Coverage) {
	for i := range in.Faces {
		f := &in.Faces[i]
		work := pace.Time(f.Area.Or(0))
		f.Pace, f.Work, f.Rinse = quantity.Some(pace), quantity.Some(work), quantity.Some(work)
	}
}

func day(t require.TestingT, in drying.Input) drying.Forecast {
	f, err := drying.Day(in)
	require.NoError(t, err)
	return f
}

func at(t *testing.T, f drying.Forecast, hour int, side model.Side) drying.FaceMoment {
	t.Helper()
	m, ok := f.At(time.Date(f.Date.Year, f.Date.Month, f.Date.Day, hour, 0, 0, 0, f.Sun.Transit.Location()))
	require.True(t, ok)
	face, ok := m.Face(side)
	require.True(t, ok)
	return face
}

func TestMorningSunIsOnTheRight(t *testing.T) {
	f := day(t, coach())
	assert.Empty(t, f.Unknown)
	assert.Len(t, f.Steps, 96)
	morning, evening := at(t, f, 9, model.Right), at(t, f, 18, model.Right)
	assert.True(t, morning.Sunlit)
	assert.False(t, evening.Sunlit)
	assert.True(t, at(t, f, 18, model.Left).Sunlit)
	assert.Greater(t, morning.Irradiance, evening.Irradiance)
	assert.Less(t, morning.Dries.Or(0), at(t, f, 9, model.Left).Dries.Or(0))
	assert.Greater(t, morning.Dry.Or(0), morning.Wet.Or(0))
	assert.True(t, at(t, f, 13, model.Roof).Sunlit)
}

// At 10 the sun is in the east: after the roof the shady left, whose sun comes
// before the front's, and the sunny right last.
func TestOrderGoesAheadOfTheSun(t *testing.T) {
	f := day(t, coach())
	s, notes, err := f.Starting(model.TimeOfDay{Hour: 10})
	require.NoError(t, err)
	assert.Empty(t, notes)
	assert.Equal(t, "10:00", s.Label)
	var got []model.Side
	for n, turn := range s.Turns {
		got = append(got, turn.Side)
		assert.NotEmpty(t, turn.Why)
		if n > 0 {
			assert.Equal(t, s.Turns[n-1].To, turn.From)
		}
	}
	assert.Equal(t, []model.Side{model.Roof, model.Left, model.Front, model.Rear, model.Right}, got)
	left, _ := s.Turn(model.Left)
	assert.Contains(t, left.Why, "in the shade until 13:")
	assert.InDelta(t, float64(f.Job.Or(0)), s.End.Sub(s.At).Seconds(), 1e-3)
}

func TestWindowsAreEarlyOrLate(t *testing.T) {
	f := day(t, coach())
	require.NotEmpty(t, f.Windows)
	for _, w := range f.Windows {
		assert.True(t, w.From.Before(w.To))
		assert.True(t, w.To.Hour() < 10 || w.From.Hour() > 17, "%s to %s", w.From, w.To)
		assert.NotEmpty(t, w.Why)
	}
}

func TestRecommendedStartIsTheFirstThatHurriesNobody(t *testing.T) {
	f := day(t, coach())
	s, given := f.Recommended.Get()
	require.True(t, given)
	assert.True(t, s.Easy)
	assert.False(t, s.At.Before(f.Sun.Rise.Or(time.Time{})))
	assert.False(t, s.At.Before(f.NotBefore.Or(time.Time{})) || s.At.After(f.NotAfter.Or(time.Time{})))
	assert.Less(t, f.NotAfter.Or(time.Time{}).Hour(), 11)
}

// A slow hand in the heat is hurried whenever it begins.
func TestWhereEveryStartHurriesTheLeastOneIsRecommended(t *testing.T) {
	in := coach()
	atPace(in, 2*quantity.SquareFootPerMinute)
	for i := range in.Faces {
		in.Faces[i].Film = quantity.Some(20 * quantity.MillilitrePerSquareMetre)
	}
	f := day(t, in)
	s, given := f.Recommended.Get()
	require.True(t, given)
	assert.False(t, s.Easy)
	assert.NotEmpty(t, s.Hurried())
	assert.Contains(t, s.Why, "dries before it can be rinsed whole")
	assert.False(t, f.NotBefore.Given() || f.NotAfter.Given())
	assert.Empty(t, f.Windows)
	assert.Greater(t, s.Turns[0].Section.Or(0), quantity.Area(0))
}

// Without weather: sun and shade, the order, and a list of what is not known.
func TestWithoutWeather(t *testing.T) {
	in := coach()
	in.Weather = drying.Weather{}
	f := day(t, in)
	assert.Empty(t, f.Windows)
	assert.Empty(t, f.Limits)
	assert.NotEmpty(t, f.Starts)
	assert.False(t, f.Recommended.Given())
	assert.NotEmpty(t, f.Sunlit)
	for _, word := range []string{"low and high", "humidity", "wind"} {
		assert.Contains(t, strings.Join(f.Unknown, "\n"), word)
	}
	assert.Equal(t, []string{"sky (clear)"}, f.Assumed)
	face := at(t, f, 9, model.Right)
	assert.True(t, face.Sunlit)
	assert.False(t, face.Dries.Given() || face.Dry.Given() || face.Section.Given())
}

func TestWithoutHeading(t *testing.T) {
	in := coach()
	in.Heading = quantity.Opt[model.Heading]{}
	f := day(t, in)
	assert.False(t, at(t, f, 9, model.Right).Known)
	assert.True(t, at(t, f, 9, model.Roof).Dries.Given())
	assert.Empty(t, f.Windows)
	assert.Len(t, f.Starts[5].Turns, 1)
	assert.False(t, f.Recommended.Given())
}

func TestBareInput(t *testing.T) {
	f := day(t, drying.Input{Date: model.Date{Year: 2024, Month: 2, Day: 29}, Zone: zone("Pacific/Auckland"), Place: sun.Place{Latitude: -36.85 * deg, Longitude: 174.76 * deg}})
	assert.Equal(t, 29, f.Sun.Transit.Day())
	assert.True(t, f.Dawn.Or(time.Time{}).Before(f.Dusk.Or(time.Time{})))
	assert.Contains(t, strings.Join(f.Unknown, "\n"), "faces")
}

func TestHumidityAtAnHourIsTheSameAsItsDewPoint(t *testing.T) {
	in := coach()
	in.Weather.DewPoint = quantity.Opt[quantity.Temperature]{}
	in.Weather.Humidity = quantity.Some(quantity.Fraction(0.35))
	in.Weather.HumidityAt = quantity.Some(model.TimeOfDay{Hour: 15})
	got := day(t, in)
	m, _ := got.At(time.Date(2026, 6, 12, 15, 0, 0, 0, in.Zone))
	assert.InDelta(t, 31.9, m.Air.Or(0).Celsius(), 0.3)
	assert.InDelta(t, 20.3, m.WetBulb.Or(0).Celsius(), 0.5) // psychrometrics.csv: 30 C, 40 %: 20.1; 35 C, 30 %: 21.5
}

func TestWrongInput(t *testing.T) {
	wrong := map[string]func(*drying.Input){
		"low of the day":    func(in *drying.Input) { in.Weather.Low = quantity.Some(quantity.Celsius(40)) },
		"dew point":         func(in *drying.Input) { in.Weather.DewPoint = quantity.Some(quantity.Celsius(35)) },
		"wind":              func(in *drying.Input) { in.Weather.Wind = quantity.Some(quantity.Speed(math.NaN())) },
		"time zone":         func(in *drying.Input) { in.Zone = nil },
		"latitude":          func(in *drying.Input) { in.Place.Latitude = 100 * deg },
		"stated twice":      func(in *drying.Input) { in.Faces = append(in.Faces, in.Faces[0]) },
		"no face":           func(in *drying.Input) { in.Faces[0].Side = "deck" },
		"no face to shade":  func(in *drying.Input) { in.Shades = []model.Shade{{Side: "deck"}} },
		"pace":              func(in *drying.Input) { in.Faces[0].Pace = quantity.Some(quantity.Coverage(0)) },
		"rinse":             func(in *drying.Input) { in.Faces[0].Rinse = quantity.Some(quantity.Duration(-1)) },
		"film":              func(in *drying.Input) { in.Faces[0].Film = quantity.Some(quantity.Film(-1)) },
		"relative humidity": func(in *drying.Input) { in.Weather.Humidity = quantity.Some(quantity.Fraction(50)) },
		"does not exist": func(in *drying.Input) {
			in.Date = model.Date{Year: 2026, Month: 3, Day: 8}
			in.Weather.DewPoint = quantity.Opt[quantity.Temperature]{}
			in.Weather.Humidity = quantity.Some(quantity.Fraction(0.5))
			in.Weather.HumidityAt = quantity.Some(model.TimeOfDay{Hour: 2, Minute: 30})
		},
	}
	for word, spoil := range wrong {
		in := coach()
		spoil(&in)
		_, err := drying.Day(in)
		assert.ErrorContains(t, err, word)
	}
}

func TestConstantsHaveSources(t *testing.T) {
	for _, c := range drying.Constants() {
		assert.NotEmpty(t, c.Source.Text, c.Name)
		assert.NotEmpty(t, c.Source.Tag, c.Name)
	}
}

// BenchmarkWork is a day of which the panels are known.
func BenchmarkWork(b *testing.B) {
	in := coach()
	panels, err := drying.PanelsOf(in)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := panels.Day(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkDay(b *testing.B) {
	in := coach()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := drying.Day(in); err != nil {
			b.Fatal(err)
		}
	}
}

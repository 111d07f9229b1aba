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
	"washeve/planner/drying/clock"
	"washeve/planner/drying/heading"
	"washeve/planner/drying/panel"
	"washeve/planner/drying/sky"
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

// coach is a June day at Oklahoma City, nose to the north: left faces west.
func coach() drying.Input {
	areas := map[model.Side]quantity.Area{model.Left: 32, model.Right: 32, model.Front: 7, model.Rear: 7, model.Roof: 30}
	faces := make([]drying.Face, 0, len(areas))
	for _, side := range model.Sides() {
		faces = append(faces, drying.Face{
			Side: side, Area: quantity.Some(areas[side]),
			Film: quantity.Some(60 * quantity.MillilitrePerSquareMetre), Colour: quantity.Some(panel.Dark),
		})
	}
	return drying.Input{
		Date: model.Date{Year: 2026, Month: 6, Day: 12}, Zone: zone("America/Chicago"),
		Place:    sun.Place{Latitude: 35.47 * deg, Longitude: -97.52 * deg},
		Heading:  quantity.Some(heading.Of(0)),
		Faces:    faces,
		Coverage: quantity.Some(40 * quantity.SquareFootPerMinute),
		Weather: drying.Weather{
			Low: quantity.Some(quantity.Celsius(18)), High: quantity.Some(quantity.Celsius(32)),
			DewPoint: quantity.Some(quantity.Celsius(15)), Wind: quantity.Some(2 * quantity.MetrePerSecond),
			Cloud: quantity.Some(sky.Clear),
		},
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

func sides(o drying.Order) []model.Side {
	var out []model.Side
	for _, turn := range o.Turns {
		out = append(out, turn.Side)
	}
	return out
}

// At 10 the sun is in the east: after the roof the shady left, whose sun comes
// before the front's, and the sunny right last.
func TestOrderGoesAheadOfTheSun(t *testing.T) {
	f := day(t, coach())
	for _, o := range f.Orders {
		if o.Label != "10:00" {
			continue
		}
		got := sides(o)
		assert.Equal(t, model.Roof, got[0])
		assert.Less(t, index(got, model.Left), index(got, model.Right))
		for _, turn := range o.Turns {
			assert.NotEmpty(t, turn.Why)
			if turn.Side == model.Left {
				assert.Contains(t, turn.Why, "in the shade until 13:")
			}
		}
		return
	}
	t.Fatal("no order for 10:00")
}

func index(all []model.Side, side model.Side) int {
	for i, s := range all {
		if s == side {
			return i
		}
	}
	return -1
}

func TestWindowsAreEarlyOrLate(t *testing.T) {
	f := day(t, coach())
	require.NotEmpty(t, f.Windows)
	for _, w := range f.Windows {
		assert.True(t, w.From.Before(w.To))
		assert.True(t, w.To.Hour() < 10 || w.From.Hour() > 17, "%s to %s", w.From, w.To)
		if start, ok := w.LatestStart.Get(); ok {
			assert.InDelta(t, f.Job.Or(0).Seconds(), w.To.Sub(start).Seconds(), 1)
		}
		assert.NotEmpty(t, w.Why)
	}
}

// Without weather: sun and shade, the order, and a list of what is not known.
func TestWithoutWeather(t *testing.T) {
	in := coach()
	in.Weather = drying.Weather{}
	f := day(t, in)
	assert.Empty(t, f.Windows)
	assert.Empty(t, f.Limits)
	assert.NotEmpty(t, f.Orders)
	assert.NotEmpty(t, f.Sunlit)
	for _, word := range []string{"low and high", "humidity", "wind", "cloud"} {
		assert.Contains(t, strings.Join(f.Unknown, "\n"), word)
	}
	face := at(t, f, 9, model.Right)
	assert.True(t, face.Sunlit)
	assert.False(t, face.Dries.Given() || face.Dry.Given() || face.Section.Given())
}

func TestWithoutHeading(t *testing.T) {
	in := coach()
	in.Heading = quantity.Opt[heading.Heading]{}
	f := day(t, in)
	assert.False(t, at(t, f, 9, model.Right).Known)
	assert.True(t, at(t, f, 9, model.Roof).Dries.Given())
	assert.Empty(t, f.Windows)
	assert.Len(t, f.Orders[5].Turns, 1)
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
	in.Weather.HumidityAt = quantity.Some(clock.TimeOfDay{Hour: 15})
	got := day(t, in)
	m, _ := got.At(time.Date(2026, 6, 12, 15, 0, 0, 0, in.Zone))
	assert.InDelta(t, 31.9, m.Air.Or(0).Celsius(), 0.3)
	assert.InDelta(t, 20.3, m.WetBulb.Or(0).Celsius(), 0.5) // psychrometrics.csv: 30 C, 40 %: 20.1; 35 C, 30 %: 21.5
}

func TestShadeKeepsTheSunOff(t *testing.T) {
	in := coach()
	open := at(t, day(t, in), 9, model.Right)
	in.Shades = []drying.Shade{{Side: model.Right, From: clock.TimeOfDay{Hour: 8}, To: clock.TimeOfDay{Hour: 11}, By: "the oak"}}
	f := day(t, in)
	shaded := at(t, f, 9, model.Right)
	assert.True(t, shaded.Shaded)
	assert.False(t, shaded.Sunlit)
	assert.Less(t, shaded.Irradiance, open.Irradiance/3)
	assert.Greater(t, shaded.Dries.Or(0), open.Dries.Or(0))
	assert.True(t, at(t, f, 11, model.Right).Sunlit)
}

func TestShadePastMidnightAndAllDay(t *testing.T) {
	in := coach()
	in.Shades = []drying.Shade{{Side: model.Right, From: clock.TimeOfDay{Hour: 20}, To: clock.TimeOfDay{Hour: 9}}, {Side: model.Roof}}
	f := day(t, in)
	assert.True(t, at(t, f, 8, model.Right).Shaded)
	assert.False(t, at(t, f, 9, model.Right).Shaded)
	assert.False(t, at(t, f, 13, model.Roof).Sunlit)
}

func codes(f drying.Forecast) string {
	var out []string
	for _, l := range f.Limits {
		out = append(out, l.Note.Code)
	}
	for _, n := range f.Notes {
		out = append(out, n.Code)
	}
	return strings.Join(out, " ")
}

func TestLimits(t *testing.T) {
	in := coach()
	assert.Contains(t, codes(day(t, in)), "hot-panel")
	assert.NotContains(t, codes(day(t, in)), "freezing")
	in.TankLimit = quantity.Some(quantity.Celsius(30))
	hot := day(t, in)
	assert.Contains(t, codes(hot), "hot-tank")
	for _, l := range hot.Limits {
		assert.False(t, l.To.Before(l.From))
		assert.NotContains(t, l.Note.Text(quantity.US), "%!")
	}
	in = coach()
	in.Date = model.Date{Year: 2026, Month: 1, Day: 12}
	in.Weather.Low, in.Weather.High = quantity.Some(quantity.Celsius(-6)), quantity.Some(quantity.Celsius(5))
	in.Weather.DewPoint = quantity.Some(quantity.Celsius(-8))
	assert.Contains(t, codes(day(t, in)), "freezing")
}

func TestPolarDaysAndChangingClocks(t *testing.T) {
	in := coach()
	in.Place, in.Zone = sun.Place{Latitude: 71 * deg, Longitude: 25.8 * deg}, zone("Europe/Oslo")
	in.Date = model.Date{Year: 2026, Month: 6, Day: 21}
	assert.Contains(t, codes(day(t, in)), "polar-day")
	in.Date = model.Date{Year: 2026, Month: 12, Day: 21}
	assert.Contains(t, codes(day(t, in)), "polar-night")
	in.Date = model.Date{Year: 2026, Month: 3, Day: 29}
	f := day(t, in)
	assert.Contains(t, codes(f), "clocks-change")
	assert.Len(t, f.Steps, 92)
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
		"no face to shade":  func(in *drying.Input) { in.Shades = []drying.Shade{{Side: "deck"}} },
		"coverage rate":     func(in *drying.Input) { in.Coverage = quantity.Some(quantity.Coverage(0)) },
		"film":              func(in *drying.Input) { in.Faces[0].Film = quantity.Some(quantity.Film(-1)) },
		"relative humidity": func(in *drying.Input) { in.Weather.Humidity = quantity.Some(quantity.Fraction(50)) },
		"does not exist": func(in *drying.Input) {
			in.Date = model.Date{Year: 2026, Month: 3, Day: 8}
			in.Weather.DewPoint = quantity.Opt[quantity.Temperature]{}
			in.Weather.Humidity = quantity.Some(quantity.Fraction(0.5))
			in.Weather.HumidityAt = quantity.Some(clock.TimeOfDay{Hour: 2, Minute: 30})
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

func BenchmarkDay(b *testing.B) {
	in := coach()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := drying.Day(in); err != nil {
			b.Fatal(err)
		}
	}
}

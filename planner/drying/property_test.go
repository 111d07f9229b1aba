package drying_test

import (
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
)

func anyInput(t *rapid.T) drying.Input {
	in := coach()
	in.Date = model.Date{Year: 2026, Month: time.Month(rapid.IntRange(1, 12).Draw(t, "month")), Day: rapid.IntRange(1, 28).Draw(t, "day")}
	in.Place.Latitude = quantity.Angle(rapid.Float64Range(-70, 70).Draw(t, "latitude")) * deg
	in.Heading = quantity.Some(model.HeadingOf(quantity.Angle(rapid.Float64Range(0, 360).Draw(t, "heading")) * deg))
	low := rapid.Float64Range(2, 28).Draw(t, "low")
	in.Weather.Low, in.Weather.High = quantity.Some(quantity.Celsius(low)), quantity.Some(quantity.Celsius(low+rapid.Float64Range(0, 18).Draw(t, "swing")))
	in.Weather.DewPoint = quantity.Some(quantity.Celsius(low - rapid.Float64Range(0, 15).Draw(t, "dry")))
	in.Weather.Wind = quantity.Some(quantity.Speed(rapid.Float64Range(0, 12).Draw(t, "wind")))
	in.Weather.Sky = rapid.SampledFrom(model.Skies()).Draw(t, "sky")
	atPace(in, quantity.Coverage(rapid.Float64Range(2, 300).Draw(t, "pace"))*quantity.SquareFootPerMinute)
	return in
}

// each calls f with the same face at the same moment of two forecasts.
func each(a, b drying.Forecast, f func(x, y drying.FaceMoment)) {
	for i := range a.Steps {
		for j := range a.Steps[i].Faces {
			f(a.Steps[i].Faces[j], b.Steps[i].Faces[j])
		}
	}
}

func TestASectionNeverTakesLongerThanItsFilmLasts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		pace := in.Faces[0].Pace.Or(0)
		f := day(t, in)
		each(f, f, func(x, _ drying.FaceMoment) {
			require.LessOrEqual(t, float64(pace.Time(x.Section.Or(0))), float64(x.Dries.Or(0))*(1+1e-9))
			require.False(t, math.IsNaN(float64(x.Dries.Or(0))))
		})
	})
}

func TestADarkerColourNeverDriesSlower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		dark := day(t, in)
		for i := range in.Faces {
			in.Faces[i].Colour = model.White
		}
		each(dark, day(t, in), func(x, y drying.FaceMoment) {
			require.LessOrEqual(t, float64(x.Dries.Or(0)), float64(y.Dries.Or(0))*1.001)
		})
	})
}

// What is wetted later is never dry sooner.
func TestWhatIsWettedLaterIsDryLater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := day(t, anyInput(t))
		for i, m := range f.Steps[1:] {
			for n, face := range m.Faces {
				require.GreaterOrEqual(t, float64(drying.Step+face.Dries.Or(0)), float64(f.Steps[i].Faces[n].Dries.Or(0))-1e-6)
			}
		}
	})
}

// The work on the faces leaves the panels as they are.
func TestPanelsServeAnyWork(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		panels, err := drying.PanelsOf(in)
		require.NoError(t, err)
		in.Faces = slices.Clone(in.Faces)
		for i := range in.Faces {
			in.Faces[i].Film = quantity.Some(quantity.Film(rapid.Float64Range(0, 200).Draw(t, "film")) * quantity.MillilitrePerSquareMetre)
			in.Faces[i].Area = quantity.Some(quantity.Area(rapid.Float64Range(1, 40).Draw(t, "area")))
		}
		require.True(t, panels.Serve(in))
		known, err := panels.Day(in)
		require.NoError(t, err)
		require.Equal(t, day(t, in), known)
		in.Faces[0].Colour = model.Black
		require.False(t, panels.Serve(in))
	})
}

// Shade may dry a face faster where a clear sky would cool it more than the
// sun warms it; with the sun on it until it is dry, it never does.
func TestShadeNeverHurriesASunnyFace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		open := day(t, in)
		for _, f := range in.Faces {
			in.Shades = append(in.Shades, model.Shade{Side: f.Side})
		}
		shut := day(t, in)
		each(open, shut, func(x, y drying.FaceMoment) {
			require.False(t, y.Sunlit)
			require.LessOrEqual(t, float64(y.Irradiance), float64(x.Irradiance)+1e-9)
		})
		for n := range in.Faces {
			for i := range open.Steps {
				if x, y := open.Steps[i].Faces[n], shut.Steps[i].Faces[n]; sunnier(open, shut, i, n) {
					require.LessOrEqual(t, float64(x.Dries.Or(0)), float64(y.Dries.Or(0))*1.001)
				}
			}
		}
	})
}

// sunnier tells whether face n has 150 W/m2 more in one day than in the other from step i
// until its film is dry.
func sunnier(day, than drying.Forecast, i, n int) bool {
	dry := float64(i) + float64(day.Steps[i].Faces[n].Dries.Or(0)/drying.Step)
	for ; float64(i) < dry+1 && i < len(day.Steps); i++ {
		if day.Steps[i].Faces[n].Irradiance-than.Steps[i].Faces[n].Irradiance <= 150 {
			return false
		}
	}
	return true
}

func TestTheHalfTurnSwapsTheSides(t *testing.T) {
	opposite := map[model.Side]model.Side{model.Left: model.Right, model.Right: model.Left, model.Front: model.Rear, model.Rear: model.Front, model.Roof: model.Roof}
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		there := day(t, in)
		in.Heading = quantity.Some(model.HeadingOf(in.Heading.Or(0).Angle() + 180*deg))
		back := day(t, in)
		for i, m := range there.Steps {
			for _, x := range m.Faces {
				y, _ := back.Steps[i].Face(opposite[x.Side])
				require.InDelta(t, float64(x.Irradiance), float64(y.Irradiance), 1e-6)
			}
		}
	})
}

// In a window every face can be rinsed whole.
func TestWindowsKeepTheirPromise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := day(t, anyInput(t))
		for _, w := range f.Windows {
			for _, m := range f.Steps {
				if m.At.Before(w.From) || m.At.After(w.To) {
					continue
				}
				for _, face := range m.Faces {
					require.True(t, m.Light && !face.Hurries)
				}
			}
		}
	})
}

// A start shows the worst of each face's turn, and an easy one hurries nobody.
func TestStartsKeepTheirPromise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		pace := in.Faces[0].Pace.Or(0)
		f := day(t, in)
		for _, s := range f.Starts {
			require.Len(t, s.Turns, 5)
			require.Equal(t, s.Easy, s.Why == "")
			for _, turn := range s.Turns {
				require.False(t, s.Easy && turn.Hurries)
				require.LessOrEqual(t, float64(pace.Time(turn.Section.Or(0))), float64(turn.Dries.Or(0))*(1+1e-9))
				for _, m := range f.Steps {
					if now, _ := m.Face(turn.Side); !m.At.Before(turn.From) && !m.At.After(turn.To) {
						require.LessOrEqual(t, turn.Dries.Or(0), now.Dries.Or(0))
					}
				}
			}
		}
	})
}

// By the measure that recommends a start none is better: no start is easy where that one
// is not, none after which washing is possible has fewer faces that hurry.
func TestNoStartIsBetterThanTheRecommended(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		for i := range in.Faces {
			in.Faces[i].Film = quantity.Some(quantity.Film(rapid.Float64Range(10, 60).Draw(t, "film")) * quantity.MillilitrePerSquareMetre)
		}
		f := day(t, in)
		best, given := f.Recommended.Get()
		for _, s := range f.Starts {
			if !given {
				require.True(t, s.Room == 0 && !s.Easy)
				continue
			}
			require.False(t, s.Better(best))
			byDay := func(s drying.Start) bool { return s.Room >= 0.8 && !s.EndsLate }
			require.False(t, s.Easy && !best.Easy && !(byDay(best) && s.EndsLate))
			require.False(t, byDay(s) && !byDay(best), "it could end by daylight")
			if !best.Easy && s.Room > 0 && byDay(s) == byDay(best) {
				require.LessOrEqual(t, len(best.Hurried()), len(s.Hurried()))
			}
		}
	})
}

// What a turn says of sun and shade holds when it begins, and ends later.
func TestTheReasonOfATurnHoldsWhenItBegins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := day(t, anyInput(t))
		for _, s := range f.Starts {
			for _, turn := range s.Turns {
				if turn.Side == model.Roof {
					continue
				}
				m, found := f.At(turn.From)
				require.True(t, found)
				now, _ := m.Face(turn.Side)
				set, sets := f.Sun.Set.Get()
				light := map[bool]string{true: "in the sun", false: "in the shade"}[now.Sunlit && !(sets && !turn.From.Before(set))]
				require.True(t, strings.HasPrefix(turn.Why, light), "%s: %s", turn.From, turn.Why)
				if _, until, ends := strings.Cut(turn.Why, " until "); ends {
					require.GreaterOrEqual(t, until, turn.From.Format("15:04"), "%s is past", turn.Why)
				}
			}
		}
	})
}

package picture_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/theme"
)

func dayPlan(t testing.TB, values map[string]string) *planner.DayPlan {
	rig, places, wash := sample.Day()
	sample.Set(&wash, values)
	p, err := planner.Make(rig, places, wash)
	require.NoError(t, err)
	require.NotNil(t, p.Day)
	return p.Day
}

func compass(d *planner.DayPlan) picture.Compass {
	return picture.Compass{Heading: d.Heading, Steps: d.Steps, From: d.Start.At, To: d.Start.End}
}

func TestDayPictures(t *testing.T) {
	for _, th := range []theme.Theme{uncoloured(), plain()} {
		var b strings.Builder
		show := func(name string, lines []string) {
			fmt.Fprintf(&b, "%s\n%s\n\n", name, strings.Join(lines, "\n"))
		}
		for _, values := range []map[string]string{
			{}, {"heading": "NNW", "start": "11:00"}, {"heading": "225", "date": "2026-12-21"}, {"low": "90 F", "high": "118 F", "dew_point": "30 F"},
		} {
			d := dayPlan(t, values)
			s := picture.Strip{Day: d, System: quantity.Metric}
			show(fmt.Sprint("strip, 80 ", values), s.Draw(th, layout.Size{W: 80, H: 12}))
			show("legend", []string{s.Legend(th, 80)})
			show("compass, 21x10", compass(d).Draw(th, layout.Size{W: 21, H: 10}))
			show("compass, 43x21", compass(d).Draw(th, layout.Size{W: 43, H: 21}))
		}
		name := "day.txt"
		if th.Plain {
			name = "day-plain.txt"
		}
		golden.Check(t, *update, name, b.String())
	}
}

// The bar is of hours, not of starts: beside it stands which, and that they are too short where
// the wash takes longer than they last.
func TestTheBarOfEasyHoursIsNamed(t *testing.T) {
	for _, c := range []struct {
		values map[string]string
		words  string
	}{
		{nil, "hours in which no face hurries"},
		{map[string]string{"heading": "225", "date": "2026-12-21"}, "too short for the whole wash"},
	} {
		d := dayPlan(t, c.values)
		require.NotEmpty(t, d.Windows)
		require.Equal(t, c.values == nil, d.NotAfter.Given())
		bar := ansi.Strip(picture.Strip{Day: d}.Draw(plain(), layout.Size{W: 80, H: 20})[1])
		assert.Contains(t, bar, "  "+c.words)
		assert.LessOrEqual(t, len(bar), 80)
	}
}

// Each cell of the strip says what the forecast says.
func TestStripSaysTheForecast(t *testing.T) {
	d := dayPlan(t, nil)
	lines := picture.Strip{Day: d}.Draw(plain(), layout.Size{W: 80, H: 20})
	hours := lines[0] + " "
	for i, f := range d.Steps[0].Faces {
		for _, m := range d.Steps {
			if !m.FullHour || !m.Light {
				continue
			}
			x := strings.Index(hours, " "+m.Label[:2]+" ")
			require.GreaterOrEqual(t, x, 0, m.Label)
			says, now := fmt.Sprintf("%-80s", lines[3+i])[x:x+4], m.Faces[i]
			what := fmt.Sprintf("%s at %s: %q", f.Side, m.Label, says)
			switch minutes := now.Dries.Or(0).Minutes(); {
			case strings.Contains(says, "hot"):
				assert.Greater(t, float64(now.Dry.Or(0)), 273.15+50, what)
			case minutes < 100:
				assert.Equal(t, now.Sunlit, strings.HasPrefix(says, "*"), what)
				assert.Equal(t, now.Hurries, strings.HasSuffix(says, "!"), what)
				assert.Equal(t, fmt.Sprintf("%2.0f", math.Floor(minutes)), says[1:3], what)
			}
		}
	}
}

func TestStripTellsWhereItIsClicked(t *testing.T) {
	d := dayPlan(t, nil)
	s := picture.Strip{Day: d}
	hours := s.Draw(plain(), layout.Size{W: 80, H: 20})[0]
	at, ok := s.At(strings.Index(hours, "10")-1, 80)
	require.True(t, ok)
	assert.Equal(t, "10:00", at.Format("15:04"))
	for _, x := range []int{-1, 0, 5, 79, 500} {
		_, ok := s.At(x, 80)
		assert.False(t, ok, x)
	}
	_, ok = s.At(10, 20)
	assert.False(t, ok, "too narrow")
}

// The sun stands in the quarter of the compass that its azimuth names.
func TestCompassHasTheSunWhereItIs(t *testing.T) {
	for _, c := range []struct {
		start      string
		east, high bool
	}{{"08:00", true, true}, {"17:00", false, true}} {
		d := dayPlan(t, map[string]string{"start": c.start, "heading": ""})
		lines := compass(d).Draw(uncoloured(), layout.Size{W: 43, H: 21})
		for y, line := range lines {
			if x := strings.Index(line, "☼"); x >= 0 {
				column := cells.Width(line[:x])
				assert.Equal(t, c.east, column > 21, "%s: column %d", c.start, column)
				assert.Less(t, y, 14, "north of the rim in the south")
			}
		}
		assert.Contains(t, strings.Join(lines, "\n"), "☼")
	}
}

func TestDayPicturesFitAnySize(t *testing.T) {
	d := dayPlan(t, nil)
	rapid.Check(t, func(t *rapid.T) {
		th := rapid.SampledFrom([]theme.Theme{uncoloured(), plain()}).Draw(t, "theme")
		size := layout.Size{W: rapid.IntRange(-2, 250).Draw(t, "w"), H: rapid.IntRange(-2, 60).Draw(t, "h")}
		c := compass(d)
		c.Heading = quantity.Some(model.HeadingOf(quantity.Angle(rapid.Float64().Draw(t, "heading"))))
		c.From = d.Steps[0].At.Add(time.Duration(rapid.IntRange(-1000, 3000).Draw(t, "from")) * time.Minute)
		for _, lines := range [][]string{c.Draw(th, size), picture.Strip{Day: d}.Draw(th, size)} {
			assert.LessOrEqual(t, len(lines), max(size.H, 0))
			for _, line := range lines {
				if cells.Width(line) > max(size.W, 0) {
					t.Fatalf("%q is wider than %d", line, size.W)
				}
			}
		}
		if line := (picture.Strip{Day: d}).Legend(th, size.W); cells.Width(strings.TrimRight(line, " ")) > max(size.W, 0) {
			t.Fatalf("legend %q is wider than %d", line, size.W)
		}
	})
}

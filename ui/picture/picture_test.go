package picture_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
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

var update = golden.Flag()

func plain() theme.Theme { return theme.New(theme.Options{Plain: true}) }

func uncoloured() theme.Theme { return theme.New(theme.Options{Profile: termenv.Ascii}) }

func coach() picture.Coach {
	c := picture.Coach{Length: 40.5 * quantity.Foot, Height: 12.75 * quantity.Foot, Width: 8.5 * quantity.Foot, Faces: map[model.Side]picture.Face{}}
	for _, f := range sample.Plan().Faces {
		c.Faces[f.Name] = picture.Face{Water: f.Water, Spots: f.Spots}
	}
	return c
}

func curve() picture.Curve {
	p := sample.Plan()
	return picture.Curve{Points: p.Bed.Curve, From: p.Bed.SoFar, To: p.Bed.SoFar + p.DI.Volume, Limit: 10}
}

func TestPictures(t *testing.T) {
	car := coach()
	car.Length, car.Height = 15*quantity.Foot, 5*quantity.Foot
	p := sample.Plan()
	for _, th := range []theme.Theme{uncoloured(), plain()} {
		var b strings.Builder
		show := func(name string, lines []string) {
			fmt.Fprintf(&b, "%s\n%s\n\n", name, strings.Join(lines, "\n"))
		}
		show("coach, side, 28x6", picture.Side(th, coach(), layout.Size{W: 28, H: 6}))
		show("coach, side, 60x12", picture.Side(th, coach(), layout.Size{W: 60, H: 12}))
		show("car, side, 60x9", picture.Side(th, car, layout.Size{W: 60, H: 9}))
		show("coach, above, 44x6", picture.Above(th, coach(), layout.Size{W: 44, H: 6}))
		show("tank, 14x6", picture.Tank(th, p.Bed.Before, p.Bed.After, layout.Size{W: 14, H: 6}))
		show("tank, 38x9", picture.Tank(th, p.Bed.Before, p.Bed.After, layout.Size{W: 38, H: 9}))
		show("legend", []string{picture.TankLegend(th, p.Bed.Before, p.Bed.After, 43)})
		show("curve, 60x9", curve().Draw(th, layout.Size{W: 60, H: 9}))
		show("bars, 44", picture.Bars(th, bars(), 2.5, 44))
		show("bars, 70", picture.Bars(th, bars(), 2.5, 70))
		show("meter", []string{picture.Meter(th, 0.7, th.Good, 20)})
		name := "pictures.txt"
		if th.Plain {
			name = "plain.txt"
		}
		golden.Check(t, *update, name, b.String())
	}
}

func bars() []picture.Bar {
	return []picture.Bar{
		{Label: "contact time", Value: 2.5, Number: "2.5 gpm", Note: "binds"},
		{Label: "sprayer", Value: 1.4, Number: "1.4 gpm", Note: "under the cap"},
		{Label: "open hose", Value: 9, Number: "9 gpm", Note: "3.6 times the cap"},
	}
}

func TestPlainIsASCII(t *testing.T) {
	p := sample.Plan()
	th := plain()
	size := layout.Size{W: 60, H: 9}
	all := append(picture.Side(th, coach(), size), picture.Above(th, coach(), size)...)
	all = append(all, picture.Tank(th, p.Bed.Before, p.Bed.After, size)...)
	all = append(all, curve().Draw(th, size)...)
	all = append(all, picture.Bars(th, bars(), 2.5, 60)...)
	for _, r := range strings.Join(all, "") {
		assert.Less(t, r, rune(0x7f))
	}
}

// A longer vehicle is drawn longer in the same space, a taller one taller.
func TestCoachIsToScale(t *testing.T) {
	size := layout.Size{W: 60, H: 12}
	short := coach()
	short.Length = 20 * quantity.Foot
	long, stub := picture.Side(uncoloured(), coach(), size), picture.Side(uncoloured(), short, size)
	ratio := func(lines []string) float64 {
		body := 0
		for _, l := range lines {
			if strings.ContainsAny(l, "╭│╰") {
				body++
			}
		}
		return float64(cells.Width(lines[0])) / float64(body)
	}
	assert.InDelta(t, 40.5/12.75*2, ratio(long), 0.8)
	assert.InDelta(t, 20/12.75*2, ratio(stub), 0.8)
}

// Whatever the numbers, no picture panics or leaves its space.
func TestPicturesStayInside(t *testing.T) {
	themes := []theme.Theme{uncoloured(), plain(), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(t *rapid.T) {
		th := themes[rapid.IntRange(0, 2).Draw(t, "theme")]
		size := layout.Size{W: rapid.IntRange(0, 120).Draw(t, "w"), H: rapid.IntRange(0, 30).Draw(t, "h")}
		f := func(name string) float64 {
			return rapid.OneOf(rapid.Float64Range(-1, 1e4), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 1e300})).Draw(t, name)
		}
		c := coach()
		c.Length, c.Height, c.Width = quantity.Length(f("length")), quantity.Length(f("height")), quantity.Length(f("width"))
		layers := func(n string) planner.Layers {
			return planner.Layers{Spent: quantity.Fraction(f(n + "a")), Working: quantity.Fraction(f(n + "b")), Fresh: quantity.Fraction(f(n + "c"))}
		}
		u := picture.Curve{From: quantity.Volume(f("from")), To: quantity.Volume(f("to")), Limit: f("limit")}
		for i := range rapid.IntRange(0, 5).Draw(t, "points") {
			name := fmt.Sprint("p", i)
			u.Points = append(u.Points, planner.CurvePoint{Volume: quantity.Volume(f(name)), Outlet: planner.Band[float64]{P10: f(name + "a"), P50: f(name + "b"), P90: f(name + "c")}})
		}
		inside(t, "side", size, picture.Side(th, c, size))
		inside(t, "above", size, picture.Above(th, c, size))
		inside(t, "tank", size, picture.Tank(th, layers("b"), layers("n"), size))
		inside(t, "curve", size, u.Draw(th, size))
		few := bars()
		few[0].Value, few[1].Value = f("bar"), f("bar 2")
		inside(t, "bars", layout.Size{W: max(size.W, 12), H: 3}, picture.Bars(th, few, f("cap"), max(size.W, 12)))
		inside(t, "meter", layout.Size{W: size.W, H: 1}, []string{picture.Meter(th, f("part"), th.Good, size.W)})
	})
}

func inside(t *rapid.T, name string, size layout.Size, lines []string) {
	if len(lines) > max(size.H, 0) {
		t.Fatalf("%s has %d lines for %d", name, len(lines), size.H)
	}
	for _, line := range lines {
		if cells.Width(line) > size.W {
			t.Fatalf("%s: %q is wider than %d", name, line, size.W)
		}
	}
}

// Whatever is drawn on a face has its words in the legend, and no line is too wide.
func TestTheLegendNamesWhatIsDrawn(t *testing.T) {
	c := coach()
	c.Faces[model.Left] = picture.Face{Water: model.Softened, Spots: planner.Seen}
	c.Faces[model.Roof] = picture.Face{Water: model.Raw, Spots: planner.Towel}
	th := uncoloured()
	legend := picture.FaceLegend(th, c, 60, model.Left, model.Roof)
	assert.Equal(t, "● dry by towel o spots seen ▓ raw ▒ softened ", legend)
	drawing := strings.Join(append(picture.Side(th, c, layout.Size{W: 44, H: 9}), picture.Above(th, c, layout.Size{W: 44, H: 5})...), "")
	for _, mark := range []string{"●", "o", "▓", "▒"} {
		assert.Contains(t, drawing, mark)
	}
	assert.Equal(t, "o spots seen ▒ softened ", picture.FaceLegend(th, c, 60, model.Left), "only what is in sight")
	assert.Equal(t, "o spots seen ", picture.FaceLegend(th, c, 12, model.Left))
	c.Faces[model.Left] = picture.Face{Water: model.DI, Spots: planner.NoSpots}
	assert.Empty(t, picture.FaceLegend(th, c, 60, model.Left), "a clean face has no mark")
	assert.Empty(t, picture.FaceLegend(plain(), c, 60, model.Roof))
}

// A face that nobody sees says so beside its outlook, or instead of it where there is less
// room; in words as well.
func TestAFaceOutOfSightSaysSo(t *testing.T) {
	c := coach()
	c.Faces[model.Roof] = picture.Face{Water: model.Raw, Spots: planner.Towel, Unseen: true}
	for width, words := range map[int]string{
		60: "─ roof raw, dry by towel, out of sight ─", 28: "─ roof raw, out of sight ─", 25: "─ roof out of sight ─",
	} {
		assert.Contains(t, picture.Side(uncoloured(), c, layout.Size{W: width, H: width / 4})[0], words)
	}
	assert.Contains(t, picture.Side(plain(), c, layout.Size{W: 60, H: 9}), "roof: raw, dry by towel, out of sight")
}

package picture_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/internal/golden"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/theme"
)

func fill() picture.Fill {
	at := func(gallons, ppm float64, kind picture.DotKind) picture.Dot {
		return picture.Dot{Volume: quantity.Volume(gallons) * quantity.Gallon, PPM: ppm, Kind: kind}
	}
	return picture.Fill{
		Curve:    curve(),
		Readings: []picture.Dot{at(30, 0, picture.Flushed), at(120, 1, picture.Flushed), at(160, 0, picture.FirstCup), at(180, 150, picture.Unexplained)},
		Past:     [][]picture.Dot{{at(60, 0, picture.Flushed), at(250, 30, picture.Flushed)}, {at(9000, 5, picture.Flushed)}},
	}
}

func TestFill(t *testing.T) {
	var b strings.Builder
	for _, th := range []theme.Theme{uncoloured(), plain()} {
		for _, size := range []layout.Size{{W: 60, H: 9}, {W: 90, H: 16}} {
			fmt.Fprintf(&b, "%dx%d\n%s\n%s\n\n", size.W, size.H, strings.Join(fill().Draw(th, size), "\n"), picture.DotLegend(th, fill(), size.W))
		}
	}
	golden.Check(t, *update, "fill.txt", b.String())
}

// Each kind of reading has a mark of its own, so that colour is not needed.
func TestDotsDiffer(t *testing.T) {
	for _, th := range []theme.Theme{uncoloured(), plain()} {
		marks := map[string]bool{}
		for _, k := range []picture.DotKind{picture.Flushed, picture.FirstCup, picture.Unexplained} {
			mark, _ := picture.DotMark(th, k)
			marks[mark] = true
		}
		assert.Len(t, marks, 3)
	}
}

func TestFillStaysInside(t *testing.T) {
	themes := []theme.Theme{uncoloured(), plain(), theme.New(theme.Options{Profile: termenv.ANSI256})}
	rapid.Check(t, func(t *rapid.T) {
		th := themes[rapid.IntRange(0, 2).Draw(t, "theme")]
		size := layout.Size{W: rapid.IntRange(0, 120).Draw(t, "w"), H: rapid.IntRange(0, 30).Draw(t, "h")}
		number := rapid.OneOf(rapid.Float64Range(-1, 1e4), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 1e300}))
		f := picture.Fill{Curve: picture.Curve{Limit: number.Draw(t, "limit")}}
		for i := range rapid.IntRange(0, 5).Draw(t, "points") {
			v := number.Draw(t, fmt.Sprint("v", i))
			f.Points = append(f.Points, planner.CurvePoint{Volume: quantity.Volume(v), Outlet: planner.Band[float64]{P10: v, P50: v, P90: v}})
			d := picture.Dot{Volume: quantity.Volume(number.Draw(t, "dot")), PPM: number.Draw(t, "ppm"), Kind: picture.DotKind(i % 3)}
			f.Readings, f.Past = append(f.Readings, d), append(f.Past, []picture.Dot{d})
		}
		inside(t, "fill", size, f.Draw(th, size))
		inside(t, "legend", layout.Size{W: size.W, H: 1}, []string{picture.DotLegend(th, f, size.W)})
	})
}

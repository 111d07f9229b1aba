package layout_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/cells"
	"washeve/ui/layout"
)

// letters names the parts in the drawn boxes.
var letters = map[string]string{
	"Title": "t", "Walk": "w", "Help": "h", "Status": "s", "Hint": "k", "Verdict": "V", "Numbers": "N",
	"Caps": "C", "Side": "S", "Above": "A", "Faces": "F", "Tank": "T", "Legend": "L", "Stages": "G", "Curve": "U", "Notes": "!",
}

// drawn fills every part with its letter, in a quarter of the cells each way.
func drawn(size layout.Size, need layout.PlanNeeds) string {
	parts := reflect.ValueOf(layout.Plan(size, need))
	lines := make([]string, 0, size.H)
	for y := range size.H {
		var b strings.Builder
		for x := 0; x < size.W; x += 4 {
			mark := " "
			for i := range parts.NumField() {
				if parts.Field(i).Interface().(layout.Rect).Holds(x, y) {
					mark = letters[parts.Type().Field(i).Name]
				}
			}
			b.WriteString(mark)
		}
		lines = append(lines, strings.TrimRight(b.String(), " "))
	}
	return strings.Join(lines, "\n")
}

func TestPlanSmall(t *testing.T) {
	assert.Equal(t, strings.TrimSpace(`
tttttttttttttttttttt
wwwwwwwww VVVVVVVVVV
wwwwwwwww VVVVVVVVVV
wwwwwwwww NNNNNNNNNN
wwwwwwwww NNNNNNNNNN
wwwwwwwww NNNNNNNNNN
wwwwwwwww NNNNNNNNNN
wwwwwwwww NNNNNNNNNN
wwwwwwwww NNNNNNNNNN
wwwwwwwww NNNNNNNNNN
wwwwwwwww CCCCCCCCCC
wwwwwwwww CCCCCCCCCC
wwwwwwwww SSSSSSSTTT
wwwwwwwww SSSSSSSTTT
wwwwwwwww SSSSSSSTTT
wwwwwwwww SSSSSSSTTT
wwwwwwwww SSSSSSSTTT
wwwwwwwww SSSSSSSTTT
hhhhhhhhh LLLLLLLLLL
hhhhhhhhh !!!!!!!!!!
hhhhhhhhh !!!!!!!!!!
hhhhhhhhh !!!!!!!!!!
ssssssssssssssssssss
kkkkkkkkkkkkkkkkkkkk`), drawn(layout.Size{W: 80, H: 24}, layout.PlanNeeds{Bars: 7, Stages: 5}))
}

func TestPlanWideShowsEverything(t *testing.T) {
	got := drawn(layout.Size{W: 140, H: 40}, layout.PlanNeeds{Bars: 7, Stages: 5})
	for _, letter := range "twhskVNCSAFTGU!" {
		assert.Contains(t, got, string(letter))
	}
	assert.NotContains(t, got, "L", "the wide tank has its words beside it")
}

func TestPlanTallShowsAllCaps(t *testing.T) {
	got := drawn(layout.Size{W: 100, H: 30}, layout.PlanNeeds{Bars: 7, Stages: 5})
	assert.Equal(t, 7, strings.Count(got, " CC"))
}

func TestPlanPartsStayApartAndInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(t, "w"), H: rapid.IntRange(24, 90).Draw(t, "h")}
		need := layout.PlanNeeds{Bars: rapid.IntRange(0, 9).Draw(t, "bars"), Stages: rapid.IntRange(0, 12).Draw(t, "stages")}
		parts := reflect.ValueOf(layout.Plan(size, need))
		owner := map[[2]int]string{}
		for i := range parts.NumField() {
			r, name := parts.Field(i).Interface().(layout.Rect), parts.Type().Field(i).Name
			if r.Empty() {
				continue
			}
			if r.X < 0 || r.Y < 0 || r.X+r.W > size.W || r.Y+r.H > size.H {
				t.Fatalf("%s %v leaves the screen %v", name, r, size)
			}
			for y := r.Y; y < r.Y+r.H; y++ {
				for x := r.X; x < r.X+r.W; x++ {
					if other, taken := owner[[2]int{x, y}]; taken {
						t.Fatalf("%s and %s both own %d,%d", name, other, x, y)
					}
					owner[[2]int{x, y}] = name
				}
			}
		}
	})
}

func TestComposeCutsAndPlaces(t *testing.T) {
	got := layout.Compose(layout.Size{W: 10, H: 3}, []layout.Placed{
		{At: layout.Rect{X: 5, Y: 0, W: 5, H: 2}, Lines: []string{"right side", "r"}},
		{At: layout.Rect{X: 0, Y: 0, W: 4, H: 3}, Lines: []string{"left", "", "too many", "lines"}},
	})
	assert.Equal(t, "left right\n     r\ntoo", got)
}

func TestFits(t *testing.T) {
	assert.True(t, layout.Fits(layout.Size{W: 80, H: 24}))
	assert.False(t, layout.Fits(layout.Size{W: 79, H: 50}))
	assert.False(t, layout.Fits(layout.Size{W: 200, H: 23}))
}

func TestComposeNeverOverflows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(0, 40).Draw(t, "w"), H: rapid.IntRange(0, 10).Draw(t, "h")}
		var blocks []layout.Placed
		for range rapid.IntRange(0, 4).Draw(t, "blocks") {
			n := func(name string) int { return rapid.IntRange(-2, 45).Draw(t, name) }
			blocks = append(blocks, layout.Placed{At: layout.Rect{X: max(n("x"), 0), Y: max(n("y"), 0), W: n("bw"), H: n("bh")}, Lines: []string{cells.Safe(rapid.String().Draw(t, "line")), "x"}})
		}
		lines := strings.Split(layout.Compose(size, blocks), "\n")
		for _, line := range lines {
			if cells.Width(line) > size.W {
				t.Fatalf("%q is wider than %d", line, size.W)
			}
		}
	})
}

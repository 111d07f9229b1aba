package layout_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"washeve/ui/layout"
)

func TestBedPartsStayApartAndInside(t *testing.T) {
	over := map[string]bool{"Work": true} // it stands over others
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(t, "w"), H: rapid.IntRange(24, 90).Draw(t, "h")}
		parts := reflect.ValueOf(layout.Bed(size, layout.BedNow{InWords: rapid.Bool().Draw(t, "words"), InLog: rapid.Bool().Draw(t, "log"), Says: rapid.IntRange(0, 5).Draw(t, "says")}))
		owner := map[[2]int]string{}
		for i := range parts.NumField() {
			r, name := parts.Field(i).Interface().(layout.Rect), parts.Type().Field(i).Name
			if r.X < 0 || r.Y < 0 || r.X+r.W > size.W || r.Y+r.H > size.H {
				t.Fatalf("%s %v leaves the screen %v", name, r, size)
			}
			for y := r.Y; y < r.Y+r.H; y++ {
				for x := r.X; x < r.X+r.W && !over[name]; x++ {
					if other, taken := owner[[2]int{x, y}]; taken {
						t.Fatalf("%s and %s both own %d,%d", name, other, x, y)
					}
					owner[[2]int{x, y}] = name
				}
			}
		}
	})
}

func TestBedSmallHasRoomForAll(t *testing.T) {
	b := layout.Bed(layout.Size{W: 80, H: 24}, layout.BedNow{})
	for name, r := range map[string]layout.Rect{"curve": b.Curve, "tank": b.Tank, "notes": b.Notes, "list": b.List, "numbers": b.Numbers} {
		if r.Empty() || r.H < 3 {
			t.Errorf("%s has %d lines", name, r.H)
		}
	}
}

// While the hand walks through the log it has the room of the notes, where it has little;
// a long status takes the notes' lines first.
func TestBedMakesRoomForTheLogAndForWhatIsSaid(t *testing.T) {
	least := layout.Size{W: 80, H: 24}
	list := func(size layout.Size, now layout.BedNow) [2]int {
		b := layout.Bed(size, now)
		return [2]int{b.Notes.H, b.List.H}
	}
	for now, want := range map[layout.BedNow][2]int{
		{}: {3, 4}, {InLog: true}: {0, 7}, {Says: 3}: {1, 4}, {Says: 5}: {0, 3}, {Says: 3, InLog: true}: {0, 5},
	} {
		if got := list(least, now); got != want {
			t.Errorf("%+v: notes and log have %v lines, not %v", now, got, want)
		}
	}
	for _, size := range []layout.Size{{W: 80, H: 50}, {W: 140, H: 40}} {
		if still, walks := list(size, layout.BedNow{}), list(size, layout.BedNow{InLog: true}); still != walks {
			t.Errorf("%v: there is room for all, and %v becomes %v", size, still, walks)
		}
	}
}

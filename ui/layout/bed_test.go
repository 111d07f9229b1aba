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
		parts := reflect.ValueOf(layout.Bed(size, rapid.Bool().Draw(t, "words")))
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
	b := layout.Bed(layout.Size{W: 80, H: 24}, false)
	for name, r := range map[string]layout.Rect{"curve": b.Curve, "tank": b.Tank, "notes": b.Notes, "list": b.List, "numbers": b.Numbers} {
		if r.Empty() || r.H < 3 {
			t.Errorf("%s has %d lines", name, r.H)
		}
	}
}

package layout_test

import (
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/layout"
)

func TestTripPartsStayApartAndInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(t, "w"), H: rapid.IntRange(24, 90).Draw(t, "h")}
		parts := reflect.ValueOf(layout.Trip(size, rapid.Bool().Draw(t, "words"), rapid.IntRange(1, 3).Draw(t, "status")))
		owned := map[[2]int]bool{}
		for i := range parts.NumField() {
			r := parts.Field(i).Interface().(layout.Rect)
			for y := r.Y; y < r.Y+r.H; y++ {
				for x := r.X; x < r.X+r.W; x++ {
					if owned[[2]int{x, y}] || x >= size.W || y >= size.H {
						t.Fatalf("%s %v is over another or outside %v", parts.Type().Field(i).Name, r, size)
					}
					owned[[2]int{x, y}] = true
				}
			}
		}
	})
	assert.Equal(t, 9, layout.Trip(layout.Least(), false, 1).List.H)
	assert.Equal(t, 7, layout.Trip(layout.Least(), false, 3).List.H)
}

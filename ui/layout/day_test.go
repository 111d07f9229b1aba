package layout_test

import (
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/layout"
)

func TestDayPartsStayApartAndInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(t, "w"), H: rapid.IntRange(24, 90).Draw(t, "h")}
		parts := reflect.ValueOf(layout.Day(size, rapid.IntRange(0, 9).Draw(t, "strip")))
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
}

func TestDaySmall(t *testing.T) {
	d := layout.Day(layout.Least(), 9)
	assert.Equal(t, layout.Rect{X: 0, Y: 2, W: 80, H: 9}, d.Strip)
	assert.Equal(t, layout.Rect{X: 0, Y: 12, W: 58, H: 10}, d.Answer)
	assert.Equal(t, layout.Rect{X: 59, Y: 12, W: 21, H: 10}, d.Compass)
	assert.True(t, layout.Day(layout.Least(), 0).Compass.Empty(), "without a day the answer has it all")
}

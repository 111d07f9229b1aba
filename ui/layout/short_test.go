package layout_test

import (
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/layout"
)

func TestShortPartsStayApartAndInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(t, "w"), H: rapid.IntRange(24, 90).Draw(t, "h")}
		r, perWay := layout.Short(size, rapid.IntRange(0, 5).Draw(t, "faces"), 8)
		parts := reflect.ValueOf(r)
		owned := map[int]bool{}
		for i := range parts.NumField() {
			r := parts.Field(i).Interface().(layout.Rect)
			for y := r.Y; y < r.Y+r.H; y++ {
				if owned[y] || y >= size.H || r.W > size.W {
					t.Fatalf("%s %v is over another or outside %v", parts.Type().Field(i).Name, r, size)
				}
				owned[y] = true
			}
		}
		assert.Equal(t, 8*perWay+1, r.Ways.H)
	})
}

func TestShortSmall(t *testing.T) {
	r, perWay := layout.Short(layout.Least(), 5, 8)
	assert.Equal(t, 1, perWay)
	assert.Equal(t, 6, r.Faces.H)
	assert.Equal(t, 9, r.Ways.H)
	assert.Equal(t, 3, r.Detail.H)
	_, perWay = layout.Short(layout.Size{W: 140, H: 40}, 5, 8)
	assert.Equal(t, 2, perWay)
}

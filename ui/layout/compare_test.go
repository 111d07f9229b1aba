package layout_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/layout"
)

func TestComparePartsStayApartAndInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := layout.Size{W: rapid.IntRange(80, 260).Draw(t, "w"), H: rapid.IntRange(24, 90).Draw(t, "h")}
		c := layout.Compare(size, rapid.IntRange(0, 40).Draw(t, "table"))
		owned := 0
		for _, r := range []layout.Rect{c.Title, c.Table, c.Words, c.Status, c.Hint} {
			if r.Empty() {
				continue
			}
			if r.Y < owned && r.Y < size.H-2 || r.Y+r.H > size.H || r.W > size.W {
				t.Fatalf("%v is over another or outside %v", r, size)
			}
			owned = r.Y + r.H
			if r == c.Words {
				owned = 0
			}
		}
	})
}

func TestCompareSmall(t *testing.T) {
	c := layout.Compare(layout.Least(), 16)
	assert.Equal(t, layout.Rect{X: 0, Y: 1, W: 80, H: 16}, c.Table)
	assert.Equal(t, layout.Rect{X: 0, Y: 18, W: 80, H: 4}, c.Words)
}

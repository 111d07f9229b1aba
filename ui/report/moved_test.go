package report_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

func TestMovedSaysWhy(t *testing.T) {
	lower := planner.Change{Before: 1, After: 0.54}
	same := planner.Change{Before: 0.9, After: 0.9}
	for words, m := range map[string]planner.Moved{
		"8 ppm after 120 gal is early, 3 ppm was expected before it: this fill is likely to hold less than its rating, about 54 % (chance 92 % without it, 13 % with it).":                               {PPM: 8, Expected: 3, Before: 0.92, After: 0.13, Factor: lower, Contact: same},
		"3 ppm after 120 gal is less than the 6 ppm expected before it, yet the chance is lower (chance 35 % without it, 15 % with it): the water is likely to meet less of the resin than was thought.": {PPM: 3, Expected: 6, Before: 0.35, After: 0.15, Factor: same, Contact: lower},
		"23 ppm after 120 gal is less than the 32.5 ppm expected before it: this fill is likely to last longer than was thought (chance 17 % without it, 71 % with it).":                                 {PPM: 23, Expected: 32.5, Before: 0.17, After: 0.71, Factor: same, Contact: same},
	} {
		m.Given = 120 * quantity.Gallon
		assert.Equal(t, words, report.Moved(planner.Ahead{Moved: quantity.Some(m)}, quantity.US))
	}
	assert.Empty(t, report.Moved(planner.Ahead{}, quantity.US))
}

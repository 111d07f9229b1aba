package report_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
	"washeve/planner/compare"
	"washeve/ui/report"
)

// row is a row of chances; those named are the best as computed.
func row(chances []float64, best ...int) compare.Row {
	r := compare.Row{Key: "chance"}
	for _, c := range chances {
		r.Cells = append(r.Cells, compare.Cell{Known: true, Value: quantity.ValueOf(quantity.Fraction(c))})
	}
	for _, i := range best {
		r.Cells[i].Best = true
	}
	return r
}

// What is written as the best is marked as the best, to whatever digit it is computed.
func TestTheSameTextHasTheSameMark(t *testing.T) {
	assert.Equal(t, []bool{true, true, false}, report.Best(row([]float64{0.992, 0.999, 0.8}, 1), quantity.US), "both over 99 %")
	assert.Equal(t, []bool{false, true, false}, report.Best(row([]float64{0.90, 0.92, 0.8}, 1), quantity.US))
	assert.Equal(t, []bool{false, false}, report.Best(row([]float64{0.992, 0.999}, 1), quantity.US), "where all say the same none is best")
	unknown := row([]float64{0.992, 0.999, 0.5}, 1)
	unknown.Cells[2] = compare.Cell{Words: "over 99 %", Why: "not known"}
	assert.Equal(t, []bool{false, false, false}, report.Best(unknown, quantity.US), "what is not known is no best, and none is better than it")
	rapid.Check(t, func(t *rapid.T) {
		chances := rapid.SliceOfN(rapid.Float64Range(0.97, 1), 1, 12).Draw(t, "chances")
		r := row(chances, rapid.IntRange(0, len(chances)-1).Draw(t, "best"))
		best := report.Best(r, quantity.US)
		for i := range chances {
			for j := range chances {
				if best[i] != best[j] && report.Cell(r, r.Cells[i], quantity.US) == report.Cell(r, r.Cells[j], quantity.US) {
					t.Fatalf("%v: %v", chances, best)
				}
			}
		}
	})
}

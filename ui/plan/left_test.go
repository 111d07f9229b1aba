package plan

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// The gallons in the bed stand with how sure they are.
func TestWhatTheBedHas(t *testing.T) {
	gallons := func(low, mid, high float64) planner.Band[quantity.Volume] {
		return planner.Band[quantity.Volume]{P10: quantity.Volume(low) * quantity.Gallon, P50: quantity.Volume(mid) * quantity.Gallon, P90: quantity.Volume(high) * quantity.Gallon}
	}
	for _, c := range []struct {
		left planner.Band[quantity.Volume]
		sys  quantity.System
		room int
		want report.Row
	}{
		{gallons(40, 85, 150), quantity.US, 24, report.Row{Label: "bed has", Value: "85 gal", Note: "8 in 10: 40 to 150 gal"}},
		{gallons(38.06, 132, 290), quantity.US, 22, report.Row{Label: "bed has", Value: "132 gal", Note: "8 in 10: 38.1 to 290"}},
		{gallons(38.06, 132, 290), quantity.Metric, 24, report.Row{Label: "bed has", Value: "500 L", Note: "8 in 10: 144 to 1098 L"}},
		{gallons(0, 0, 12), quantity.US, 24, report.Row{Label: "bed has", Value: "0 gal", Note: "8 in 10: 0 to 12 gal"}},
		{gallons(0, 0, 0), quantity.US, 24, report.Row{Label: "bed has", Value: "0 gal", Note: "the limit is reached"}},
		{gallons(40, 85, math.Inf(1)), quantity.US, 24, report.Row{Label: "bed has", Value: "85 gal", Note: "8 in 10: 40 gal or more"}},
		{gallons(math.Inf(1), math.Inf(1), math.Inf(1)), quantity.US, 24, report.Row{Label: "bed has", Note: "no end: the feed keeps the limit"}},
	} {
		m := Model{sys: c.sys}
		m.plan.Bed.Remaining = c.left
		assert.Equal(t, c.want, m.leftRow(c.room))
	}
}

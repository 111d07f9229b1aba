package plan

import (
	"math"
	"strings"

	"washeve/model/quantity"
	"washeve/ui/cells"
	"washeve/ui/report"
)

// leftRow is what the bed has before the wash: the middle of what is believed of it, and
// the band that holds in eight of ten.
func (m *Model) leftRow(room int) report.Row {
	left := m.plan.Bed.Remaining
	row := report.Row{Label: "bed has", Value: quantity.Show(left.P50, m.sys)}
	switch {
	case math.IsInf(float64(left.P50), 1):
		row.Value, row.Note = "", "no end: the feed keeps the limit"
	case left.P90 <= 0:
		row.Note = "the limit is reached"
	default:
		row.Note = report.EightInTen(left, m.sys)
		if cells.Width(row.Note) > room {
			row.Note = withoutUnit(row.Note) // it stands before
		}
	}
	return row
}

// withoutUnit is what is shown of a quantity, without the unit at its end.
func withoutUnit(shown string) string {
	if at := strings.LastIndexByte(shown, ' '); at >= 0 {
		return shown[:at]
	}
	return shown
}

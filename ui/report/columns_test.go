package report_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/report"
)

// A table that is too wide first has its units in the heads, where all of a column have the
// same, then closer columns; nothing of it is cut.
func TestColumnsWithin(t *testing.T) {
	table := report.Table{
		Head:    []string{"way", "DI", "time", "lasts", "buy"},
		Numeric: []bool{false, true, true, true, true},
		Rows: [][]string{
			{"slower flow", "24.1 gal", "1 h 54 min", "over 99 %", "-"},
			{"two fills", "24.1 gal", "45 s", "78 %", "1185.50 CAD"},
		},
	}
	for width, want := range map[int][]string{
		57: report.Columns(table),
		56: {
			"way          DI gal        time  lasts %  buy CAD",
			"slower flow    24.1  1 h 54 min  over 99        -",
			"two fills      24.1        45 s       78  1185.50",
		},
		48: {
			"way         DI gal       time lasts % buy CAD",
			"slower flow   24.1 1 h 54 min over 99       -",
			"two fills     24.1       45 s      78 1185.50",
		},
		10: {
			"way         DI gal       time lasts % buy CAD",
			"slower flow   24.1 1 h 54 min over 99       -",
			"two fills     24.1       45 s      78 1185.50",
		},
	} {
		assert.Equal(t, want, report.ColumnsWithin(table, width), width)
	}
}

package short

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
	"washeve/ui/report"
)

// Prices of a currency with letters and hours of rinsing stand whole in the least window:
// no line of the ways ends in the mark of what is cut.
func TestEveryFigureOfTheWaysIsSeen(t *testing.T) {
	o := ours()
	sample.Set(&o.Rig.Beds[0], map[string]string{"price": "1185.50 CAD"})
	slow := model.Sprayer{Name: "wand"}
	sample.Set(&slow, map[string]string{"flow": "0.3 gpm"})
	o.Rig.Sprayers = []model.Sprayer{slow}
	p := play(t, o, "")
	seen := p.Seen()
	table := report.WaysTable(p.M.ways, p.M.sys)
	require.NotEmpty(t, table.Rows)
	for _, row := range table.Rows {
		line := lineWith(seen, "  "+row[0]+" ")
		require.NotEmpty(t, line, row[0])
		for i, cell := range row[1:] {
			figure := strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(cell, " CAD"), " %"), " gal")
			assert.Contains(t, line, strings.TrimSuffix(figure, " min"), "%s, %s", row[0], table.Head[i+1])
		}
		assert.NotContains(t, line, p.M.th.Marks.More)
	}
	assert.Contains(t, lineWith(seen, "  way "), "resin CAD")
}

// In a window without room for all of them, they are told with the way under the hand.
func TestFiguresWithoutRoomAreToldWithTheWay(t *testing.T) {
	p := play(t, ours(), "tab")
	assert.NotContains(t, p.Seen(), "DI 19.5 gal")
	p.S = layout.Size{W: 60, H: 30}
	require.Contains(t, lineWith(p.Seen(), "  way "), p.M.th.Marks.More)
	told := strings.Join(strings.Fields(p.Seen()), " ")
	for i, cell := range report.WaysTable(p.M.ways, p.M.sys).Rows[0][1:] {
		if cell != "-" {
			assert.Contains(t, told, report.WaysTable(nil, p.M.sys).Head[i+1]+" "+cell)
		}
	}
}

func lineWith(seen, part string) string {
	for line := range strings.Lines(seen) {
		if strings.Contains(line, part) {
			return strings.TrimRight(line, "\n ")
		}
	}
	return ""
}

package report_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/report"
)

// A table has room for so many letters of a name. In words there is no table to be kept in step, and
// nothing is cut.
func TestByWordsATripCutsNoName(t *testing.T) {
	p := trip.Plan{FirstAtRisk: -1, Stops: []trip.StopPlan{{Name: "Saltbush Wells, upper loop"}}}
	p.Washes = []trip.WashPlan{{Name: "truck windows and mirrors", Chance: 1, Advised: 1}}
	whole := func(text string) string { return strings.Join(strings.Fields(text), " ") }
	for name, text := range map[string]string{
		"told":  whole(report.TripTold(p, quantity.US, 80)),
		"plain": whole(report.TripText(p, quantity.US, true, 80)),
	} {
		assert.Contains(t, text, "Saltbush Wells, upper loop", name)
		assert.Equal(t, 2, strings.Count(text, "truck windows and mirrors"), name)
		assert.NotContains(t, text, "..", name)
	}
	table := report.TripText(p, quantity.US, false, 80)
	assert.Contains(t, table, "Saltbush We..", "a table keeps its width")
	assert.NotContains(t, table, "Saltbush Wells,")
	for _, line := range strings.Split(report.TripText(p, quantity.US, true, 80), "\n") {
		assert.LessOrEqual(t, len(line), 80)
	}
}

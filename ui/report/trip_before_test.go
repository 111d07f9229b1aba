package report_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
	"washeve/planner/trip"
	"washeve/ui/report"
)

// A trip that lasts from the bed as it stands today says so where washes take of it before.
func TestAVerdictSaysWhatItDoesNotCount(t *testing.T) {
	p := trip.Plan{Washes: make([]trip.WashPlan, 2), FirstAtRisk: -1, AllOnSpec: 0.95}
	assert.NotContains(t, report.TripVerdict(p), "ot count")
	p.Notes = []tag.Note{{Code: planner.PlannedBefore}, {Code: "other"}, {Code: planner.PlannedBefore}}
	assert.Contains(t, report.TripVerdict(p), "Not counted: 2 washes planned before it.")
	assert.Equal(t, "It lasts, not counting 2 washes planned before it. All on spec: 95 %.", report.TripBrief(p, quantity.US)[0])
}

package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
)

// A flow is held by a vessel of the units that are shown: in metric none has a gallon jug.
func TestAFlowIsHeldByAVesselOfTheUnitsShown(t *testing.T) {
	lib := worn(200)
	does := wayOf(t, shorten(t, lib, lib.Washes[0].Wash), planner.WaySlower).Does
	assert.Regexp(t, `^hold the DI water to [0-9.]+ gpm: a gallon jug takes [0-9.]+ (s|min)$`, does.Text(quantity.US))
	assert.Regexp(t, `^hold the DI water to [0-9.]+ L/min: 10 L takes [0-9.]+ (s|min)$`, does.Text(quantity.Metric))
}

package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
	"washeve/planner"
)

// The sprayer that is assumed stands in the list, and one enter makes it the person's own.
func TestTheAssumedSprayerCanBeTakenOver(t *testing.T) {
	o := ours(t)
	o.Rig.Sprayers, o.Units = nil, quantity.Metric
	p := play(t, o, "g")
	onKey(t, p, "sprayer")
	p.Keys("enter")
	require.NotNil(t, p.M.picker)
	assert.Equal(t, "small pressure washer", p.M.picker.Options[0].Text)
	assert.Equal(t, "5.3 L/min, as assumed; this makes it yours", p.M.picker.Options[0].Note)
	p.Keys("1")
	require.Len(t, p.M.now.rig.Sprayers, 1)
	own := p.M.now.rig.Sprayers[0]
	assert.Equal(t, "5.3 L/min", own.Flow.Words())
	assert.Equal(t, "Saved.", p.M.status)
	p.Keys("enter")
	assert.NotEqual(t, "small pressure washer", p.M.picker.Options[0].Text, "there is one now")
}

// What becomes the person's own is what was assumed: the plan draws the same flow.
func TestTheSprayerTakenOverDrawsWhatWasAssumed(t *testing.T) {
	o := ours(t)
	o.Rig.Sprayers, o.Make = nil, planner.Make
	p := play(t, o, "g")
	assumed := p.M.plan.Sprayer.Flow
	onKey(t, p, "sprayer")
	p.Keys("enter 1")
	require.Len(t, p.M.now.rig.Sprayers, 1)
	assert.InDelta(t, float64(assumed), float64(p.M.plan.Sprayer.Flow), 1e-9)
}

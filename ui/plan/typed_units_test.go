package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

// With metric units shown, an example, a refusal and what a bare number takes are metric,
// and what it was read as is told.
func TestABareNumberTakesTheUnitsShown(t *testing.T) {
	o := ours(t)
	o.Units = quantity.Metric
	p := play(t, o, "b")
	for _, c := range []struct{ key, like, text, want string }{
		{"gallons_so_far", "1100 L", "900", "900 L"},
		{"diameter", "20 cm", "22", "22 cm"},
		{"rated_flow", "5.7 L/min", "6", "6 L/min"},
		{"max_temperature", "38 C", "40", "40 C"},
	} {
		onKey(t, p, c.key)
		_, f, _ := p.M.target()
		assert.Equal(t, c.like, f.Example, c.key)
		p.Keys("'" + c.text + "'")
		assert.Equal(t, "needs its unit: tab or enter takes it as "+c.want, p.M.edit.Says())
		p.Keys("enter")
		assert.Equal(t, "Read as "+c.want+". Saved.", p.M.status)
	}
	onKey(t, p, "free_space")
	assert.Contains(t, p.Seen(), "like 1.9 L")
	onKey(t, p, "resin")
	p.Keys("'900'")
	assert.Contains(t, p.M.edit.Says(), "is outside 0.567 L to 283 L; write it like 14 L; ")
	p.Keys("esc m")
	onKey(t, p, "free_space")
	p.Keys("'2'")
	assert.Equal(t, "needs its unit: tab or enter takes it as 2 L", p.M.edit.Says(), "900 L were stated of this bed")
}

// The units that are turned to last: the rig of one's own states them, as an edit that undo
// takes back. The example is only shown so.
func TestTheUnitsLast(t *testing.T) {
	o := ours(t)
	p := play(t, o, "m")
	assert.Equal(t, model.UnitsMetric, p.M.now.rig.Defaults.Units)
	assert.Equal(t, model.UnitsMetric, o.Keeper.(*book).rig.Defaults.Units)
	assert.Equal(t, "Shown in metric units from now on; u takes that back.", p.M.status)
	assert.Contains(t, p.Seen(), "227 L")
	p.Keys("u")
	assert.Empty(t, p.M.now.rig.Defaults.Units)
	assert.NotContains(t, p.Seen(), "227 L")
	p.Keys("r")
	assert.Contains(t, p.Seen(), "227 L")
	p.Keys("m")
	assert.Equal(t, model.UnitsUS, p.M.now.rig.Defaults.Units)
	assert.NotContains(t, p.Seen(), "227 L")

	o = ours(t)
	o.Rig.Defaults.Units, o.Units = model.UnitsUS, quantity.Metric // by a flag
	p = play(t, o, "m")
	assert.Equal(t, "Shown in US units, as your rig says.", p.M.status)
	assert.Equal(t, quantity.US, p.M.sys)

	o = ours(t)
	o.Example = true
	p = play(t, o, "m")
	assert.Empty(t, p.M.now.rig.Defaults.Units)
	assert.Equal(t, "Shown in metric units.", p.M.status)
}

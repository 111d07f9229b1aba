package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// An example that becomes a person's own states the units that are shown, whatever shows
// them; one that is begun empty, those that the example was turned to.
func TestUnitsOfTheExampleGoAlong(t *testing.T) {
	for script, want := range map[string]model.Units{
		"m a": "metric", "a": "us", "m m a": "us",
		"m e '12 m' enter": "metric", "e '40 ft' enter": "",
	} {
		o := ours(t)
		o.Example, o.Make = true, planner.Make
		o.Rig.Defaults.Units = ""
		p := play(t, o, script)
		assert.Equal(t, want, p.M.now.rig.Defaults.Units, script)
		assert.Equal(t, want, o.Keeper.(*book).rig.Defaults.Units, "and it is kept: "+script)
	}
}

// By a flag or the locale it is shown in metric units, and the rig states them.
func TestAnAdoptedExampleStatesWhatIsShown(t *testing.T) {
	o := ours(t)
	o.Example, o.Units, o.Unsaid = true, quantity.Metric, quantity.Metric
	o.Rig.Defaults.Units = ""
	play(t, o, "a")
	assert.Equal(t, model.UnitsMetric, o.Keeper.(*book).rig.Defaults.Units)
}

// A rig that states no units any more is shown in those that hold without it.
func TestUnitsThatAreNoLongerStated(t *testing.T) {
	o := ours(t)
	o.Rig.Defaults.Units, o.Units = "metric", 1
	p := play(t, o, "")
	w := p.M.now.clone()
	w.rig.Defaults.Units = ""
	assert.Equal(t, o.Unsaid, p.M.follows(w).sys)
}

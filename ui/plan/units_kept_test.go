package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/planner"
)

// Units that the example was turned to are those of the person's own rig, however it begins;
// where they were left as they are, the rig states none.
func TestUnitsOfTheExampleGoAlong(t *testing.T) {
	for script, want := range map[string]model.Units{
		"m a": "metric", "a": "", "m m a": "",
		"m e '12 m' enter": "metric", "e '40 ft' enter": "",
	} {
		o := ours(t)
		o.Example, o.Make = true, planner.Make
		o.Rig.Defaults.Units = ""
		p := play(t, o, script)
		assert.Equal(t, want, p.M.now.rig.Defaults.Units, script)
		if script != "a" && script != "m m a" {
			assert.Equal(t, want, o.Keeper.(*book).rig.Defaults.Units, "and it is kept: "+script)
		}
	}
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

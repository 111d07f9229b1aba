package plan

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLeavingTakesWhatIsBeingTyped(t *testing.T) {
	o := ours(t)
	p := play(t, o, "down down down '21 ft'")
	assert.NoError(t, p.M.Leave())
	assert.Equal(t, "21 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())
}

func TestLeavingLeavesOutWhatHasNoNameYet(t *testing.T) {
	for script, lost := range map[string]string{"b n 'halfname'": `the new bed "halfname"`, "w n": "", "p 3 'halfname'": `the new place "halfname"`, "d esc n": ""} {
		o := ours(t)
		err := play(t, o, script).M.Leave()
		if lost == "" {
			assert.NoError(t, err, script)
		} else {
			assert.ErrorContains(t, err, lost, "a name that was typed is asked about")
		}
		assert.Zero(t, o.Keeper.(*book).saves, script)
	}
}

// What is typed is taken on leaving where it can be, with the unit that is offered; else
// leaving says what would be lost, and the text is still there.
func TestLeavingLosesNoTextUnasked(t *testing.T) {
	o := ours(t)
	require.NoError(t, play(t, o, "down down down '33'").M.Leave())
	assert.Equal(t, "33 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())

	o = ours(t)
	p := play(t, o, "down down down '33 yards'")
	require.ErrorContains(t, p.M.Leave(), `length "33 yards" has the unit "yards", which is no unit of length`)
	assert.Contains(t, p.Seen(), "33 yards")
	assert.Zero(t, o.Keeper.(*book).saves)
	p.Keys("esc")
	assert.NoError(t, p.M.Leave(), "let go of on purpose")
	assert.NoError(t, play(t, o, "down down down enter ctrl+u").M.Leave(), "an empty line holds nothing")

	o.Keeper.(*book).fail = errors.New("no space left on the disk")
	p = play(t, o, "p 2 v down down down '33 yards'")
	assert.ErrorContains(t, p.M.Leave(), "no space left on the disk", "what is worse goes first")
}

package rig

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// After a text that was refused a new one takes its place, or it is left, and that is told.
func TestARefusedTextIsNoTrap(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "tab down down '400 ft' enter")
	assert.False(t, p.M.Typing(), "q and ? are keys")
	assert.Contains(t, p.Keys("'34 ft'").Says(), `In place of "400 ft", which was not taken.`)
	p.Keys("enter '500 ft' enter down")
	assert.Contains(t, p.Says(), `Not taken: length "500 ft"`)
	assert.Nil(t, p.M.typing)
	assert.Equal(t, "34 ft", kept.kept.Rig.Vehicles[0].Length.Words())
	p.Keys("up '500 ft' enter up up 'n'")
	assert.Len(t, kept.kept.Rig.Vehicles, 1)
}

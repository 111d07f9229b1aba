package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
)

// A city is told as the zone that it is read as, and kept as that.
func TestACityIsTypedForItsZone(t *testing.T) {
	p := play(t, ours(t), "d")
	onKey(t, p, model.ZoneKey)
	p.Keys("enter 'phoenix'")
	assert.Equal(t, "America/Phoenix", p.M.edit.Says())
	assert.Contains(t, p.Keys("enter").Says(), "America/Phoenix. Saved.")
	assert.Equal(t, "America/Phoenix", p.M.now.places[0].Zone.Words())
	onKey(t, p, model.ZoneKey)
	p.Keys("enter 'cst'")
	assert.Equal(t, "fits US/Central and Canada/Saskatchewan; write it like US/Central; America/Phoenix stays", p.M.edit.Says())
	p.Keys("esc enter 'america/phoenix'")
	assert.Empty(t, p.M.edit.Says(), "it is the whole name")
}

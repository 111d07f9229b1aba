package rig

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
)

// A zone is text from its first letter where none is stated; in the list letters are keys.
func TestAZoneBeginsByALetter(t *testing.T) {
	o, _ := ours()
	(*o.Stock.Places)[0].Zone = model.Place{}.Zone
	p := play(t, o, "")
	for p.M.at.Section != "place" {
		p.Keys("pgdown")
	}
	p.Keys("tab")
	for {
		if _, f, _ := p.M.target(); f.Key == model.ZoneKey {
			break
		}
		p.Keys("down")
	}
	assert.True(t, p.M.Awaits())
	assert.Contains(t, p.Seen(), "a-z 0-9 type it   esc to the list")
	assert.Contains(t, p.Says(), "; type it, like")
	p.Keys("'new_york'")
	assert.Equal(t, "new_york", p.M.typing.Text())
	p.Keys("enter")
	assert.Equal(t, "America/New_York", (*p.M.now.Places)[0].Zone.Words())
	assert.Contains(t, p.Keys("up n esc").Seen(), "place")
}

package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
)

// A position that is pasted on one line fills both, and one undo takes both back.
func TestAPastedPositionFillsBothLines(t *testing.T) {
	p := play(t, ours(t), "d")
	at := p.M.now.chosen("place")
	where := func() [2]string {
		place := p.M.now.places[at]
		return [2]string{place.Latitude.Words(), place.Longitude.Words()}
	}
	was := where()
	onKey(t, p, model.LatitudeKey)
	p.Keys("enter ctrl+u '33.45, -112.07'")
	assert.Contains(t, p.Says(), "33.45 N, 112.07 W")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "33.45 N, 112.07 W. Saved.")
	assert.Equal(t, [2]string{"33.45 N", "112.07 W"}, where())
	p.Keys("esc u")
	assert.Equal(t, was, where())

	onKey(t, p, model.LongitudeKey)
	p.Keys("enter ctrl+u '112.07'")
	assert.Contains(t, p.M.edit.Says(), "112.07 E; for the west write 112.07 W")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "112.07 E; for the west write 112.07 W. Saved.")
}

// onKey puts the hand on a field of the open step.
func onKey(t *testing.T, p *player, key string) {
	for i, r := range p.M.rows() {
		if r.isField() && r.at.key == key {
			p.M.hand = i
			return
		}
	}
	t.Fatalf("no row holds the %s", key)
}

// What is said to stay is in force all over the screen, whatever was right on the way to a
// text that is refused.
func TestARefusedLatitudeLeavesThePositionWhereItWas(t *testing.T) {
	p := play(t, known(t), "d")
	onKey(t, p, model.LatitudeKey)
	was := p.M.now.places[p.M.now.chosen("place")].Latitude.Words()
	begins := p.M.plan.Day.Start.Label
	p.Keys("enter ctrl+u")
	assert.Contains(t, p.Seen(), "needs the position", "while the line is empty")
	p.Keys("'95'")
	assert.Contains(t, p.M.edit.Says(), "is past 90 degrees")
	assert.Contains(t, p.M.edit.Says(), was+" stays")
	assert.NotContains(t, p.Seen(), "needs the position")
	p.Keys("ctrl+u '60' '0'")
	assert.Contains(t, p.M.edit.Says(), was+" stays")
	assert.Contains(t, p.Seen(), "best from "+begins)
}

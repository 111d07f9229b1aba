package plan

import (
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/compare"
	"washeve/ui/internal/hands"
	"washeve/ui/screen"
)

// side opens the comparison and presses keys on it.
func (p *player) side(script string) compare.Model {
	to, ok := p.send(hands.Key("C")).(screen.Go)
	require.True(p.t, ok)
	page := to.To.(compare.Model)
	for _, key := range hands.Keys(script) {
		next, _ := page.Update(key)
		page = next.(compare.Model)
	}
	return page
}

func TestAComparedWayBecomesThePlanAsOneEdit(t *testing.T) {
	o := known(t)
	p := play(t, o, "")
	before := p.m.plan.DI.Volume
	page := p.side("")
	assert.Contains(t, ansi.Strip(page.View(p.s)), "›DI for all")
	_, cmd := page.Update(hands.Key("enter"))
	p.send(cmd().(screen.Back).With)
	assert.Contains(t, p.seen(), "The plan is now: DI for all. u takes it back.")
	assert.Greater(t, p.m.plan.DI.Volume, before)
	require.NotEmpty(t, o.Keeper.(*book).wash.Stages, "it is saved")
	p.keys("u")
	assert.Equal(t, before, p.m.plan.DI.Volume)
	assert.Empty(t, p.m.now.wash.Stages)
	assert.Contains(t, p.keys("u").seen(), "there is nothing to undo")
	p.keys("r")
	assert.Greater(t, p.m.plan.DI.Volume, before)
}

func TestATankThatIsBoughtGoesIntoTheRig(t *testing.T) {
	o := known(t)
	p := play(t, o, "")
	page := p.side("")
	for range 12 {
		if next, _ := page.Update(hands.Key("enter")); next.(compare.Model).Keys()[0].Does == "put it in" {
			page = next.(compare.Model)
			break
		}
		next, _ := page.Update(hands.Key("right"))
		page = next.(compare.Model)
	}
	_, cmd := page.Update(hands.Key("y"))
	p.send(cmd().(screen.Back).With)
	require.Len(t, p.m.now.rig.Beds, len(o.Rig.Beds)+1)
	assert.Contains(t, p.m.now.wash.Bed, "twice ")
	p.keys("u")
	assert.Len(t, p.m.now.rig.Beds, len(o.Rig.Beds))
}

func TestNothingIsComparedWithoutAPlan(t *testing.T) {
	o := known(t)
	o.Rig.Beds = nil
	assert.Contains(t, play(t, o, "C").seen(), "Not now: there is no plan of this yet.")
}

package plan

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/compare"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
)

// side opens the comparison and presses keys on it.
func side(p *player, script string) compare.Model {
	to, ok := p.Send(hands.Key("C")).(screen.Go)
	require.True(p.T, ok)
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
	before := p.M.plan.DI.Volume
	page := side(p, "l enter")
	assert.Contains(t, ansi.Strip(page.View(p.S)), "›DI for all")
	_, cmd := page.Update(hands.Key("y"))
	p.Send(cmd().(screen.Back).With)
	assert.Contains(t, p.Seen(), "The plan is now: DI for all. u takes it back.")
	assert.Greater(t, p.M.plan.DI.Volume, before)
	require.NotEmpty(t, o.Keeper.(*book).wash.Stages, "it is saved")
	p.Keys("u")
	assert.Equal(t, before, p.M.plan.DI.Volume)
	assert.Empty(t, p.M.now.wash.Stages)
	assert.Contains(t, p.Keys("u").Seen(), "there is nothing to undo")
	p.Keys("r")
	assert.Greater(t, p.M.plan.DI.Volume, before)
}

func TestATankThatIsBoughtGoesIntoTheRig(t *testing.T) {
	o := known(t)
	p := play(t, o, "")
	page := side(p, "l enter")
	for range 12 {
		if strings.Contains(ansi.Strip(page.View(p.S)), "into your rig, and plan with it?") {
			break
		}
		for _, key := range hands.Keys("n right enter") {
			next, _ := page.Update(key)
			page = next.(compare.Model)
		}
	}
	_, cmd := page.Update(hands.Key("y"))
	p.Send(cmd().(screen.Back).With)
	require.Len(t, p.M.now.rig.Beds, len(o.Rig.Beds)+1)
	assert.Contains(t, p.M.now.wash.Bed, "twice ")
	p.Keys("u")
	assert.Len(t, p.M.now.rig.Beds, len(o.Rig.Beds))
}

func TestNothingIsComparedWithoutAPlan(t *testing.T) {
	o := known(t)
	o.Rig.Beds = nil
	assert.Contains(t, play(t, o, "C").Seen(), "Not now: there is no plan of this yet.")
}

// A tank that is bought for a wash counts as filled: that is told before it is taken and
// after.
func TestABoughtTankSaysThatItCountsAsFilled(t *testing.T) {
	p := play(t, known(t), "")
	beds := len(p.M.now.rig.Beds)
	page := side(p, "right right right enter")
	seen := page.View(layout.Size{W: 140, H: 40})
	assert.Contains(t, seen, "Put a tank of 1 ft3 into your rig")
	assert.Contains(t, strings.Join(strings.Fields(seen), " "), "In the rig it counts as filled: put its resin in, and write that down (Bed).")
	_, cmd := page.Update(hands.Key("y"))
	p.Send(cmd().(screen.Back).With)
	require.Len(t, p.M.now.rig.Beds, beds+1)
	assert.Contains(t, p.Says(), "The plan is now: twice the tank. u takes it back. The tank counts as freshly filled: put its resin in, and write that down (B, c).")
}

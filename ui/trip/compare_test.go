package trip

import (
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/compare"
	"washeve/ui/internal/hands"
	"washeve/ui/screen"
)

// aside opens the comparison, walks to a way, and makes it the plan.
func aside(p *player, way string) any {
	page := p.Send(hands.Key("C")).(screen.Go).To.(compare.Model)
	require.Contains(p.T, ansi.Strip(page.View(p.S)), "Compare: June loop")
	for range 20 {
		next, cmd := page.Update(hands.Key("enter"))
		if cmd == nil {
			_, cmd = next.Update(hands.Key("y"))
		}
		if cmd != nil {
			if back, ok := cmd().(screen.Back); ok && back.With.(compare.Done).Way.Key == way {
				return p.Send(back.With)
			}
		}
		next, _ = page.Update(hands.Key("right"))
		page = next.(compare.Model)
	}
	p.T.Fatalf("there is no way %s", way)
	return nil
}

func TestAWayBecomesTheTripAsOneEdit(t *testing.T) {
	o, k := ours()
	p := play(t, o, "")
	before := p.M.plan.AllOnSpec
	assert.Nil(t, aside(p, "di-all"))
	assert.Contains(t, p.Seen(), "The trip is now: DI for all. u takes it back.")
	assert.Equal(t, model.DIForAll, k.trips[0].DIFor, "it is kept")
	assert.Contains(t, p.Seen(), "June loop: DI water for every stage, resin takes 10 d")
	assert.Less(t, float64(p.M.plan.AllOnSpec), float64(before))
	p.Keys("u")
	assert.Empty(t, k.trips[0].DIFor)
	assert.Equal(t, before, p.M.plan.AllOnSpec)
	assert.Contains(t, p.Keys("u").Seen(), "there is nothing to undo")
	aside(p, "new-resin")
	require.Len(t, k.trips[0].Changes, 1)
	assert.Contains(t, p.Seen(), "Change planned 06-06")
}

// What a way puts into the rig is told to every screen, and the trip names it.
func TestATankThatIsBoughtIsToldToAll(t *testing.T) {
	o, k := ours()
	p := play(t, o, "")
	msg := aside(p, "double-tank").(screen.Everyone).Msg.(Rigged)
	require.Len(t, msg.Rig.Beds, len(o.Rig.Beds)+1)
	assert.Equal(t, "a tank of 1 ft3", msg.What)
	assert.Equal(t, "twice half-foot tank", k.trips[0].Bed)
	assert.Contains(t, p.Seen(), "a tank of 1 ft3 stays in the rig")
	assert.Greater(t, float64(p.M.plan.AllOnSpec), 0.99)
	assert.Equal(t, model.Yes, k.trips[0].Fill)
	assert.Contains(t, p.Seen(), "tank still to be filled")
	assert.Contains(t, p.Seen(), "Order resin by 2026-05-22", "it is not filled by being in the rig")
	p.Keys("home enter down enter up enter") // the tank that the rig had
	assert.Equal(t, "half-foot tank", k.trips[0].Bed)
	assert.Empty(t, k.trips[0].Fill, "that one is filled")
	p.Keys("u esc")
	assert.Equal(t, model.Yes, k.trips[0].Fill)
	hose := aside(p, "open-hose").(screen.Everyone).Msg.(Rigged)
	assert.Equal(t, "open hose", hose.What)
	assert.Equal(t, "open hose", k.trips[0].Sprayer)
	assert.NoError(t, p.M.planErr)
}

func TestNothingToCompare(t *testing.T) {
	o, _ := ours()
	o.Keeper.(*memory).trips[0].Washes = nil
	assert.Contains(t, play(t, o, "C").Seen(), "Not now: no wash has a day and a stop yet")
	o, _ = ours()
	o.Rig.Beds = nil
	assert.Contains(t, play(t, o, "C").Seen(), "Not now: there is no answer to compare with yet")
}

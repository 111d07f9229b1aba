package plan

import (
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/screen"
	"washeve/ui/short"
)

func shortOnes(t *testing.T) Options {
	var kept planner.Memory
	o := known(t)
	sample.Set(&o.Rig.Beds[0], map[string]string{"gallons_so_far": "190 gal"})
	o.Make, o.Sharing = kept.Make, kept.Sharing
	return o
}

func TestTheWaysOutAreOneKeyAway(t *testing.T) {
	p := play(t, shortOnes(t), "")
	assert.Contains(t, p.Seen(), "Tight: the bed may not last  S ways out")
	msg, ok := p.Send(hands.Key("S")).(screen.Go)
	require.True(t, ok)
	assert.Contains(t, ansi.Strip(msg.To.View(p.S)), "Short bed: Friday wash")
	assert.NotContains(t, play(t, ours(t), "").Seen(), "S ways out", "without a way to share out")
	assert.Contains(t, play(t, ours(t), "S").Seen(), "Not now: there is nothing to share out here.")
}

func TestAWayTakenIsOneEdit(t *testing.T) {
	o := shortOnes(t)
	p := play(t, o, "")
	wash := p.M.now.wash
	wash.TowelFaces = []model.Side{model.Left, model.Rear}
	before := p.M.plan.DI.Volume
	p.Send(short.Done{Wash: wash, Taken: "DI where it shows most"})
	assert.Contains(t, p.Seen(), "Taken: DI where it shows most. u takes it back.")
	assert.Less(t, p.M.plan.DI.Volume, before)
	assert.Equal(t, wash.TowelFaces, o.Keeper.(*book).wash.TowelFaces, "it is kept")
	p.Keys("u")
	assert.Empty(t, p.M.now.wash.TowelFaces)
	assert.Equal(t, before, p.M.plan.DI.Volume)
}

func TestNewResinOpensTheChange(t *testing.T) {
	p := play(t, shortOnes(t), "")
	p.Send(short.ChangeResin{Wash: p.M.now.wash})
	assert.Contains(t, p.Seen(), "gallons so far as 0 gal", "there is no log here")
	d := &sample.Log{}
	p.M.book.Logger = d
	p.M.book.Clock = func() time.Time { return time.Date(2026, 5, 15, 21, 0, 0, 0, time.UTC) }
	p.M.book.Past = func(model.Rig, model.Places) *planner.Past { return nil }
	wash := p.M.now.wash
	wash.TowelFaces = []model.Side{model.Rear}
	_, opened := p.Send(short.ChangeResin{Wash: wash, Changed: true}).(screen.Go)
	assert.True(t, opened)
	assert.Equal(t, []model.Side{model.Rear}, p.M.now.wash.TowelFaces, "the pins stay")
}

func TestPinsCanBeTyped(t *testing.T) {
	p := play(t, shortOnes(t), "b end")
	for range 40 {
		if r, _, ok := p.M.target(); ok && r.key == "towel_faces" {
			break
		}
		p.Keys("down")
	}
	p.Keys("enter 'rear, left' enter")
	assert.Equal(t, []model.Side{model.Rear, model.Left}, p.M.now.wash.TowelFaces)
	p.Keys("enter ', bonnet' enter")
	assert.Contains(t, p.Seen(), "Not taken")
	assert.Equal(t, []model.Side{model.Rear, model.Left}, p.M.now.wash.TowelFaces)
}

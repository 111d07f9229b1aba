package plan

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
	"washeve/ui/internal/hands"
	"washeve/ui/rig"
	"washeve/ui/screen"
)

// others keeps the other washes, or fails.
type others struct {
	kept []*stock.Kept
	file string // of the wash in hand
	fail error
}

func (o *others) TakeUp(next *stock.Kept) (away string) {
	away, o.file = o.file, next.File
	return away
}

func (o *others) SaveOthers(all []*stock.Kept) error {
	if o.fail == nil {
		o.kept = all
	}
	return o.fail
}

func shelved(t *testing.T) (Options, *others) {
	o, shelf := ours(t), &others{file: "friday.toml"}
	o.Others = []*stock.Kept{{File: "may.toml", Wash: model.Wash{Vehicle: "Old Goose"}}}
	o.Shelf = shelf
	return o, shelf
}

// inRig presses keys on the Rig screen that R opens, and comes back to the plan.
func inRig(p *player, script string) *player {
	msg, ok := p.Send(hands.Key("R")).(screen.Go)
	require.True(p.T, ok)
	page := msg.To
	for _, key := range hands.Keys(script) {
		next, cmd := page.Update(key)
		page = next
		if cmd == nil {
			continue
		}
		if back, ok := cmd().(screen.Back); ok && back.With != nil {
			p.Send(back.With)
		}
	}
	return p
}

func TestThePlanFollowsTheRig(t *testing.T) {
	o, shelf := shelved(t)
	p := inRig(play(t, o, ""), "down t R")
	assert.Contains(t, p.Seen(), "Tin Box at Willow Bend")
	inRig(p, "down e ctrl+u 'Blue Box' enter R")
	assert.Contains(t, p.Seen(), "Blue Box at Willow Bend")
	inRig(p, "e ctrl+u 'Goose' enter R")
	assert.Equal(t, "Goose", shelf.kept[0].Wash.Vehicle)
	p.Keys("u")
	assert.Equal(t, "Old Goose", shelf.kept[0].Wash.Vehicle, "undo reaches the other washes")
	p.Keys("u u")
	assert.Contains(t, p.Seen(), "Old Goose at Willow Bend")
}

func TestRenamingOnThePlanReachesTheOtherWashes(t *testing.T) {
	o, shelf := shelved(t)
	p := play(t, o, "down enter ctrl+u 'Goose' enter")
	assert.Equal(t, "Goose", shelf.kept[0].Wash.Vehicle)
	shelf.fail = errors.New("no space left on the disk")
	p.Keys("u")
	assert.Contains(t, p.Seen(), "Not saved, but still here: no space left")
	assert.Error(t, p.M.Leave())
	shelf.fail = nil
	p.Keys("s")
	assert.Equal(t, "Old Goose", shelf.kept[0].Wash.Vehicle)
}

func TestTheExampleIsAdoptedFromTheRig(t *testing.T) {
	o, _ := shelved(t)
	o.Example = true
	book := o.Keeper.(*book)
	p := inRig(play(t, o, ""), "n 'Third' enter")
	assert.Zero(t, book.saves)
	msg := p.Send(rig.Done{Stock: p.M.now.stock(), Adopt: true, At: rig.Spot{Section: "bed"}})
	again, ok := msg.(screen.Go)
	require.True(t, ok, "the Rig screen opens again")
	assert.Equal(t, "Rig", again.To.Title())
	assert.Equal(t, 1, book.adopted)
	book.fail = errors.New("the folder may not be written")
	q := play(t, o, "")
	assert.Nil(t, q.Send(rig.Done{Stock: q.M.now.stock(), Adopt: true}))
	assert.Contains(t, q.Seen(), "Could not write it out")
}

package plan

import (
	"errors"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/rig"
	"washeve/ui/screen"
)

// others keeps the other washes, or fails.
type others struct {
	kept []*stock.Kept
	lost []*stock.Kept // told as not saved
	file string        // of the wash in hand
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

func (o *others) NotSaved(all []*stock.Kept) { o.lost = all }

func shelved(t *testing.T) (Options, *others) {
	o, shelf := ours(t), &others{file: "friday.toml"}
	o.Others = []*stock.Kept{{File: "may.toml", Wash: model.Wash{Vehicle: "Old Goose"}}}
	o.Shelf = shelf
	return o, shelf
}

// The plan tells of another wash that is to be on the bed by its day, and how much it takes.
func TestThePlanTellsOfOtherWashesOnTheBed(t *testing.T) {
	o := ours(t)
	o.Book.Clock = func() time.Time { return time.Date(2026, 6, 30, 20, 0, 0, 0, time.UTC) }
	other := o.Wash
	other.Name, other.Date = "Van wash", quantity.Some(model.Date{Year: 2026, Month: 7, Day: 1})
	o.Others = []*stock.Kept{{File: "van.toml", Wash: other}}
	p := play(t, o, "d enter '2026-07-01' enter")
	assert.Regexp(t, `! Not counted in the chance: Van wash,\s`, p.Seen())
	assert.NotContains(t, p.Keys("u").Seen(), "Not counted in the chance")
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

// The other washes that were edited along, as by a new name, are told of where the rig that
// they go by is not saved, so that a copy can be kept of them.
func TestAFailedSaveTellsOfTheOtherWashes(t *testing.T) {
	o, shelf := shelved(t)
	kept := o.Keeper.(*book)
	kept.fail = errors.New("rig.toml was changed by another hand")
	p := play(t, o, "down enter ctrl+u 'Goose' enter")
	assert.Contains(t, p.Seen(), "not saved")
	assert.Empty(t, shelf.kept, "they would name what no file has")
	require.Len(t, shelf.lost, 1)
	assert.Equal(t, "Goose", shelf.lost[0].Wash.Vehicle)
	kept.fail = nil
	p.Keys("s")
	assert.Equal(t, "Goose", shelf.kept[0].Wash.Vehicle)
}

func TestTheExampleIsAdoptedFromTheRig(t *testing.T) {
	o, _ := shelved(t)
	o.Example = true
	book := o.Keeper.(*book)
	p := inRig(play(t, o, ""), "n 'Third' enter")
	assert.Zero(t, book.saves)
	msg := p.Send(rig.Done{Version: p.M.now.version(), Adopt: true, At: rig.Spot{Section: "bed"}})
	again, ok := msg.(screen.Go)
	require.True(t, ok, "the Rig screen opens again")
	assert.Equal(t, "Rig", again.To.Title())
	assert.Equal(t, 1, book.adopted)
	book.fail = errors.New("the folder may not be written")
	q := play(t, o, "")
	assert.Nil(t, q.Send(rig.Done{Version: q.M.now.version(), Adopt: true}))
	assert.Contains(t, q.Seen(), "Could not write it out")
}

// One undo goes through the plan and the Rig screen, each edit by itself: what was edited
// before the screen was left is undone when one comes back, here or there.
func TestUndoSurvivesLeavingTheRig(t *testing.T) {
	o, shelf := shelved(t)
	p := inRig(play(t, o, ""), "e ctrl+u 'Goose' enter e ctrl+u 'Grey Goose' enter R")
	assert.Contains(t, p.Seen(), "Grey Goose at Willow Bend")
	inRig(p, "u R")
	assert.Equal(t, "Goose", shelf.kept[0].Wash.Vehicle)
	assert.Contains(t, p.Seen(), "Goose at Willow Bend")
	p.Keys("u")
	assert.Contains(t, p.Seen(), "Old Goose at Willow Bend")
	inRig(p, "r r R")
	assert.Contains(t, p.Seen(), "Grey Goose at Willow Bend")
	p.Keys("u u")
	assert.Contains(t, p.Seen(), "Old Goose at Willow Bend")
	assert.Contains(t, p.Keys("u").Seen(), "there is nothing to undo")
}

// An edit of the plan that the Rig screen does not show is undone there as well, and told;
// one that led from the example to one's own leads back to it.
func TestTheRigUndoesWhatThePlanEdited(t *testing.T) {
	o, _ := shelved(t)
	p := play(t, o, "d enter '2026-07-01' enter")
	require.Contains(t, p.Seen(), "2026-07-01")
	page := p.Send(hands.Key("R")).(screen.Go).To
	page, _ = page.Update(hands.Key("u"))
	assert.Contains(t, page.View(layout.Least()), "Undone: \"date\" of the wash is ")
	_, cmd := page.Update(hands.Key("R"))
	p.Send(cmd().(screen.Back).With)
	assert.NotContains(t, p.Seen(), "2026-07-01")

	o.Example, o.Others, o.Shelf = true, nil, nil
	q := play(t, o, "e")
	assert.False(t, q.M.now.example)
	inRig(q, "u R")
	assert.True(t, q.M.now.example)
	assert.Contains(t, q.Seen(), "Old Goose at Willow Bend")
}

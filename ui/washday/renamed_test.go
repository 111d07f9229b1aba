package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
)

// renamed goes on with the wash of a player on a rig whose vehicle and bed have other names.
func renamed(t *testing.T, p *player, script string) *player {
	o := p.b.options()
	o.Rig.Vehicles, o.Rig.Beds = append([]model.Vehicle(nil), o.Rig.Vehicles...), append([]model.Bed(nil), o.Rig.Beds...)
	o.Rig.Vehicles[0].Name, o.Rig.Beds[0].Name = "Foxglove", "blue tank"
	o.Rig.Defaults.Vehicle, o.Rig.Defaults.Bed = "Foxglove", "blue tank"
	o.Wash.Vehicle, o.Wash.Bed = "Foxglove", "blue tank"
	return play(t, p.b, o, script)
}

// A vehicle and a bed that are renamed while a wash is under way are called so from then on,
// on the screen, in its file and in the log, and the bed can be looked at.
func TestAWashUnderWayFollowsNewNames(t *testing.T) {
	p := renamed(t, fresh(t, "enter space 90s enter"), "")
	assert.Contains(t, p.seen(), "A wash is under way: Foxglove, begun")
	p.keys("enter")
	assert.Contains(t, p.seen(), "Wash day: Foxglove at")
	assert.NotContains(t, p.seen(), "could not be looked at")
	assert.Equal(t, []string{"Foxglove", "blue tank"}, []string{p.b.kept.Plan.Vehicle, p.b.kept.Plan.Bed})
	p.keys("x y")
	stages := 0
	for _, e := range p.b.log.Effective() {
		switch b := e.Body.(type) {
		case *model.StageDone:
			stages++
			assert.Equal(t, "Foxglove", b.Vehicle)
		case *model.WashDone:
			assert.Equal(t, []string{"Foxglove", "blue tank"}, []string{b.Vehicle, b.Bed})
		}
	}
	assert.Equal(t, 1, stages, "the step that was written by the old name is struck out")
	var notes []string
	for i := range p.b.log {
		if p.b.log[i].Kind() == model.CorrectionKind {
			notes = append(notes, p.b.log[i].Note)
		}
	}
	assert.Equal(t, []string{"written anew by another name"}, notes)
}

// What a reading of the wash names follows as well: the entry that is in the log is put right,
// once.
func TestReadingsFollowNewNames(t *testing.T) {
	p := atThePen(t).keys("r '3 ppm NaCl' enter enter")
	require.Equal(t, []string{"half-foot tank"}, bedsRead(p))
	p = renamed(t, p, "enter")
	p.keys("space")
	assert.Equal(t, []string{"blue tank"}, bedsRead(p))
	n := len(p.b.log)
	p.keys("space")
	assert.Len(t, p.b.log, n)
}

// bedsRead are the beds of the readings that count.
func bedsRead(p *player) []string {
	var beds []string
	for _, e := range p.b.log.Effective() {
		if s, is := e.Body.(*model.Sample); is {
			beds = append(beds, s.Bed)
		}
	}
	return beds
}

// Where there are more of a kind nobody can tell a new name from a thing that was taken out.
func TestOneOfManyKeepsItsOldName(t *testing.T) {
	p := fresh(t, "enter space 90s enter")
	o := p.b.options()
	o.Rig.Vehicles = []model.Vehicle{{Name: "Foxglove"}, {Name: "Thistle"}}
	o.Rig.Sprayers = nil
	u := CalledAnew(stock.Stock{Rig: &o.Rig, Places: &o.Places, Wash: &o.Wash}, *p.b.kept)
	assert.Equal(t, "Marigold", u.Plan.Vehicle)
	assert.Equal(t, p.b.kept.Plan.Sprayer, u.Plan.Sprayer)
	assert.Equal(t, p.b.kept.Steps, u.Steps)
}

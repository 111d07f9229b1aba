package planner_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// Of two washes of one day on one bed each is told of the other; not of one that is
// over, comes later, or takes another bed.
func TestOtherWashesOnTheBedAreTold(t *testing.T) {
	lib := store.Example()
	on := func(name, day string) model.Wash {
		w := lib.Washes[0].Wash
		d, err := model.ParseDate(day)
		require.NoError(t, err)
		w.Name, w.Date = name, quantity.Some(d)
		return w
	}
	today := on("", "2026-05-02").Date.Or(model.Date{})
	wash, other := on("A", "2026-05-09"), on("B 100 %", "2026-05-09")
	note, told := planner.OthersOnBed(lib.Rig, lib.Places, wash, []model.Wash{wash, other, on("over", "2026-05-01"), on("later", "2026-05-10")}, nil, today)
	require.True(t, told)
	plan, err := planner.Make(lib.Rig, lib.Places, other)
	require.NoError(t, err)
	takes := plan.DI.Volume + plan.Flush.Volume
	assert.Equal(t, "Not counted in the chance: B 100 %, 2026-05-09. Up to this wash's day the same bed is to give "+quantity.Show(takes, quantity.US)+" there as well.", note.Text(quantity.US))
	second := lib.Rig.Beds[0]
	second.Name = "another"
	lib.Rig.Beds = append(lib.Rig.Beds, second)
	other.Bed = "another"
	_, told = planner.OthersOnBed(lib.Rig, lib.Places, wash, []model.Wash{wash, other}, nil, today)
	assert.False(t, told)
}

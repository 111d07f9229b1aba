package planner_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// beside is a library of one wash, and a maker of washes like it with another name and day.
func beside(t *testing.T) (lib store.Library, on func(name, day string) model.Wash) {
	lib = store.Example()
	return lib, func(name, day string) model.Wash {
		w := lib.Washes[0].Wash
		d, err := model.ParseDate(day)
		require.NoError(t, err)
		w.Name, w.Date = name, quantity.Some(d)
		return w
	}
}

// heeded are the warnings of one code in the plan of a wash beside others.
func heeded(t *testing.T, lib store.Library, code string, wash model.Wash, others ...model.Wash) []string {
	plan, err := planner.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	plan.WarnOfOthers(lib.Rig, lib.Places, wash, others, nil, model.Date{Year: 2026, Month: 5, Day: 2})
	var texts []string
	for _, w := range plan.Warnings {
		if w.Code == code {
			texts = append(texts, w.Text(quantity.US))
		}
	}
	return texts
}

// Of two washes of one day on one bed each is told of the other; not of one that is
// over, comes later, or takes another bed.
func TestOtherWashesOnTheBedAreTold(t *testing.T) {
	lib, on := beside(t)
	wash, other := on("A", "2026-05-09"), on("B 100 %", "2026-05-09")
	plan, err := planner.Make(lib.Rig, lib.Places, other)
	require.NoError(t, err)
	takes := quantity.Show(plan.Through(), quantity.US)
	assert.Equal(t, []string{"Not counted in the chance: B 100 %, 2026-05-09. Up to this wash's day the same bed is to give " + takes + " there as well."},
		heeded(t, lib, planner.PlannedBefore, wash, wash, other, on("over", "2026-05-01"), on("later", "2026-05-10")))
	second := lib.Rig.Beds[0]
	second.Name = "another"
	lib.Rig.Beds = append(lib.Rig.Beds, second)
	other.Bed = "another"
	assert.Empty(t, heeded(t, lib, planner.PlannedBefore, wash, wash, other))
}

// What the others take is worked out on the bed as it stands before the wash, by what the
// log says of it as by what the rig does: so much as their own plans say.
func TestOthersTakeWhatTheirOwnPlansSay(t *testing.T) {
	lib, on := beside(t)
	lib.Rig.Beds[0].SoFar = quantity.Some(250 * quantity.Gallon)
	wash, first, second := on("A", "2026-05-09"), on("B", "2026-05-07"), on("C", "2026-05-08")
	sum := quantity.Volume(0)
	for _, o := range []model.Wash{first, second} {
		plan, err := planner.Make(lib.Rig, lib.Places, o)
		require.NoError(t, err)
		sum += plan.Through()
	}
	assert.Equal(t, []string{"Not counted in the chance: B, 2026-05-07; C, 2026-05-08. Up to this wash's day the same bed is to give " + quantity.Show(sum, quantity.US) + " there as well."},
		heeded(t, lib, planner.PlannedBefore, wash, first, second))
}

// Two washes of one day that run at one time are told of each other's hours, whatever
// their beds; not where one ends first, or is of another day.
func TestWashesAtTheSameHoursAreTold(t *testing.T) {
	lib, on := beside(t)
	second := lib.Rig.Beds[0]
	second.Name = "another"
	lib.Rig.Beds = append(lib.Rig.Beds, second)
	at := func(name, day string, hour int) model.Wash {
		w := on(name, day)
		w.Start = quantity.Some(model.TimeOfDay{Hour: hour})
		return w
	}
	wash, beside := at("A", "2026-05-09", 8), at("B 100 %", "2026-05-09", 9)
	beside.Bed = "another"
	ends := func(w model.Wash) string {
		plan, err := planner.Make(lib.Rig, lib.Places, w)
		require.NoError(t, err)
		return plan.Day.Start.End.Format("15:04")
	}
	require.Greater(t, ends(wash), "09:00")
	want := "At the same hours as this wash, 08:00 to " + ends(wash) + ": B 100 %, 09:00 to " + ends(beside) + ". Another start, or another day, keeps them apart."
	assert.Equal(t, []string{want}, heeded(t, lib, planner.SameHours, wash, wash, beside, at("early", "2026-05-09", 1), at("before", "2026-05-08", 8), at("evening", "2026-05-09", 20)))
	assert.Len(t, heeded(t, lib, planner.SameHours, beside, wash), 1, "the other way round")
}

// A wash that states no start is looked at from the start that the plan recommends, from the one
// side as from the other; where the day is not known well enough for that, it is not.
func TestARecommendedStartIsLookedAtBesideOthers(t *testing.T) {
	lib, on := beside(t)
	wash, other := on("A", "2026-05-09"), on("B", "2026-05-09")
	other.Start = quantity.Opt[model.TimeOfDay]{}
	plan, err := planner.Make(lib.Rig, lib.Places, other)
	require.NoError(t, err)
	best, known := plan.Day.Recommended.Get()
	require.True(t, known)
	wash.Start = quantity.Some(model.TimeOfDayAt(best.At))
	hours := best.At.Format("15:04") + " to " + best.End.Format("15:04")
	told := heeded(t, lib, planner.SameHours, wash, other)
	require.Len(t, told, 1)
	assert.Contains(t, told[0], ": B, "+hours+" as recommended. Another start")
	told = heeded(t, lib, planner.SameHours, other, wash)
	require.Len(t, told, 1)
	assert.Contains(t, told[0], "At the same hours as this wash, "+hours+" as recommended: A, ")
	assert.Equal(t, plan.Hours(other), planner.HoursOf(lib.Rig, lib.Places, other, nil))
	lib.Places[0].Zone = quantity.Opt[*time.Location]{}
	assert.Empty(t, heeded(t, lib, planner.SameHours, wash, other))
}

package bed

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

// What was planned for one day stands beside no wash of another, and is put in or taken out
// as the day of the entry is changed; what was used most likely, and what was typed, stays.
func TestAWashOfAnotherDayIsNotWhatWasPlanned(t *testing.T) {
	for script, planned := range map[string]bool{
		"w '20 gal' enter w": true,
		"w '20 gal' enter down '2026-09-05 10:00' enter w":                             false,
		"w '20 gal' enter down '2026-09-05 10:00' enter up '2026-09-13 07:00' enter w": true,
		"w '20 gal' enter down '2026-09-05 10:00' enter up '2026-09-11 19:00' enter w": false,
	} {
		o := seasonOptions(t)
		p := play(t, o, script)
		row, _ := p.M.list.here() // the hand is on what was written
		w, is := row.Entry.Body.(*model.WashDone)
		require.True(t, is, p.Seen())
		assert.Equal(t, planned, w.PlannedDI.Given(), script)
		assert.Equal(t, planned, w.PlannedDuration.Given(), script)
		assert.Equal(t, planned, w.PlannedFlow.Given(), script)
		assert.Equal(t, planned, w.Plan != "", script)
		assert.NotEmpty(t, w.Vehicle, script)
		assert.NotEmpty(t, w.Bed, script)
		assert.True(t, w.Flow.Given(), script)
	}
}

// Where the plan is for tomorrow, what is done today is not it; without a day it is.
func TestTheDayOfThePlanDecidesWhatIsBesideAWash(t *testing.T) {
	o := seasonOptions(t)
	o.Wash.Date = quantity.Some(model.Date{Year: 2026, Month: 9, Day: 14})
	play(t, o, "w '20 gal' enter w")
	assert.False(t, o.last().Body.(*model.WashDone).PlannedDI.Given())
	o.Wash.Date = quantity.Opt[model.Date]{}
	play(t, o, "w '20 gal' enter w")
	assert.True(t, o.last().Body.(*model.WashDone).PlannedDI.Given())
}

func TestAPlannedFigureThatWasTypedStays(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "w '20 gal' enter down '2026-09-05 10:00' enter")
	f, err := p.M.form.State("planned_di", "33 gal")
	require.NoError(t, err)
	f, err = f.State("at", "2026-09-13 07:00")
	require.NoError(t, err)
	f, err = f.State("at", "2026-09-04 07:00")
	require.NoError(t, err)
	w := f.Entry().Body.(*model.WashDone)
	assert.Equal(t, "33 gal", w.PlannedDI.Words())
	assert.False(t, w.PlannedSoftened.Given())
}

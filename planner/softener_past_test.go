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

// Arithmetic by hand, in grains: 16000 less 100 gal of 16 gr/gal leaves 14400, which is
// 600 gal of 24 gr/gal (13600 and 567 gal, were they counted at the hardness here); and
// 100 gal of 24 gr/gal leave 13600, which is 850 gal of 16 gr/gal, and not 900.
func TestSoftenerKeepsWhatItTookElsewhere(t *testing.T) {
	at, err := model.ParseMoment("2026-05-03T09:30:00-06:00", nil)
	require.NoError(t, err)
	for name, c := range map[string]struct {
		planned, logged, usual string
		stated                 quantity.Volume
		want                   float64 // gal
	}{
		"logged at a softer place":      {planned: "hard", logged: "soft", usual: "hard", want: 600},
		"logged at a harder place":      {planned: "soft", logged: "hard", usual: "soft", want: 850},
		"logged here":                   {planned: "hard", logged: "hard", usual: "soft", want: 1700.0 / 3},
		"no place named":                {planned: "hard", usual: "soft", want: 600},
		"a place that is not known":     {planned: "hard", logged: "gone", usual: "soft", want: 600},
		"stated, usual place is softer": {planned: "hard", usual: "soft", stated: 100, want: 600},
		"stated, usual place is harder": {planned: "soft", usual: "hard", stated: 100, want: 850},
	} {
		t.Run(name, func(t *testing.T) {
			lib := store.Example()
			home := lib.Places[0]
			lib.Places = nil
			for name, gpg := range map[string]float64{"soft": 16, "hard": 24} {
				p := home
				p.Name, p.Hardness = name, quantity.Some(quantity.Hardness(quantity.Load(quantity.Grain/quantity.Capacity(quantity.Gallon))*quantity.Load(gpg)))
				lib.Places = append(lib.Places, p)
			}
			lib.Rig.Defaults.Place = c.usual
			softener := &lib.Rig.Softeners[0]
			softener.Capacity = quantity.Some(16000 * quantity.Grain)
			softener.SoFar = quantity.Opt[quantity.Volume]{}
			var log model.Log
			if c.stated > 0 {
				softener.SoFar = quantity.Some(c.stated * quantity.Gallon)
			} else {
				log = model.NewLog([]model.Entry{{ID: "c234567890123456", At: at, Body: &model.WashDone{
					Place: c.logged, Softened: quantity.Some(60 * quantity.Gallon), DI: quantity.Some(40 * quantity.Gallon),
				}}})
			}
			past := planner.Recall(log, lib.Rig, lib.Places)
			wash := lib.Washes[0].Wash
			wash.Place = c.planned
			memory := planner.Memory{Past: past}
			p, err := memory.Make(lib.Rig, lib.Places, wash)
			require.NoError(t, err)
			assert.InEpsilon(t, c.want, p.Softener.Remaining.Gallons(), 1e-9)

			here := lib.Places[model.Find(lib.Places.Names(), c.planned)]
			season, err := planner.Seasoned(lib.Rig, lib.Places, wash, past)
			require.NoError(t, err)
			d, err := season.Demand(lib.Rig, model.Places{here}, wash) // as a stop of a trip, of which alone it hears
			require.NoError(t, err)
			left := (d.Softener.Capacity - d.Softener.Before).Grains()
			assert.InEpsilon(t, c.want*float64(quantity.Load(here.Hardness.Or(0)).In(quantity.Gallon)/quantity.Grain), left, 1e-9)
		})
	}
}

// Whose water that was is told: of the log, or taken to be the usual place's.
func TestSoftenerTellsWhoseWaterItTook(t *testing.T) {
	lib := store.Example()
	lib.Rig.Softeners[0].SoFar = quantity.Some(100 * quantity.Gallon)
	p, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.Contains(t, sourceOf(t, p, "softener has taken").Text, "Juniper Flats, the usual place")
}

package planner_test

import (
	"math"
	"slices"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// Odd washes have a share and ways all the same, and no number in them is none.
func TestShortagesOfOddWashes(t *testing.T) {
	for name, change := range map[string]func(*store.Library, *model.Wash){
		"no DI stage":        func(_ *store.Library, w *model.Wash) { w.Stages = w.Stages[:4] },
		"no stages":          func(_ *store.Library, w *model.Wash) { w.Stages = nil },
		"all towels":         func(_ *store.Library, w *model.Wash) { w.TowelFaces = model.Sides() },
		"all pinned in":      func(_ *store.Library, w *model.Wash) { w.DIFaces = model.Sides() },
		"both ways":          func(_ *store.Library, w *model.Wash) { w.DIFaces, w.TowelFaces = model.Sides(), model.Sides() },
		"surfaces not there": func(_ *store.Library, w *model.Wash) { w.DISurfaces = []model.Surface{model.Vinyl} },
		"limit over feed": func(_ *store.Library, w *model.Wash) {
			w.Limit = quantity.Some(quantity.PPM(200, quantity.ScaleNaCl))
			w.Target = w.Limit
		},
		"water that reads nothing": func(l *store.Library, _ *model.Wash) {
			l.Places[0].TDS = quantity.Some(quantity.PPM(0, quantity.ScaleNaCl))
		},
		"no softener":    func(_ *store.Library, w *model.Wash) { w.Softener = model.NoSoftener },
		"long spent":     func(l *store.Library, _ *model.Wash) { l.Rig.Beds[0].SoFar = quantity.Some(9000 * quantity.Gallon) },
		"no date":        func(_ *store.Library, w *model.Wash) { w.Date = quantity.Opt[model.Date]{} },
		"held to little": func(_ *store.Library, w *model.Wash) { w.DIFlow = quantity.Some(0.05 * quantity.GPM) },
		"no pressure": func(l *store.Library, _ *model.Wash) {
			l.Places[0].Pressure = quantity.Some(0 * quantity.PSI)
		},
	} {
		lib := worn(170)
		wash := lib.Washes[0].Wash
		change(&lib, &wash)
		s := shorten(t, lib, wash)
		assert.Len(t, s.Ways, 8, name)
		for _, v := range []float64{float64(s.Share.Gives), float64(s.Share.Needs), float64(s.Share.Spared), float64(s.Share.Chance), float64(s.Share.Short)} {
			assert.False(t, math.IsNaN(v) || math.IsInf(v, 0) || v < 0, "%s: %v", name, v)
		}
		for _, w := range s.Ways {
			for _, v := range []float64{float64(w.DI.Volume), float64(w.DI.Duration), float64(w.Chance), float64(w.Towel)} {
				assert.False(t, math.IsNaN(v) || v < 0, "%s, %s: %v", name, w.Code, v)
			}
			assert.True(t, w.Not.Code != "" || w.Does.Code != "", "%s: %s says what it is or why not", name, w.Code)
		}
		assert.NotEmpty(t, s.Reasons())
	}
}

// A bed that the log knows: new resin is believed in as past fills taught.
func TestShortageOfABedWithALog(t *testing.T) {
	log, lib := seasonLog(t)
	memory := planner.Memory{Past: planner.Recall(log, lib.Rig, lib.Places)}
	wash := lib.Washes[0].Wash
	base, err := memory.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	s, err := memory.Shorten(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	resin := wayOf(t, s, planner.WayResin)
	assert.GreaterOrEqual(t, resin.Chance, base.Bed.ChanceLasts)
	assert.Greater(t, float64(resin.Chance), 0.9)
	again, err := memory.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	assert.Equal(t, base.Bed, again.Bed, "nothing was changed by looking")
}

// The ways are worked out while pins are tried.
func TestWaysBesidePins(t *testing.T) {
	lib := worn(148)
	wash := lib.Washes[0].Wash
	var memory planner.Memory
	s, err := memory.Sharing(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	share, err := s.Out(wash)
	require.NoError(t, err)
	var wait sync.WaitGroup
	wait.Go(func() {
		_, err := s.Ways(share)
		assert.NoError(t, err)
	})
	for _, side := range model.Sides() {
		pinned := wash
		pinned.TowelFaces = []model.Side{side}
		out, err := s.Out(pinned)
		require.NoError(t, err)
		assert.False(t, slices.Contains(out.Order(), side))
	}
	wait.Wait()
}

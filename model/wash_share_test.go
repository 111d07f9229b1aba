package model_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
)

func fieldOf(t require.TestingT, w *model.Wash, key string) model.Field {
	for _, f := range w.Fields() {
		if f.Key == key {
			return f
		}
	}
	require.Fail(t, "no field "+key)
	return model.Field{}
}

func TestSharesRoundTrip(t *testing.T) {
	for key, text := range map[string]string{
		"di_faces": "front, left", "towel_faces": "roof", "di_surfaces": "glass, bright metal", "di_flow": "0.8 gpm", "confidence": "75 %",
	} {
		var w, again model.Wash
		require.NoError(t, fieldOf(t, &w, key).Set(text), key)
		assert.Equal(t, text, fieldOf(t, &w, key).Text())
		require.NoError(t, fieldOf(t, &again, key).Set(fieldOf(t, &w, key).Text()))
		assert.Equal(t, w, again)
		require.NoError(t, fieldOf(t, &w, key).Set(""))
		assert.False(t, fieldOf(t, &w, key).Given(), key)
	}
}

func TestAllFacesArePinnedByOneWord(t *testing.T) {
	var w model.Wash
	require.NoError(t, fieldOf(t, &w, "towel_faces").Set("All"))
	assert.ElementsMatch(t, model.Sides(), w.TowelFaces)
}

func TestWrongSharesSayWhatIsRight(t *testing.T) {
	for key, texts := range map[string][]string{
		"di_faces": {"bonnet", "left, left", ","}, "di_surfaces": {"chrome", "glass, glass"}, "confidence": {"0.9", "20 %", "100 %"}, "di_flow": {"1", "0 gpm", "-1 gpm"},
	} {
		for _, text := range texts {
			var w model.Wash
			err := fieldOf(t, &w, key).Set(text)
			require.Error(t, err, "%s = %s", key, text)
			assert.Equal(t, model.Wash{}, w, "it is as it was")
		}
	}
}

func TestAFaceIsPinnedOneWay(t *testing.T) {
	w := model.Wash{DIFaces: []model.Side{model.Left}, TowelFaces: []model.Side{model.Rear, model.Left}}
	faults := w.Contradictions()
	require.Len(t, faults, 1)
	assert.Equal(t, "towel_faces", faults[0].Key)
	assert.Contains(t, faults[0].Error(), "left")
}

func FuzzFaces(f *testing.F) {
	for _, seed := range []string{"left", "left, right", "all", "", ",", "left,left", "\x00"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var w model.Wash
		field := fieldOf(t, &w, "di_faces")
		if field.Set(text) == nil {
			was := w
			require.NoError(t, field.Set(field.Text()))
			assert.Equal(t, was, w)
		}
	})
}

func TestAnyListOfFacesRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := model.Wash{DIFaces: rapid.SliceOfNDistinct(rapid.SampledFrom(model.Sides()), 0, 5, rapid.ID).Draw(t, "faces")}
		var again model.Wash
		require.NoError(t, fieldOf(t, &again, "di_faces").Set(fieldOf(t, &w, "di_faces").Text()))
		assert.ElementsMatch(t, w.DIFaces, again.DIFaces)
	})
}

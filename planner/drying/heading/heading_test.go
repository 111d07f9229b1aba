package heading_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/heading"
)

const deg = quantity.Degree

func TestParse(t *testing.T) {
	for text, want := range map[string]float64{
		"north": 0, "N": 0, "north-east": 45, "NE": 45, "north east": 45, "Northeast": 45, "nne": 22.5,
		"north-north-east": 22.5, "north-northeast": 22.5, "wsw": 247.5, "45": 45, "45 deg": 45, "45°": 45, "360": 0,
		"nose to the north-east": 45, "Nose North": 0, "facing due west": 270, "heading 200": 200, "  s  ": 180, "22.5 deg": 22.5,
	} {
		got, err := heading.Parse(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got.Angle().Degrees(), 1e-9, text)
	}
	for _, text := range []string{"", "nose", "up", "north-south", "361", "-10", "45 ft", "NaN", "nnn", "e-e", "45 46"} {
		_, err := heading.Parse(text)
		var parse *quantity.ParseError
		require.ErrorAs(t, err, &parse, text)
		assert.Contains(t, err.Error(), "north-east", text)
	}
}

func TestWord(t *testing.T) {
	assert.Equal(t, "NE", heading.Of(50*deg).Word())
	assert.Equal(t, "N", heading.Of(355*deg).Word())
	assert.Equal(t, "W", heading.Of(-90*deg).Word())
}

func FuzzParse(f *testing.F) {
	for _, seed := range []string{"north-east", "NE", "45 deg", "nose to the south", "-", "e", "1e400", "\xff"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := heading.Parse(text)
		if err != nil {
			return
		}
		require.True(t, got >= 0 && got.Angle() < 360*deg)
		again, err := heading.Parse(got.String())
		require.NoError(t, err)
		require.Equal(t, got, again)
	})
}

// The sun in the south-east at 30 deg over a coach with its nose to the north:
// by hand, right and rear at cos 30 cos 45, left and front turned away.
func TestIncidenceByHand(t *testing.T) {
	h := heading.Of(0)
	for side, want := range map[model.Side]float64{model.Right: 0.6124, model.Rear: 0.6124, model.Left: -0.6124, model.Front: -0.6124, model.Roof: 0.5} {
		assert.InDelta(t, want, float64(h.CosIncidence(side, 30*deg, 135*deg)), 1e-4, side)
	}
	assert.InDelta(t, 60, h.Incidence(model.Roof, 30*deg, 135*deg).Degrees(), 1e-9)
	assert.InDelta(t, 180, h.Incidence("deck", 30*deg, 135*deg).Degrees(), 1e-9)
}

func TestFacing(t *testing.T) {
	got, err := heading.Of(45 * deg).Facing(model.Left)
	require.NoError(t, err)
	assert.InDelta(t, 315, got.Degrees(), 1e-9)
	_, err = heading.Of(0).Facing(model.Roof)
	assert.Error(t, err)
}

func TestTurningRoundSwapsTheSides(t *testing.T) {
	opposite := map[model.Side]model.Side{model.Left: model.Right, model.Right: model.Left, model.Front: model.Rear, model.Rear: model.Front, model.Roof: model.Roof}
	rapid.Check(t, func(t *rapid.T) {
		angle := quantity.Angle(rapid.Float64Range(-1000, 1000).Draw(t, "heading")) * deg
		altitude := quantity.Angle(rapid.Float64Range(-90, 90).Draw(t, "altitude")) * deg
		azimuth := quantity.Angle(rapid.Float64Range(0, 360).Draw(t, "azimuth")) * deg
		there, back := heading.Of(angle), heading.Of(angle+180*deg)
		for _, side := range model.Sides() {
			got := float64(back.CosIncidence(opposite[side], altitude, azimuth))
			require.InDelta(t, float64(there.CosIncidence(side, altitude, azimuth)), got, 1e-9)
		}
	})
}

package quantity

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A probe is what the tests need of one quantity type.
type probe struct {
	kind  *Kind
	exact func(si float64, sys System) string
	parse func(text string) (float64, error)
}

func probeOf[Q Quantity]() probe {
	var zero Q
	return probe{
		kind:  zero.Kind(),
		exact: func(si float64, sys System) string { return Exact(Q(si), sys) },
		parse: func(text string) (float64, error) { q, err := Parse[Q](text); return float64(q), err },
	}
}

func probes() []probe {
	return []probe{
		probeOf[Length](), probeOf[Area](), probeOf[Volume](), probeOf[Flow](), probeOf[Pressure](), probeOf[Temperature](),
		probeOf[Duration](), probeOf[Mass](), probeOf[Hardness](), probeOf[Conductivity](), probeOf[Load](), probeOf[Capacity](),
		probeOf[CapacityDensity](), probeOf[Concentration](), probeOf[Dose](), probeOf[Speed](), probeOf[ServiceRate](),
		probeOf[Coverage](), probeOf[Film](), probeOf[Residue](), probeOf[Irradiance](), probeOf[Angle](), probeOf[Fraction](),
		probeOf[Density](), probeOf[Viscosity](), probeOf[KinematicViscosity](), probeOf[Diffusivity](),
		probeOf[HeatTransfer](), probeOf[SpecificEnergy](), probeOf[Evaporation](), probeOf[HumidityRatio](),
	}
}

func allKinds() []*Kind {
	var kinds []*Kind
	for _, p := range probes() {
		kinds = append(kinds, p.kind)
	}
	return kinds
}

// TestKindsAreWhole: the first unit is SI, those shown exist, the example
// reads, no spelling means two units.
func TestKindsAreWhole(t *testing.T) {
	for _, p := range probes() {
		k := p.kind
		assert.Equal(t, 1.0, k.Units[0].Factor, k.Name)
		assert.Zero(t, k.Units[0].Zero, k.Name)
		for _, symbol := range []string{k.us, k.metric} {
			u, ok := k.unit(symbol)
			assert.True(t, ok && u.Symbol == symbol, "%s: %s", k.Name, symbol)
		}
		_, err := p.parse(k.Example)
		assert.NoError(t, err, k.Name)
		seen := map[string]bool{}
		for _, u := range k.Units {
			assert.Positive(t, u.Factor, u.Symbol)
			for _, spelling := range append([]string{u.Symbol}, u.Also...) {
				got, ok := k.unit(spelling)
				assert.True(t, ok && got.Symbol == u.Symbol, "%s: %s", k.Name, spelling)
				seen[spelling] = true
			}
		}
		assert.GreaterOrEqual(t, len(seen), len(k.Units))
	}
}

// TestExactGivesBackTheBits: value to text to the same float64, in both systems.
func TestExactGivesBackTheBits(t *testing.T) {
	for _, p := range probes() {
		rapid.Check(t, func(t *rapid.T) {
			si := math.Pow(10, rapid.Float64Range(-9, 9).Draw(t, "power"))
			if p.kind.signed && p.kind != &temperatureKind && rapid.Bool().Draw(t, "below zero") {
				si = -si
			}
			for _, sys := range []System{US, Metric} {
				text := p.exact(si, sys)
				got, err := p.parse(text)
				require.NoError(t, err, text)
				require.Equal(t, math.Float64bits(si), math.Float64bits(got), "%s: %s", p.kind.Name, text)
			}
		})
		for _, sys := range []System{US, Metric} {
			got, err := p.parse(p.exact(0, sys))
			assert.NoError(t, err)
			assert.Zero(t, got)
		}
	}
}

// TestTypedTextComesBack: what a person types, in any unit, keeps its value
// when it is written exactly and read again.
func TestTypedTextComesBack(t *testing.T) {
	for _, p := range probes() {
		rapid.Check(t, func(t *rapid.T) {
			unit := rapid.SampledFrom(p.kind.Units).Draw(t, "unit")
			number := float64(rapid.IntRange(0, 99999).Draw(t, "number")) / math.Pow10(rapid.IntRange(0, 4).Draw(t, "decimals"))
			typed := strconv.FormatFloat(number, 'f', -1, 64) + " " + unit.Symbol
			value, err := p.parse(typed)
			require.NoError(t, err, typed)
			for _, sys := range []System{US, Metric} {
				again, err := p.parse(p.exact(value, sys))
				require.NoError(t, err, typed)
				require.Equal(t, math.Float64bits(value), math.Float64bits(again), "%s: %s", typed, p.exact(value, sys))
			}
		})
	}
}

func TestExactIsShort(t *testing.T) {
	assert.Equal(t, "40 ft", Exact(40*Foot, US))
	assert.Equal(t, "1.4 gpm", Exact(1.4*GPM, US))
	assert.Equal(t, "68 F", Exact(Fahrenheit(68), US))
	assert.Equal(t, "20 C", Exact(Celsius(20), Metric))
	assert.Equal(t, "10000 gr/ft3", Exact(10000*GrainPerCubicFoot, US))
	assert.Equal(t, "40 %", Exact(40*Percent, US))
}

package water

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

// waterRows reads the rows 'water': C, kg/m3, Pa s, m2/s.
func waterRows(t *testing.T) [][4]float64 {
	t.Helper()
	text, err := os.ReadFile("../../testdata/reference/water-viscosity-density.csv")
	require.NoError(t, err)
	var rows [][4]float64
	for line := range strings.Lines(string(text)) {
		cells := strings.Split(strings.TrimSpace(line), ",")
		if cells[0] != "water" {
			continue
		}
		var row [4]float64
		for i, at := range []int{1, 3, 4, 5} {
			row[i], err = strconv.ParseFloat(cells[at], 64)
			require.NoError(t, err)
		}
		rows = append(rows, row)
	}
	require.Len(t, rows, 13)
	return rows
}

// IAPWS-95 and IAPWS R12-08 at 1 atm, from the reference file.
func TestLiquidAgreesWithIAPWS(t *testing.T) {
	for _, row := range waterRows(t) {
		at := quantity.Celsius(row[0])
		assert.InEpsilon(t, row[1], float64(Density(at)), 1e-5)
		assert.InEpsilon(t, row[2], float64(Viscosity(at)), 1e-4)
		assert.InEpsilon(t, row[3], float64(KinematicViscosity(at)), 1e-4)
	}
}

// Method: sodium 1.334e-9 and calcium 0.792e-9 m2/s at 25 C (CRC Handbook).
func TestDiffusivityAt25C(t *testing.T) {
	at := quantity.Celsius(25)
	assert.InEpsilon(t, 1.334e-9, float64(Diffusivity(Sodium, at)), 1e-3)
	assert.InEpsilon(t, 0.792e-9, float64(Diffusivity(Calcium, at)), 1e-3)
}

// Scaling by T/mu against the IAPWS viscosities of the reference file.
func TestDiffusivityFollowsTemperatureOverViscosity(t *testing.T) {
	rows := waterRows(t)
	warm := rows[5]
	require.Equal(t, 25.0, warm[0])
	for _, row := range rows {
		want := float64(Diffusivity(Sodium, quantity.Celsius(25))) * (row[0] + 273.15) / 298.15 * warm[2] / row[2]
		assert.InEpsilon(t, want, float64(Diffusivity(Sodium, quantity.Celsius(row[0]))), 1e-4)
	}
}

func TestWarmerWaterIsThinnerAndFaster(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cold := rapid.Float64Range(0, 59).Draw(t, "C")
		a, b := quantity.Celsius(cold), quantity.Celsius(cold+1)
		if Viscosity(b) >= Viscosity(a) || Diffusivity(Calcium, b) <= Diffusivity(Calcium, a) {
			t.Fatalf("not so at %g C", cold)
		}
	})
}

package quantity

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// unitNames are the names that the reference gives to units of ours.
var unitNames = map[string]string{
	"US gal": "gal", "US fl oz": "fl oz", "oz (avdp)": "oz", "mile/h": "mph", "bed volumes/h": "BV/h",
	"ft of water (conventional)": "ft H2O", "US gal/1000 ft2": "gal/1000 ft2",
	"grain/US gal": "gr/gal", "mg/L": "mg/L as CaCO3", "g": "g", "F (difference)": "", "C (difference)": "",
}

func kindWith(from, to string) (*Kind, Unit, bool) {
	for _, k := range allKinds() {
		_, hasFrom := k.unit(from)
		if u, hasTo := k.unit(to); hasFrom && hasTo {
			return k, u, true
		}
	}
	return nil, Unit{}, false
}

// TestConversions checks against GNU Units 2.22, see the head of the file.
func TestConversions(t *testing.T) {
	checked, without := 0, []string{}
	for _, row := range reference(t) {
		value, from, to := row[0], row[1], row[3]
		want, err := strconv.ParseFloat(row[2], 64)
		require.NoError(t, err)
		if name, renamed := unitNames[from]; renamed {
			from = name
		}
		if name, renamed := unitNames[to]; renamed {
			to = name
		}
		k, u, ok := kindWith(from, to)
		if !ok {
			without = append(without, row[1]+" to "+row[3])
			continue
		}
		si, err := parse(k, value+" "+from)
		require.NoError(t, err)
		assert.InDelta(t, want, u.FromSI(si), 1e-9*math.Max(1, math.Abs(want)), "%s %s in %s", value, from, to)
		checked++
	}
	assert.GreaterOrEqual(t, checked, 30)
	assert.Equal(t, []string{
		"in Hg (conventional) to kPa", "atm to psi", "grain to g", "lb to grain", "kgrain/ft3 to g/L", "kgrain to g", "oz/US gal to g/L",
		"gpm/ft2 to mm/s", "US gal/ft3 to bed volumes", "Btu (IT) to J", "hp to W", "kWh to J", "F (difference) to C (difference)",
	}, without, "rows of units that we do not have as such; grains are checked below")
}

func reference(t *testing.T) [][]string {
	t.Helper()
	file, err := os.Open("../../testdata/reference/unit-conversions.csv")
	require.NoError(t, err)
	defer file.Close()
	lines := csv.NewReader(file)
	lines.Comment, lines.LazyQuotes = '#', true
	rows, err := lines.ReadAll()
	require.NoError(t, err)
	return rows[1:]
}

// TestGrains checks the grains, which are mass in the reference and
// equivalents here: 50.04 g of CaCO3 an equivalent.
func TestGrains(t *testing.T) {
	want := map[string]float64{}
	for _, row := range reference(t) {
		v, err := strconv.ParseFloat(row[2], 64)
		require.NoError(t, err)
		want[row[1]+" to "+row[3]] = v
	}
	assert.InDelta(t, want["grain to g"], CaCO3*float64(Grain), 1e-9)
	assert.InDelta(t, want["kgrain to g"], CaCO3*float64(Must[Capacity]("1 kgr")), 1e-7)
	assert.InDelta(t, want["kgrain/ft3 to g/L"], CaCO3*float64(Must[CapacityDensity]("1 kgr/ft3"))/1000, 1e-9)
	assert.InDelta(t, want["grain/US gal to mg/L"], Must[Hardness]("1 gr/gal").MilligramsPerLitre(), 1e-8)
	assert.InDelta(t, 1, HardnessOf(want["grain/US gal to mg/L"]).GrainsPerGallon(), 1e-9)
	assert.InDelta(t, want["US gal/ft3 to bed volumes"], float64(Gallon/CubicFoot), 1e-9)
	assert.InDelta(t, want["gpm/ft2 to mm/s"], float64(GPMPerSquareFoot)*1000, 1e-9)
}

// TestGetters: each way out agrees with the unit it is named for.
// The international nautical mile is 1852 m (First International Extraordinary Hydrographic
// Conference, Monaco 1929; BIPM, SI brochure, 8th ed., table 8), and a knot is one an hour.
func TestKnots(t *testing.T) {
	for _, text := range []string{"9 kn", "9 kt", "9 kts", "9 knots", "9 KN", "16668 m/h", "16.668 km/h"} {
		assert.InDelta(t, 9*1852.0/3600, float64(Must[Speed](text)), 1e-12, text)
	}
	assert.InDelta(t, 1, float64(Must[Speed]("1 knot")/Knot), 1e-12)
	assert.Equal(t, "5.75 mph", Show(Must[Speed]("5 kn"), US))
}

func TestGetters(t *testing.T) {
	for name, pair := range map[string][2]float64{
		"ft":      {Must[Length]("3 ft").Feet(), 3},
		"in":      {Must[Length]("3 in").Inches(), 3},
		"m":       {Must[Length]("3 m").Metres(), 3},
		"ft2":     {Must[Area]("3 ft2").SquareFeet(), 3},
		"m2":      {Must[Area]("3 m2").SquareMetres(), 3},
		"gal":     {Must[Volume]("3 gal").Gallons(), 3},
		"L":       {Must[Volume]("3 L").Litres(), 3},
		"ft3":     {Must[Volume]("3 ft3").CubicFeet(), 3},
		"gpm":     {Must[Flow]("3 gpm").GPM(), 3},
		"L/min":   {Must[Flow]("3 L/min").LitresPerMinute(), 3},
		"psi":     {Must[Pressure]("3 psi").PSI(), 3},
		"C":       {Must[Temperature]("3 C").Celsius(), 3},
		"F":       {Must[Temperature]("3 F").Fahrenheit(), 3},
		"minutes": {Must[Duration]("3 min").Minutes(), 3},
		"seconds": {Must[Duration]("3 s").Seconds(), 3},
		"lb":      {Must[Mass]("3 lb").Pounds(), 3},
		"gr/gal":  {Must[Hardness]("3 gr/gal").GrainsPerGallon(), 3},
		"uS/cm":   {Must[Conductivity]("3 uS/cm").MicroSiemensPerCm(), 3},
		"meq/L":   {Must[Load]("3 meq/L").MilliEqPerLitre(), 3},
		"as mg/L": {Must[Load]("3 mg/L as CaCO3").MilligramsPerLitre(), 3},
		"gr":      {Must[Capacity]("3 gr").Grains(), 3},
		"mg/L":    {Must[Concentration]("3 mg/L").MilligramsPerLitre(), 3},
		"ft2/min": {Must[Coverage]("3 ft2/min").SquareFeetPerMinute(), 3},
		"mL/m2":   {Must[Film]("3 mL/m2").MillilitresPerSquareMetre(), 3},
		"mg/m2":   {Must[Residue]("3 mg/m2").MilligramsPerSquareMetre(), 3},
		"deg":     {Must[Angle]("3 deg").Degrees(), 3},
		"time":    {Must[Flow]("2 gpm").Time(Must[Volume]("6 gal")).Minutes(), 3},
		"volume":  {Must[Flow]("2 gpm").Volume(90).Gallons(), 3},
		"bed":     {Must[CapacityDensity]("6 gr/ft3").Of(Must[Volume]("0.5 ft3")).Grains(), 3},
		"load":    {float64(Must[Load]("2 meq/L").In(Must[Volume]("1.5 m3"))), 3},
	} {
		assert.InDelta(t, pair[1], pair[0], 1e-12, name)
	}
}

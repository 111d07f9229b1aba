package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestParseReadsWhatPeopleWrite(t *testing.T) {
	for text, metres := range map[string]float64{
		"40 ft 6 in": 40.5 * 0.3048, "40ft6in": 40.5 * 0.3048, `40' 6"`: 40.5 * 0.3048, "40.5 feet": 40.5 * 0.3048,
		"5/8 in": 0.015875, "1 1/2 in": 0.0381, "1-1/2 in": 0.0381, " 12.3 M ": 12.3, "1e-3 m": 0.001, "+2 m": 2,
		"40 ft 1/2 in": 40*0.3048 + 0.0127, ".5 m": 0.5, "5. m": 5, "1 foot 1 inch": 0.3302,
	} {
		got, err := Parse[Length](text)
		require.NoError(t, err, text)
		assert.InDelta(t, metres, float64(got), 1e-12, text)
	}
	assert.InDelta(t, 150, float64(Must[Duration]("2 min 30 s")), 0)
	assert.InDelta(t, 0.5*0.028316846592, float64(Must[Volume]("0.5 cu  ft")), 1e-15)
	assert.InDelta(t, 18*1.0, Must[Hardness]("18 GPG").GrainsPerGallon(), 1e-12)
	assert.InDelta(t, -10, Must[Temperature]("-10 °C").Celsius(), 1e-12)
}

func TestParseTellsWhatIsWrong(t *testing.T) {
	for text, want := range map[string]string{
		"":             "is empty",
		"  ":           "is empty",
		"40":           NoUnit,
		"40 ft 6":      NoUnit,
		"42 ft 6 ft":   "has ft behind ft",
		"6 in 42 ft":   "has ft behind in",
		"12.5.3 ft":    "has two decimal points",
		"40 psi":       `has the unit "psi", which is no unit of length`,
		"ft":           "does not start with a number",
		"- ft":         "does not start with a number",
		"-1 ft":        "is below zero",
		"-0 ft":        "is below zero",
		"-1 ft 1 in":   "is below zero",
		"1 ft -1 in":   `has a sign in the middle`,
		"1/0 ft":       "divides by zero",
		"nan ft":       "is not a finite number",
		"-Inf ft":      "is not a finite number",
		"1e400 ft":     "is too large to be real",
		"1,000 ft":     "has a comma that could part thousands or decimals; write 1000 or 1.000",
		"0x10 ft":      `has the unit "x", which is no unit of length`,
		"1 ft\x1b[31m": `has the unit "ft\x1b[", which is no unit of length`,
	} {
		_, err := Parse[Length](text)
		var wrong *ParseError
		require.ErrorAs(t, err, &wrong, text)
		assert.Equal(t, want, wrong.Reason, text)
		assert.NotContains(t, err.Error(), "\x1b")
	}
	_, err := Parse[Temperature]("-500 F")
	assert.ErrorContains(t, err, "is below absolute zero")
	_, err = Parse[Flow]("1.4")
	assert.EqualError(t, err, `"1.4" has no unit; write the flow like 1.4 gpm (units: m3/s, gpm, gph, L/min, L/h, L/s, m3/h, ft3/s)`)
}

func TestABareNumberAtTheEndGoesOnWithTheNextUnit(t *testing.T) {
	for text, next := range map[string]string{"42 ft 6": "in", "1 m 80": "cm", "42": "", "42 in 6": ""} {
		_, err := Parse[Length](text)
		var wrong *ParseError
		require.ErrorAs(t, err, &wrong, text)
		assert.Equal(t, next, wrong.Next, text)
	}
	_, err := Parse[Duration]("2 min 30")
	var wrong *ParseError
	require.ErrorAs(t, err, &wrong)
	assert.Equal(t, "s", wrong.Next)
}

func TestReadingsAndScales(t *testing.T) {
	for text, want := range map[string]Reading{
		"240 ppm NaCl":   PPM(240, ScaleNaCl),
		"240ppm nacl":    PPM(240, ScaleNaCl),
		"240 ppm 442":    PPM(240, Scale442),
		"240 ppm as KCl": PPM(240, ScaleKCl),
		"240 ppm x 0.5":  PPM(240, PlainScale(0.5)),
		"240 mg/L":       PPM(240, ScaleUnsaid),
		"430 uS/cm":      {430, ScaleConductivity},
		"430 µS/cm":      {430, ScaleConductivity},
		"0 ppm":          PPM(0, ScaleUnsaid),
	} {
		got, err := ParseReading(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got, text)
	}
	for text, want := range map[string]string{
		"":               "is empty",
		"240":            NoUnit,
		"-1 ppm":         "is below zero",
		"-0 ppm":         "is below zero",
		"240 gal":        `has the unit "gal", which is neither ppm nor uS/cm`,
		"8 grains":       "is a hardness: state it on the line hardness",
		"240 ppm brix":   "is no scale of a TDS pen",
		"240 ppm x9":     "is no plain factor between x0.3 and x1",
		"1e308 mS/cm":    "is too large to be real",
		"1e999 ppm":      "is too large to be real",
		"NaN ppm":        "is not a finite number",
		"240 ppmmm NaCl": "is no scale of a TDS pen",
	} {
		_, err := ParseReading(text)
		var wrong *ParseError
		require.ErrorAs(t, err, &wrong, text)
		assert.Equal(t, want, wrong.Reason, text)
	}
	assert.Equal(t, PPM(5, Scale442), PPM(5, ScaleUnsaid).WithScale(Scale442))
	assert.Equal(t, PPM(5, ScaleKCl), PPM(5, ScaleKCl).WithScale(Scale442))
}

func TestMoney(t *testing.T) {
	for text, want := range map[string]Money{
		"$185": {18500, "$"}, "185.50 EUR": {18550, "EUR"}, "US$ 12": {1200, "US$"}, "€0.05": {5, "€"}, "12 kr": {1200, "kr"},
	} {
		got, err := ParseMoney(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got)
		assert.InDelta(t, float64(want.Hundredths)/100, got.Amount(), 0)
		again, err := ParseMoney(got.String())
		require.NoError(t, err)
		assert.Equal(t, want, again)
	}
	_, err := ParseMoney(" 130 ")
	require.EqualError(t, err, `" 130 " has no currency; write the price like "$130" or "130 EUR"`)
	for text, want := range map[string]string{
		"": "has no number", "dollars": "has no number", "185": "has no currency", "$185 USD": "has two currencies", "$-5": "is below zero",
		"$1e10": "is too large to be a price", "5 dollars": "has no known form of currency", "5 -": "has no known form of currency",
		"\x1b5": "has no known form of currency", "5 \u009b": "has no known form of currency", "$5.005": "has more than two decimals",
		"$1,000": "has a comma that could part thousands or decimals; write 1000 or 1.000",
	} {
		_, err := ParseMoney(text)
		var wrong *ParseError
		require.ErrorAs(t, err, &wrong, text)
		assert.Equal(t, want, wrong.Reason, "%q", text)
	}
}

func TestShow(t *testing.T) {
	assert.Equal(t, "40 ft 6 in", Show(40.5*Foot, US))
	assert.Equal(t, "41 ft", Show(40.999*Foot, US))
	assert.Equal(t, "0.625 in", Show(Inch*5/8, US))
	assert.Equal(t, "12.3 m", Show(Length(12.34), Metric))
	assert.Equal(t, "0 ft", Show(Length(0), US))
	assert.Equal(t, "0 m", Show(Length(0), Metric))
	assert.Equal(t, "50 mm", Show(Length(0.05), Metric))
	assert.Equal(t, "1.4 gpm", Show(1.4*GPM, US))
	assert.Equal(t, "40%", Show(0.4*1.0*Fraction(1), US))
	for v, want := range map[float64]string{0: "0", 1234.5: "1234", 99.6: "100", 12.345: "12.3", 1.2345: "1.23", 0.12345: "0.123", -0.0001: "-0.0001", 1e-20: "0", -1e-20: "0"} {
		assert.Equal(t, want, Round(v))
	}
	assert.Equal(t, "unknown", Round(math.NaN()))
	assert.Equal(t, "no end", Round(math.Inf(1)))
}

func TestSystem(t *testing.T) {
	for _, sys := range []System{US, Metric} {
		got, err := ParseSystem(" " + sys.String() + " ")
		require.NoError(t, err)
		assert.Equal(t, sys, got)
	}
	_, err := ParseSystem("imperial")
	assert.EqualError(t, err, `"imperial" is no system of units; write the units like us or metric`)
}

func TestOneOf(t *testing.T) {
	assert.Equal(t, "", OneOf(nil))
	assert.Equal(t, "home", OneOf([]string{"home"}))
	assert.Equal(t, "yes or no", OneOf([]string{"yes", "no"}))
	assert.Equal(t, "raw, softened or di", OneOf([]string{"raw", "softened", "di"}))
}

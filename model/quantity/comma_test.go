package quantity

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestADecimalCommaReads(t *testing.T) {
	for text, same := range map[string]string{
		"1,4 gpm": "1.4 gpm", "0,5 gpm": "0.5 gpm", "0,125 gpm": "0.125 gpm", "12,75 L/min": "12.75 L/min",
		"1234,567 L/h": "1234.567 L/h", "1,5000 gpm": "1.5 gpm", "1,5e1 L/min": "15 L/min",
	} {
		got, err := Parse[Flow](text)
		require.NoError(t, err, text)
		assert.InDelta(t, float64(Must[Flow](same)), float64(got), 1e-15, text)
	}
	got, err := Parse[Length]("40 ft 6,5 in")
	require.NoError(t, err)
	assert.Equal(t, Must[Length]("40 ft 6.5 in"), got)
	reading, err := ParseReading("3,5 ppm x0,5")
	require.NoError(t, err)
	assert.Equal(t, PPM(3.5, PlainScale(0.5)), reading)
	money, err := ParseMoney("185,50 EUR")
	require.NoError(t, err)
	assert.Equal(t, Money{18550, "EUR"}, money)
}

func TestACommaThatReadsInTwoWaysIsRefused(t *testing.T) {
	for text, want := range map[string]string{
		"1,500 gpm":     twoWays + "; write 1500 or 1.500",
		"12,000 gpm":    twoWays + "; write 12000 or 12.000",
		"1,234.5 gpm":   noNumber,
		"1.234,5 gpm":   noNumber,
		"1,234,567 gpm": noNumber,
		"1, gpm":        noNumber,
		",5 gpm":        noNumber,
		"1,,5 gpm":      noNumber,
	} {
		_, err := Parse[Flow](text)
		var wrong *ParseError
		require.ErrorAs(t, err, &wrong, text)
		assert.Equal(t, want, wrong.Reason, text)
		assert.Equal(t, text, wrong.Text, "it is told as it was typed")
	}
	_, err := ParseReading("1,500 ppm")
	require.ErrorContains(t, err, twoWays)
	_, err = ParseMoney("$1,500")
	require.ErrorContains(t, err, twoWays)
}

func TestPointedSaysWhatIsRead(t *testing.T) {
	for text, want := range map[string]string{"1,4 gpm": "1.4 gpm", "40 ft 6,5 in": "40 ft 6.5 in", "$0,5": "$0.5"} {
		got, comma := Pointed(text)
		assert.True(t, comma, text)
		assert.Equal(t, want, got)
	}
	for _, text := range []string{"", "1.4 gpm", "1,500 gpm", "a, b", "1,,2", ","} {
		got, comma := Pointed(text)
		assert.False(t, comma, text)
		assert.Equal(t, text, got)
	}
}

// FuzzPointed: what was pointed reads the same as what was typed, and has no
// comma left in a number.
func FuzzPointed(f *testing.F) {
	for _, text := range []string{"1,4 gpm", "1,500 gpm", "0,5", ",5", "1,2,3", "4,5 ft 6,5 in", "\xff,1", "1,.5 m"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		pointed, comma := Pointed(text)
		require.Equal(t, len(text), len(pointed))
		if !comma {
			require.Equal(t, text, pointed)
			return
		}
		require.Less(t, strings.Count(pointed, ","), strings.Count(text, ","))
		again, more := Pointed(pointed)
		require.False(t, more)
		require.Equal(t, pointed, again)
		typed, err := ParseReading(text)
		same, other := ParseReading(pointed)
		require.Equal(t, err == nil, other == nil)
		require.Equal(t, same, typed)
	})
}

package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// FuzzParse: no text makes a panic; what is read is finite, not below zero
// where that makes no sense, and comes back exactly.
func FuzzParse(f *testing.F) {
	for _, text := range []string{"40 ft 6 in", "5/8 in", "1 1/2 min", "-10 F", "1e9 gpm", "0 %", "40' 6\"", "1,5 m", "nan", "\x1b", "1e-9 m2/s"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, p := range probes() {
			si, err := p.parse(text)
			if err != nil {
				require.NotContains(t, err.Error(), "\x1b")
				continue
			}
			require.False(t, math.IsNaN(si) || math.IsInf(si, 0))
			require.True(t, si >= 0 || p.kind.signed)
			for _, sys := range []System{US, Metric} {
				again, err := p.parse(p.exact(si, sys))
				require.NoError(t, err, p.exact(si, sys))
				require.Equal(t, si, again)
			}
		}
	})
}

func FuzzParseReading(f *testing.F) {
	for _, text := range []string{"240 ppm NaCl", "430 uS/cm", "1 mS/cm", "0 ppm x0.5", "1e21 ppm", "5/8 ppm 442", "1 S/m"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		r, err := ParseReading(text)
		if err != nil {
			require.NotContains(t, err.Error(), "\x1b")
			return
		}
		require.True(t, r.Number >= 0 && !math.IsInf(r.Number, 0))
		again, err := ParseReading(r.String())
		require.NoError(t, err, r.String())
		require.Equal(t, r, again)
	})
}

func FuzzParseScale(f *testing.F) {
	for _, text := range []string{"", "NaCl", "442", "kcl", "x0.5", "x 1", "x0.30000000001", "x1e-1"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s, err := ParseScale(text)
		if err != nil {
			return
		}
		again, err := ParseScale(s.String())
		require.NoError(t, err, s.String())
		require.Equal(t, s, again)
	})
}

func FuzzParseMoney(f *testing.F) {
	for _, text := range []string{"$185", "185.50 EUR", "kr 5", "5 e", "€1e3", "x", "$.5", "1/2 USD"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		m, err := ParseMoney(text)
		if err != nil {
			require.NotContains(t, err.Error(), "\x1b")
			return
		}
		require.GreaterOrEqual(t, m.Hundredths, int64(0))
		again, err := ParseMoney(m.String())
		require.NoError(t, err, m.String())
		require.Equal(t, m, again)
	})
}

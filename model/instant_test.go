package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func drawInstant(t *rapid.T, label string) Instant {
	zone := time.FixedZone("", 900*rapid.IntRange(-48, 56).Draw(t, label+" zone"))
	i := Instant{Wall: time.UnixMilli(rapid.Int64Range(700000000000, 7000000000000).Draw(t, label+" wall")).In(zone)}
	if rapid.Bool().Draw(t, label+" has the other clock") {
		i.Boot = rapid.SampledFrom([]string{"a", "5f1c7e2a-0b1d-4c3e-9f00-112233445566"}).Draw(t, label+" boot")
		i.Up = time.Duration(rapid.Int64Range(0, 1e12).Draw(t, label+" up")) * time.Millisecond
	}
	return i
}

func TestAnInstantIsReadAsItIsWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		i := drawInstant(t, "i")
		back, err := ParseInstant(i.String())
		require.NoError(t, err, i.String())
		assert.True(t, i.Wall.Equal(back.Wall))
		assert.Equal(t, i.String(), back.String())
		assert.Equal(t, i.Moment(), back.Moment())
	})
}

// Within one start of the machine the wall's clock changes nothing; no time is ever
// below zero.
func TestSince(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawInstant(t, "a"), drawInstant(t, "b")
		d, sure := b.Since(a)
		assert.GreaterOrEqual(t, d, time.Duration(0))
		moved := b
		moved.Wall = moved.Wall.Add(-time.Hour).In(time.FixedZone("", 7200))
		e, sureStill := moved.Since(a)
		if a.Boot != "" && a.Boot == b.Boot {
			assert.Equal(t, d, e)
			assert.Equal(t, sure, sureStill)
		} else if sure && d > time.Hour {
			assert.Equal(t, d-time.Hour, e)
		}
	})
}

func FuzzInstant(f *testing.F) {
	f.Add("2026-06-12T08:15:00.250-06:00 up 81234250 ms boot 5f1c")
	f.Add("2026-06-12T08:15:00.250Z")
	f.Fuzz(func(t *testing.T, text string) {
		i, err := ParseInstant(text)
		if err != nil {
			return
		}
		back, err := ParseInstant(i.String())
		require.NoError(t, err, "%q", i.String())
		require.Equal(t, i.String(), back.String())
	})
}

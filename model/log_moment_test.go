package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestMomentsComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		offset := 60 * rapid.IntRange(-14*60, 14*60).Draw(t, "offset")
		moment := MomentOf(time.Unix(rapid.Int64Range(700000000, 7000000000).Draw(t, "unix"), 0).In(time.FixedZone("", offset)))
		back, err := ParseMoment(moment.String(), nil)
		require.NoError(t, err)
		assert.Equal(t, moment, back)
		assert.Zero(t, moment.Compare(back))
		assert.Equal(t, -1, moment.Compare(moment.Plus(1)))
		assert.Equal(t, -1, Moment{}.Compare(moment))
		assert.Equal(t, 1, moment.Compare(Moment{}))
	})
}

// The quick way agrees with the standard library on what it reads.
func TestQuickMomentsAgreeWithTheLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`(19|20|21)[0-9]{2}-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-6][0-9]:[0-6][0-9](Z|[+-][01][0-9]:[0-6][0-9])`).Draw(t, "text")
		got, quick := scanMoment(text)
		want, err := time.Parse(time.RFC3339, text)
		if quick {
			require.NoError(t, err)
			assert.Equal(t, MomentOf(want), got)
		}
	})
}

func TestParseMoment(t *testing.T) {
	mountain := time.FixedZone("", -6*3600)
	for text, want := range map[string]string{
		"2026-06-12T08:15:00-06:00":   "2026-06-12T08:15:00-06:00",
		" 2026-06-12 08:15:00-06:00 ": "2026-06-12T08:15:00-06:00",
		"2026-06-12t08:15z":           "2026-06-12T08:15:00Z",
		"2026-06-12 08:15":            "2026-06-12T08:15:00-06:00",
		"2026-06-12":                  "2026-06-12T12:00:00-06:00",
	} {
		m, err := ParseMoment(text, mountain)
		require.NoError(t, err, text)
		assert.Equal(t, want, m.String())
		assert.Equal(t, Date{2026, time.June, 12}, m.Date())
	}
	for text, want := range map[string]string{
		"":                          `"" is no moment with its offset from UTC; write the moment like 2026-06-12T08:15:00-06:00`,
		"2026-06-12 08:15":          "is no moment with its offset from UTC",
		"2026-02-30T08:15:00Z":      "is no moment",
		"1890-06-12T08:15:00Z":      "is not between 1990 and 2200",
		"2026-06-12T08:15:00+15:00": "is over 14 hours from UTC",
	} {
		_, err := ParseMoment(text, nil)
		assert.ErrorContains(t, err, want)
	}
}

func FuzzParseMoment(f *testing.F) {
	for _, seed := range []string{"2026-06-12T08:15:00-06:00", "2026-06-12 08:15", "2026-06-12", "2026-06-12T08:15:60Z", "0000-00-00T00:00:00+99:99", "\xff", ""} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := ParseMoment(text, time.UTC)
		if err != nil {
			return
		}
		again, err := ParseMoment(got.String(), nil)
		require.NoError(t, err)
		require.Equal(t, got, again)
	})
}

func FuzzParseInstant(f *testing.F) {
	for _, seed := range []string{"2026-06-12T08:15:00.250-06:00", "2026-06-12T08:15:00.250Z up 12 ms boot ab-1", "2026-06-12T08:15:00.250Z up -1 ms boot x", "up", "\xff", ""} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := ParseInstant(text)
		if err != nil {
			return
		}
		again, err := ParseInstant(got.String())
		require.NoError(t, err)
		require.True(t, got.Wall.Equal(again.Wall) && got.Up == again.Up && got.Boot == again.Boot)
	})
}

// A moment is told as its own clock had it: with the zone only where the reader would take
// it for another hour.
func TestAMomentIsToldInItsOwnZone(t *testing.T) {
	mountain := time.FixedZone("", -6*3600)
	for text, want := range map[string]string{
		"2026-06-12T08:15:59-06:00": "2026-06-12 08:15",
		"2026-06-12T14:15:00Z":      "2026-06-12 14:15 UTC",
		"2026-06-12T09:15:00-05:00": "2026-06-12 09:15 UTC-05:00",
	} {
		m, err := ParseMoment(text, nil)
		require.NoError(t, err)
		assert.Equal(t, want, m.Told(mountain))
		assert.Equal(t, want[:len("2026-06-12 08:15")], m.Told(m.Time().Location()))
	}
	assert.Empty(t, Moment{}.Told(mountain))
}

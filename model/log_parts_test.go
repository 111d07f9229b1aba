package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// washInParts is a wash with two stages and a reading that counted its gallons.
func washInParts(t *testing.T) []Entry {
	return []Entry{
		entry(t, StageKind, "s1", "2026-06-12T08:10:00-06:00", map[string]string{"wash": "w", "stage": "flush", "water": "di", "used": "4 gal"}),
		entry(t, ReadingKind, "r", "2026-06-12T08:11:00-06:00", map[string]string{"wash": "w", "point": "after bed", "reading": "3 ppm NaCl", "flushed": "yes", "gallons_so_far": "304 gal"}),
		entry(t, StageKind, "s2", "2026-06-12T08:30:00-06:00", map[string]string{"wash": "w", "stage": "rinse", "water": "di", "used": "20 gal"}),
		entry(t, WashKind, "w", "2026-06-12T09:00:00-06:00", map[string]string{"di": "24 gal"}),
	}
}

func strikeOf(t *testing.T, id, of, at string) Entry {
	return entry(t, CorrectionKind, id, at, map[string]string{"of": of, "strike": "yes"})
}

// A wash that is struck takes its stages with it, and the gallons that its readings counted;
// the readings stay. When it counts again all of it does.
func TestAStruckWashTakesItsPartsWithIt(t *testing.T) {
	log := NewLog(append(washInParts(t), strikeOf(t, "x", "w", "2026-06-13T09:00:00-06:00")))
	left := log.Effective()
	require.Len(t, left, 1, "the reading alone")
	assert.Equal(t, "r", left[0].ID)
	assert.False(t, left[0].Body.(*Sample).SoFar.Given(), "the water that it counted is taken back")
	assert.Empty(t, left.Washes(), "no broken wash is made of the stages")
	for _, row := range log.Rows() {
		if row.Entry.Kind() == StageKind {
			assert.Equal(t, Struck, row.Standing)
			assert.Equal(t, "w", row.With)
			assert.Equal(t, []string{"x"}, row.By)
		}
	}
	assert.Equal(t, Parts{Stages: 2, Readings: 1}, PartsOf(log.Rows(), "w"))

	back := NewLog(append(log, strikeOf(t, "y", "x", "2026-06-14T09:00:00-06:00"))).Effective()
	require.Len(t, back, 4)
	assert.True(t, back[1].Body.(*Sample).SoFar.Given())
}

// A stage that is struck alone stays so, whatever becomes of its wash.
func TestAStageStruckAlone(t *testing.T) {
	log := NewLog(append(washInParts(t), strikeOf(t, "x", "s2", "2026-06-13T09:00:00-06:00")))
	assert.Len(t, log.Effective(), 3)
	assert.Equal(t, Parts{Stages: 1, Readings: 1}, PartsOf(log.Rows(), "w"))
	log = NewLog(append(log, strikeOf(t, "y", "w", "2026-06-14T09:00:00-06:00"), strikeOf(t, "z", "y", "2026-06-15T09:00:00-06:00")))
	assert.Len(t, log.Effective(), 3)
}

// What was struck alone is not said to be so with its wash, which brings it back when it counts
// again.
func TestWhatWasStruckAloneIsNotStruckWithItsWash(t *testing.T) {
	log := NewLog(append(washInParts(t),
		strikeOf(t, "x", "s2", "2026-06-13T09:00:00-06:00"), strikeOf(t, "y", "r", "2026-06-13T09:01:00-06:00"), strikeOf(t, "z", "w", "2026-06-14T09:00:00-06:00")))
	for _, row := range log.Rows() {
		switch row.Entry.ID {
		case "s1":
			assert.Equal(t, "w", row.With)
		case "s2":
			assert.Equal(t, []string{"x"}, row.By)
			assert.Empty(t, row.With)
		case "r":
			assert.Equal(t, []string{"y"}, row.By)
			assert.Empty(t, row.With)
		}
	}
	assert.Equal(t, Parts{Stages: 1}, PartsOf(log.Rows(), "w"), "those that go or stay with the wash")
}

package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
)

// Water that was run out for a reading came out of a bed. Of a reading elsewhere it is told,
// and the reading stands; no correction that was made before is undone by it.
func TestFlushWaterIsABeds(t *testing.T) {
	for point, faults := range map[Point]int{AfterBed: 0, "": 0, AtTap: 1, AfterSoftener: 1} {
		s := &Sample{Point: point, FlushWater: quantity.Some(4 * quantity.Gallon)}
		assert.Len(t, s.Contradictions(), faults, "%q", point)
		s.FlushWater = quantity.Opt[quantity.Volume]{}
		assert.Empty(t, s.Contradictions(), "%q", point)
	}
	read := entry(t, ReadingKind, "r", at(0), map[string]string{"point": "after bed", "reading": "2 ppm NaCl", "flush_water": "4 gal"})
	log := NewLog([]Entry{read, correction(t, "c", 1, "r", map[string]string{"point": "tap"})})
	assert.Empty(t, log.Faults())
	now := log.Effective()[0]
	assert.Equal(t, AtTap, now.Body.(*Sample).Point)
	require.Len(t, now.Faults(), 1)
	assert.NoError(t, now.Usable())
}

package decade_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store/decade"
	"washeve/model/store/journal"
)

func TestTenYears(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, decade.Write(dir))
	log, faults := journal.Open(filepath.Join(dir, "log.toml")).Load()
	assert.Empty(t, faults)
	assert.Empty(t, log.Faults())
	counts := map[model.Kind]int{}
	for i := range log {
		counts[log[i].Kind()]++
	}
	assert.Equal(t, decade.Washes, counts[model.WashKind])
	assert.Equal(t, decade.Readings, counts[model.ReadingKind])
	assert.Greater(t, counts[model.ResinKind], 10, "a bed lasts some months")
	years := log[len(log)-1].At.Time().Sub(log[0].At.Time()).Hours() / 24 / 365
	assert.InDelta(t, 10, years, 0.2)
}

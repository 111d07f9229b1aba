package entry_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/entry"
)

// A moment is asked for, and a wrong one answered, as a person writes it.
func TestAMomentIsWrittenAsADayAndAnHour(t *testing.T) {
	f := entry.New("A new entry", model.Entry{Body: &model.Refill{}}, entry.Known{Zone: time.UTC}, "at")
	_, err := f.State("at", "yesterday")
	require.Error(t, err)
	assert.Contains(t, err.Error(), "like 2026-06-12 08:15")
	for _, text := range []string{"2026-06-12 08:15", "2026-06-12", ""} {
		_, err = f.State("at", text)
		assert.NoError(t, err, text)
	}
	assert.Equal(t, "2026-06-12 08:15", f.Spoken(nil).Things()[0].Like)
}

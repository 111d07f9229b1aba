package form_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/form"
)

// An hour alone is written, and said back, as the time that it was read as.
func TestAnHourAloneIsSaidBack(t *testing.T) {
	for typed, read := range map[string]string{"9": "09:00", "21": "21:00", "0": "00:00", "12": "12:00"} {
		var w model.Wash
		got, err := set(day(), &w, "start", typed)
		require.NoError(t, err)
		assert.Equal(t, read, got["start"])
		for _, f := range w.Fields() {
			if f.Key == "start" {
				assert.Equal(t, read, form.Calendar{}.Taken(f, typed))
				assert.Empty(t, form.Calendar{}.Taken(f, "7:30"), "it says so itself")
			}
		}
	}
	_, err := set(day(), &model.Wash{}, "start", "5")
	require.ErrorContains(t, err, "may be of the morning or of the afternoon")
}

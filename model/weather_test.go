package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Of all that can be stated of a day, only how the wash is done goes to another day.
func TestWeatherIsOfItsDay(t *testing.T) {
	var w Wash
	for _, f := range w.Fields() {
		require.NoError(t, f.Set(f.Example))
	}
	other, weather := w.OnAnotherDay()
	assert.True(t, weather)
	var left []string
	for i, f := range other.Fields() {
		if was := w.Fields()[i]; was.Given() && !f.Given() {
			left = append(left, f.Key)
		}
	}
	assert.Equal(t, []string{"date", "start", "low", "high", "humidity", "humidity_at", "dew_point", "wind", "sky"}, left)
	assert.True(t, w.Low.Given(), "what is given stays as it is")
	again, weather := other.OnAnotherDay()
	assert.False(t, weather)
	assert.Equal(t, other, again)
}

package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
)

// TestEveryExampleIsRightInBothSystems: what is shown for example can be typed as it stands,
// and what has units is as a person of either family writes it.
func TestEveryExampleIsRightInBothSystems(t *testing.T) {
	items := []Item{
		&Vehicle{}, &Bed{}, &Softener{}, &Sprayer{}, &Hose{}, &Place{}, &Wash{}, &Stage{}, &Face{}, &Trip{}, &Stop{},
		&WashDone{}, &Sample{}, &Refill{}, &Regeneration{},
	}
	metric := 0
	for _, item := range items {
		for _, f := range item.Fields() {
			if f.kind == nil {
				assert.Equal(t, f.Example, f.In(quantity.Metric).Example, f.Key)
				continue
			}
			for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
				like := f.In(sys).Example
				require.NoError(t, f.Set(like), "%s: %s", f.Key, like)
			}
			assert.Equal(t, f.Example, f.In(quantity.US).Example, f.Key)
			if in, ok := f.kind.SystemOf(f.In(quantity.Metric).Example); ok {
				assert.Equal(t, quantity.Metric, in, f.Key)
				metric++
			}
		}
	}
	assert.Greater(t, metric, 30)
}

package learning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

func advise(fed float64, shows ...float64) Advice {
	f := season(shows...)
	f.Uses = append(f.Uses, Use{Capacities: fed, Units: sprayer})
	j := Job{Main: Use{Capacities: 1.0 / 300, Units: sprayer}, Limit: 10 / tap, Uses: []Use{{0.15, sprayer}}}
	return j.Advise(Start().Learn(f).States, tap, Trial{5 * quantity.GPM, bucket})
}

// A young bed reads nothing whatever it holds; in middle age it shows at a fast
// flow first.
func TestWhatToReadNext(t *testing.T) {
	young := advise(0.05)
	assert.Equal(t, ReadLater, young.Note.Code)
	assert.Contains(t, young.Note.Text(quantity.US), "gal")
	middle := advise(0.55)
	assert.Equal(t, ReadFaster, middle.Options[0].Code)
	assert.Greater(t, float64(middle.Options[0].Shrinks), 0.2)
	assert.Contains(t, middle.Note.Text(quantity.US), "5 gpm")
	t.Log(young.Note.Text(quantity.US), "|", middle.Note.Text(quantity.US), "|", advise(0.75).Note.Text(quantity.US))
}

func TestAdviceIsOrderedAndSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := advise(rapid.Float64Range(0, 1.5).Draw(t, "fed"))
		for i, o := range a.Options {
			assert.True(t, o.Shrinks >= 0 && o.Shrinks <= 1)
			assert.True(t, i == 0 || o.Shrinks <= a.Options[i-1].Shrinks)
		}
		assert.NotContains(t, a.Note.Text(quantity.Metric), "%!")
	})
	assert.Empty(t, Job{}.Advise(nil, tap, Trial{}).Options)
}

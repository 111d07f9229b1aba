package bed

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// A change of resin that is stated by hand is of as much as the tank holds.
func TestAChangeOfResinIsOfTheBedsVolume(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "n")
	p.M = p.M.state(model.NewBody(model.ResinKind))
	assert.InDelta(t, 0.5, p.M.form.Entry().Body.(*model.Refill).Resin.Or(0).CubicFeet(), 1e-9)
}

// A reading of another day that was taken after the bed has the sprayer's flow, as one of now
// has, and is asked whether it was flushed; one at the tap has no flow.
func TestAReadingOfAnotherDayIsAskedAsOneOfNow(t *testing.T) {
	p := play(t, seasonOptions(t), "n")
	p.M = p.M.state(model.NewBody(model.ReadingKind))
	sample := func() *model.Sample { return p.M.form.Entry().Body.(*model.Sample) }
	state := func(key, text string) {
		f, err := p.M.form.State(key, text)
		require.NoError(t, err)
		p.M.form = &f
	}
	assert.False(t, sample().Flow.Given())
	state("point", "after bed")
	state("reading", "4 ppm NaCl")
	assert.InDelta(t, p.M.plan.Sprayer.Flow.GPM(), sample().Flow.Or(0).GPM(), 1e-9)
	assert.Contains(t, p.M.form.Problem(), "flushed is needed")
	state("point", "tap")
	assert.False(t, sample().Flow.Given())
	assert.Empty(t, p.M.form.Problem())
}

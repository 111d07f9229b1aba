package bed

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
)

// A change of resin that is stated by hand is of as much as the tank holds.
func TestAChangeOfResinIsOfTheBedsVolume(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "n")
	p.M = p.M.state(model.NewBody(model.ResinKind))
	assert.InDelta(t, 0.5, p.M.form.Entry().Body.(*model.Refill).Resin.Or(0).CubicFeet(), 1e-9)
}

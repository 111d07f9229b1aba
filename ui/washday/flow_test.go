package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/theme"
)

// A time by itself is that of the vessel which the screen speaks of, as on the plan, and it
// is told what was made of it.
func TestATimeIsThatOfTheVesselOnTheScreen(t *testing.T) {
	p := firstDI(t).keys("f '46 s'")
	assert.Contains(t, p.seen(), "A gallon takes (or 5 gal in 230 s, or 1.3 gpm): 46 s")
	assert.Contains(t, p.seen(), "a gallon in that time is 1.3 gpm")
	p.keys("esc m")
	assert.Contains(t, oneLine(p.seen()), "10 L takes 64 s or longer")
	p.keys("f 6 4")
	assert.Contains(t, oneLine(p.seen()), "10 L takes (or 12 L in 144 s, or 5 L/min): 64_ enter takes it as 64 s; 10 L in that time is 9.38 L/min")
	p.keys("enter")
	assert.Contains(t, p.seen(), "Measured: 9.38 L/min.")
	assert.NotContains(t, p.seen(), "OVER THE CAP", "what the screen asks for is under the cap")
	for _, said := range []string{"12 L in 144 s", "5 L/min", "1.3 gpm"} {
		p.keys("f '" + said + "'")
		assert.NotContains(t, p.seen(), "in that time is", said)
		p.keys("esc")
	}
	p.keys("f '1 s' enter")
	assert.Contains(t, oneLine(p.seen()), "Not taken: \"1 s\" is no flow between 0.189 L/min and 379 L/min; write the flow like 120 s for 10 L, 12 L in 144 s, or 5 L/min")
}

func TestATimeIsThatOfTheVesselByWords(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "units", "flow", "120 s", "back")
	assert.Contains(t, said, "10 L takes (or 12 L in 144 s, or 5 L/min)")
	assert.Contains(t, said, "Measured: 5 L/min.")
}

// After a flow that was refused a new one takes its place.
func TestARefusedFlowIsNoTrap(t *testing.T) {
	p := firstDI(t).keys("f '1 psi' enter")
	assert.False(t, p.m.Typing(), "q and ? are keys")
	p.keys("x")
	assert.Contains(t, oneLine(p.seen()), `"x" begins no number`)
	p.keys("'46 s' enter")
	assert.Contains(t, p.seen(), "Measured: 1.3 gpm.")
}

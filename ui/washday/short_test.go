package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
	"washeve/ui/theme"
)

// Where the pen is within the limit and the bed will most likely not last the rest, the
// large word is no go, the way out is told and its key leads the foot; enter goes on.
func TestABedThatWillNotLastIsNoBareGo(t *testing.T) {
	p := fresh(t, "").to(model.Read).keys("r '4 ppm NaCl' enter")
	what, _, _ := p.m.headWords()
	require.Equal(t, "go", what, "it lasts")
	assert.Contains(t, p.seen(), "GO: ")

	p = fresh(t, "").to(model.Read).keys("r '7 ppm NaCl' enter")
	what, _, _ = p.m.headWords()
	assert.Equal(t, "bed short", what)
	chance, _ := p.m.u.Outlook.Chance.Get()
	assert.Less(t, chance, quantity.Fraction(0.5))
	frame := oneLine(p.seen())
	assert.NotContains(t, frame, "GO")
	assert.Contains(t, frame, "THE BED IS SHORT: the water is good now, no more than 10 ppm NaCl, but the bed will most likely not last the rest. w lists the ways out; enter goes on as it is.")
	assert.Contains(t, frame, "w ways out enter next")
	assert.Equal(t, washday.Go, p.m.state.Gate(&p.m.u))
	p.keys("enter")
	assert.NotEqual(t, model.Read, p.m.step().Kind)
}

// By words it is said the same.
func TestABedThatIsShortByWords(t *testing.T) {
	o := (&bay{}).options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "next", "next", "next", "next", "next", "reading 7 ppm NaCl", "tell", "back")
	assert.Contains(t, said, "THE BED IS SHORT: the water is good now")
	assert.NotContains(t, said, "GO:")
}

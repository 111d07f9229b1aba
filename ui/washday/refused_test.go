package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/entry"
	"washeve/ui/internal/hands"
)

// What is typed behind a reading that is refused is no command: not its digits, its letters
// nor the enter that ends it.
func TestWhatIsTypedBehindARefusedReadingDoesNothing(t *testing.T) {
	p := fresh(t, "enter space 10s r")
	require.Contains(t, p.seen(), "Not now: no DI water runs in this step.")
	at, deeds := p.m.state.At, len(unseen(p.m.u.Deeds))
	for _, k := range hands.Keys("'6.5 ppm sxb'") {
		p.send(k)
	}
	assert.True(t, p.m.Typing(), "letters are text for the program as well")
	assert.Contains(t, p.seen(), "enter esc letters act again")
	assert.Contains(t, p.seen(), "Not now: no DI water runs in this step.")
	p.keys("enter")
	assert.False(t, p.m.Typing())
	assert.Equal(t, at, p.m.state.At)
	assert.Len(t, unseen(p.m.u.Deeds), deeds)
	p.keys("enter")
	assert.Equal(t, at+1, p.m.state.At, "letters and enter act again")
}

// A flow is refused the same; and the water can be turned on before anything is typed.
func TestTheWaterIsTurnedOnBehindARefusal(t *testing.T) {
	p := fresh(t, "f '46 s' esc")
	assert.False(t, p.m.Typing())
	assert.Zero(t, p.m.state.At)
	p = fresh(t, "enter r space")
	assert.True(t, p.m.state.Running)
	assert.False(t, p.m.Typing())
	p = fresh(t, "r")
	p.send(entry.Learned{})
	p.keys("s")
	assert.Zero(t, p.m.state.At, "a lesson of the log lets no letter act")
}

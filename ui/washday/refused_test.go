package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
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
	assert.Contains(t, p.seen(), "enter esc keys act again")
	assert.Contains(t, oneLine(p.seen()), "Not now: no DI water runs in this step. What is typed behind it is not taken, and no key acts, until enter or esc.")
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
	p = fresh(t, "r 6")
	p.send(entry.Learned{})
	p.keys("s")
	assert.Zero(t, p.m.state.At, "a lesson of the log lets no letter act")
}

// Where nothing is typed behind a refusal the next key acts: nothing is swallowed.
func TestTheNextKeyActsAfterARefusal(t *testing.T) {
	assert.Equal(t, 1, fresh(t, "r enter").m.state.At)
	assert.Equal(t, 1, fresh(t, "r s").m.state.At)
	p := fresh(t, "r x")
	assert.True(t, p.m.ending)
	assert.Equal(t, 1, fresh(t, "r enter 6").m.state.At)
	assert.False(t, fresh(t, "r b 6").m.behind, "what comes later is no part of it")
}

// On the step of the reading its first digit begins it.
func TestADigitBeginsAReading(t *testing.T) {
	p := fresh(t, "").to(model.Read).keys("4")
	assert.Contains(t, p.seen(), "The pen shows: 4")
	p.keys("enter")
	reading, _ := sampleOf(t, p).Reading.Get()
	assert.Equal(t, "4 ppm NaCl", reading.String())
	p = fresh(t, "").to(model.Read)
	p.send(hands.Key("."))
	p.keys("5 enter")
	reading, _ = sampleOf(t, p).Reading.Get()
	assert.InDelta(t, 0.5, reading.Number, 1e-9)
	assert.Nil(t, fresh(t, "enter 4").m.edit, "elsewhere it is none")
}

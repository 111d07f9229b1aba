package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/entry"
)

// What is typed, or waits for an answer, is told before it is lost; what was answered or
// let go of on purpose is not.
func TestLeavingTellsOfAReadingThatIsNotWritten(t *testing.T) {
	for name, c := range map[string]struct {
		p     *player
		loses string
		ends  string
	}{
		"typed":                  {atThePen(t).keys("r '4'"), "the reading on the wash day is not written yet; enter writes it", "enter"},
		"a flow":                 {atThePen(t).keys("f '50 s'"), "the flow on the wash day is not written yet; enter writes it", "enter"},
		"let go of":              {atThePen(t).keys("r '4'"), "not written yet", "esc"},
		"a slip":                 {atThePen(t).keys("r '900' enter"), "it waits for an answer", "y"},
		"a second one":           {atThePen(t).keys("r '4' enter r '5' enter"), "it waits for an answer", "y"},
		"a first cup":            {short(t).keys("r '1 ppm NaCl' enter"), "it waits for an answer", "n"},
		"a first cup, let go of": {short(t).keys("r '1 ppm NaCl' enter"), "it waits for an answer", "esc"},
	} {
		assert.ErrorContains(t, c.p.m.Leave(), c.loses, name)
		assert.NoError(t, c.p.keys(c.ends).m.Leave(), name)
	}
	assert.NoError(t, atThePen(t).keys("r").m.Leave(), "nothing is typed")
}

// A lesson that comes while it is asked whether the bed was flushed leaves the question.
func TestALessonLeavesTheQuestionOfTheFlush(t *testing.T) {
	p := fresh(t, "")
	p.m.stood = "1 ppm NaCl"
	p.send(entry.Learned{})
	assert.Contains(t, oneLine(p.seen()), "Was the bed flushed all the same?")
}

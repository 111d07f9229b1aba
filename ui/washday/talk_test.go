package washday

import (
	"bufio"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/screen"
	"washeve/ui/theme"
)

// talked answers the questions of a talk, and gives all that was said.
func talked(t *testing.T, page screen.Screen, answers ...string) string {
	input := bufio.NewScanner(strings.NewReader(strings.Join(answers, "\n")))
	var out strings.Builder
	ask := func(question string) (string, bool) {
		out.WriteString(question + ": ")
		more := input.Scan()
		out.WriteString(input.Text() + "\n")
		return input.Text(), more
	}
	require.NoError(t, Talk(page, ask, func(lines ...string) { out.WriteString(strings.Join(lines, "\n") + "\n") }))
	return out.String()
}

func TestTheWholeWashByLines(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true})
	said := talked(t, Open(o), "n", "o", "o", "zz", "r", "n", "n", "n", "n", "n", "r", "what", "14 ppm NaCl", "9", "w", "2", "n", "r", "2 ppm NaCl", "n", "b", "t", "l")
	said += talked(t, Open(o), "g", "f", "46 s", "x", "n", "x", "y")
	for _, want := range []string{
		"Step 1 of 32: set up.", "Step 2 of 32: pre-rinse, roof, 5:44, the time runs.", "There is no zz here.", "Not now: no DI water runs in this step.",
		"Valves: softener THROUGH, DI bed bypassed", "NO-GO", "Change the resin now, flush, and read again.", "GO: the pen shows no more than",
		"A wash is under way: Marigold", "Measured: 1.3 gpm", "The wash was ended early",
	} {
		assert.Contains(t, said, want)
	}
	for _, r := range said {
		assert.Less(t, r, rune(0x7f))
	}
	assert.Len(t, b.log.Effective().Washes(), 1)
	assert.Nil(t, b.kept)
}

package washday

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/internal/hands"
	"washeve/ui/talk"
	"washeve/ui/theme"
)

// talked says some lines, and gives all that was said to them.
func talked(t *testing.T, o Options, lines ...string) string {
	o.Tick = 0
	var out strings.Builder
	require.NoError(t, talk.Run(t.Context(), hands.Root{Screen: Open(o)}, strings.NewReader(strings.Join(lines, "\n")), &out))
	return out.String()
}

func TestTheWholeWashByLines(t *testing.T) {
	b := &bay{}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "on", "off", "zz", "reading", "next", "next", "next", "n", "next", "next", "reading", "what", "14 ppm NaCl", "9", "", "ways", "2", "next", "reading 2", "next", "before", "tell", "back")
	said += talked(t, o, "go on", "flow 46 s", "end", "no", "end", "yes")
	for _, want := range []string{
		"Step 1 of 32: set up.", "Step 2 of 32: pre-rinse, roof, 5:44, the time runs.", `Read: "zz". There is no such word here; write one like on, next or reading 6.`, "Not now: no DI water runs in this step.",
		"Valves: softener THROUGH, DI bed bypassed", "NO-GO", "Change the resin now, flush, and read again.", "Read as 2 ppm NaCl.", "GO: the pen shows no more than",
		"A wash is under way: Marigold", "Measured: 1.3 gpm", "The wash was ended early", "No way out here: ", "DI and flush: planned 30.3 gal, done ",
	} {
		assert.Contains(t, said, want)
	}
	for _, r := range said {
		assert.Less(t, r, rune(0x7f))
	}
	assert.Len(t, b.log.Effective().Washes(), 1)
	assert.Nil(t, b.kept)
}

func TestAWashThatCannotBeGoneOnWithIsKeptAsideByWords(t *testing.T) {
	b := &bay{left: errFull}
	o := b.options()
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	said := talked(t, o, "next", "keep aside", "next", "back")
	assert.Contains(t, said, "its file cannot be gone on with, and is left as it is")
	assert.Contains(t, said, "write one like keep aside")
	assert.Contains(t, said, "Kept as underway-kept.toml")
	assert.Contains(t, said, "Step 2 of 32")
}

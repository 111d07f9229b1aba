package journal

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A long log read in parts gives what it gives in one go, faults and their
// lines too.
func TestPartsAgreeWithOneGo(t *testing.T) {
	sound := textOf(manyEntries(t, 300))
	_, faulty, _ := strings.Cut(handMade, "owner = \"me\"\n")
	_, named, _ := strings.Cut(handMade, "[[entry]]\nkind = \"snow\"")
	named = "[[entry]]\nkind = \"snow\"" + strings.Split(named, "[[entry]]")[0]
	for _, text := range []string{
		sound,
		sound + faulty,
		faulty + strings.TrimPrefix(sound, header) + faulty,
		named + strings.TrimPrefix(sound, header) + named + named,
	} {
		one, parts := newScanner("log.toml", text), newScanner("log.toml", text)
		require.Equal(t, one.head(), parts.head())
		one.entries()
		parts.entriesInParts(3)
		assert.Equal(t, contents(one.found), contents(parts.found))
		assert.Equal(t, one.spans, parts.spans)
		assert.Equal(t, said(one.all), said(parts.all))
		assert.Equal(t, one.line, parts.line)
	}
	assert.Len(t, newScanner("", sound).cuts(3), 3)
}

package journal

import (
	"strings"
	"testing"
	"time"

	"github.com/pelletier/go-toml/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/store/fault"
)

// slowly reads a text with the TOML library alone.
func slowly(text string) *scanner {
	s := newScanner("log.toml", text)
	if !s.head() {
		return s
	}
	for s.at < len(s.text) {
		start, line := s.at, s.line
		s.skipBlock()
		s.foreign(start, s.at, line)
	}
	return s
}

func quickly(text string) *scanner {
	s := newScanner("log.toml", text)
	if s.head() {
		s.entries()
	}
	return s
}

// requireAgreement: both ways of reading find the same entries, at the same
// places, and tell the same.
func requireAgreement(t require.TestingT, text string) {
	quick, slow := quickly(text), slowly(text)
	require.Equal(t, contents(slow.found), contents(quick.found))
	require.Equal(t, append([]span{}, slow.spans...), append([]span{}, quick.spans...))
	require.Equal(t, said(errorsOf(slow.all)), said(errorsOf(quick.all)))
}

func errorsOf(faults []fault.Fault) []fault.Fault {
	var errors []fault.Fault
	for _, f := range faults {
		if f.Severity == fault.Error {
			errors = append(errors, f)
		}
	}
	return errors
}

func TestBothWaysOfReadingAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := drawEntries(t)
		text := textOf(entries)
		requireAgreement(t, text)
		quick := quickly(text)
		assert.Equal(t, contents(entries), contents(quick.found))
		assert.Empty(t, said(quick.all))
		for i := range entries {
			assert.Equal(t, encode(entries[i]), quick.block(i))
		}

		cut := rapid.IntRange(0, len(text)).Draw(t, "cut")
		noise := rapid.StringOfN(rapid.RuneFrom([]rune("\n\r\t \"'[]=#\\\x01abc")), 0, 4, -1).Draw(t, "noise")
		requireAgreement(t, text[:cut]+noise+text[cut:])
	})
}

// The whole text is TOML to the library's own reader as well, and says the same.
func TestTheLogIsPlainTOML(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := drawEntries(t)
		var file struct {
			Format int
			Entry  []map[string]any
		}
		require.NoError(t, toml.Unmarshal([]byte(textOf(entries)), &file))
		assert.Equal(t, 1, file.Format)
		require.Len(t, file.Entry, len(entries))
		for i := range entries {
			assert.Equal(t, string(entries[i].Kind()), file.Entry[i][kindKey])
			for _, f := range entries[i].Fields() {
				if f.Scalar && f.Given() {
					moment, err := model.ParseMoment(f.Text(), nil)
					require.NoError(t, err)
					there, isTime := file.Entry[i][f.Key].(time.Time)
					require.True(t, isTime)
					assert.Equal(t, moment, model.MomentOf(there))
				} else if f.Given() {
					assert.Equal(t, f.Text(), file.Entry[i][f.Key])
				}
			}
		}
	})
}

func FuzzLog(f *testing.F) {
	f.Add(handMade)
	f.Add(header)
	f.Add(textOf([]model.Entry{sample(f, "one"), sample(f, "two")}))
	f.Add("format = 1\n[[entry]]\nkind = \"salt\"\nat = 2026-06-01T08:00:00Z\nsoftener = \"a\"\nid = \"x\"\x00\x00")
	f.Add("[[entry]]\nkind = \"correction\"\nof = \"x\"\nflow = \"1 gpm\"\nclear = [\"flow\", \"di\"]\nat = 2026-06-01 08:00:00Z\nid = \"y\"\n[entry.more]\nid = 3")
	f.Fuzz(func(t *testing.T, text string) {
		s := scanText("log.toml", text)
		for i, e := range s.found {
			require.NotEmpty(t, e.ID)
			require.Empty(t, e.Faults())
			back := quickly(encode(e))
			require.Equal(t, []string{e.Content()}, contents(back.found), "what is read can be written")
			require.True(t, strings.Contains(text, s.text[s.spans[i].start:s.spans[i].end]))
		}
		if notText(text) == 0 {
			requireAgreement(t, text)
		}
		require.LessOrEqual(t, whole(text), len(text))
		log := model.NewLog(s.found)
		log.Effective()
	})
}

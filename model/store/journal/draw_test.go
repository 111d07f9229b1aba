package journal

import (
	"cmp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
)

// made makes an entry from texts.
func made(t require.TestingT, kind model.Kind, id, at string, texts map[string]string) model.Entry {
	e := model.Entry{Body: model.NewBody(kind)}
	fields := e.Fields()
	set := func(key, text string) {
		i := slices.IndexFunc(fields, func(f model.Field) bool { return f.Key == key })
		require.GreaterOrEqual(t, i, 0, key)
		require.NoError(t, fields[i].Set(text))
	}
	set("id", id)
	set("at", at)
	for key, text := range texts {
		set(key, text)
	}
	require.Empty(t, e.Faults())
	return e
}

// sample is a reading of its own.
func sample(t require.TestingT, id string) model.Entry {
	return made(t, model.ReadingKind, id, "2026-06-12T08:15:00-06:00", map[string]string{
		"point": "after bed", "reading": "2 ppm NaCl", "bed": "half-foot tank", "flow": "1.3 gpm", "flushed": "yes", "note": `a "dim" day \ é`,
	})
}

// words draws free words, with all that may confuse a file or a spreadsheet.
var words = rapid.Custom(func(t *rapid.T) string {
	text := rapid.StringOfN(rapid.RuneFrom([]rune(`ab'"\=+-@,;# []é日`)), 1, 12, -1).Draw(t, "words")
	return cmp.Or(strings.TrimSpace(text), "-")
})

// drawEntry draws an entry of any kind.
func drawEntry(t *rapid.T) model.Entry {
	at := model.MomentOf(time.Unix(rapid.Int64Range(1.7e9, 1.9e9).Draw(t, "unix"), 0).In(time.FixedZone("", 60*rapid.IntRange(-840, 840).Draw(t, "offset"))))
	e := model.Entry{At: at, Body: model.NewBody(rapid.SampledFrom(model.Kinds()).Draw(t, "kind"))}
	e.ID = rapid.StringMatching(`[a-z0-9]{4,16}`).Draw(t, "id")
	for _, f := range e.Fields() {
		switch f.Key {
		case "id", "at", "strike":
			continue
		}
		if f.Required || rapid.Bool().Draw(t, f.Key) {
			drawField(t, f)
		}
	}
	if c, ok := e.Body.(*model.Correction); ok && len(c.Changes)+len(c.Clear) == 0 && !c.At.Given() {
		c.Strike = model.Yes
	}
	if s, ok := e.Body.(*model.Sample); ok && s.Point != model.AfterBed {
		s.FlushWater = quantity.Opt[quantity.Volume]{}
	}
	require.Empty(t, e.Faults())
	return e
}

func drawField(t *rapid.T, f model.Field) {
	text := f.Example
	switch {
	case len(f.Choices) > 0:
		text = rapid.SampledFrom(f.Choices).Draw(t, f.Key)
	case strings.ContainsAny(f.Example[:1], "0123456789") && f.Key != "id" && !f.Scalar:
		text = strings.Replace(text, "5", rapid.SampledFrom([]string{"5", "6", "35"}).Draw(t, f.Key), 1)
		if q, found := strings.CutSuffix(text, " gal"); found && rapid.Bool().Draw(t, "litres") {
			text = q + " L"
		}
	case f.Set("\"") == nil: // takes any words
		text = words.Draw(t, f.Key)
	}
	require.NoError(t, f.Set(text), "%s %q", f.Key, text)
}

func drawEntries(t *rapid.T) []model.Entry {
	entries := rapid.SliceOfN(rapid.Custom(drawEntry), 1, 6).Draw(t, "entries")
	seen := map[string]bool{}
	return slices.DeleteFunc(entries, func(e model.Entry) bool {
		twice := seen[e.ID]
		seen[e.ID] = true
		return twice
	})
}

func contents(log []model.Entry) []string {
	texts := make([]string, len(log))
	for i := range log {
		texts[i] = log[i].Content()
	}
	return texts
}

func said(faults []fault.Fault) []string {
	texts := make([]string, len(faults))
	for i, f := range faults {
		texts[i] = f.Error()
	}
	return texts
}

func loadWhole(t *testing.T, path string) model.Log {
	t.Helper()
	log, faults := Open(path).Load()
	require.Empty(t, said(faults))
	return log
}

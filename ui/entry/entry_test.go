package entry

import (
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

func plain() theme.Theme { return theme.New(theme.Options{Plain: true}) }

func known() Known {
	lib := store.Example()
	return KnownOf(lib.Rig, lib.Places, func() time.Time { return time.Date(2026, 6, 14, 9, 0, 0, 0, time.FixedZone("", -6*3600)) })
}

func press(f Form, script string) (Form, keys.Action) {
	var does keys.Action
	for _, k := range hands.Keys(script) {
		f, does = f.Update(k)
	}
	return f, does
}

// typeIn states an entry by keys alone, row by row.
func typeIn(t *testing.T, e model.Entry) model.Entry {
	k := known()
	k.Clock = func() time.Time { return e.At.Time() }
	f := New("", model.Entry{Body: model.NewBody(e.Kind())}, k)
	for i := range f.rows {
		field, _ := f.here()
		want := textOf(e, field.Key)
		switch {
		case want == "":
		case len(field.Choices) > 0 || len(f.known.Names[field.Refers]) > 0:
			f, _ = press(f, "enter")
			for f.picker != nil && f.picker.Options[f.picker.At].Pick != want && f.picker.At < len(f.picker.Options)-1 {
				f, _ = press(f, "down")
			}
			require.Equal(t, want, f.picker.Options[f.picker.At].Pick, field.Key)
			f, _ = press(f, "enter")
		default:
			f, _ = press(f, "enter")
			for _, r := range want {
				f, _ = f.Update(hands.Key(string(r)))
			}
			f, _ = press(f, "enter")
			require.NotContains(t, f.status, "Not taken", "%s: %s", field.Key, want)
		}
		f = f.onto(i + 1)
	}
	require.Empty(t, f.Problem())
	f, does := press(f, "w")
	require.Equal(t, Write, does)
	return f.Entry()
}

func textOf(e model.Entry, key string) string {
	for _, f := range e.Fields() {
		if f.Key == key {
			return f.Text()
		}
	}
	return ""
}

// A season typed in through the forms is the season of the file, and teaches the
// same.
func TestTheSeasonTypedIn(t *testing.T) {
	lib := store.Example()
	log, _ := journal.Open("../../testdata/season/log.toml").Load()
	require.NotEmpty(t, log)
	var typed model.Log
	for _, e := range log {
		typed = append(typed, typeIn(t, e))
	}
	assert.Equal(t, log, model.NewLog(typed))
	a, b := planner.Recall(log, lib.Rig, lib.Places), planner.Recall(typed, lib.Rig, lib.Places)
	assert.Equal(t, a.Bed("half-foot tank").Present().Gallons, b.Bed("half-foot tank").Present().Gallons)
}

func TestWhatKeepsAnEntryFromBeingWritten(t *testing.T) {
	f := New("", model.Entry{Body: &model.WashDone{}}, known(), "at", "di")
	assert.Contains(t, f.Problem(), "when is needed")
	f, _ = press(f, "'2026-06-12 08:15' enter")
	assert.Equal(t, "2026-06-12T08:15:00-06:00", f.Entry().At.String(), "the clock's own zone")
	assert.Contains(t, f.Problem(), "a wash needs how much it took")
	f, does := press(f, "w")
	assert.Empty(t, does)
	assert.Contains(t, strings.Join(f.Lines(plain(), 60, 12), "\n"), "Not now: a wash needs how much it took")
	f, _ = press(f, "'30' enter")
	assert.Empty(t, f.Problem())
	w := f.Entry().Body.(*model.WashDone)
	assert.Equal(t, "30 gal", w.DI.Words())
	_, does = press(f, "w")
	assert.Equal(t, Write, does)
	_, does = press(f, "esc")
	assert.Equal(t, Leave, does)
}

func TestWrongTextIsDroppedAndSaid(t *testing.T) {
	f := New("", model.Entry{Body: &model.WashDone{}}, known(), "di")
	f, _ = press(f, "'30 psi' enter")
	assert.Contains(t, f.status, "Not taken")
	assert.False(t, f.Entry().Body.(*model.WashDone).DI.Given())
	f, _ = press(f, "backspace")
	assert.NotContains(t, strings.Join(f.Lines(plain(), 60, 12), "\n"), "Not taken", "it is another text by now")
	f, _ = press(f, "backspace backspace backspace")
	assert.Contains(t, strings.Join(f.Lines(plain(), 60, 12), "\n"), "needs its unit")
}

// What is typed behind a digit that a line refused is of the same text: none of it acts,
// until enter, esc or an arrow.
func TestNothingActsBehindADigitThatWasRefused(t *testing.T) {
	f := New("", model.Entry{Body: &model.Sample{}}, known(), "point", "reading")
	f, does := press(f, "'5w3j' delete")
	assert.Empty(t, does)
	assert.True(t, f.Typing(), "letters are text")
	assert.True(t, f.Busy(), "the keys of the screen beneath are off, too")
	assert.Zero(t, f.hand, "j is no step down")
	assert.Contains(t, strings.Join(f.Lines(plain(), 80, 12), "\n"), "this line takes a word from a list; enter lists them")
	f, does = press(f, "esc")
	assert.Empty(t, does, "esc ends the text, not the form")
	f, _ = press(f, "j")
	assert.Equal(t, 1, f.hand)
}

func TestANumberBelowZeroIsRefusedAndSaid(t *testing.T) {
	f := New("", model.Entry{Body: &model.WashDone{}}, known(), "di")
	f, _ = press(f, "'-5'")
	assert.Contains(t, strings.Join(f.Lines(plain(), 80, 12), "\n"), "is below zero; write it like")
	f, _ = press(f, "enter")
	assert.Contains(t, f.status, `Not taken: DI water "-5" is below zero; write it like 30 gal.`)
	assert.False(t, f.Entry().Body.(*model.WashDone).DI.Given())
}

func TestAFormSharesNothing(t *testing.T) {
	e := model.Entry{Body: &model.Regeneration{Softener: "a"}}
	f := New("", e, known())
	g, err := f.State("softener", "b")
	require.NoError(t, err)
	assert.Equal(t, "a", f.Entry().Body.(*model.Regeneration).Softener)
	assert.Equal(t, "b", g.Entry().Body.(*model.Regeneration).Softener)
	assert.Equal(t, "a", e.Body.(*model.Regeneration).Softener)
}

// A moment that is still to come is asked about: a log holds what was done.
func TestAMomentToComeIsAskedAbout(t *testing.T) {
	f := New("", model.Entry{Body: &model.Regeneration{Softener: "a"}}, known(), "at")
	f, does := press(f, "'2027-01-05' enter w")
	assert.Empty(t, does)
	assert.Contains(t, strings.Join(f.Lines(plain(), 140, 12), "\n"), "2027-01-05 12:00 is still to come, and the log holds what was done. Write it all the same? y or n")
	_, does = press(f, "y")
	assert.Equal(t, Write, does)
	f, _ = press(f, "n")
	_, does = press(f, "up enter ctrl+u '2026-06-12' enter w")
	assert.Equal(t, Write, does)
}

func TestNamesCanBeNew(t *testing.T) {
	f := New("", model.Entry{Body: &model.Sample{}}, known(), "place")
	f, _ = press(f, "enter up up enter 'Gravel Pit' enter")
	assert.Equal(t, "Gravel Pit", f.Entry().Body.(*model.Sample).Place)
}

func TestFormsNeverOverflow(t *testing.T) {
	all := []string{"up", "down", "enter", "esc", "tab", "backspace", "delete", " ", "1", "7", "g", "a", "l", "w", "漢", "ctrl+u"}
	rapid.Check(t, func(t *rapid.T) {
		f := New("a title", model.Entry{Body: model.NewBody(rapid.SampledFrom(model.Kinds()).Draw(t, "kind"))}, known())
		for _, k := range rapid.SliceOfN(rapid.SampledFrom(all), 1, 25).Draw(t, "keys") {
			f, _ = f.Update(hands.Key(k))
			w, h := rapid.IntRange(20, 90).Draw(t, "w"), rapid.IntRange(0, 30).Draw(t, "h")
			lines := f.Lines(plain(), w, h)
			if len(lines) > h {
				t.Fatalf("%d lines for %d", len(lines), h)
			}
			for _, line := range lines {
				if cells.Width(ansi.Strip(line)) > w {
					t.Fatalf("%q is wider than %d", line, w)
				}
			}
		}
	})
}

// A bare number in an entry is offered the scale of the pen that the entry names, and none
// where that states none.
func TestAnEntrysReadingIsOfferedTheScaleOfItsPen(t *testing.T) {
	k := known()
	k.Rig.Pens = []model.Pen{{Name: "yellow", Scale: quantity.Some(quantity.Scale442)}, {Name: "old"}}
	k.Rig.Defaults.Pen = ""
	for pen, says := range map[string]string{
		"": "enter takes it as 6 ppm 442", "yellow": "enter takes it as 6 ppm 442", "old": "enter takes it as 6 ppm; no scale said: counted as NaCl",
	} {
		f, _ := press(New("", model.Entry{Body: &model.Sample{Pen: pen}}, k, "reading"), "6")
		assert.Contains(t, strings.Join(f.Lines(plain(), 78, 20), "\n"), says, pen)
		f, _ = press(New("", model.Entry{Body: &model.Sample{Pen: "old"}}, k, "reading"), "'6 ppm'")
		assert.Contains(t, strings.Join(f.Lines(plain(), 78, 20), "\n"), "no scale said: counted as NaCl")
	}
}

// With metric units shown, an entry's examples and what a bare number takes are metric.
func TestABareNumberOfAnEntryTakesTheUnitsShown(t *testing.T) {
	f := New("", model.Entry{Body: &model.WashDone{}}, known()).In(quantity.Metric).At("di")
	field, _ := f.here()
	assert.Equal(t, "110 L", field.Example)
	f, _ = press(f, "'120'")
	assert.Equal(t, "120 L", f.edit.Offer)
	f, _ = press(f, "enter")
	e := f.Entry()
	assert.Equal(t, "120 L", textOf(e, "di"))
}

// After a text that was refused a new one takes its place, or it is left, and that is told.
func TestARefusedTextIsNoTrap(t *testing.T) {
	f := New("", model.Entry{Body: &model.WashDone{}}, known(), "di", "at")
	f, _ = press(f, "'30 psi' enter")
	assert.False(t, f.Typing(), "q and ? are keys")
	f, _ = press(f, "'31'")
	assert.Equal(t, `In place of "30 psi", which was not taken.`, f.status)
	f, _ = press(f, "enter")
	assert.Equal(t, "31 gal", f.Entry().Body.(*model.WashDone).DI.Words())
	f, _ = press(f, "up '30 psi' enter down")
	assert.Nil(t, f.edit)
	assert.Equal(t, 1, f.hand)
	assert.Contains(t, f.status, "Not taken")
	assert.Equal(t, "31 gal", f.Entry().Body.(*model.WashDone).DI.Words())
}

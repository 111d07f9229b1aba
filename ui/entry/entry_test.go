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
	"washeve/planner/tag"
	"washeve/ui/cells"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
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
	f := New("", model.Entry{Body: model.NewBody(e.Kind())}, known())
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
			require.Empty(t, f.status, "%s: %s", field.Key, want)
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
	assert.Contains(t, f.Problem(), "gallons")
	f, does := press(f, "w")
	assert.Empty(t, does)
	assert.Contains(t, strings.Join(f.Lines(plain(), 60, 12), "\n"), "Not now: a wash needs its gallons")
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
	assert.Contains(t, strings.Join(f.Lines(plain(), 80, 12), "\n"), "this line takes a word from a list; letters wait until enter or esc")
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

func TestNamesCanBeNew(t *testing.T) {
	f := New("", model.Entry{Body: &model.Sample{}}, known(), "place")
	f, _ = press(f, "enter up up enter 'Gravel Pit' enter")
	assert.Equal(t, "Gravel Pit", f.Entry().Body.(*model.Sample).Place)
}

func desk(pen string) Desk {
	lib := store.Example()
	d := Desk{Rig: lib.Rig, Places: lib.Places, Clock: func() time.Time { return time.Date(2026, 9, 1, 8, 0, 0, 0, time.UTC) }}
	if pen != "" {
		d.Rig.Pens = []model.Pen{{Name: "grey pen"}}
		d.Rig.Defaults.Pen = ""
		for _, f := range d.Rig.Pens[0].Fields() {
			if f.Key == "scale" {
				_ = f.Set(pen)
			}
		}
	}
	return d
}

func reads(d Desk, script string) (Reading, keys.Action) {
	r := d.NewReading(sample.Plan(), 5*quantity.GPM)
	var does keys.Action
	for _, k := range hands.Keys(script) {
		r, does = r.Update(k)
	}
	return r, does
}

func asks(r Reading, width int) string {
	return strings.Join(r.Lines(plain(), quantity.US, width), "\n")
}

func TestReadingTellsTheFlushFirst(t *testing.T) {
	r, _ := reads(desk(""), "")
	assert.Contains(t, asks(r, 78), "4 gal, which takes 171 s (3 min) at this\nflow, or 48 s at 5 gpm.")
	assert.Contains(t, asks(r, 78), "like 6 ppm NaCl")
	r, does := reads(desk(""), "enter")
	assert.Empty(t, does, "without a number there is no reading")
	assert.Contains(t, asks(r, 78), "A number is needed, like 6 ppm NaCl")
	r, _ = reads(desk(""), "6 enter f")
	assert.Contains(t, asks(r, 78), "A reading after the bed, at 5 gpm")
	r, does = reads(desk(""), "6 enter f y")
	assert.Equal(t, Write, does)
	assert.Equal(t, "5 gpm", r.Sample().Flow.Words())
}

// A bare number has the scale of the pen, whatever that is.
func TestReadingHasThePensScale(t *testing.T) {
	for scale, want := range map[string]string{"442": "12 ppm 442", "x0.5": "12 ppm x0.5", "NaCl": "12 ppm NaCl"} {
		r, does := reads(desk(scale), "1 2 enter y")
		require.Equal(t, Write, does)
		assert.Equal(t, want, r.Sample().Reading.Words())
		assert.Equal(t, "grey pen", r.Sample().Pen)
	}
	r, _ := reads(desk("442"), "'20 uS/cm' enter y")
	assert.Equal(t, "20 uS/cm", r.Sample().Reading.Words())
}

// A pen of which no scale is said: what is counted is told while it is typed, and what was
// typed is kept as it was.
func TestAReadingWithoutAScaleIsToldHowItCounts(t *testing.T) {
	d := desk("")
	d.Rig.Pens = nil
	d.Rig.Defaults.Pen = ""
	r, _ := reads(d, "'2 ppm'")
	assert.Contains(t, asks(r, 78), "no scale said: counted as ppm NaCl")
	r, _ = reads(d, "'2 ppm' enter y")
	assert.Equal(t, "2 ppm", r.Sample().Reading.Words())
	r, _ = reads(d, "2")
	assert.Contains(t, asks(r, 78), "enter takes it as 2 ppm NaCl")
}

func TestAFirstCupIsNotUsed(t *testing.T) {
	r, does := reads(desk(""), "1 enter n")
	assert.Equal(t, Write, does)
	assert.Equal(t, model.No, r.Sample().Flushed)
	assert.False(t, r.Sample().Counts())
	assert.Equal(t, "1 ppm NaCl written: a first cup, not used.", r.Written(quantity.US))
}

func TestEscapeGoesBackAStep(t *testing.T) {
	r, does := reads(desk(""), "1 2 enter esc")
	assert.Empty(t, does)
	assert.Contains(t, asks(r, 78), "It reads 12 ppm NaCl")
	assert.True(t, r.Begun())
	r, does = reads(desk(""), "1 2 enter o 4 esc esc esc")
	assert.Equal(t, Leave, does)
	assert.True(t, r.Begun())
	r, _ = reads(desk(""), "1 2 enter esc 7 enter y")
	assert.Equal(t, "7 ppm NaCl", r.Sample().Reading.Words(), "the number is typed over")
}

// What was run out for a reading alone has gone through the bed; what a wash counts is not
// counted again, and a first cup ran nothing out.
func TestTheFlushOfAReadingIsCountedOnce(t *testing.T) {
	r, _ := reads(desk(""), "1 enter")
	assert.Contains(t, asks(r, 200), "y: yes, and its 4 gal count as given by the bed")
	for script, want := range map[string]string{
		"1 enter y": "4 gal", "1 enter enter": "4 gal", "1 enter a": "", "1 enter n": "",
		"1 enter o '5 gal' enter": "5 gal", "1 enter 5 enter": "5 gal", "1 enter o 3 . 6 enter": "3.6 gal", "1 enter o 3 enter": "3 gal",
	} {
		r, does := reads(desk(""), script)
		require.Equal(t, Write, does, script)
		assert.Equal(t, want, r.Sample().FlushWater.Words(), script)
		assert.Equal(t, !strings.HasSuffix(script, "n") && want != "3 gal", r.Sample().Counts(), script)
	}
	r, _ = reads(desk(""), "1 enter o '3 gal'")
	assert.Contains(t, asks(r, 200), "short of the 4 gal that stand in it and behind: a first cup, shown and not used")
}

// Where nobody said how old the fill is, a reading asks: it means little without.
func TestAReadingAsksTheAgeThatNobodySaid(t *testing.T) {
	plan := sample.Plan()
	plan.Bed.SoFar, plan.Bed.OutletNow.P50 = 0, 0.02
	plan.Assumptions = append(plan.Assumptions, planner.Assumption{Name: "bed gallons so far", Source: tag.FromPractice("taken so")})
	press := func(script string) (Reading, keys.Action) {
		r, does := desk("").NewReading(plan, 5*quantity.GPM), keys.Action("")
		for _, k := range hands.Keys(script) {
			r, does = r.Update(k)
		}
		return r, does
	}
	r, does := press("2 enter y")
	assert.Empty(t, does)
	assert.Contains(t, asks(r, 200), "just filled, it would show under 0.1 ppm here")
	assert.Contains(t, asks(r, 200), "like 120 gal; 0 gal where it was just filled; empty where nobody knows")
	for script, want := range map[string]string{
		"2 enter y 9 0 enter": "94 gal", "2 enter y 0 enter": "4 gal", "2 enter a 9 0 enter": "90 gal", "2 enter a 0 enter": "0 gal",
		"2 enter y enter": "", "2 enter y 'unknown' enter": "",
	} {
		r, does := press(script)
		require.Equal(t, Write, does, script)
		assert.Equal(t, want, r.Sample().SoFar.Words(), script)
	}
	_, does = press("2 enter n")
	assert.Equal(t, Write, does, "a first cup is not used, whatever the age")
	r, does = press("2 enter y 'soon' enter")
	assert.Empty(t, does)
	assert.Contains(t, asks(r, 200), "An amount is needed, like 120 gal, or unknown.")
	r, _ = press("2 enter y esc")
	assert.Contains(t, asks(r, 200), "Was the standing water out?")
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

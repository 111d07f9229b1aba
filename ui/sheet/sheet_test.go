package sheet_test

import (
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/packing"
	"washeve/ui/cells"
	"washeve/ui/internal/golden"
	"washeve/ui/sheet"
)

var (
	update = golden.Flag()
	pages  = flag.String("pages", "", "folder to write the pages that are kept to, whole: for a look in a browser")
)

// checkPage compares a page with the one that is kept. Style and script are the same
// in all, so they are not.
func checkPage(t *testing.T, name string, s sheet.Sheet) {
	t.Helper()
	page := sheet.HTML(s)
	if *pages != "" {
		require.NoError(t, os.WriteFile(filepath.Join(*pages, name), []byte(page), 0o644))
	}
	golden.Check(t, *update, name, common.ReplaceAllString(page, "<$1>see sheet.css, keep.js</$1>"))
}

var common = regexp.MustCompile(`(?s)<(style|script)>.*?</(?:style|script)>`)

// example is the sheet of the built-in example after a change.
func example(t testing.TB, sys quantity.System, change func(*model.Rig, model.Places, *model.Wash)) sheet.Sheet {
	t.Helper()
	lib := store.Example()
	wash := lib.Washes[0].Wash
	change(&lib.Rig, lib.Places, &wash)
	plan, err := planner.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	return sheet.Make(sheet.Input{
		Plan: plan, Vehicle: lib.Rig.Vehicles[0], Packing: packing.List(lib.Rig, lib.Places, wash, plan), Units: sys, Example: true,
	})
}

func asItIs(*model.Rig, model.Places, *model.Wash) {}

// long is a plan with far more than a page holds.
func long(r *model.Rig, _ model.Places, w *model.Wash) {
	r.Beds[0].SoFar = quantity.Some(400 * quantity.Gallon)
	r.Softeners[0].SoFar = quantity.Some(700 * quantity.Gallon)
	for i := range 12 {
		r.Hoses = append(r.Hoses, model.Hose{Name: "another hose", Length: quantity.Some(50 * quantity.Foot), Run: model.SprayRun})
		extra := w.Stages[i%4]
		extra.Name, extra.Faces = strings.Repeat("again ", i+1), []model.Side{model.Left}
		w.Stages = append([]model.Stage{extra}, w.Stages...)
	}
}

// undated is a wash of which no day is known, in three steps without a softener.
func undated(_ *model.Rig, _ model.Places, w *model.Wash) {
	w.Date, w.Softener, w.Stages = quantity.Opt[model.Date]{}, model.NoSoftener, w.Stages[2:]
}

// short is two steps without DI on a day that is not known.
func short(_ *model.Rig, _ model.Places, w *model.Wash) {
	w.Date, w.Stages = quantity.Opt[model.Date]{}, w.Stages[:2]
}

// named is a wash whose names try everything that a name may hold.
func named(r *model.Rig, p model.Places, w *model.Wash) {
	r.Vehicles[0].Name, w.Vehicle = `<b onclick="x()">"Goose" & 'Gander'</b>`, `<b onclick="x()">"Goose" & 'Gander'</b>`
	r.Beds[0].Name, w.Bed = "خزان الراتنج", "خزان الراتنج"
	p[0].Name, w.Place = "水箱 🚐👩‍🔧", "水箱 🚐👩‍🔧"
	r.Softeners[0].Name, w.Softener = strings.Repeat("w", 60), strings.Repeat("w", 60)
	r.Hoses[0].Name = strings.Repeat("W", 60)
	w.Stages[0].Name = "pre-rinse</li><script>alert(1)</script>"
}

func TestTheExampleInEachForm(t *testing.T) {
	s := example(t, quantity.US, asItIs)
	golden.Check(t, *update, "us.txt", sheet.Text(s, false))
	golden.Check(t, *update, "plain.txt", sheet.Text(s, true))
	golden.Check(t, *update, "us.md", sheet.Markdown(s))
	checkPage(t, "us.html", s)
	metric := example(t, quantity.Metric, asItIs)
	golden.Check(t, *update, "metric.txt", sheet.Text(metric, false))
	assert.True(t, strings.Contains(sheet.HTML(metric), "<b>91.3\u00a0L, 19\u00a0min</b> at 4.92\u00a0L/min"), "the page is in the sheet's units")
	golden.Check(t, *update, "undated.txt", sheet.Text(example(t, quantity.US, undated), false))
	checkPage(t, "undated.html", example(t, quantity.US, undated))
	checkPage(t, "short.html", example(t, quantity.US, short))
	checkPage(t, "names.html", example(t, quantity.US, named))
	golden.Check(t, *update, "long.txt", sheet.Text(example(t, quantity.US, long), false))
	checkPage(t, "long.html", example(t, quantity.US, long))
}

// fits tells a page of text from one that is none.
func fits(t interface{ Fatalf(string, ...any) }, page string, plain bool) {
	lines := strings.Split(strings.TrimSuffix(page, "\n"), "\n")
	if len(lines) > sheet.PageLines {
		t.Fatalf("%d lines", len(lines))
	}
	for _, line := range lines {
		if cells.Width(line) > sheet.PageColumns {
			t.Fatalf("%q is %d wide", line, cells.Width(line))
		}
		for _, r := range line {
			if plain && (r < ' ' || r > '~') {
				t.Fatalf("%q in plain text", r)
			}
		}
	}
}

func TestALongPlanStaysOnOnePageAndSaysWhatGaveWay(t *testing.T) {
	page := sheet.Text(example(t, quantity.US, long), false)
	fits(t, page, false)
	assert.Contains(t, page, "Shortened: ")
	assert.Contains(t, page, "THE BED WILL NOT LAST")
	assert.Contains(t, page, "BEFORE THE FIRST DI RINSE")
	assert.Contains(t, page, "Local rules on washing")
}

func TestWhatFitsIsNotShortened(t *testing.T) {
	s := example(t, quantity.US, undated)
	s.Tonight, s.Assumed = s.Tonight[:2], s.Assumed[:3]
	page := sheet.Text(s, false)
	fits(t, page, false)
	assert.NotContains(t, page, "Shortened: ")
	assert.Contains(t, page, "When to begin is not known")
	assert.Contains(t, page, "DI bed\n")
	assert.NotContains(t, page, "THROUGH   ")
}

// The flush is due before the face or the step that the wash day has it before, and each form names it.
func TestTheFlushNamesWhatItIsDueBefore(t *testing.T) {
	for due, change := range map[string]func(*model.Rig, model.Places, *model.Wash){
		"Run 6.13 gal (5 min) through the bed to waste before any water goes on the right: standing water reads low.": asItIs,
		"Run 6.13 gal (5 min) through the bed to waste before any water goes on the left: standing water reads low.":  undated,
	} {
		s := example(t, quantity.US, change)
		for name, form := range forms(s) {
			assert.Contains(t, form, due, name)
			assert.Contains(t, form, "To read again after the bed stood 15 min, run 6.13 gal first.", name)
		}
	}
	assert.Contains(t, example(t, quantity.US, undated).Day.How, "One face after the other through all its steps.")
}

// What puts the verdict in doubt is part of it, in every form.
func TestEveryFormSaysWhatTheVerdictRestsOn(t *testing.T) {
	for words, change := range map[string]func(*model.Rig, model.Places, *model.Wash){
		"The bed lasts this wash": asItIs,
		"The bed lasts this wash, if just filled": func(r *model.Rig, _ model.Places, _ *model.Wash) {
			r.Beds[0].SoFar = quantity.Opt[quantity.Volume]{}
		},
		"In doubt: the last reading fits no bed": func(r *model.Rig, _ model.Places, _ *model.Wash) {
			r.Beds[0].SoFar = quantity.Some(40 * quantity.Gallon)
			r.Beds[0].LastReading = quantity.Some(quantity.PPM(200, quantity.ScaleNaCl))
		},
	} {
		for name, form := range forms(example(t, quantity.US, change)) {
			assert.Contains(t, strings.ToLower(form), strings.ToLower(words)+".", name)
		}
	}
}

// forms are the sheet's forms with lines, breaks and marks of emphasis taken out.
func forms(s sheet.Sheet) map[string]string {
	plain := strings.NewReplacer("\u00a0", " ", "<b>", "", "</b>", "", "</strong>", "", "\\", "")
	out := map[string]string{"text": sheet.Text(s, true), "markdown": sheet.Markdown(s), "html": sheet.HTML(s)}
	for name, form := range out {
		out[name] = strings.Join(strings.Fields(plain.Replace(form)), " ")
	}
	return out
}

// Wide figures leave a reason less room: it takes another line, and none of it is lost.
func TestAReasonIsNeverCut(t *testing.T) {
	for _, drawn := range []string{"14.8 gal, 11 min", "14.8 gal, 1 h 11 min"} {
		s := example(t, quantity.US, asItIs)
		require.Equal(t, "it drips on the sides", s.Day.Turns[0].WhyShort)
		s.Day.Turns[1].DI, s.Day.Turns[1].Section = drawn, "not known"
		page := sheet.Text(s, false)
		fits(t, page, false)
		_, after, found := strings.Cut(page, "[ ] roof ")
		require.True(t, found)
		roof, _, _ := strings.Cut(after, "[ ]")
		assert.Contains(t, strings.Join(strings.Fields(roof), " "), "it drips on the sides")
	}
}

// What is expected of the pen does not pass over what the bed last read, in no form.
func TestTheGateTellsAHighReading(t *testing.T) {
	lib := store.Example()
	p, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	for _, read := range []string{"", "3 ppm NaCl"} {
		p.ReadHigh = read
		s := sheet.Make(sheet.Input{Plan: p, Units: quantity.US})
		for form, text := range forms(s) {
			assert.Equal(t, read != "", strings.Contains(text, "it last read 3 ppm NaCl, see to the pen"), form)
			assert.Equal(t, read != "", strings.Contains(strings.ToLower(text), "expect the same"), form)
		}
		fits(t, sheet.Text(s, true), true)
	}
}

func TestAWashWithoutDIHasNoGate(t *testing.T) {
	s := example(t, quantity.US, short)
	assert.False(t, s.Gate.Present)
	for _, form := range []string{sheet.Text(s, true), sheet.Markdown(s), sheet.HTML(s)} {
		assert.NotContains(t, strings.ToLower(form), "no-go:")
		assert.NotContains(t, form, "BEFORE THE FIRST")
		assert.Contains(t, form, "Dry by towel: left, right, front, rear")
	}
}

// Where nothing says when to begin, no face has a time by the clock, only its turn.
func TestASheetWithoutAStartHasNoTimes(t *testing.T) {
	s := example(t, quantity.US, func(_ *model.Rig, _ model.Places, w *model.Wash) {
		w.Start, w.Low, w.Wind = quantity.Opt[model.TimeOfDay]{}, quantity.Opt[quantity.Temperature]{}, quantity.Opt[quantity.Speed]{}
	})
	assert.Contains(t, s.Day.Start, "When to begin is not known")
	assert.Len(t, s.Day.Turns, 5)
	for _, form := range []string{sheet.Text(s, true), sheet.Markdown(s), sheet.HTML(s)} {
		assert.NotRegexp(t, `(roof|left|right|front|rear)\W.*\d\d:\d\d`, form)
	}
}

func TestPlainTextKeepsTheLettersOfNames(t *testing.T) {
	s := example(t, quantity.US, asItIs)
	s.Title = "Zoë’s Straße – Kraków, 水 🚐, naïve × 2 €"
	page := sheet.Text(s, true)
	fits(t, page, true)
	assert.True(t, strings.HasPrefix(page, "Zoe's Strasse - Krakow, ? ?, naive x 2 EUR\n"), page[:60])
}

func TestASheetIsKnownByItsSeal(t *testing.T) {
	s := example(t, quantity.US, asItIs)
	for _, form := range []string{sheet.Text(s, false), sheet.Text(s, true), sheet.Markdown(s), sheet.HTML(s)} {
		assert.True(t, sheet.Sealed([]byte(form)))
		touched := strings.Replace(form, "[ ]", "[x]", 1)
		if touched == form {
			touched = strings.Replace(form, "roof", "room", 1)
		}
		assert.False(t, sheet.Sealed([]byte(touched)))
		assert.False(t, sheet.Sealed([]byte(form+" ")))
	}
	assert.False(t, sheet.Sealed(nil))
	assert.False(t, sheet.Sealed([]byte("washeve sheet 000000000000")))
}

// A name that looks like a mark is not taken for the seal's place.
func TestANameLikeAMarkBreaksNoSeal(t *testing.T) {
	s := example(t, quantity.US, asItIs)
	s.Title = "washeve sheet 000000000000"
	for _, form := range []string{sheet.Text(s, false), sheet.Markdown(s), sheet.HTML(s)} {
		assert.True(t, sheet.Sealed([]byte(form)))
	}
}

package form_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

func length(text string) error {
	var v model.Vehicle
	return v.Fields()[2].Set(text)
}

func typed(e form.Edit, text string, try form.Try) form.Edit {
	for _, r := range text {
		e = e.Type(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{r}}, try)
	}
	return e
}

func TestAWordOfAListIsToldByTheList(t *testing.T) {
	var s model.Stage
	try := func(text string) error {
		for _, f := range s.Fields() {
			if f.Key == "water" {
				return f.Set(text)
			}
		}
		return nil
	}
	e := form.Start("", "raw").With("hot", try)
	assert.Equal(t, "is none of the choices; write raw, softened or di", e.Says())
	assert.EqualError(t, e.Problem, `"hot" is none of the choices; water: raw, softened or di`)
}

func TestWrongTextKeepsTheLastGoodValue(t *testing.T) {
	e := form.Start("40 ft", "40 ft 6 in")
	e = typed(e.Type(key(tea.KeyEnd), length), " 6 ix", length)
	assert.Error(t, e.Problem)
	assert.Equal(t, "40 ft", strings.TrimSpace(e.Good))
	assert.Contains(t, e.Says(), `has the unit "ix"`)
	assert.Contains(t, e.Says(), "write it like 40 ft 6 in")
	assert.Contains(t, e.Says(), "40 ft stays")
	assert.Contains(t, e.NotTaken("length"), `Not taken: length "40 ft 6 ix" has the unit "ix"`)
	assert.Contains(t, e.NotTaken(""), `Not taken: has the unit "ix"`, "where line and text stand beside it")
	assert.Contains(t, look(e.With(strings.Repeat("9", 50)+" ix", length)).NotTaken("length"), `length "999999999999999999999..." has`)
	e = e.Type(tea.KeyMsg{Type: tea.KeyBackspace}, length)
	e = typed(e, "n", length)
	assert.NoError(t, e.Problem)
	assert.Equal(t, "40 ft 6 in", e.Good)
	assert.True(t, e.Replaced)
	assert.Empty(t, e.Says())
}

// What is said to stay is what is there when the text is left, and when nothing is left of
// it.
func TestTheValueBeforeTheEditStays(t *testing.T) {
	e := form.Start("40 ft", "40 ft 6 in")
	e = typed(e, "33 ft 2 ix", length)
	assert.Equal(t, "33 ft 2", strings.TrimSpace(e.Text()[:7]))
	assert.Contains(t, e.Says(), "; 40 ft stays")
	assert.Equal(t, "40 ft", e.Before())
	assert.Equal(t, "40 ft", e.Good, "nor is what was right on the way to it taken, when the program ends")
	assert.False(t, e.Replaced)
	required := func(text string) error {
		if text == "" {
			return errors.New("it is needed")
		}
		return length(text)
	}
	e = e.Type(tea.KeyMsg{Type: tea.KeyCtrlU}, required)
	assert.Equal(t, "it is needed; 40 ft stays", e.Says())
	assert.Equal(t, "40 ft", e.Good)
	assert.False(t, e.Replaced, "nothing of it is taken")
}

func TestBareNumberIsOfferedItsUnit(t *testing.T) {
	e := typed(form.Start("", "40 ft 6 in"), "33", length)
	assert.Equal(t, "33 ft", e.Offer)
	assert.Contains(t, e.Says(), "33 ft")
	e = e.With(e.Offer, length)
	assert.NoError(t, e.Problem)
	assert.Equal(t, "33 ft", e.Good)
	var p model.Place
	e = typed(form.Start("", "240 ppm NaCl"), "210", func(text string) error { return p.Fields()[1].Set(text) })
	assert.Equal(t, "210 ppm NaCl", e.Offer)
	e = typed(form.Start("", "40 ft 6 in"), "3300", length)
	assert.Empty(t, e.Offer, "a unit that gives an absurd size is not offered")
	assert.Contains(t, e.Says(), "is outside", "and it is the size that is wrong")
	e = typed(form.Start("", "40 ft 6 in"), "-5", length)
	assert.Empty(t, e.Offer)
	assert.Contains(t, e.Says(), "is below zero")
	e = typed(form.Start("", "40 ft 6 in"), "12 ft 6", length)
	assert.Equal(t, "12 ft 6 in", e.Offer, "inches go on after feet")
	e = typed(form.Start("", "40 ft 6 in"), "12 ft 6 ft", length)
	assert.Error(t, e.Problem)
}

func TestOtherErrorsAreSaidAsTheyAre(t *testing.T) {
	e := typed(form.Start("", "our coach"), "x", func(string) error { return errors.New("that name is taken") })
	assert.Equal(t, "that name is taken", e.Says())
	assert.Equal(t, `Not taken: name "x": that name is taken.`, e.NotTaken("name"))
	assert.False(t, e.Replaced)
}

func TestCaretIsSeenWithoutColour(t *testing.T) {
	e := form.Start("40 ft", "")
	assert.Equal(t, "40 ft_", e.View(theme.New(theme.Options{Plain: true}), 20))
	assert.Equal(t, "40 ft ", ansi.Strip(e.View(theme.New(theme.Options{Profile: termenv.ANSI256}), 20)))
}

func TestRow(t *testing.T) {
	th := theme.New(theme.Options{Plain: true})
	for _, c := range []struct {
		row  form.Row
		want string
	}{
		{form.Row{Label: "length", Value: "40 ft 6 in", Here: true}, "> length           40 ft 6 in"},
		{form.Row{Label: "height", Must: true}, "  height           needed"},
		{form.Row{Label: "width", Assumed: "8 ft 6 in", Tag: "PRACTICE"}, "  width            (8 ft 6 in) prac"},
		{form.Row{Label: "flow", Assumed: "2 gpm", Tag: "PRACTICE"}, "  flow             (2 gpm) PRACTICE"},
		{form.Row{Label: "pH"}, "  pH               -"},
		{form.Row{Label: "a very long label indeed", Value: "x\x1b[2J"}, `  a very long label indeed x\x1b[2J`},
		{form.Row{Label: "a very long label indeed, which it is", Value: "x"}, `  a very long label indee... x`},
		{form.Row{Label: "a very long label indeed", Value: "18 gr/gal"}, "  a very long label in... 18 gr/gal"},
		{form.Row{Label: "alkalinity", Value: "210 mg/L as CaCO3 in all"}, `  alkalinity 210 mg/L as CaCO3 i...`},
		{form.Row{Label: "pressure", Value: "40 psi", Faulty: true}, "  pressure         40 psi ?"},
	} {
		assert.Equal(t, c.want, c.row.Line(th, 35))
	}
}

func TestPicker(t *testing.T) {
	p := form.Open("place", []form.Option{{Text: "home", Pick: "home", Note: "240 ppm"}, {Text: "camp", Pick: "camp"}, {Text: "new place", New: true}}, "camp")
	assert.Equal(t, 1, p.At)
	assert.Equal(t, 0, p.Move(2).At)
	assert.Equal(t, 2, p.Move(-2).At)
	o, ok := p.Numbered("1")
	assert.True(t, ok)
	assert.Equal(t, "home", o.Pick)
	_, ok = p.Numbered("4")
	assert.False(t, ok)
	lines := p.Lines(theme.New(theme.Options{Plain: true}), 30, 5)
	assert.Equal(t, []string{"place", "  1 home  240 ppm", "> 2 camp", "  3 new place"}, lines)
	assert.Len(t, p.Lines(theme.New(theme.Options{Plain: true}), 30, 2), 2)
	_, ok = form.Open("none", nil, "").Move(1).Chosen()
	assert.False(t, ok)
}

func TestPress(t *testing.T) {
	list := form.Open("place", []form.Option{{Text: "home", Pick: "home"}, {Text: "camp", Pick: "camp"}}, "home")
	press := func(key string) (*form.Picker, *form.Option, string) {
		b, bound := keys.Find(form.PickKeys("as it was"), hands.Key(key))
		assert.True(t, bound, key)
		return list.Press(b.Does, key)
	}
	next, picked, problem := press("down")
	assert.Equal(t, 1, next.At)
	assert.Nil(t, picked)
	assert.Empty(t, problem)
	next, _, _ = press("up")
	assert.Equal(t, 1, next.At, "round the end")
	next, picked, problem = press("9")
	assert.Equal(t, list, *next, "it stays open")
	assert.Nil(t, picked)
	assert.Equal(t, "There is no such line in the list.", problem)
	for key, want := range map[string]string{"2": "camp", "enter": "home", " ": "home"} {
		next, picked, problem = press(key)
		assert.Nil(t, next, "it is closed")
		assert.Equal(t, want, picked.Pick)
		assert.Empty(t, problem)
	}
	next, picked, problem = press("esc")
	assert.Nil(t, next)
	assert.Nil(t, picked)
	assert.Empty(t, problem)
}

func TestTurnedChoice(t *testing.T) {
	var v model.Vehicle
	shape := func() model.Field {
		return v.Fields()[slices.IndexFunc(v.Fields(), func(f model.Field) bool { return f.Key == "shape" })]
	}
	words := shape().Choices
	last := len(words) - 1
	assert.Equal(t, words[0], form.TurnedChoice(shape(), 1), "nothing is stated")
	assert.Equal(t, words[last], form.TurnedChoice(shape(), -1))
	assert.NoError(t, shape().Set(words[last]))
	assert.Equal(t, words[0], form.TurnedChoice(shape(), 1))
	assert.Equal(t, words[last-1], form.TurnedChoice(shape(), -1))
}

func TestEditNeverOverflows(t *testing.T) {
	th := theme.New(theme.Options{Profile: termenv.ANSI256})
	rapid.Check(t, func(t *rapid.T) {
		e := form.Start(rapid.String().Draw(t, "start"), "40 ft")
		e = typed(e, rapid.String().Draw(t, "typed"), length)
		width := rapid.IntRange(1, 40).Draw(t, "width")
		if got := e.View(th, width); cells.Width(got) > width {
			t.Fatalf("%q is wider than %d", got, width)
		}
	})
}

func TestADecimalCommaIsToldAsItIsRead(t *testing.T) {
	fine := func(string) error { return nil }
	e := form.Start("", "1.4 gpm").With("1,6 gpm", fine)
	assert.Equal(t, "read as 1.6 gpm: the comma is one of decimals", e.Says())
	assert.Empty(t, look(form.Start("", "1.4 gpm").With("1.6 gpm", fine)).Says())
	assert.Empty(t, look(form.Start("", "home").With("dock 1,6", fine)).Says(), "words are words")
}

func key(k tea.KeyType) tea.KeyMsg { return tea.KeyMsg{Type: k} }

// A text that is taken as a whole gives way to the first letter; any other key changes
// it where it stands, and then letters go where the cursor is.
func TestAWholeTextGivesWayToTheFirstLetter(t *testing.T) {
	whole := form.Start("40 ft", "40 ft 6 in")
	assert.True(t, whole.IsWhole())
	assert.Equal(t, "41 ft", look(typed(whole, "41 ft", length)).Text())
	assert.Equal(t, "40 f", look(whole.Type(key(tea.KeyBackspace), length)).Text())
	assert.Equal(t, "40 fxt", look(typed(whole.Type(key(tea.KeyLeft), length), "x", length)).Text())
	assert.Equal(t, "9 ft", look(whole.Type(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("9 ft"), Paste: true}, length)).Text())
	assert.Equal(t, "40 ft", whole.Good, "nothing is taken before a key")
	assert.False(t, look(form.Start("", "40 ft 6 in")).IsWhole())
	assert.Equal(t, "type a new one, like 12 ft; arrows and backspace change this one", whole.OverHelp("12 ft"))
	assert.Equal(t, "type a new one; arrows and backspace change this one", whole.OverHelp(""))
}

// Leaving loses what cannot be taken, and a name that is not taken yet; no more.
func TestWhatLeavingWouldLose(t *testing.T) {
	length := func(text string) error { var v model.Vehicle; return v.Fields()[2].Set(text) }
	for text, lost := range map[string]string{
		"33 ft": "", "33": "", " ": "",
		"33 yards": `what is typed: length "33 yards" has the unit "yards", which is no unit of length; write it like 40 ft 6 in; 40 ft stays`,
	} {
		err := look(typed(form.Start("40 ft", "40 ft 6 in"), text, length)).Lost("length")
		if lost == "" {
			assert.NoError(t, err, text)
			continue
		}
		assert.EqualError(t, err, lost)
	}
	name := func(text string) error {
		if text == "Goose" {
			return errors.New("is there already")
		}
		return nil
	}
	start := form.Start("vehicle 2", "our coach")
	assert.NoError(t, start.LostName("vehicle"), "nothing was typed")
	assert.EqualError(t, look(typed(start, "Tin Box", name)).LostName("vehicle"), `the new vehicle "Tin Box", which is there only once its name is taken`)
	assert.Error(t, look(typed(start, "Goose", name)).LostName("vehicle"))
}

// look is an edit to be looked at.
func look(e form.Edit) *form.Edit { return &e }

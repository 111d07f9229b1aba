package form_test

import (
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
)

// refused is the line of a length on which a text was refused.
func refused(t *testing.T, text string) form.Edit {
	t.Helper()
	var v model.Vehicle
	e, held := typed(form.Of(v.Fields()[2], "40 ft"), text, length).Held(form.Accept)
	assert.True(t, held)
	return e
}

// What is typed behind a text that was refused takes its place, and that is said; a key that
// begins no number is told of, and neither taken nor lost.
func TestWhatIsTypedTakesThePlaceOfARefusedText(t *testing.T) {
	e := refused(t, "33 yards")
	assert.False(t, e.Letters(), "no letter is a text here")
	for _, key := range []string{"q", "?", "D"} {
		next := e.Type(hands.Key(key), length)
		assert.Equal(t, "33 yards", next.Text())
		assert.True(t, next.IsHeld())
		assert.Contains(t, next.Heard(), `"`+key+`" begins no number: type one`)
	}
	assert.True(t, look(e.Type(hands.Key("space"), length)).IsHeld())
	e = typed(e, "12 ft", length)
	assert.Equal(t, "12 ft", e.Good)
	assert.False(t, e.IsHeld())
	assert.True(t, e.Letters())
	assert.Equal(t, `In place of "33 yards", which was not taken.`, e.Heard())
	pasted := refused(t, "33 yards").Type(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("abc"), Paste: true}, length)
	assert.Equal(t, "abc", pasted.Text(), "a paste is a text whatever it holds")
}

// The same text typed anew is another one: its second letter stands behind the first.
func TestARefusedTextMayBeTypedAnew(t *testing.T) {
	e := refused(t, "-")
	assert.Equal(t, "-5", look(typed(e, "-5", length)).Text())
}

// The cursor goes into a text that was refused, and then letters are letters.
func TestARefusedTextIsChangedWhereItStands(t *testing.T) {
	e := refused(t, "33 fx").Type(hands.Key("backspace"), length)
	assert.False(t, e.IsHeld())
	assert.Equal(t, "33 ft", typed(e, "t", length).Good)
	e = refused(t, "3 ft").Type(hands.Key("left"), length)
	assert.True(t, e.Letters())
	assert.Equal(t, "3 fxt", look(typed(e, "x", length)).Text())
}

// A text is left for the lines beside it only once it was said that it is not taken.
func TestARefusedTextIsLeftAtTheSecondKey(t *testing.T) {
	var v model.Vehicle
	wrong := typed(form.Of(v.Fields()[2], "40 ft"), "33 yards", length)
	for _, does := range []keys.Action{form.AcceptUp, form.AcceptDown, form.AddUnit, form.Accept} {
		_, held := wrong.Held(does)
		assert.True(t, held, does)
	}
	e := refused(t, "33 yards")
	for does, stays := range map[keys.Action]bool{form.Accept: true, form.AcceptUp: false, form.AcceptDown: false, form.Abandon: false} {
		_, held := e.Held(does)
		assert.Equal(t, stays, held, does)
	}
	for _, text := range []string{"33 ft", "33", " "} {
		_, held := typed(form.Start("40 ft", "40 ft 6 in"), text, length).Held(form.Accept)
		assert.False(t, held, "%q is none that is refused", text)
	}
}

// A word takes the place of a word, also one that begins with a key of the program.
func TestLettersTakeThePlaceOfARefusedWord(t *testing.T) {
	var w model.Wash
	at := slices.IndexFunc(w.Fields(), func(f model.Field) bool { return f.Key == "heading" })
	f := w.Fields()[at]
	e, held := typed(form.Of(f, ""), "nowhere", f.Set).Held(form.Accept)
	assert.True(t, held)
	assert.True(t, e.Letters())
	assert.Equal(t, "east", typed(e, "east", f.Set).Good)
}

// Whatever is typed: what is good is a text that the line takes or what stood there before, a
// refused text is in sight or told of, and no key but one that ends it lets it go.
func TestNoTypedTextGoesUntold(t *testing.T) {
	names := []string{"3", "4", " ", "f", "t", "x", ",", "-", "?", "q", "left", "right", "home", "backspace", "delete", "ctrl+u", "ctrl+w", "enter", "down"}
	rapid.Check(t, func(t *rapid.T) {
		var v model.Vehicle
		e := form.Of(v.Fields()[2], "40 ft")
		for _, name := range rapid.SliceOfN(rapid.SampledFrom(names), 1, 40).Draw(t, "keys") {
			if name == "enter" || name == "down" {
				next, held := e.Held(map[string]keys.Action{"enter": form.Accept, "down": form.AcceptDown}[name])
				if !held {
					return
				}
				e = next
				continue
			}
			was := e
			e = e.Type(hands.Key(name), length)
			if was.IsHeld() && len(name) == 1 && e.Text() != was.Text() && (e.Text() != name || !strings.Contains(e.Heard(), "In place of")) {
				t.Fatalf("%q behind the refused %q gives %q and says %q", name, was.Text(), e.Text(), e.Heard())
			}
			if e.Good != "40 ft" && length(e.Good) != nil {
				t.Fatalf("%q is not good", e.Good)
			}
			if e.Problem != nil && e.Good != e.Before() {
				t.Fatalf("%q is taken of the wrong %q", e.Good, e.Text())
			}
		}
	})
}

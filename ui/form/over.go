package form

import (
	"strings"
	"unicode"
	"unicode/utf8"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/keys"
)

// Refused tells that the text is wrong, and that nothing that is offered would mend it: the
// value that was there before stays.
func (e *Edit) Refused() bool { return e.Problem != nil && e.Offer == "" }

// Held is the edit after a key that was to end it: a text that is wrong stays under the hand,
// as one that is selected does. What is typed next takes its place, what moves the cursor
// changes it, and it is left for a line beside it once that it is not taken was said. False
// where the key ends it.
func (e Edit) Held(does keys.Action) (Edit, bool) {
	leaves := does == Abandon || e.held && (does == AcceptUp || does == AcceptDown)
	if leaves || !e.Refused() || blank(e.Text()) {
		return e, false
	}
	e.held = true
	return e, true
}

// IsHeld tells that the text was refused, and waits for what is to become of it.
func (e *Edit) IsHeld() bool { return e.held }

// Letters tells that letters are text: while a text is typed, and behind one that was refused
// where a letter can begin another. A number has none, so keys that work everywhere do there.
func (e *Edit) Letters() bool { return !e.held || !e.figures }

// OfFigures is the edit of a line whose texts begin with a figure, never with a letter.
func (e Edit) OfFigures() Edit {
	e.figures = true
	return e
}

// ofFigures tells that every text of a field begins with a figure, as those of numbers do.
func ofFigures(f model.Field) bool {
	first, _ := utf8.DecodeRuneInString(f.Example)
	return unicode.IsDigit(first) && f.Sides == "" && !f.Day && !f.Moment && !f.OfClock() && !f.Free()
}

// over takes a key behind a text that was refused: what can begin a text clears the line for
// it; of what cannot, taken is false, and that is said.
func (e Edit) over(msg tea.KeyMsg) (next Edit, taken bool) {
	if msg.Type != tea.KeyRunes && msg.Type != tea.KeySpace {
		return e, true
	}
	begins := strings.TrimLeftFunc(string(msg.Runes), unicode.IsSpace)
	first, _ := utf8.DecodeRuneInString(begins)
	switch {
	case begins == "" || msg.Alt:
		return e, false
	case e.figures && !msg.Paste && (unicode.IsLetter(first) || first == '?'):
		e.heard = quotedShort(begins) + " begins no number: type one, or change this text with arrows and backspace; esc leaves it."
		return e, false
	}
	e.instead, e.held = e.Text(), false
	e.input.SetValue("")
	return e, true
}

// Heard is what is said beside a text while it is typed: what became of one that was refused,
// or of a key behind it; "" for nothing.
func (e *Edit) Heard() string {
	if e.heard == "" && e.instead != "" {
		return "In place of " + quotedShort(e.instead) + ", which was not taken."
	}
	return e.heard
}

// HeldKeys are the keys behind a text that was refused: what is typed takes its place. Leave
// says what comes of leaving it; beside tells that there are lines beside it to go to.
func (e *Edit) HeldKeys(leave string, beside bool) []keys.Binding {
	const group = "Not taken"
	over := keys.New(group, Spell, "a-z 0-9", "type another", append(lettersBut(), NumberKeys()...)...)
	if e.figures {
		over = keys.New(group, Spell, "0-9", "type another", NumberKeys()...)
	}
	all := []keys.Binding{
		over.Explained("what is typed takes the place of the text that was refused; left, right, home, end and backspace change it"),
		keys.New(group, Abandon, "esc", leave, "esc"),
	}
	if beside {
		all = append(all,
			keys.New(group, AcceptDown, "down", "leave it, next line", "down", "tab").Explained("leave the text for the next line; what was there before stays"),
			keys.New(group, AcceptUp, "up", "line before", "up", "shift+tab").Explained("leave the text for the line before; what was there before stays"))
	}
	why := quotedShort(e.Text()) + " " + strings.TrimSuffix(e.Says(), ".")
	return append(all, keys.New(group, Accept, "enter", "done", "enter").Explained("takes the text, once it is one that can be taken").Unless(why))
}

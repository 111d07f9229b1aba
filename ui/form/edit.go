// Package form is how a person states a value: a line of text that is checked
// at every key, a list to pick from, and what is assumed where nothing was
// stated.
package form

import (
	"cmp"
	"errors"
	"strconv"
	"strings"

	"github.com/charmbracelet/bubbles/textinput"
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/cells"
	"washeve/ui/theme"
)

// Try sets text on a copy of the noun, and tells what is wrong with it.
type Try func(text string) error

// Edit is a value while it is typed. The answer follows what is right; a text that is
// wrong is never taken, and then the value stays that was there before. What only looks at it
// takes a pointer, since it is large; what a key makes of it is another one.
type Edit struct {
	input    textinput.Model
	example  string
	units    quantity.System          // of what a refusal says would be right
	required string                   // what is said where nothing stands; "" where that is right
	taken    func(text string) string // what a right text was read as; nil where it says so itself
	touched  bool
	checked  bool
	before   string // what was right before the first check
	whole    bool   // the first letter takes the place of the text
	Good     string // the last text that was right
	Problem  error  // what is wrong with the text now
	currency string // that a bare price is offered
	lent     bool   // a bare number took what is offered
	Offer    string // text that would be right, where a bare number needs a unit
	unknown  error  // what a word for what nobody knows is answered, where the line takes none; nil for nothing
	Replaced bool   // a right text was typed: Good differs from the start

	figures bool   // no letter begins a text
	held    bool   // it was refused: what is typed next takes its place
	instead string // the text that was refused, where another took its place
	heard   string // what is said of a key that was not taken
}

// Start begins with the text as it stands, taken as a whole: the first letter that is typed
// takes its place, and any other key changes it where it stands. Example is the field's own.
func Start(text, example string) Edit {
	in := textinput.New()
	in.Prompt = ""
	in.SetValue(text)
	in.CursorEnd()
	in.Focus()
	return Edit{input: in, example: example, whole: text != "", Good: text}
}

// Of begins to type a field with the text as it stands: what is offered, and what would be
// right, is in the field's units.
func Of(f model.Field, text string) Edit {
	e := Start(text, f.Example)
	e.figures = ofFigures(f)
	if e.units = f.Units; f.Required {
		e.required = f.Label + " cannot be left out; write it like " + f.Example
	}
	return e
}

// InCurrency is the edit that offers a currency for a price that is a bare number.
func (e Edit) InCurrency(currency string) Edit {
	e.currency = currency
	return e
}

// Telling is the edit that says what a right text was read as; "" where the text says so.
func (e Edit) Telling(taken func(text string) string) Edit {
	e.taken = taken
	return e
}

// Taken is what was read of the text that holds, where the text itself does not say it.
func (e *Edit) Taken() string {
	if e.taken == nil || !e.Replaced {
		return ""
	}
	return e.taken(e.Good)
}

// IsWhole tells that the next letter takes the place of the text.
func (e *Edit) IsWhole() bool { return e.whole }

// OverHelp says of a text that is taken as a whole how it is typed over, or changed.
func (e *Edit) OverHelp(like string) string {
	over := "type a new one"
	if like != "" {
		over += ", like " + like
	}
	return over + "; arrows and backspace change this one"
}

// Text is what stands on the line.
func (e *Edit) Text() string { return e.input.Value() }

// Type takes a key and checks the text that follows from it.
func (e Edit) Type(msg tea.KeyMsg, try Try) Edit {
	before, at := e.input.Value(), e.input.Position()
	if e.heard = ""; e.held {
		var taken bool
		if e, taken = e.over(msg); !taken {
			return e
		}
	}
	if e.whole && (msg.Type == tea.KeyRunes || msg.Type == tea.KeySpace) {
		e.input.SetValue("")
	}
	e.whole, e.lent = false, false
	e.input, _ = e.input.Update(msg)
	e.held = e.held && e.input.Value() == before && e.input.Position() == at
	if e.input.Value() == before && e.touched {
		return e
	}
	e.touched = true
	return e.check(try)
}

// With puts a whole text in place, as if it had been typed.
func (e Edit) With(text string, try Try) Edit {
	e.whole, e.held = false, false
	e.input.SetValue(text)
	e.input.CursorEnd()
	return e.check(try)
}

// NotTaken says of a wrong text on the line of that label what it is, and why it is not
// taken. Where line and text stand beside it, the label is "".
func (e *Edit) NotTaken(label string) string { return "Not taken: " + e.refusal(label) + "." }

// refusal is what a wrong text is, and why it is not taken.
func (e *Edit) refusal(label string) string {
	why, subject := strings.TrimSuffix(e.Says(), "."), label
	if strings.TrimSpace(e.Text()) != "" && label != "" {
		subject += " " + quotedShort(e.Text())
	}
	var wrong *quantity.ParseError
	switch reason := errors.As(e.Problem, &wrong); {
	case subject != "" && reason: // which goes on after its subject
		why = subject + " " + why
	case subject != "":
		why = subject + ": " + why
	}
	return why
}

// quotedShort is a text as it is told of, in quotes.
func quotedShort(text string) string {
	const most = 24 // cells of a text that is in sight, or was
	return strconv.Quote(cells.Clip(strings.TrimSpace(text), most, "..."))
}

func (e Edit) check(try Try) Edit {
	text := e.input.Value()
	e.before, e.checked, e.Offer = e.Before(), true, ""
	if e.Problem = try(text); e.Problem == nil {
		e.Good, e.Replaced = text, true
		return e
	}
	e.Good, e.Replaced = e.before, false // nothing of a text that is wrong is taken
	if e.Problem = quantity.InUnits(e.Problem, e.units); e.required != "" && blank(text) {
		e.Problem = errors.New(e.required)
	}
	if e.unknown != nil && isUnknown(text) {
		e.Problem = e.unknown
	}
	if offer := e.withUnit(text); offer != "" {
		if err := try(offer); err != nil {
			e.Problem = quantity.InUnits(err, e.units) // the unit is not what is wrong
		} else {
			e.Offer = offer
		}
	}
	return e
}

// Before is the text that was right before anything was typed: what stays where the text
// is wrong, whether it is left or ends.
func (e *Edit) Before() string {
	if e.checked {
		return e.before
	}
	return e.Good
}

// WasEmpty tells that the line stated nothing before: enter then goes on behind it.
func (e *Edit) WasEmpty() bool { return blank(e.Before()) }

// Fills tells that what is typed is right, on a line that stated nothing.
func (e *Edit) Fills() bool { return e.WasEmpty() && e.Replaced && !blank(e.Good) }

// View draws the text with its cursor in width cells. A long text shows the
// part around the cursor.
func (e *Edit) View(th theme.Theme, width int) string {
	runes := []rune(cells.Safe(e.input.Value()) + " ")
	at := min(e.input.Position(), len(runes)-1)
	from := 0
	for from < at && cells.Width(string(runes[from:at+1])) > width-1 {
		from++
	}
	ink := th.Accent
	if e.Problem != nil {
		ink = th.Bad
	}
	left, under, right := string(runes[from:at]), string(runes[at]), string(runes[at+1:])
	caret := th.Caret.On(under)
	if caret == under {
		caret = "_" + strings.TrimRight(under, " ")
	}
	return cells.Clip(ink.On(left)+caret+ink.On(strings.TrimRight(right, " ")), width, "")
}

// readAs tells how a number with a decimal comma was read. Where the example is
// no number, the text is words.
func (e *Edit) readAs() string {
	pointed, comma := quantity.Pointed(strings.TrimSpace(e.Text()))
	if !comma || !strings.ContainsAny(e.example, "0123456789") || unitOf(e.example) == "" {
		return ""
	}
	return "read as " + pointed + ": the comma is one of decimals"
}

// Ink is that of what [Edit.Says]: the doubtful one where the text cannot be taken.
func (e *Edit) Ink(th theme.Theme) theme.Ink {
	if e.Problem != nil {
		return th.Bad
	}
	return th.Text
}

// Says is the line under the form: what is wrong, what would be right, and what
// stays in force; or how the text was read, where that may surprise.
func (e *Edit) Says() string {
	switch {
	case e.Offer != "":
		return "needs its " + e.lacks() + ": tab or enter takes it as " + e.Offer + e.afterOffer()
	case e.Problem == nil:
		return cmp.Or(e.readAs(), e.Taken())
	}
	words := e.Problem.Error()
	var wrong *quantity.ParseError
	if errors.As(e.Problem, &wrong) {
		words = wrong.Says()
	}
	if before := strings.TrimSpace(e.Before()); before != "" {
		words += "; " + before + " stays"
	}
	return words
}

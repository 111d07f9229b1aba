package entry

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/keys"
)

func (f Form) act(does keys.Action, msg tea.KeyMsg) (Form, keys.Action) {
	switch does {
	case up:
		return f.onto(f.hand - 1), ""
	case down:
		return f.onto(f.hand + 1), ""
	case change:
		return f.change(), ""
	case overtype:
		return f.overtyped(msg), ""
	case takeAway:
		return f.take(""), ""
	case Write:
		if f.asked = f.odd(); f.asked == "" {
			return f, does
		}
	case Leave:
		return f, does
	}
	return f, ""
}

// odd says what looks like a slip: a moment that is still to come, or what is odd about the
// rest; "" for nothing.
func (f Form) odd() string {
	var all []string
	if f.known.Clock != nil && f.entry.At.Compare(model.MomentOf(f.known.Clock())) > 0 {
		all = append(all, f.entry.At.Full()+" is still to come, and the log holds what was done.")
	}
	if f.slip != nil {
		if slip := f.slip(f.entry.Body); slip != "" {
			all = append(all, slip)
		}
	}
	return strings.Join(all, " ")
}

// answered takes the answer to what was asked about the entry.
func (f Form) answered(does keys.Action) (Form, keys.Action) {
	f.asked = ""
	if does == form.Yes {
		return f, Write
	}
	f.status = notWritten
	return f, ""
}

func (f Form) onto(i int) Form {
	f.hand = min(max(i, 0), len(f.rows)-1)
	return f
}

// change lets the field under the hand be changed: by a list where it holds a
// word, by typing otherwise.
func (f Form) change() Form {
	field, ok := f.here()
	switch {
	case !ok:
		return f
	case len(field.Choices) > 0 || len(f.known.Names[field.Refers]) > 0:
		return f.openPicker(field)
	}
	if text := f.shown(field); field.Moment && f.check(text) == nil { // without the zone, which is the clock's
		return f.startEdit(text)
	}
	return f.startEdit(field.Text())
}

func (f Form) openPicker(field model.Field) Form {
	var options []form.Option
	if field.Key == "softener" && !field.Required { // before those that come and go: its number is always the same
		options = append(options, form.Option{Text: model.NoSoftener, Pick: model.NoSoftener, Note: "washed without one"})
	}
	first := len(options)
	for _, c := range append(field.Choices, f.known.Names[field.Refers]...) {
		options = append(options, form.Option{Text: c, Pick: c})
	}
	if field.Refers != "" {
		options = append(options, form.Option{Text: "another", New: true, Note: "type its name"})
	}
	if !field.Required {
		options = append(options, form.Option{Text: "not stated"})
	}
	p := form.Open(field.Label, options, field.Text())
	if !field.Given() {
		p.At = first
	}
	f.picker = &p
	return f
}

func (f Form) pick(does keys.Action, msg tea.KeyMsg) Form {
	next, picked, problem := f.picker.Press(does, msg.String())
	switch f.picker = next; {
	case problem != "":
		f.status = problem
	case picked == nil:
	case picked.New:
		return f.startEdit("")
	default:
		if f = f.take(picked.Pick); f.status == "" {
			return f.onto(f.hand + 1)
		}
	}
	return f
}

// take states the field under the hand at once.
func (f Form) take(text string) Form {
	next, err := f.State(f.rows[f.hand], text)
	if err != nil {
		f.status = err.Error()
		return f
	}
	return next
}

func (f Form) startEdit(text string) Form {
	field, ok := f.here()
	if !ok {
		return f
	}
	e := form.Of(field, text).Telling(func(text string) string { return f.taken(field, text) })
	e = e.OnScales(field, f.scales()).InCurrency(f.known.Currency)
	e.Good = field.Text()
	f.edit = &e
	return f
}

// refuse says why a key does nothing. Of a digit the letters behind it are let go by, too.
func (f Form) refuse(b keys.Binding) Form {
	f.refused = b.Does == overtype
	f.status = b.NotNow()
	return f
}

// overtyped starts anew with a key.
func (f Form) overtyped(msg tea.KeyMsg) Form {
	if f = f.startEdit(""); f.edit == nil {
		return f
	}
	e := f.edit.Type(msg, f.check)
	f.edit = &e
	return f
}

func (f Form) check(text string) error {
	_, err := f.with(f.rows[f.hand], text)
	return err
}

func (f Form) typed(does keys.Action) Form {
	if e, held := f.edit.Held(does); held {
		f.edit, f.status = &e, e.NotTaken(f.label())
		return f
	}
	switch does {
	case form.Accept, form.AcceptDown:
		return f.finish().onto(f.hand + 1)
	case form.AcceptUp:
		return f.finish().onto(f.hand - 1)
	case form.Abandon:
		f.edit = nil
	}
	return f
}

// label is what the line under the hand is called.
func (f Form) label() string {
	field, _ := f.here()
	return field.Label
}

// finish takes what was typed. A text that is wrong is dropped, and that is said.
func (f Form) finish() Form {
	e := f.edit.Offered(f.check)
	f.edit = nil
	if e.Replaced {
		f = f.take(e.Good)
	}
	if taken := e.Taken(); taken != "" && f.status == "" {
		f.status = "Read as " + taken + "."
	}
	if e.Problem != nil {
		f.status = e.NotTaken(f.label())
	}
	return f
}

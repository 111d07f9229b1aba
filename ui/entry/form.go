// Package entry is one entry of the log while it is stated: a form made from the
// entry's own fields. It keeps nothing and writes nothing.
package entry

import (
	"fmt"
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/form"
	"washeve/ui/keys"
)

// Known is what a form may offer.
type Known struct {
	Names    map[string][]string // by section: "bed", "place", ...
	Clock    func() time.Time    // what a moment is typed by; nil where none is at hand
	Currency string              // of the rig's prices; "" where it states none
	Rig      model.Rig           // whose pens say on which scale they show
	Places   model.Places        // of which the chosen one tells it, where no pen does
	Wash     model.Wash          // the next one, which names its place
	Units    quantity.System     // in which they are shown
}

// KnownOf gathers the names of a rig and its places.
func KnownOf(rig model.Rig, places model.Places, clock func() time.Time) Known {
	k := Known{Names: map[string][]string{"place": places.Names()}, Clock: clock, Currency: rig.Currency(), Rig: rig, Places: places}
	add := func(section string, item model.Item) {
		k.Names[section] = append(k.Names[section], item.Fields()[0].Text())
	}
	for i := range rig.Vehicles {
		add("vehicle", &rig.Vehicles[i])
	}
	for i := range rig.Beds {
		add("bed", &rig.Beds[i])
	}
	for i := range rig.Softeners {
		add("softener", &rig.Softeners[i])
	}
	for i := range rig.Sprayers {
		add("sprayer", &rig.Sprayers[i])
	}
	for i := range rig.Pens {
		add("pen", &rig.Pens[i])
	}
	return k
}

// Scales are those of a reading by the pen of that name, "" for the one in use.
func (k Known) Scales(pen string) form.Scales {
	return form.PenScales(stock.Stock{Rig: &k.Rig, Places: &k.Places, Wash: &k.Wash}, pen)
}

// Form is the entry as it stands. The zero value is no form.
type Form struct {
	Title string
	Of    string // identifier of the entry that is corrected; "" for a new one

	entry  model.Entry
	known  Known
	rows   []string // keys of the fields, in the order shown
	hand   int
	edit   *form.Edit
	picker *form.Picker
	status string

	refused bool // a digit was: what is typed behind it is let go by

	dated func(*model.Entry)      // what follows from its day and its point; nil for nothing
	slip  func(model.Body) string // what is odd about the entry; nil where nobody looks
	asked string                  // and is asked about before it is written; "" for nothing
}

// New starts on an entry. The keys named come first, the others after them.
func New(title string, e model.Entry, known Known, first ...string) Form {
	f := Form{Title: title, entry: e.Clone(), known: known, rows: first}
	listed := map[string]bool{}
	for _, key := range first {
		listed[key] = true
	}
	for _, field := range f.entry.Fields() {
		if !listed[field.Key] {
			f.rows = append(f.rows, field.Key)
		}
	}
	return f
}

// Asking is the form that asks before it writes what looks like a slip, as slip says.
func (f Form) Asking(slip func(model.Body) string) Form {
	f.slip = slip
	return f
}

// Following is the form in which something follows from the day of the entry, or from where a
// reading was taken: it is put in at once, and anew when another of these is stated.
func (f Form) Following(day func(*model.Entry)) Form {
	f.dated = day
	day(&f.entry)
	return f
}

// In is the form with its examples in the units of sys.
func (f Form) In(sys quantity.System) Form {
	f.known.Units = sys
	return f
}

// Entry is what has been stated so far.
func (f Form) Entry() model.Entry { return f.entry.Clone() }

// Problem is what still keeps the entry from being written; "" where nothing does.
func (f Form) Problem() string {
	for _, fault := range f.entry.Faults() {
		if fault.Key == "id" {
			continue // it is given when the entry is written
		}
		for _, field := range f.entry.Fields() {
			if field.Key == fault.Key && field.Required && !field.Given() {
				return field.Label + " is needed, like " + field.In(f.known.Units).Example
			}
			if field.Key == fault.Key {
				return field.Label + " " + fault.Problem
			}
		}
		return fault.Problem
	}
	if s, ok := f.entry.Body.(*model.Sample); ok && f.Of == "" && s.Point == model.AfterBed && s.Flushed == "" {
		return "flushed is needed: yes where the standing water was out, no for a first cup"
	}
	if w, ok := f.entry.Body.(*model.WashDone); ok && !w.DI.Given() && !w.Softened.Given() && !w.Raw.Given() {
		return "a wash needs how much it took, of one water at least"
	}
	return ""
}

// Typing tells that letters are text just now.
func (f Form) Typing() bool { return f.edit != nil && f.edit.Letters() || f.refused }

// Picks tells that a list is open, whose lines letters go to.
func (f Form) Picks() bool { return f.picker != nil }

// Busy tells that a value is being changed: all keys are the form's.
func (f Form) Busy() bool {
	return f.edit != nil || f.picker != nil || f.refused || f.asked != ""
}

// At puts the hand on a field.
func (f Form) At(key string) Form {
	for i, k := range f.rows {
		if k == key {
			f.hand = i
		}
	}
	return f
}

// field is the field in a row, on an entry of its own.
func (f Form) field(e *model.Entry, key string) (model.Field, bool) {
	for _, field := range e.Fields() {
		if field.Key == key {
			return f.suited(field.Suited(e.Fields(), f.known.Units)), true
		}
	}
	return model.Field{}, false
}

// shown is the text of a field: of a moment, as the clock told it.
func (f Form) shown(field model.Field) string {
	if m, err := model.ParseMoment(field.Text(), nil); field.Moment && f.known.Clock != nil && err == nil {
		return m.Told(f.known.Clock().Location())
	}
	return field.Text()
}

// suited puts the scale of the entry's own pen into the example, which a bare number is
// offered.
func (f Form) suited(field model.Field) model.Field {
	if field.OfPen() {
		field.Example = f.scales().Bare("6")
	}
	return field
}

// scales are those of a reading by the pen of the entry.
func (f Form) scales() form.Scales {
	if s, reads := f.entry.Body.(*model.Sample); reads {
		return f.known.Scales(s.Pen)
	}
	return f.known.Scales("")
}

func (f Form) here() (model.Field, bool) {
	if f.hand < 0 || f.hand >= len(f.rows) {
		return model.Field{}, false
	}
	e := f.entry.Clone()
	return f.field(&e, f.rows[f.hand])
}

// with is the entry with one field stated.
func (f Form) with(key, text string) (model.Entry, error) {
	e := f.entry.Clone()
	field, ok := f.field(&e, key)
	if !ok {
		return e, fmt.Errorf("there is no %s here", key)
	}
	if f.inWords(field, text) {
		m, err := model.PastMoment(text, f.known.Clock())
		if err != nil {
			return e, err
		}
		text = m.String()
	}
	return e, field.Set(text)
}

// inWords tells that a text is a moment as a person types it.
func (f Form) inWords(field model.Field, text string) bool {
	return field.Moment && f.known.Clock != nil && strings.TrimSpace(text) != ""
}

// taken is what a right text was read as, in words, where that is more than it says.
func (f Form) taken(field model.Field, text string) string {
	if !f.inWords(field, text) {
		return ""
	}
	m, err := model.PastMoment(text, f.known.Clock())
	if err != nil {
		return ""
	}
	return m.Full()
}

// State sets a field, as if it had been typed; what is wrong is told.
func (f Form) State(key, text string) (Form, error) {
	e, err := f.with(key, text)
	if err != nil {
		return f, err
	}
	if f.entry = e; (key == "at" || key == "point") && f.dated != nil {
		f.dated(&f.entry)
	}
	return f, nil
}

// Update takes a key and tells what was asked for beyond the form: "" for
// nothing, [Write] or [Leave].
func (f Form) Update(msg tea.KeyMsg) (Form, keys.Action) {
	b, bound := keys.Find(f.Keys(), msg)
	field, _ := f.here()
	switch {
	case f.edit != nil && (!bound || b.Does == form.Spell):
		e := f.edit.Type(msg, f.check)
		f.edit, f.status = &e, e.Heard()
		return f, ""
	case !bound && (f.picker != nil || f.refused || f.asked != ""):
		return f, ""
	case !bound && msg.Paste:
		return f.overtyped(msg), ""
	case !bound && form.IsLetter(msg):
		f.status = form.NoKey(field, msg)
		return f, ""
	case !bound:
		return f, ""
	case b.Blocked != "":
		return f.refuse(b), ""
	}
	f.status = ""
	switch {
	case f.refused:
		if f.refused = false; b.Does == form.OpenLine {
			return f.act(change, msg)
		}
		return f, ""
	case f.asked != "":
		return f.answered(b.Does)
	case f.picker != nil:
		return f.pick(b.Does, msg), ""
	case f.edit != nil:
		return f.typed(b.Does), ""
	}
	return f.act(b.Does, msg)
}

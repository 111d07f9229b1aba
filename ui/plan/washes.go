package plan

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"washeve/model"
	"washeve/model/stock"
	"washeve/ui/form"
	"washeve/ui/history"
)

// Shelf keeps the washes that are not the one in hand.
type Shelf interface {
	// SaveOthers keeps those that differ from what was last kept. Its errors are
	// those of [Keeper.Save].
	SaveOthers([]*stock.Kept) error
	// NotSaved tells of those that wait, since [Keeper.Save] failed: they may name what
	// only the rig that was not saved has.
	NotSaved([]*stock.Kept)
	// TakeUp lets [Keeper.Save] save another wash from now on, in its own file or, where
	// it has none, in a new one. It gives the file of the wash that is put away. All
	// has to be saved.
	TakeUp(next *stock.Kept) (away string)
}

// aWash is the section of what is picked from the list of washes.
const aWash = "kept wash"

func (m Model) noWashes() string {
	switch {
	case m.now.example:
		return "the example is one wash; " + m.th.Key("a", "adopt") + " makes it yours first"
	case m.shelf == nil:
		return "there is no place to keep other washes"
	case m.unsaved != nil:
		return "this wash is not saved yet; " + m.th.Key("s", "save") + " tries again"
	}
	return ""
}

// openWashes lists the washes: the one in hand, the others, and a new one.
func (m Model) openWashes() Model {
	options := []form.Option{{Text: called(&m.now.wash), Note: m.listNote(m.now.wash)}}
	for _, k := range m.now.others {
		options = append(options, form.Option{Text: called(&k.Wash), Note: m.listNote(k.Wash), Pick: k.File})
	}
	p := form.Open("Washes; 1 is in hand", append(options, form.Option{Text: "new wash", Note: "like the one in hand", New: true}), "")
	m.picker, m.editAt = &p, ref{section: aWash}
	return m.say(m.oneFillNamed("esc, then O"))
}

// washTold tells the wash under the hand whole, where the list is of washes: it has room
// for its day only.
func (m *Model) washTold() (text string, ok bool) {
	if m.picker == nil || m.editAt.section != aWash {
		return "", false
	}
	o, ok := m.picker.Chosen()
	if o.New {
		return o.Text + ": " + o.Note, ok
	}
	if i := m.now.othersAt(o.Pick); i >= 0 {
		return o.Text + ": " + m.washNote(m.now.others[i].Wash), ok
	}
	return o.Text + ": " + m.washNote(m.now.wash), ok
}

// othersAt finds a wash that is not in hand by its file; -1 where it is none of them.
func (w *work) othersAt(file string) int {
	return slices.IndexFunc(w.others, func(k *stock.Kept) bool { return k.File == file })
}

// called is what a wash is called in the list.
func called(w *model.Wash) string { return cmp.Or(w.Name, "a wash without a name") }

// washNote tells a wash from others: its day, and what is washed where.
func (m *Model) washNote(wash model.Wash) string {
	w := m.now
	w.wash = wash
	return dayNote(wash) + ", " + w.chosenName("vehicle") + " at " + w.chosenName("place")
}

// listNote is what the list has room for; by words that is all.
func (m *Model) listNote(wash model.Wash) string {
	if m.th.Words {
		return m.washNote(wash)
	}
	return dayNote(wash)
}

func dayNote(wash model.Wash) string {
	if date, given := wash.Date.Get(); given {
		return date.String()
	}
	return "no day"
}

func (w *work) chosenName(section string) string {
	if i := w.chosen(section); i >= 0 {
		return w.names(section)[i]
	}
	return "no " + section
}

// pickWash takes what was picked from the list of washes in hand.
func (m Model) pickWash(o form.Option) Model {
	i := m.now.othersAt(o.Pick)
	switch {
	case o.New:
		return m.newWash()
	case i < 0:
		return m.say(called(&m.now.wash) + " is in hand already.")
	}
	if m = m.takeUp(m.now.others[i]); m.unsaved != nil {
		return m
	}
	return m.opened(m.open).toLacking().say("In hand now, in its own file: " + called(&m.now.wash) + ". Undo starts anew.")
}

// newWash lets the name of a wash like the one in hand be typed, for another day, whose
// weather nobody knows yet. It is there, and in a file of its own, only once that is done.
func (m Model) newWash() Model {
	w := m.now.clone()
	w.wash, _ = w.wash.OnAnotherDay()
	w.wash.Name = w.newName()
	m.adding = &addition{work: w, open: m.open, hand: m.hand, wash: true}
	m.open, m.hand, _ = w.stepOf(ref{section: "wash", key: "name"})
	return m.replan(w).nameNew()
}

// newName is a name that no wash has, made from that of the wash in hand.
func (w *work) newName() string {
	const mostLetters = 60 // that a name may have
	letters := []rune(cmp.Or(w.wash.Name, "wash"))
	for n := 2; ; n++ {
		end := " " + strconv.Itoa(n)
		name := string(letters[:min(len(letters), mostLetters-len(end))]) + end
		if w.freeWash(name) == nil {
			return name
		}
	}
}

// freeWash tells why a new wash cannot have a name; nil where it can.
func (w *work) freeWash(name string) error {
	if name == "" {
		return fmt.Errorf("a new wash needs a name; write it like Saturday wash")
	}
	taken := strings.EqualFold(w.wash.Name, name)
	for _, k := range w.others {
		taken = taken || strings.EqualFold(k.Wash.Name, name)
	}
	if taken {
		return fmt.Errorf("%q is the name of another wash already; give each its own", name)
	}
	return nil
}

// begin takes a new wash in hand and keeps it in a file of its own.
func (m Model) begin(wash model.Wash) Model {
	left := ""
	if _, weather := m.now.wash.OnAnotherDay(); weather {
		left = " Its weather is not stated yet: it was the other day's."
	}
	if m = m.takeUp(&stock.Kept{Wash: wash}); m.unsaved != nil {
		return m
	}
	return m.save().done("New, in its own file: " + called(&wash) + ". Undo starts anew." + left)
}

// takeUp puts the wash in hand away as it is and takes another in hand. What cannot be
// saved stays in hand. Nothing of the other wash can be undone yet.
func (m Model) takeUp(next *stock.Kept) Model {
	if m = m.save(); m.unsaved != nil {
		return m.replan(m.now)
	}
	w := m.now.clone()
	away := &stock.Kept{File: m.shelf.TakeUp(next), Wash: w.wash}
	others := slices.DeleteFunc(w.others, func(k *stock.Kept) bool { return k == next })
	w.wash, w.others = next.Wash, slices.Insert(others, 0, away)
	m.now, m.history = w.clone(), history.Of[work]{}
	return m.replan(m.now)
}

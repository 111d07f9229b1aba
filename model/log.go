package model

import (
	"cmp"
	"slices"
	"strings"

	"washeve/model/quantity"
)

// Kind is what an entry of the log is about.
type Kind string

// The kinds of entry.
const (
	WashKind       Kind = "wash"
	StageKind      Kind = "stage"
	ReadingKind    Kind = "reading"
	ResinKind      Kind = "resin"
	SaltKind       Kind = "salt"
	CorrectionKind Kind = "correction"
)

// Kinds lists them all.
func Kinds() []Kind {
	return []Kind{WashKind, StageKind, ReadingKind, ResinKind, SaltKind, CorrectionKind}
}

// Body is what one kind of entry holds: a pointer to a [WashDone], [StageDone],
// [Sample], [Refill], [Regeneration] or [Correction].
type Body interface {
	Item
	Kind() Kind
	copied() Body
	reset()
}

// NewBody is an empty body of a kind, or nil where there is no such kind.
func NewBody(kind Kind) Body {
	switch kind {
	case WashKind:
		return &WashDone{}
	case StageKind:
		return &StageDone{}
	case ReadingKind:
		return &Sample{}
	case ResinKind:
		return &Refill{}
	case SaltKind:
		return &Regeneration{}
	case CorrectionKind:
		return &Correction{}
	}
	return nil
}

// Entry is one thing that was done, and when. Once written it is never edited:
// a later [Correction] corrects or strikes it.
type Entry struct {
	ID   string // the same on every machine, see [NewID]
	At   Moment
	Note string
	Body Body
}

// Kind is what the entry is about; "" without a body.
func (e *Entry) Kind() Kind {
	if e.Body == nil {
		return ""
	}
	return e.Body.Kind()
}

// Fields lists what can be stated of the entry: its moment, what its body
// holds, a note and, last, its identifier.
func (e *Entry) Fields() []Field {
	fields := []Field{momentField("at", "when", "when it was done", &e.At).required()}
	if e.Body != nil {
		fields = append(fields, e.Body.Fields()...)
	}
	return append(fields,
		words("note", "note", "anything worth keeping", "windy, two faces by towel", 300, &e.Note),
		idField("id", "log number", "given by the program; the same in every copy of the log", &e.ID).required())
}

// Contradictions finds statements of the body that cannot be true together.
func (e *Entry) Contradictions() []Fault {
	if c, ok := e.Body.(Checker); ok {
		return c.Contradictions()
	}
	return nil
}

// Faults finds what is wrong in one entry.
func (e *Entry) Faults() []Fault {
	if e.Body == nil {
		return []Fault{{Key: "kind", Problem: "is missing; write " + quantity.OneOf(kindNames())}}
	}
	return faultsOf("", 0, e)
}

// Usable gives the first fault for which the entry cannot be used; nil where there is none.
func (e *Entry) Usable() error {
	if faults := e.spoiled(); len(faults) > 0 {
		return faults[0]
	}
	return nil
}

func (e *Entry) spoiled() []Fault {
	return slices.DeleteFunc(e.Faults(), func(f Fault) bool { return f.Unused })
}

func kindNames() []string {
	texts := make([]string, len(Kinds()))
	for i, k := range Kinds() {
		texts[i] = string(k)
	}
	return texts
}

// Clone is a copy that shares nothing with e.
func (e Entry) Clone() Entry {
	if e.Body != nil {
		e.Body = e.Body.copied()
	}
	return e
}

// Content is all that the entry says, in one way of writing: two entries with
// equal content say the same, whatever units they were typed in.
func (e *Entry) Content() string { return e.say(Field.Exact) }

func (e *Entry) say(text func(Field) string) string {
	var b strings.Builder
	b.WriteString(string(e.Kind()))
	for _, f := range e.Fields() {
		if t := text(f); t != "" {
			b.WriteString("\n" + f.Key + "=" + t)
		}
	}
	return b.String()
}

// Log is what was done, in the order of [NewLog].
type Log []Entry

// NewLog puts entries in the order of their moments. Those of one moment stay in the
// order in which they stand, which in a file is that in which they were written. It
// keeps the first of those that say the same, and takes the slice over.
func NewLog(entries []Entry) Log {
	log := Log(entries)
	if !slices.IsSortedFunc(log, byMoment) {
		slices.SortStableFunc(log, byMoment)
	}
	return log.compact()
}

func byMoment(a, b Entry) int { return a.At.Compare(b.At) }

// compact keeps the first of those of one moment that say the same.
func (l Log) compact() Log {
	kept := 0
	known := map[string][]int{} // where the kept ones of this moment are, by identifier
	for i := range l {
		again := i > 0 && l[i-1].At.Compare(l[i].At) == 0
		if !again {
			clear(known)
		}
		if again || i+1 < len(l) && l[i].At.Compare(l[i+1].At) == 0 {
			if slices.ContainsFunc(known[l[i].ID], func(k int) bool { return l[k].Content() == l[i].Content() }) {
				continue
			}
			known[l[i].ID] = append(known[l[i].ID], kept)
		}
		if kept < i {
			l[kept] = l[i]
		}
		kept++
	}
	clear(l[kept:])
	return l[:kept]
}

// order is total: nothing depends on the order in which entries were found. Corrections,
// and entries of one identifier, are ranked by it, so that every copy of a log counts the same.
func order(a, b Entry) int {
	if c := cmp.Or(byMoment(a, b), cmp.Compare(a.ID, b.ID)); c != 0 {
		return c
	}
	if c := cmp.Compare(a.Content(), b.Content()); c != 0 {
		return c
	}
	return cmp.Compare(a.say(Field.Text), b.say(Field.Text))
}

// Merge is what two copies of a log hold together, the first one's entries of a moment
// before those that only the second has. What it holds does not depend on which is
// first, what was merged before, or how often. Where both hold an identifier with
// different content, both entries stay, and [Log.Faults] tells it.
func Merge(a, b Log) Log { return NewLog(slices.Concat(a, b)) }

// Holding gives a question to a log: is an entry in it that says the same?
func (l Log) Holding() func(Entry) bool {
	known := make(map[string][]int, len(l))
	for i := range l {
		known[l[i].ID] = append(known[l[i].ID], i)
	}
	return func(e Entry) bool {
		return slices.ContainsFunc(known[e.ID], func(i int) bool { return l[i].At == e.At && l[i].Content() == e.Content() })
	}
}

// Find gives the first entry with an identifier.
func (l Log) Find(id string) (Entry, bool) {
	for i := range l {
		if l[i].ID == id {
			return l[i], true
		}
	}
	return Entry{}, false
}

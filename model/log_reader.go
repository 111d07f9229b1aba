package model

import (
	"errors"
	"strings"

	"washeve/model/quantity"
)

// What [EntryReader.Set] says of a key.
var (
	// ErrUnknownKey says that a kind of entry has no such field.
	ErrUnknownKey = errors.New("is no field of this kind of entry")
	// ErrTwice says that a field is stated a second time.
	ErrTwice = errors.New("is stated twice; keep one")
)

// EntryReader makes entries from texts, one after the other. Each text goes
// through its [Field] once; where the same text comes again, and in a log it
// mostly does, the value is taken from the first time.
type EntryReader struct {
	kinds map[string]*kindReader
	now   *kindReader
}

type kindReader struct {
	entry Entry // written over by each entry
	slots []slot
	next  int // where the next key is looked for first: files keep the order
	count int // entries begun
}

type slot struct {
	field Field
	last  int  // the count at which it was stated last
	given bool // and not as blank
	known map[string]*meaning
	now   *meaning // of the text that was read last
}

// A meaning is a text and what puts back the value that it had.
type meaning struct {
	text  string
	again func()
}

// mostKnown bounds the memory for texts that never come again.
const mostKnown = 20000

// NewEntryReader makes a reader. It is for one goroutine.
func NewEntryReader() *EntryReader {
	return &EntryReader{kinds: map[string]*kindReader{}}
}

func newKindReader(body Body) *kindReader {
	k := &kindReader{entry: Entry{Body: body}}
	for _, f := range k.entry.Fields() {
		k.slots = append(k.slots, slot{field: f, known: map[string]*meaning{}})
	}
	return k
}

// Start begins an entry of a kind.
func (r *EntryReader) Start(kind string) error {
	k := r.kinds[kind]
	if k == nil {
		if body := NewBody(Kind(kind)); body != nil {
			k = newKindReader(body)
			r.kinds[strings.Clone(kind)] = k
		}
	}
	if k == nil {
		return &quantity.ParseError{What: "kind of entry", Text: kind, Reason: "is no kind of entry", Choices: kindNames()}
	}
	body := k.entry.Body
	body.reset()
	k.entry = Entry{Body: body}
	k.next, r.now = 0, k
	k.count++
	return nil
}

// Set states a field. The text is not kept, so it may lie in a larger one.
func (r *EntryReader) Set(key, text string) error {
	k := r.now
	for range k.slots {
		s := &k.slots[k.next]
		if k.next++; k.next == len(k.slots) {
			k.next = 0
		}
		if s.field.Key != key {
			continue
		}
		if s.last == k.count {
			return ErrTwice
		}
		s.last, s.given = k.count, strings.TrimSpace(text) != ""
		return s.set(text)
	}
	return ErrUnknownKey
}

func (s *slot) set(text string) error {
	value, holds := s.field.value.(holder)
	if !holds {
		return s.field.Set(strings.Clone(text))
	}
	if s.now == nil || s.now.text != text {
		s.now = s.known[text]
	}
	if s.now != nil {
		s.now.again()
		return nil
	}
	text = strings.Clone(text)
	if err := s.field.Set(text); err != nil {
		return err
	}
	s.now = &meaning{text, value.hold()}
	if len(s.known) < mostKnown {
		s.known[text] = s.now
	}
	return nil
}

// Keys lists the fields of the kind that was started.
func (r *EntryReader) Keys() []string {
	keys := make([]string, len(r.now.slots))
	for i := range r.now.slots {
		keys[i] = r.now.slots[i].field.Key
	}
	return keys
}

// Faults finds what is wrong in the entry as stated so far, as [Entry.Faults]
// does.
func (r *EntryReader) Faults() []Fault {
	var faults []Fault
	k := r.now
	for i := range k.slots {
		s := &k.slots[i]
		if s.field.Required && !(s.last == k.count && s.given) {
			faults = append(faults, missing("", 0, s.field))
		}
	}
	return append(faults, k.entry.Contradictions()...)
}

// Entry gives the entry as stated so far. It shares nothing with the reader.
func (r *EntryReader) Entry() Entry { return r.now.entry.Clone() }

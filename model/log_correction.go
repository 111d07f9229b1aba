package model

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model/quantity"
)

// Correction strikes another entry, or states fields of it anew. The other
// entry stays as it was written.
type Correction struct {
	Of      string // identifier of the entry that is corrected
	Strike  Answer // Yes: the entry does not count
	At      Moment // where given, when it really was
	Clear   []string
	Changes []Change
}

// Change is a field stated anew.
type Change struct{ Key, Text string }

// Kind is [CorrectionKind].
func (*Correction) Kind() Kind { return CorrectionKind }

// Fields lists what can be stated of a correction: what it does, and every
// field of every other kind, which then is what that field should have been.
func (c *Correction) Fields() []Field {
	fields := []Field{
		idField("of", "corrects", "the entry that is put right, by its id in the log", &c.Of).required(),
		choice("strike", "strike out", "yes where the entry does not count", []Answer{Yes, No}, &c.Strike),
		momentField("new_at", "really was", "the moment, where it was wrong", &c.At),
		c.clearField(),
	}
	for _, f := range changeable() {
		fields = append(fields, c.changeField(f))
	}
	return fields
}

// changeable lists the fields of the kinds that can be corrected, each key once:
// a key means the same in all of them.
func changeable() []Field {
	var fields []Field
	for _, kind := range Kinds() {
		if kind == CorrectionKind {
			continue
		}
		for _, f := range NewBody(kind).Fields() {
			if !slices.ContainsFunc(fields, func(g Field) bool { return g.Key == f.Key }) {
				fields = append(fields, f)
			}
		}
	}
	return fields
}

// changeField is f as something that a correction states anew.
func (c *Correction) changeField(f Field) Field {
	f.Required, f.value = false, changed{c, f}
	return f
}

// changed is what a correction states of a field.
type changed struct {
	of    *Correction
	field Field
}

func (v changed) place() int {
	return slices.IndexFunc(v.of.Changes, func(ch Change) bool { return ch.Key == v.field.Key })
}

func (v changed) text() string {
	if i := v.place(); i >= 0 {
		return v.of.Changes[i].Text
	}
	return ""
}

func (v changed) exact() string {
	if text := v.text(); v.field.Set(text) != nil {
		return text
	}
	return v.field.Exact()
}

func (v changed) set(text string) error {
	if err := v.field.Set(text); err != nil {
		return err
	}
	v.clear()
	v.of.Changes = append(v.of.Changes, Change{v.field.Key, v.field.Text()})
	return nil
}

func (v changed) clear() {
	v.of.Changes = slices.DeleteFunc(v.of.Changes, func(ch Change) bool { return ch.Key == v.field.Key })
}

func (c *Correction) clearField() Field {
	const key, label, example = "clear", "take away", "flow, temperature"
	return Field{
		Key: key, Label: label, Help: "fields that should not have been stated", Example: example,
		value: spoken{
			say: func() string { return strings.Join(c.Clear, ", ") },
			hear: func(text string) error {
				var keys []string
				for _, part := range strings.Split(text, ",") {
					part = strings.TrimSpace(part)
					known := slices.ContainsFunc(changeable(), func(f Field) bool { return f.Key == part })
					if !known {
						return &quantity.ParseError{What: label, Text: text, Reason: fmt.Sprintf("names %q, which is no field", part), Example: example}
					}
					keys = append(keys, part)
				}
				c.Clear = keys
				return nil
			},
			drop: func() { c.Clear = nil },
		},
	}
}

// Contradictions finds statements that cannot be true together.
func (c *Correction) Contradictions() []Fault {
	changes := len(c.Changes)+len(c.Clear) > 0 || c.At.Given()
	switch {
	case c.Strike == Yes && changes:
		return []Fault{{Key: "strike", Problem: "strikes the entry and corrects it too; keep one"}}
	case c.Strike != Yes && !changes:
		return []Fault{{Key: "strike", Problem: `neither strikes nor corrects anything; write strike = "yes", or the field that was wrong`}}
	}
	return nil
}

func (c *Correction) copied() Body {
	d := *c
	d.Clear, d.Changes = slices.Clone(c.Clear), slices.Clone(c.Changes)
	return &d
}

func (c *Correction) reset() { *c = Correction{} }

// apply gives e as it was meant. What of c does not go with e is told.
func (c *Correction) apply(e Entry) (Entry, []string) {
	meant := e.Clone()
	var problems []string
	if c.At.Given() {
		meant.At = c.At
	}
	fields := meant.Body.Fields()
	set := func(key, text string) {
		i := slices.IndexFunc(fields, func(f Field) bool { return f.Key == key })
		if i < 0 {
			problems = append(problems, fmt.Sprintf("corrects %s, which a %s entry does not have", key, e.Kind()))
		} else if err := fields[i].Set(text); err != nil {
			problems = append(problems, fmt.Sprintf("%s: %v", key, err))
		}
	}
	for _, key := range c.Clear {
		set(key, "")
	}
	for _, change := range c.Changes {
		set(change.Key, change.Text)
	}
	if faults := meant.spoiled(); len(faults) > len(e.spoiled()) {
		return e, append(problems, "would leave the entry wrong: "+faults[len(faults)-1].Error())
	}
	return meant, problems
}

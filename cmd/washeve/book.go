package main

import (
	"crypto/rand"
	"errors"
	"reflect"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/entry"
)

// book is the log at hand: its file, what it holds, and what it teaches.
type book struct {
	journal *journal.Journal
	log     model.Log
	example bool // the rig at hand is the built-in example: nothing is written of it

	memory planner.Memory
	from   recalled
	known  bool // memory.Past is that of the log as it stands, for from
}

// recalled is what of the rig and the places the log's lessons depend on.
type recalled struct {
	beds      []model.Bed
	softeners []model.Softener
	pens      []model.Pen
	defaults  model.Defaults
	places    model.Places
}

// Append adds entries for good.
func (b *book) Append(entries ...model.Entry) error {
	if b.example {
		return errors.New("this is the built-in example, and its log is kept nowhere; go back to the plan and make it yours first (a), or start your own (e)")
	}
	if _, err := b.journal.Append(entries...); err != nil {
		return err
	}
	b.log, b.known = model.Merge(b.log, model.NewLog(entries)), false
	return nil
}

// Log is the log as it stands.
func (b *book) Log() model.Log { return b.log }

// past is what the log teaches, worked out again only where it or what it
// depends on has changed.
func (b *book) past(rig model.Rig, places model.Places) *planner.Past {
	from := recalled{rig.Beds, rig.Softeners, rig.Pens, rig.Defaults, places}
	if !b.known || !reflect.DeepEqual(from, b.from) {
		b.memory.Past = planner.Recall(b.log, rig, places)
		b.from, b.known = from.kept(), true
	}
	return b.memory.Past
}

// kept is a copy that later edits do not reach.
func (r recalled) kept() recalled {
	r.beds, r.softeners = append([]model.Bed(nil), r.beds...), append([]model.Softener(nil), r.softeners...)
	r.pens, r.places = append([]model.Pen(nil), r.pens...), append(model.Places(nil), r.places...)
	return r
}

// plan makes a plan with what the log teaches.
func (b *book) plan(rig model.Rig, places model.Places, wash model.Wash) (planner.Plan, error) {
	b.past(rig, places)
	return b.memory.Make(rig, places, wash)
}

// sharing prepares the screen on which a short bed is shared out.
func (b *book) sharing(rig model.Rig, places model.Places, wash model.Wash) (*planner.Sharing, error) {
	b.past(rig, places)
	return b.memory.Sharing(rig, places, wash)
}

// entries is the book as the screens take it.
func (p *program) entries(b *book) entry.Book {
	return entry.Book{
		Logger: b, Past: b.past, Clock: p.clock,
		NewID: func(at model.Moment) (string, error) { return model.NewID(at, rand.Reader) },
	}
}

// openBook reads the log of the data folder.
func (p *program) openBook() (*book, error) {
	log, err := p.readLog()
	if err != nil {
		return nil, err
	}
	return &book{journal: p.journal(), log: log}, nil
}

// rest looks at the bed in the middle of a wash, with what the log teaches by now.
func (b *book) rest(rig model.Rig, places model.Places, wash model.Wash, ran, left quantity.Volume, flow quantity.Flow) (planner.Plan, error) {
	b.past(rig, places)
	return b.memory.Rest(rig, places, wash, ran, left, flow)
}

// ways works the ways out of a short bed out, with what the log teaches by now.
func (b *book) ways(rig model.Rig, places model.Places, wash model.Wash) (planner.Shortage, error) {
	b.past(rig, places)
	return b.memory.Shorten(rig, places, wash)
}

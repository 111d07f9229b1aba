package main

import (
	"reflect"
	"slices"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/store/fault"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/entry"
)

// lessons is what of the rig and the places the log's lessons depend on.
type lessons struct {
	beds      []model.Bed
	softeners []model.Softener
	pens      []model.Pen
	defaults  model.Defaults
	places    model.Places
}

func lessonsOf(rig model.Rig, places model.Places) lessons {
	return lessons{rig.Beds, rig.Softeners, rig.Pens, rig.Defaults, places}
}

func (l lessons) equal(other lessons) bool {
	return same(l.beds, other.beds) && same(l.softeners, other.softeners) && same(l.pens, other.pens) &&
		same(l.places, other.places) && reflect.DeepEqual(l.defaults, other.defaults)
}

// same does not tell a list that was emptied from one that never held anything.
func same[T any](a, b []T) bool {
	return len(a) == 0 && len(b) == 0 || reflect.DeepEqual(a, b)
}

// kept is a copy that later edits do not reach.
func (l lessons) kept() lessons {
	l.beds, l.softeners, l.pens, l.places = slices.Clone(l.beds), slices.Clone(l.softeners), slices.Clone(l.pens), slices.Clone(l.places)
	return l
}

func (l lessons) rig() model.Rig {
	return model.Rig{Beds: l.beds, Softeners: l.softeners, Pens: l.pens, Defaults: l.defaults}
}

// lesson is what the log teaches of a rig and its places.
type lesson struct {
	of      lessons
	changes int // of the log, when it was learned
	past    *planner.Past
}

// task is a lesson to be learned, and the log to do it by. It shares nothing that
// is changed later.
type task struct {
	lesson
	log model.Log
}

func (t task) learned() lesson {
	t.past = planner.Recall(t.log, t.of.rig(), t.of.places)
	return t.lesson
}

// mostLessons is how many are kept, or wanted, at once: a screen may set several
// rigs side by side.
const mostLessons = 12

// task is the work for a lesson. The book is locked, here and in what follows
// without a word to the contrary.
func (b *book) task(of lessons) task { return task{lesson{of: of.kept(), changes: b.changes}, b.log} }

func (b *book) find(of lessons) (past *planner.Past, known bool) {
	for _, k := range b.known {
		if b.read && k.changes == b.changes && k.of.equal(of) {
			return k.past, true
		}
	}
	return nil, false
}

// keep adds a lesson, and drops what it makes needless.
func (b *book) keep(l lesson) *planner.Past {
	newer := slices.IndexFunc(b.known, func(k lesson) bool { return k.changes <= l.changes })
	if newer < 0 {
		newer = len(b.known)
	}
	b.known = slices.Insert(b.known, newer, l) // behind those of a later log
	b.known = slices.DeleteFunc(b.known, func(k lesson) bool { return k.changes < l.changes })
	b.known = b.known[:min(len(b.known), mostLessons)]
	b.wanted = slices.DeleteFunc(b.wanted, func(w lessons) bool { _, known := b.find(w); return known })
	return l.past
}

// want puts a lesson last, which is learned first.
func (b *book) want(of lessons) {
	b.wanted = append(slices.DeleteFunc(b.wanted, of.equal), of)
	b.wanted = b.wanted[max(len(b.wanted)-mostLessons, 0):]
}

// start begins the work beside, one lesson at a time.
func (b *book) start() {
	if b.working || b.news || len(b.wanted) == 0 {
		return
	}
	done, next := make(chan struct{}), b.wanted[len(b.wanted)-1]
	b.done, b.working, b.news = done, true, true
	go func() {
		defer close(done)
		b.work(next)
	}()
}

// work reads the log where that is not done, and learns from it. It locks the
// book, but not while it works.
func (b *book) work(of lessons) {
	b.load()
	b.mu.Lock()
	next := b.task(of)
	b.mu.Unlock()
	done := next.learned()
	b.mu.Lock()
	defer b.mu.Unlock()
	b.keep(done)
	b.working = false
}

// load reads the log where that is not done. It locks the book, but not while it
// reads; where two read at once, entries are taken once.
func (b *book) load() {
	b.mu.Lock()
	read := b.read
	b.mu.Unlock()
	if !read {
		b.reads()
	}
}

// glance takes what another program, or this one, has written into the log since it was
// read, and tells whether that was anything new. It locks the book as load does.
func (b *book) glance() bool {
	b.mu.Lock()
	read, before := b.read && b.journal != nil && !b.example, b.changes
	stamp := b.stamp
	b.mu.Unlock()
	if !read {
		return false
	}
	if now, _ := b.journal.Stamp(); now == stamp {
		return false
	}
	b.reads()
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.changes != before
}

// renew reads the log again as a person may have mended it: what the file holds is all
// there is, unless nothing of it can be read. It locks the book, but not while it reads.
func (b *book) renew() {
	r := b.reading()
	b.mu.Lock()
	defer b.mu.Unlock()
	b.renewals, b.heard = b.renewals+1, nil
	if b.meets(r); !unusable(r.log, b.faults) {
		b.log, b.changes = r.log, b.changes+1
	}
}

// fresh is told as learned where another program has written into the log, so that every
// screen asks anew; nil where none has.
func (b *book) fresh() tea.Msg {
	if b.glance() {
		return entry.Learned{}
	}
	return nil
}

// reads adds what the file of the log holds to what was written meanwhile.
func (b *book) reads() { b.take(b.reading()) }

// A reading is what the file of the log held at some moment.
type reading struct {
	renewals int // of the book before it
	stamp    journal.Stamp
	exists   bool // the file
	log      model.Log
	faults   []fault.Fault
}

// reading reads the file. Its stamp is taken before: what is written while it is read is
// found at the next glance. It locks the book, but not while it reads.
func (b *book) reading() (r reading) {
	b.mu.Lock()
	r.renewals = b.renewals
	b.mu.Unlock()
	r.stamp, r.exists = b.journal.Stamp()
	r.log, r.faults = b.journal.Load()
	return r
}

// take adds what was read, but for a reading from before the book was renewed: it may
// hold what a person has taken out since. It locks the book.
func (b *book) take(r reading) {
	b.mu.Lock()
	defer b.mu.Unlock()
	if r.renewals != b.renewals {
		return
	}
	b.add(r.log)
	b.meets(r)
}

// lag is how far what is known is behind what was asked for. It locks the book.
func (b *book) lag() entry.Lag {
	b.mu.Lock()
	defer b.mu.Unlock()
	switch {
	case len(b.wanted) == 0:
		return entry.UpToDate
	case len(b.known) == 0:
		return entry.Unread
	}
	return entry.Behind
}

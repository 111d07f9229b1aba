package main

import (
	"crypto/rand"
	"errors"
	"sync"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/entry"
)

// book is the log at hand: its file, what it holds, and what it teaches. Commands
// read and replay it at once. The screens do not wait for it: they ask for what
// is known so far, and [book.learn] does the rest beside them.
type book struct {
	journal *journal.Journal
	beside  bool // reading and replaying is done beside the screens

	today  func() model.Date
	memory planner.Memory // of the one who makes plans

	mu       sync.Mutex // for all below
	example  bool       // the rig at hand is the built-in example: nothing is written of it
	log      model.Log
	read     bool          // log holds what the file does
	stamp    journal.Stamp // of the file when it was last read
	there    bool          // the file was, at some reading
	lost     bool          // nothing of the file could be read last
	faults   []fault.Fault
	heard    []fault.Fault // of them, what cannot be read and was told
	told     bool          // that the log cannot be used
	changes  int           // of the log
	renewals int           // how often it was read as the only truth
	known    []lesson      // the latest learned first
	wanted   []lessons     // asked for and not known, the latest last

	hold    hold          // of the work beside
	working bool          // beside
	done    chan struct{} // closed when the last work beside is done
	news    bool          // of that work, not told yet
	awaited bool          // somebody waits to tell it
}

// Append adds entries for good.
func (b *book) Append(entries ...model.Entry) error {
	if b.borrowed() {
		return errors.New("this is the built-in example, and its log is kept nowhere; go back to the plan and make it yours first (a), or start your own (e)")
	}
	told, err := b.journal.Append(entries...)
	if err != nil {
		return err
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	b.faults = append(b.faults, told...)
	b.add(model.NewLog(entries))
	return nil
}

// borrowed tells that the rig at hand is the built-in example. It locks the book, as own
// does: what is done beside the screens asks too.
func (b *book) borrowed() bool {
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.example
}

// own takes the rig at hand for the person's own from now on.
func (b *book) own() {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.example = false
}

// add merges entries in. What brings nothing new changes nothing: two may read the
// file at once.
func (b *book) add(log model.Log) {
	merged := model.Merge(b.log, log)
	if len(merged) != len(b.log) || !b.read {
		b.changes++
	}
	b.log = merged
}

// Log is the log as it stands. Who asks for its entries waits until it is read.
func (b *book) Log() model.Log {
	b.load()
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.log
}

// past is what the log teaches. It is worked out again only where the log or what
// it depends on has changed; beside the screens not here but by learn.
func (b *book) past(rig model.Rig, places model.Places) *planner.Past {
	b.mu.Lock()
	defer b.mu.Unlock()
	of := lessonsOf(rig, places)
	if !b.beside || b.read && len(b.log) == 0 {
		return b.now(of)
	}
	if past, known := b.find(of); known {
		return past
	}
	b.want(of.kept())
	if len(b.known) > 0 {
		return b.known[0].past
	}
	return nil
}

// plan makes a plan with what the log teaches.
func (b *book) plan(rig model.Rig, places model.Places, wash model.Wash) (planner.Plan, error) {
	b.memory.Past = b.past(rig, places)
	plan, err := b.memory.Make(rig, places, wash)
	if err == nil && !b.borrowed() { // whose day is invented
		plan.Seen(b.today())
	}
	return plan, err
}

// sharing prepares the screen on which a short bed is shared out.
func (b *book) sharing(rig model.Rig, places model.Places, wash model.Wash) (*planner.Sharing, error) {
	b.memory.Past = b.past(rig, places)
	return b.memory.Sharing(rig, places, wash)
}

// entries is the book as the screens take it.
func (p *program) entries(b *book) entry.Book {
	return entry.Book{
		Logger: b, Past: b.past, Learn: b.learn, Lag: b.lag, Clock: p.now,
		NewID: func(at model.Moment) (string, error) { return model.NewID(at, rand.Reader) }, Deeds: &entry.Deeds{},
	}
}

// openBook reads the log of the data folder.
func (p *program) openBook() (*book, error) {
	log, err := p.readLog()
	if err != nil {
		return nil, err
	}
	return &book{journal: p.journal(), today: p.today, log: log, read: true}, nil
}

// openBookIn is the book, and the units that its reader wants, as the rig has them.
func (p *program) openBookIn(rig model.Rig) (*book, quantity.System, error) {
	sys, err := p.system(rig)
	if err != nil {
		return nil, sys, err
	}
	b, err := p.openBook()
	return b, sys, err
}

// A long log is left alone until the first frame is drawn, which a short one does
// not hold up: reading it and learning from it is done within a frame.
const (
	longLog    = 128 << 10 // bytes: some years of washing
	firstFrame = 50 * time.Millisecond
)

type hold uint8

const (
	free    hold = iota
	held         // until the screens are there
	waiting      // for the first frame
)

// bookBeside opens the log of the data folder, to be read beside the screens.
func (p *program) bookBeside() *book {
	b := &book{journal: p.journal(), today: p.today, beside: true}
	stamp, exists := b.journal.Stamp()
	b.read = !exists
	if stamp.Bytes > longLog {
		b.hold = held
	}
	return b
}

// learn starts what there is to learn and gives the command that tells of it;
// nil where there is nothing to tell or somebody waits already.
func (b *book) learn() tea.Cmd {
	b.mu.Lock()
	defer b.mu.Unlock()
	switch {
	case b.hold == held:
		b.hold = waiting
		return tea.Tick(firstFrame, func(time.Time) tea.Msg { return b.release() })
	case b.hold == waiting:
		return nil
	}
	b.start()
	if !b.news || b.awaited {
		return nil
	}
	b.awaited = true
	done := b.done
	return func() tea.Msg {
		<-done
		return entry.Learned{Err: b.tell()}
	}
}

// pastNow is past, worked out before anything else: for a wash day, where an answer
// without the log's last lesson would be a wrong one.
func (b *book) pastNow(rig model.Rig, places model.Places) *planner.Past {
	b.load()
	b.glance()
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.now(lessonsOf(rig, places))
}

// now is a lesson that is known, else learned on the spot. The book is locked.
func (b *book) now(of lessons) *planner.Past {
	if past, known := b.find(of); known {
		return past
	}
	return b.keep(b.task(of).learned())
}

// release lets the work beside begin. It locks the book.
func (b *book) release() tea.Msg {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.hold = free
	return entry.Due{}
}

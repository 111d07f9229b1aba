package main

import (
	"context"
	"errors"
	"fmt"

	"washeve/model"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/ui"
	"washeve/ui/plan"
	"washeve/ui/theme"
)

// open runs the planner at a terminal, and prints the plan elsewhere.
func (p *program) open(ctx context.Context) error {
	p.opening = p.screen && !p.json
	lib, wash, err := p.loadWash(nil)
	if err != nil {
		return err
	}
	if !p.opening {
		defer p.tellUnread()
		return p.print(lib, wash, false)
	}
	sys, err := p.system(lib.Rig)
	if err != nil {
		return err
	}
	o := p.options(lib, wash, p.bookBeside())
	defer func() { p.tell(p.shown.faultsRead()) }()
	o.Theme, o.Units = theme.Detect(p.out, p.plain), sys
	return ui.Run(ctx, o)
}

// tellUnread says that words which were piped in are not heard: without a terminal at both
// ends the plan is printed, and nothing else.
func (p *program) tellUnread() {
	if p.plain && p.unread != nil && p.unread() {
		fmt.Fprintf(p.errs, "%s: what was piped in is not read: words are heard at a terminal, where %s --plain asks for them. Elsewhere it prints the plan.\n", toolsName, toolsName)
	}
}

// options is what the screens are opened with, but for how they look.
func (p *program) options(lib library, wash model.Wash, b *book) ui.Options {
	p.shown, b.example = b, lib.example
	k := &keeper{store: lib.keep, book: b}
	t := &tripKeeper{keeper: k, today: p.today, borrowed: lib.example}
	t.take(lib.Library)
	k.adopted, k.trips = t.adopt, t
	k.named = namedOf(lib.Rig, lib.Places, wash)
	k.latest = k.named
	if !lib.example && len(lib.Washes) > 0 {
		k.file = lib.Washes[0].File
	}
	others := othersOf(lib)
	k.others = byFile(others)
	return ui.Options{
		In: p.in, Out: p.out, Columns: p.width, Rest: (&watch{store: lib.keep, book: b, once: p.plain}).atRest, Reread: p.rereads(k),
		Options: plan.Options{
			Rig: lib.Rig, Places: lib.Places, Wash: wash, Example: lib.example,
			Others: others, Keeper: k, Shelf: k, Make: b.plan, Sharing: b.sharing, Means: p.means(b, lib.keep.Dir()), Book: p.entries(b), Trips: t,
			Notice: lib.notice, InHand: lib.why, Currency: p.currency(), Unsaid: p.unsaidUnits(),
		},
	}
}

// keeper puts the screen's work into the data folder.
type keeper struct {
	store *store.Store
	book  *book
	file  string // of the wash, in the folder washes

	adopted func(store.Library) // told what the example is as the person's own

	// lost and lostOthers are what could not be saved; nil where all is.
	lost       *work
	lostOthers []*stock.Kept

	// others are the other washes as they were last saved, by file.
	others map[string]*stock.Kept

	// trips follow a new name: named is what everything was called when they last did,
	// latest what it is called in the files.
	trips         *tripKeeper // nil where there are none
	named, latest stock.Named
}

// work is what the plan's own save is of.
type work struct {
	rig    model.Rig
	places model.Places
	wash   model.Wash
}

// namedOf is what everything is called.
func namedOf(rig model.Rig, places model.Places, wash model.Wash) stock.Named {
	return stock.Stock{Rig: &rig, Places: &places, Wash: &wash}.Named()
}

// othersOf is all washes but the first, which is the one in hand.
func othersOf(lib library) []*stock.Kept {
	if lib.example || len(lib.Washes) == 0 {
		return nil
	}
	others := make([]*stock.Kept, 0, len(lib.Washes))
	for _, w := range lib.Washes[1:] {
		others = append(others, &stock.Kept{File: w.File, Wash: w.Wash})
	}
	return others
}

func byFile(others []*stock.Kept) map[string]*stock.Kept {
	files := make(map[string]*stock.Kept, len(others))
	for _, w := range others {
		files[w.File] = w
	}
	return files
}

// SaveOthers writes the other washes that have changed, and then the trips that name
// what has another name now. What cannot be saved keeps nothing else from it.
func (k *keeper) SaveOthers(others []*stock.Kept) error {
	k.lostOthers = others
	var lost error
	for _, w := range others {
		if k.others[w.File] == w {
			continue
		}
		if err := k.saveWash(w.File, w.Wash); err != nil {
			lost = also(lost, err)
			continue
		}
		k.others[w.File] = w
	}
	if k.trips != nil {
		lost = also(lost, k.trips.follow(k.named.To(k.latest)))
	}
	if lost == nil {
		k.named, k.lostOthers = k.latest, nil
	}
	return lost
}

// NotSaved remembers the other washes that wait for the save that failed.
func (k *keeper) NotSaved(others []*stock.Kept) { k.lostOthers = others }

// also is an error and one more, in a line; nil where neither is.
func also(err, more error) error {
	switch {
	case err == nil:
		return more
	case more == nil:
		return err
	}
	return fmt.Errorf("%w; %w", err, more)
}

// saveWash writes a wash and lets the trips know of it.
func (k *keeper) saveWash(file string, w model.Wash) error {
	err := k.store.SaveWash(file, w)
	if err == nil && k.trips != nil {
		k.trips.saved(file, w)
	}
	return err
}

// TakeUp lets later saves be of another wash, whose name is another wash's and no new one.
func (k *keeper) TakeUp(next *stock.Kept) (away string) {
	away, k.file = k.file, next.File
	k.latest = k.latest.InHand(next.Wash.Name)
	k.named = k.latest
	return away
}

// Save writes what has changed. The wash gets a file of its own the first time.
func (k *keeper) Save(rig model.Rig, places model.Places, wash model.Wash) error {
	k.lost = &work{rig: rig, places: places, wash: wash}
	k.book.own()
	if k.file == "" {
		k.file = k.store.NewWashFile(wash.Name)
	}
	for _, save := range []func() error{
		func() error { return k.store.SavePlaces(places) },
		func() error { return k.store.SaveRig(rig) },
		func() error { return k.saveWash(k.file, wash) },
	} {
		if err := save(); err != nil {
			return err
		}
	}
	k.latest, k.lost = namedOf(rig, places, wash), nil
	return nil
}

// Adopt writes the built-in example out as the user's own, on the coming days.
func (k *keeper) Adopt() (was, is model.Date, err error) {
	today := k.book.today()
	written, err := store.WriteExampleOn(k.store.Dir(), today)
	if err != nil {
		return was, is, err
	}
	if len(written) == 0 {
		return was, is, errors.New("the files are there already; leave and start again to work on them")
	}
	lib, faults := k.store.Load()
	if fault.HasErrors(faults) || len(lib.Washes) == 0 {
		return was, is, fmt.Errorf("the example was written to %s but does not read well; run washeve check on its files", k.store.Dir())
	}
	k.file = lib.Washes[0].File
	k.book.own()
	k.named = namedOf(lib.Rig, lib.Places, lib.Washes[0].Wash)
	k.latest = k.named
	if k.adopted != nil {
		k.adopted(lib)
	}
	was, is = store.ExampleOn(today)
	return was, lib.Washes[0].Wash.Date.Or(is), nil // an earlier call may have written it, on another day
}

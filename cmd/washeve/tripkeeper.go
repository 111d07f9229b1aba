package main

import (
	"slices"

	"washeve/model"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/ui/history"
	"washeve/ui/trip"
)

// tripKeeper puts the trips of the screens into the data folder.
type tripKeeper struct {
	*keeper
	today func() model.Date
	lib   store.Library
	trips []model.Trip
	files []string // "" for one that is not written yet

	borrowed bool             // they are the built-in example's, which nobody has made theirs
	own      []store.WashFile // what was saved while they are

	left *trip.Left // the screen; nil where it was not, or other trips are at hand now
}

// Left is how the screen of these trips was left.
func (k *tripKeeper) Left() (trip.Left, bool) {
	if k.left == nil {
		return trip.Left{}, false
	}
	return *k.left, true
}

// Leave keeps how it is left.
func (k *tripKeeper) Leave(left trip.Left) { k.left = &left }

// take goes on from what a library holds.
func (k *tripKeeper) take(lib store.Library) {
	k.lib, k.trips, k.files, k.left = lib, nil, nil, nil
	for _, t := range lib.Trips {
		k.trips, k.files = append(k.trips, t.Trip), append(k.files, t.File)
	}
}

// adopt goes on from what is the person's own now.
func (k *tripKeeper) adopt(lib store.Library) {
	k.take(lib)
	k.borrowed = false
}

// Trips are those at hand. A rig that was started from nothing has none of the
// example's.
func (k *tripKeeper) Trips(example bool) (all []model.Trip, next int) {
	if !example && k.borrowed {
		k.adopt(store.Library{Washes: k.own})
	}
	return append([]model.Trip(nil), k.trips...), k.lib.NextTrip(k.today())
}

// Keep writes what has changed; a new trip gets a file of its own. That of the
// example stays in memory.
func (k *tripKeeper) Keep(index int, t model.Trip) error {
	if index >= len(k.trips) {
		k.trips, k.files = append(k.trips, t), append(k.files, "")
		index = len(k.trips) - 1
	}
	k.trips[index] = t
	if k.borrowed {
		return nil
	}
	if k.files[index] == "" {
		k.files[index] = k.store.NewTripFile(t.Name)
	}
	return k.store.SaveTrip(k.files[index], t)
}

// Drop takes the last trip away, and its file where it has one.
func (k *tripKeeper) Drop() error {
	last := len(k.trips) - 1
	if last < 0 {
		return nil
	}
	if file := k.files[last]; file != "" && !k.borrowed {
		if err := k.store.DropTrip(file); err != nil {
			return err
		}
	}
	k.trips, k.files = k.trips[:last:last], k.files[:last:last]
	return nil
}

// saved lets what is like a wash be like it as it was saved.
func (k *tripKeeper) saved(file string, w model.Wash) {
	all := &k.lib.Washes
	if k.borrowed {
		all = &k.own
	}
	*all = slices.Clone(*all)
	if i := slices.IndexFunc(*all, func(f store.WashFile) bool { return f.File == file }); i >= 0 {
		(*all)[i].Wash = w
		return
	}
	*all = append(*all, store.WashFile{File: file, Wash: w})
}

// follow lets the trips name things by their new names, and writes those that do. The
// example's are left alone.
func (k *tripKeeper) follow(renames []stock.Rename) error {
	if k.borrowed || len(renames) == 0 {
		return nil
	}
	for i := range k.trips {
		t, changed := stock.Follow(k.trips[i], renames)
		if !changed {
			continue
		}
		if k.files[i] != "" {
			if err := k.store.SaveTrip(k.files[i], t); err != nil {
				return err
			}
		}
		k.trips[i] = t
	}
	if k.left != nil { // what is undone names them so as well
		k.left.History = history.Map(k.left.History, func(v trip.Version) trip.Version {
			v.Trip, _ = stock.Follow(v.Trip, renames)
			return v
		})
	}
	return nil
}

// Like finds a wash of the data folder.
func (k *tripKeeper) Like(name string) (model.Wash, bool) { return k.lib.WashLike(name) }

// Washes are those of the data folder.
func (k *tripKeeper) Washes() []model.Wash { return k.lib.Planned() }

// Names lists the washes of the data folder, each once.
func (k *tripKeeper) Names() []string { return k.lib.WashChoices() }

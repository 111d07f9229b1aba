package store

import (
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/store/fault"
	"washeve/model/store/safefile"
)

// TripFolder is the folder of the trips inside the data folder; the faults of a trip
// name its file by it, with a slash.
const TripFolder = "trips"

// A TripFile is a trip and the name of its file in the folder trips.
type TripFile struct {
	File string
	Trip model.Trip
}

// WashNames lists what a wash of a trip may be like: the washes by their names and
// by their files, without the ending.
func (lib *Library) WashNames() []string {
	names := []string{}
	for _, w := range lib.Washes {
		if w.Wash.Name != "" {
			names = append(names, w.Wash.Name)
		}
	}
	for _, w := range lib.Washes {
		names = append(names, stem(w.File))
	}
	return names
}

// WashChoices lists each wash once, by what [Library.WashLike] finds it by: its name, or its
// file where it has none or another has the same.
func (lib *Library) WashChoices() []string {
	var names []string
	for _, w := range lib.Washes {
		name := w.Wash.Name
		if name == "" || model.Find(names, name) >= 0 {
			name = stem(w.File)
		}
		if model.Find(names, name) < 0 {
			names = append(names, name)
		}
	}
	return names
}

// Planned lists the washes, the latest day first.
func (lib *Library) Planned() []model.Wash {
	washes := make([]model.Wash, len(lib.Washes))
	for i := range lib.Washes {
		washes[i] = lib.Washes[i].Wash
	}
	return washes
}

func stem(file string) string { return strings.TrimSuffix(file, ".toml") }

// WashLike finds the wash that a trip calls so.
func (lib *Library) WashLike(name string) (model.Wash, bool) {
	for _, called := range []func(WashFile) string{
		func(w WashFile) string { return w.Wash.Name },
		func(w WashFile) string { return stem(w.File) },
	} {
		for _, w := range lib.Washes {
			if name != "" && strings.EqualFold(called(w), name) {
				return w.Wash, true
			}
		}
	}
	return model.Wash{}, false
}

func tripSchema(t *model.Trip) schema {
	washes := list("wash", &t.Washes)
	plain := washes.all
	washes.all = func() []item {
		all := plain()
		for i := range all {
			all[i].under = list("wash.stage", &t.Washes[i].Stages).all()
		}
		return all
	}
	stages := section{name: "wash.stage", add: func() []model.Field {
		if len(t.Washes) == 0 {
			return nil
		}
		return list("wash.stage", &t.Washes[len(t.Washes)-1].Stages).add()
	}}
	return schema{title: "a trip", top: t.Fields(), sections: []section{
		list("stop", &t.Stops), washes, stages, list("change", &t.Changes),
	}}
}

// trip reads a trip and gives every fault in it.
func (d *document) trip(t *model.Trip, known names) []fault.Fault {
	return d.all(tripSchema(t), func() []model.Fault { return t.Faults(known.rig, known.places, known.washes) })
}

// trips reads the folder of the trips, the next one first: that is the one whose
// last day comes first.
func (s *Store) trips(known names) ([]TripFile, []fault.Fault) {
	entries, err := os.ReadDir(filepath.Join(s.dir, TripFolder))
	if err != nil {
		if os.IsNotExist(err) {
			return nil, nil
		}
		return nil, []fault.Fault{{File: TripFolder, Problem: whyNot(err)}}
	}
	var all []TripFile
	var faults []fault.Fault
	for _, entry := range entries {
		name := entry.Name()
		if !strings.HasSuffix(name, ".toml") || strings.HasPrefix(name, ".") {
			continue
		}
		d, more := s.read(filepath.Join(TripFolder, name))
		faults = append(faults, more...)
		if d == nil {
			continue
		}
		trip := TripFile{File: name}
		faults = append(faults, d.trip(&trip.Trip, known)...)
		all = append(all, trip)
	}
	sort.SliceStable(all, func(i, j int) bool { return lastDay(&all[i].Trip) < lastDay(&all[j].Trip) })
	return all, faults
}

// lastDay is the last day of a trip, as text that sorts; one without days is last.
func lastDay(t *model.Trip) string {
	if _, last, known := t.Days(); known {
		return last.String()
	}
	return "~"
}

// SaveTrip does for a file of the folder trips, which may be a new one, what
// [Store.SaveRig] does for the rig.
func (s *Store) SaveTrip(file string, t model.Trip) error {
	if err := fileName(file, "a trip file", "june.toml"); err != nil {
		return err
	}
	return save(s, filepath.Join(TripFolder, file), &t, tripSchema)
}

// DropTrip takes a file of the folder trips away, where it is still as it was read or
// saved here. One that was never written is none. Errors are [ErrChanged], or tell why the
// file could not be taken away.
func (s *Store) DropTrip(file string) error {
	if err := fileName(file, "a trip file", "june.toml"); err != nil {
		return err
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	name := filepath.Join(TripFolder, file)
	if s.seen[name] == nil {
		return nil
	}
	return locked(s.dir, func() error {
		if err := s.unchanged(name); err != nil {
			return err
		}
		path := filepath.Join(s.dir, name)
		if err := os.Remove(path); err != nil {
			return fmt.Errorf("%s was not taken away: %w; it is as it was%s", path, err, safefile.Remedy(err, "undo again"))
		}
		delete(s.seen, name)
		delete(s.made, name)
		delete(s.before, name)
		return safefile.SyncFolder(filepath.Dir(path))
	})
}

// NewTripFile gives a free file name for a trip that is called name.
func (s *Store) NewTripFile(name string) string { return s.free(TripFolder, name, "trip") }

// ReadTrip reads one trip file anywhere, its names looked up in the library.
func ReadTrip(path string, lib Library) (model.Trip, []fault.Fault) {
	var trip model.Trip
	data, line, problem := readFile(path)
	if problem != "" {
		return trip, []fault.Fault{{File: path, Line: line, Problem: problem}}
	}
	known := names{rig: &lib.Rig, places: append(model.Places{}, lib.Places...), washes: lib.WashNames()}
	return trip, parse(path, data).trip(&trip, known)
}

// NextTrip is the index of the trip that comes next or is under way: the first whose
// last day is not over, else the last of all; -1 where there is none.
func (lib *Library) NextTrip(today model.Date) int {
	for i := range lib.Trips {
		if _, last, known := lib.Trips[i].Trip.Days(); !known || last.Compare(today) >= 0 {
			return i
		}
	}
	return len(lib.Trips) - 1
}

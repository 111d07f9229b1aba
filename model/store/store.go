// Package store keeps the nouns in plain TOML files that a person can edit:
// rig.toml, places.toml, washes/*.toml and trips/*.toml in one folder. It reads them with the
// line of every fault, changes single values without touching the rest, and
// writes so that a crash or a full disk leaves the old file or the new one.
package store

import (
	"cmp"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"sync"
	"time"

	"github.com/adrg/xdg"

	"washeve/model"
	"washeve/model/store/fault"
)

const (
	rigFile    = "rig.toml"
	placesFile = "places.toml"
	washFolder = "washes"
	logFile    = "log.toml"

	defaultsSection = "defaults"
)

// Locate gives the data folder: the flag, else what the environment says, else
// the folder for the user's data.
func Locate(flag, env string) string {
	return cmp.Or(flag, env, filepath.Join(xdg.DataHome, "washeve"))
}

// A Store is a data folder. It remembers the files as it last read or wrote
// them, so that a save tells when somebody else has changed one meanwhile. It
// may be used by several goroutines.
type Store struct {
	dir  string
	mu   sync.Mutex
	seen map[string][]byte // by file, relative to dir; what it held, nil where it was not there

	stamps map[string]stamp // by file; see [Store.Changed]

	before map[string][][]byte // by file; what it held before items were taken out or put in
	made   map[string]ours     // by file; what the program put in

	beside bool     // see [Store.Beside]
	copies []string // that were made so
}

// Open makes a store of a folder, which need not be there yet.
func Open(dir string) *Store {
	return &Store{dir: dir, seen: map[string][]byte{}, stamps: map[string]stamp{}, before: map[string][][]byte{}, made: map[string]ours{}}
}

// Dir is the data folder.
func (s *Store) Dir() string { return s.dir }

// A Library is all that a person has written down.
type Library struct {
	Rig    model.Rig
	Places model.Places
	Washes []WashFile // the latest day first
	Trips  []TripFile // the one that ends first, first
	HasRig bool       // there is a rig.toml, faulty or not
}

// A WashFile is a wash, the name of its file in the folder washes, and when that was
// written last.
type WashFile struct {
	File    string
	Wash    model.Wash
	Written time.Time
}

// NextWash is the index of the wash to go on with: the next one from today on, which is
// coming then, else the one written last; -1 where there is none. Of those of one day it
// is the one written last.
func (lib *Library) NextWash(today model.Date) (at int, coming bool) {
	at = -1
	for i := range lib.Washes {
		w := &lib.Washes[i]
		day, given := w.Wash.Date.Get()
		comes := given && day.Compare(today) >= 0
		switch {
		case at < 0 || comes && !coming:
		case comes != coming:
			continue
		case comes:
			if sooner := day.Compare(lib.Washes[at].Wash.Date.Or(day)); sooner > 0 || sooner == 0 && !w.Written.After(lib.Washes[at].Written) {
				continue
			}
		case !w.Written.After(lib.Washes[at].Written):
			continue
		}
		at, coming = i, comes
	}
	return at, coming
}

// Load reads the folder. What could be read is in the library whatever the
// faults; files that are not there are no fault. Each fault names its file.
func (s *Store) Load() (Library, []fault.Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	clear(s.seen)
	clear(s.stamps)
	clear(s.before)
	clear(s.made)
	var lib Library
	placesDoc, placesFaults := s.read(placesFile)
	rigDoc, rigFaults := s.read(rigFile)
	lib.HasRig = rigDoc != nil || len(rigFaults) > 0
	names := names{rig: &lib.Rig, places: model.Places{}}
	if placesDoc != nil {
		placesFaults = placesDoc.places(&lib.Places)
		names.places = append(names.places, lib.Places...)
	}
	if len(placesFaults) > 0 && len(lib.Places) == 0 {
		names.places = nil
	}
	if rigDoc != nil {
		rigFaults = rigDoc.rig(&lib.Rig, names)
	}
	if len(rigFaults) > 0 && (rigDoc == nil || rigDoc.refused) {
		names.rig = nil
	}
	washes, washFaults := s.washes(names)
	lib.Washes = washes
	if len(washFaults) == 0 || len(washes) > 0 {
		names.washes = lib.WashNames()
	}
	trips, tripFaults := s.trips(names)
	lib.Trips = trips
	return lib, slices.Concat(rigFaults, placesFaults, washFaults, tripFaults)
}

// names is where a file's names are looked up; in what is nil they are not,
// because it is unknown.
type names struct {
	rig    *model.Rig
	places model.Places
	washes []string
}

// read gives a document, or nil where the file is not there or unreadable.
func (s *Store) read(file string) (*document, []fault.Fault) {
	path, shown := filepath.Join(s.dir, file), filepath.ToSlash(file)
	if _, err := os.Lstat(path); os.IsNotExist(err) {
		return nil, nil
	}
	data, line, problem := readFile(path)
	if problem != "" {
		return nil, []fault.Fault{{File: shown, Line: line, Problem: problem}}
	}
	s.seen[file] = data
	return parse(shown, data), nil
}

// washes reads the folder of the washes.
func (s *Store) washes(known names) ([]WashFile, []fault.Fault) {
	entries, err := os.ReadDir(filepath.Join(s.dir, washFolder))
	if err != nil {
		if os.IsNotExist(err) {
			return nil, nil
		}
		return nil, []fault.Fault{{File: washFolder, Problem: whyNot(err)}}
	}
	var all []WashFile
	var faults []fault.Fault
	days := map[string]string{}
	for _, entry := range entries {
		name := entry.Name()
		if !strings.HasSuffix(name, ".toml") || strings.HasPrefix(name, ".") {
			continue
		}
		d, more := s.read(filepath.Join(washFolder, name))
		faults = append(faults, more...)
		if d == nil {
			continue
		}
		wash := WashFile{File: name}
		if info, err := entry.Info(); err == nil {
			wash.Written = info.ModTime()
		}
		faults = append(faults, d.wash(&wash.Wash, known)...)
		days[name] = dayOf(&wash)
		all = append(all, wash)
	}
	sort.SliceStable(all, func(i, j int) bool { return days[all[i].File] > days[all[j].File] })
	return all, faults
}

// dayOf is the day of a wash or, where it has none, the day it was written.
func dayOf(w *WashFile) string {
	if date, given := w.Wash.Date.Get(); given {
		return date.String()
	}
	return w.Written.Format(time.DateOnly)
}

// rig reads a rig and gives every fault in it.
func (d *document) rig(r *model.Rig, known names) []fault.Fault {
	var places []string
	if known.places != nil {
		places = known.places.Names()
	}
	return d.all(rigSchema(r), func() []model.Fault { return r.Faults(places) })
}

// places reads places and gives every fault in them.
func (d *document) places(ps *model.Places) []fault.Fault {
	return d.all(placesSchema(ps), func() []model.Fault { return ps.Faults() })
}

// wash reads a wash and gives every fault in it.
func (d *document) wash(w *model.Wash, known names) []fault.Fault {
	return d.all(washSchema(w), func() []model.Fault { return w.Faults(known.rig, known.places) })
}

func (d *document) all(s schema, cross func() []model.Fault) []fault.Fault {
	dec := d.decode(s)
	if !d.refused {
		dec.cross(cross())
	}
	if d.broken {
		// What is a section or a key is not known before these lines are mended.
		d.faults = slices.DeleteFunc(d.faults, func(f fault.Fault) bool { return f.Severity.Stands() })
	}
	return byLine(d.faults)
}

// byLine puts faults in the order of the file, the first found first.
func byLine(faults []fault.Fault) []fault.Fault {
	sort.SliceStable(faults, func(i, j int) bool { return faults[i].Line < faults[j].Line })
	return faults
}

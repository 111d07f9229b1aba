package store

import (
	"path/filepath"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/store/fault"
	"washeve/model/store/journal"
)

// cross turns what the nouns find wrong among themselves into faults with
// lines. What only follows from an error already told is left out.
func (d *decoding) cross(faults []model.Fault) {
	for _, f := range faults {
		line, key := 1, f.Key
		if tables := d.items[f.Section]; f.Index < len(tables) {
			t := tables[f.Index]
			if follows(f, t) {
				continue
			}
			line = d.faceOf(t, f.Face).line
			if e := t.entry(f.Key); e != nil {
				line = e.line
			}
		}
		severity := fault.Error
		if f.Lacks {
			severity = fault.Lack
		}
		d.fault(line, key, severity, "%s", f.Problem)
	}
}

// faceOf gives the table of a vehicle's face, counted from 1; the vehicle's own
// where none is meant.
func (d *decoding) faceOf(vehicle *table, face int) *table {
	at := slices.Index(d.tables, vehicle)
	for _, t := range d.tables[at+1:] {
		if face == 0 || t.name == vehicle.name {
			break
		}
		if face--; face == 0 && t.name == vehicle.name+".face" {
			return t
		}
	}
	return vehicle
}

// follows tells whether a fault would go away with an error already told: it
// is about a value that could not be read, or misses it.
func follows(f model.Fault, t *table) bool {
	for _, e := range t.entries {
		if e.failed && (e.key == f.Key || strings.Contains(" "+f.Problem, " "+e.key+", which") || strings.Contains(" "+f.Problem, " "+e.key+" is missing")) {
			return true
		}
	}
	return false
}

// Check reads the file at path and gives every fault in it, changing nothing.
// A rig, places, wash, trip, log or wash under way is known by the file's name and folder or, failing
// that, by its sections. Names that it refers to are looked up in the files
// beside it or in the folder above, where there are such.
func Check(path string) []fault.Fault {
	if strings.ToLower(filepath.Base(path)) == logFile {
		return checkLog(path)
	}
	data, line, problem := readFile(path)
	if problem != "" {
		return []fault.Fault{{File: path, Line: line, Problem: problem}}
	}
	d := parse(path, data)
	if faults, known := d.checked(path); known {
		return byLine(append(faults, d.asides...))
	}
	if slices.ContainsFunc(d.tables, func(t *table) bool { return t.name == "entry" }) {
		return checkLog(path)
	}
	unknown := fault.Fault{File: path, Problem: "is no file of this program: it has neither the name nor a section of a rig ([[vehicle]], [[bed]]), places ([[place]]), a wash ([[stage]]), a trip ([[stop]]) or a log ([[entry]])"}
	return append(d.faults, unknown)
}

// checked reads the document as what it is; false where it is no file of ours.
func (d *document) checked(path string) (faults []fault.Fault, known bool) {
	switch kindOf(path, d) {
	case rigFile:
		var rig model.Rig
		return d.rig(&rig, names{places: neighbours(path).places}), true
	case placesFile:
		var places model.Places
		return d.places(&places), true
	case washFolder:
		var wash model.Wash
		return d.wash(&wash, neighbours(path)), true
	case TripFolder:
		var trip model.Trip
		return d.trip(&trip, neighbours(path)), true
	case underwayFile:
		var u model.Underway
		return d.underway(&u), true
	}
	return nil, false
}

// checkLog gives every fault in a log.
func checkLog(path string) []fault.Fault {
	faults := journal.Check(path)
	for i := range faults {
		faults[i].File = path
	}
	return faults
}

// kindOf tells rigFile, placesFile, washFolder, TripFolder, underwayFile or "".
func kindOf(path string, d *document) string {
	base := strings.ToLower(filepath.Base(path))
	full, err := filepath.Abs(path)
	switch {
	case base == rigFile || base == placesFile || base == underwayFile:
		return base
	case err == nil && filepath.Base(filepath.Dir(full)) == washFolder:
		return washFolder
	case err == nil && filepath.Base(filepath.Dir(full)) == TripFolder:
		return TripFolder
	}
	var (
		rig    model.Rig
		places model.Places
		wash   model.Wash
		trip   model.Trip
		day    model.Underway
	)
	for _, t := range d.tables {
		switch {
		case underwaySchema(&day).section(t.name) != nil:
			return underwayFile
		case tripSchema(&trip).section(t.name) != nil:
			return TripFolder
		case washSchema(&wash).section(t.name) != nil:
			return washFolder
		case placesSchema(&places).section(t.name) != nil:
			return placesFile
		case rigSchema(&rig).section(t.name) != nil:
			return rigFile
		}
	}
	return ""
}

// HoldsTrip tells that the file at path is a trip's: by its folder or, failing that, by
// its sections. One that cannot be read is none.
func HoldsTrip(path string) bool {
	data, _, problem := readFile(path)
	return problem == "" && kindOf(path, parse(path, data)) == TripFolder
}

// neighbours gives the rig and the places beside path or in the folder above,
// where they are readable.
func neighbours(path string) names {
	var known names
	if d := neighbour(path, rigFile); d != nil {
		known.rig = new(model.Rig)
		d.rig(known.rig, names{})
	}
	if d := neighbour(path, placesFile); d != nil {
		known.places = model.Places{}
		d.places(&known.places)
	}
	known.washes = washesBeside(path)
	return known
}

// washesBeside names the washes in the folder beside that of a trip; nil where
// there is no such folder.
func washesBeside(path string) []string {
	for _, dir := range []string{filepath.Dir(path), filepath.Join(filepath.Dir(path), "..")} {
		s := Open(dir)
		if washes, faults := s.washes(names{}); len(washes) > 0 || len(faults) > 0 {
			lib := Library{Washes: washes}
			return lib.WashNames()
		}
	}
	return nil
}

func neighbour(path, name string) *document {
	folder := filepath.Dir(path)
	for _, dir := range []string{folder, filepath.Join(folder, "..")} {
		full := filepath.Join(dir, name)
		if data, _, problem := readFile(full); problem == "" {
			return parse(full, data)
		}
	}
	return nil
}

// ReadWash reads one wash file anywhere, its names looked up in the library.
func ReadWash(path string, lib Library) (model.Wash, []fault.Fault) {
	var wash model.Wash
	data, line, problem := readFile(path)
	if problem != "" {
		return wash, []fault.Fault{{File: path, Line: line, Problem: problem}}
	}
	faults := parse(path, data).wash(&wash, names{rig: &lib.Rig, places: append(model.Places{}, lib.Places...)})
	return wash, faults
}

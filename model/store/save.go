package store

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"unicode"

	"washeve/model"
	"washeve/model/store/fault"
)

// ErrChanged says that a file is no longer as it was read. Nothing was written;
// load the folder again and repeat the change.
var ErrChanged = errors.New("was changed on the disk since it was read, by an editor or another program; nothing was written over")

// NeedsRewrite says that a save would lose something a person wrote. Ask, then
// call Rewrite.
type NeedsRewrite struct {
	File   string
	Reason string
	only   bool // nothing is lost but items that are taken out
	again  func() (backup string, err error)
}

func (e *NeedsRewrite) Error() string {
	return fmt.Sprintf("%s was not saved yet: %s; it can be saved with a backup of the file as it is", e.File, e.Reason)
}

// TakesOut tells that nothing is lost but items that are taken out: every other
// byte stays.
func (e *NeedsRewrite) TakesOut() bool { return e.only }

// takenOut ends the reason where items are taken out.
const takenOut = " would be taken out of it"

// Rewrite keeps a copy of the file as it is, under the name that is given back,
// and then saves.
func (e *NeedsRewrite) Rewrite() (backup string, err error) { return e.again() }

// SaveRig writes what differs from rig.toml as it was last read or saved, and
// leaves every other byte of it. Errors are [ErrChanged], [*NeedsRewrite], or
// tell why the file could not be written; it is then as it was.
func (s *Store) SaveRig(r model.Rig) error { return save(s, rigFile, &r, rigSchema) }

// SavePlaces does for places.toml what SaveRig does for the rig.
func (s *Store) SavePlaces(ps model.Places) error { return save(s, placesFile, &ps, placesSchema) }

// SaveWash does it for a file of the folder washes, which may be a new one.
func (s *Store) SaveWash(file string, w model.Wash) error {
	if err := fileName(file, "a wash file", "friday.toml"); err != nil {
		return err
	}
	return save(s, filepath.Join(washFolder, file), &w, washSchema)
}

// fileName tells what is wrong with the name of a file in one of the folders.
func fileName(file, what, example string) error {
	if file == "" || file != filepath.Base(file) || !strings.HasSuffix(file, ".toml") || file[0] == '.' {
		return fmt.Errorf("%q is no name for %s; it is like %s", file, what, example)
	}
	return nil
}

// NewWashFile gives a free file name for a wash that is called name.
func (s *Store) NewWashFile(name string) string { return s.free(washFolder, name, "wash") }

// free is a name that no file of a folder has yet, made of the words of a name or,
// where it has none, of the fallback.
func (s *Store) free(folder, name, fallback string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	})
	stem := strings.Join(words, "-")
	if stem == "" {
		stem = fallback
	}
	file := stem + ".toml"
	for n := 2; ; n++ {
		if _, err := os.Lstat(filepath.Join(s.dir, folder, file)); err != nil {
			return file
		}
		file = fmt.Sprintf("%s-%d.toml", stem, n)
	}
}

// save writes a noun to its file by the smallest edits.
func save[T any](s *Store, file string, noun *T, of func(*T) schema) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	shown := filepath.ToSlash(file)
	old := s.seen[file]
	if old == nil {
		err := s.put(file, whole(of(noun)))
		if err == nil && !s.beside {
			s.own(file, allBlocks(of(noun)))
		}
		return err
	}
	data, by, reason, err := edited(shown, old, noun, of, s.made[file])
	switch {
	case err != nil:
		return fmt.Errorf("nothing was saved: %w", err)
	case reason != "" && !s.beside:
		return &NeedsRewrite{File: shown, Reason: reason, only: strings.HasSuffix(reason, takenOut), again: func() (string, error) {
			s.mu.Lock()
			defer s.mu.Unlock()
			if !bytes.Equal(s.seen[file], old) {
				return "", fmt.Errorf("%s %w", shown, ErrChanged)
			}
			return s.putWithBackup(file, data)
		}}
	case bytes.Equal(data, old):
		return nil
	}
	if err := s.put(file, asItWas(s, file, data, noun, of)); err != nil || s.beside {
		return err
	}
	if filepath.Dir(file) == TripFolder { // its lines are planned and moved: a changed one is the program's still
		s.own(file, by.stillOwn(s.seen[file], of(new(T))))
	}
	s.add(file, by.made, old)
	return nil
}

// edited gives the bytes of a file that hold the noun, and the change that made them, an
// empty one where all of it is written anew. The reason, where not "", tells what a person
// wrote that is lost by it.
func edited[T any](file string, old []byte, noun *T, of func(*T) schema, own ours) (data []byte, by *change, reason string, err error) {
	d := parse(file, old)
	if len(d.faults) > 0 {
		return whole(of(noun)), &change{}, "part of it cannot be read (" + d.faults[0].Error() + ")", nil
	}
	var before T
	dec := d.decode(of(&before))
	if d.refused {
		return nil, nil, "", d.faults[len(d.faults)-1]
	}
	c := changes(dec, of(&before), of(noun), own)
	data = c.apply()
	switch {
	case !holds(data, noun, of):
		return whole(of(noun)), &change{}, "it is laid out in a way that cannot be changed in place", nil
	case len(c.gone) > 0:
		reason = strings.Join(c.gone, ", ") + takenOut
	}
	return data, c, reason, nil
}

// holds tells whether a file of these bytes reads as the noun.
func holds[T any](data []byte, noun *T, of func(*T) schema) bool {
	var read T
	parse("", data).decode(of(&read))
	got, want := of(&read), of(noun)
	return sameFields(got.top, want.top) && slices.EqualFunc(got.items(), want.items(), sameItem)
}

func sameItem(a, b item) bool {
	return a.section == b.section && sameFields(a.fields, b.fields) && slices.EqualFunc(a.under, b.under, sameItem)
}

func sameFields(a, b []model.Field) bool {
	return slices.EqualFunc(a, b, func(f, g model.Field) bool { return f.Text() == g.Text() })
}

// put writes the file if it is still as it was seen.
func (s *Store) put(file string, data []byte) error {
	return locked(s.dir, func() error {
		if s.beside {
			copied, err := s.copyBeside(file, data)
			if err == nil {
				s.copies = append(s.copies, filepath.ToSlash(copied))
			}
			return err
		}
		if err := s.unchanged(file); err != nil {
			return err
		}
		return s.write(file, data)
	})
}

// putWithBackup keeps the file as it is beside it, and then writes it.
func (s *Store) putWithBackup(file string, data []byte) (backup string, err error) {
	err = locked(s.dir, func() error {
		if err := s.unchanged(file); err != nil {
			return err
		}
		if backup, err = s.copyBeside(file, s.seen[file]); err != nil {
			return err
		}
		s.remember(file)
		return s.write(file, data)
	})
	return backup, err
}

func (s *Store) write(file string, data []byte) error {
	err := replace(filepath.Join(s.dir, file), data)
	if err == nil {
		s.seen[file] = data
	}
	return err
}

// unchanged compares the file with what was last seen of it.
func (s *Store) unchanged(file string) error {
	path := filepath.Join(s.dir, file)
	seen, known := s.seen[file]
	if _, err := os.Lstat(path); os.IsNotExist(err) && !known {
		return nil
	}
	data, line, problem := readFile(path)
	if !known && problem != "" {
		return fmt.Errorf("nothing was saved: %w", fault.Fault{File: filepath.ToSlash(file), Line: line, Problem: problem})
	}
	if !known || problem != "" || !bytes.Equal(data, seen) {
		return fmt.Errorf("%s %w", filepath.ToSlash(file), ErrChanged)
	}
	return nil
}

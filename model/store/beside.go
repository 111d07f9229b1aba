package store

import (
	"bytes"
	"fmt"
	"maps"
	"path/filepath"
	"slices"
)

// Beside gives a store by which the same saves write no file but copies beside the
// files: what each would hold, where that is not what it held when it was read. So
// nothing is lost of work that cannot be saved since a file has changed meanwhile.
func (s *Store) Beside() *Store {
	s.mu.Lock()
	defer s.mu.Unlock()
	beside := Open(s.dir)
	beside.seen, beside.beside = maps.Clone(s.seen), true
	return beside
}

// Copies are the copies that were made, by their names in the data folder, with a slash.
func (s *Store) Copies() []string { return slices.Clone(s.copies) }

// copyBeside keeps data beside a file, under a name that is free or holds the same
// already: no copy beside a copy. The folder is locked.
func (s *Store) copyBeside(file string, data []byte) (name string, err error) {
	for n, made := 1, false; !made; n++ {
		name = fmt.Sprintf("%s.bak-%d", file, n)
		path := filepath.Join(s.dir, name)
		if there, _, problem := readFile(path); problem == "" && bytes.Equal(there, data) {
			break
		}
		if made, err = create(path, data); err != nil {
			return name, err
		}
	}
	return name, nil
}

// Differs lists the files, with a slash, that two stores of a folder have not read or
// saved alike, in the order of their names.
func (s *Store) Differs(other *Store) []string {
	s.mu.Lock()
	defer s.mu.Unlock()
	var files []string
	for _, one := range []map[string][]byte{s.seen, other.seen} {
		for file := range one {
			if was, is := s.seen[file], other.seen[file]; !bytes.Equal(was, is) || (was == nil) != (is == nil) {
				files = append(files, filepath.ToSlash(file))
			}
		}
	}
	slices.Sort(files)
	return slices.Compact(files)
}

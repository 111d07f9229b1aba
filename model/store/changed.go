package store

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"time"
)

// A stamp is by what a file is taken for unchanged without being read; the zero stamp is
// of none.
type stamp struct {
	size int64
	time time.Time
}

func stampOf(path string) stamp {
	info, err := os.Stat(path)
	if err != nil {
		return stamp{}
	}
	return stamp{info.Size(), info.ModTime()}
}

// Changed lists the files, with a slash, that are no longer as this store has read or
// written them, in the order of their names. One whose size and time are those at which
// it was found unchanged is not read again.
func (s *Store) Changed() []string {
	s.mu.Lock()
	defer s.mu.Unlock()
	var files []string
	for file, seen := range s.seen {
		path := filepath.Join(s.dir, file)
		now := stampOf(path)
		if looked, before := s.stamps[file]; before && looked == now {
			continue
		}
		data, _, problem := readFile(path)
		switch {
		case now == stamp{} && seen == nil:
		case problem != "" || !bytes.Equal(data, seen):
			files = append(files, filepath.ToSlash(file))
			continue
		}
		s.stamps[file] = now
	}
	slices.Sort(files)
	return files
}

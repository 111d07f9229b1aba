package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"washeve/model"
	"washeve/model/store/fault"
	"washeve/model/store/safefile"
)

const underwayFile = "underway.toml"

func underwaySchema(u *model.Underway) schema {
	return schema{title: underwayFile, top: u.Fields(), sections: []section{list("step", &u.Steps), list("deed", &u.Deeds)}}
}

// Underway reads the wash that is being done. There is none where the file is not
// there. Faults mean that it cannot be gone on with; the file is then left as it
// is.
func (s *Store) Underway() (u model.Underway, there bool, faults []fault.Fault) {
	s.mu.Lock()
	defer s.mu.Unlock()
	d, faults := s.read(underwayFile)
	if d == nil {
		return model.Underway{}, len(faults) > 0, faults
	}
	return u, true, d.underway(&u)
}

// underway reads a wash that is being done and gives every fault in it.
func (d *document) underway(u *model.Underway) []fault.Fault {
	return d.all(underwaySchema(u), func() []model.Fault { return u.Faults() })
}

// SaveUnderway writes how the wash stands, in place of what was there. Errors are
// [ErrChanged] where another program goes on with it too, or tell why it could not
// be written.
func (s *Store) SaveUnderway(u model.Underway) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	data := whole(underwaySchema(&u))
	var back model.Underway
	if faults := parse(underwayFile, data).underway(&back); len(faults) > 0 {
		return fmt.Errorf("the wash under way was not saved, since it would not be read back: %w", faults[0])
	}
	return s.put(underwayFile, data)
}

// CloseUnderway takes the file of a wash that is over away.
func (s *Store) CloseUnderway() error { return s.leaveUnderway("") }

// SetUnderwayAside keeps the file under another name, which is given back: for one
// that cannot be read.
func (s *Store) SetUnderwayAside(now time.Time) (kept string, err error) {
	kept = fmt.Sprintf("underway-kept-%s.toml", now.Format("20060102-150405"))
	return kept, s.leaveUnderway(kept)
}

func (s *Store) leaveUnderway(to string) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	path := filepath.Join(s.dir, underwayFile)
	return locked(s.dir, func() error {
		var err error
		if to == "" {
			err = os.Remove(path)
		} else {
			err = os.Rename(path, filepath.Join(s.dir, to))
		}
		if err != nil && !errors.Is(err, os.ErrNotExist) {
			return notSaved(path, err)
		}
		delete(s.seen, underwayFile)
		return safefile.SyncFolder(s.dir)
	})
}

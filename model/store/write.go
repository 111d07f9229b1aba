package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"washeve/model/store/safefile"
)

const (
	lockFile = ".lock"
	lockWait = 5 * time.Second
)

// locked runs do while no other program writes in the folder, which is made
// where it is not there.
func locked(dir string, do func() error) error {
	if err := safefile.MakeFolder(dir); err != nil {
		return notSaved(dir, err)
	}
	unlock, err := safefile.Lock(filepath.Join(dir, lockFile), lockWait)
	switch {
	case errors.Is(err, safefile.ErrBusy):
		return fmt.Errorf("%s: nothing was saved: another program has been writing here for %v; close it and save again", dir, lockWait)
	case err != nil:
		return notSaved(dir, err)
	}
	return errors.Join(do(), unlock())
}

// replace puts data in the place of the file at path, or of the file that a link
// at path leads to. At any moment there is the old file or the new one, whole.
// The folder is locked.
func replace(path string, data []byte) error {
	target, err := targetOf(path)
	if err != nil {
		return notSaved(path, err)
	}
	safefile.Sweep(target)
	if err := safefile.Replace(target, safefile.Bytes(data)); err != nil {
		return notSaved(path, err)
	}
	return nil
}

// targetOf is the file to be written, which may have been protected by hand.
func targetOf(path string) (string, error) {
	target, err := safefile.Target(path)
	if err != nil {
		return "", err
	}
	if info, err := os.Stat(target); err == nil && info.Mode().Perm()&0o200 == 0 {
		return "", &fs.PathError{Op: "write", Path: target, Err: fs.ErrPermission}
	}
	return target, nil
}

// create writes a file that must not be there yet, and tells whether it did.
// The folder is locked.
func create(path string, data []byte) (made bool, err error) {
	if _, err := os.Lstat(path); !errors.Is(err, fs.ErrNotExist) {
		return false, err
	}
	return true, replace(path, data)
}

// notSaved tells what could not be written, why, and what to do.
func notSaved(path string, err error) error {
	if errors.Is(err, safefile.ErrMayNotLast) {
		return fmt.Errorf("%s %w", path, err)
	}
	return fmt.Errorf("%s was not saved: %w; what was there is as it was%s", path, err, safefile.Remedy(err, "save again"))
}

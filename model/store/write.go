package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"syscall"
	"time"

	"github.com/gofrs/flock"
)

const (
	fileMode   = 0o600
	folderMode = 0o700
	lockFile   = ".lock"
	lockWait   = 5 * time.Second
	lockRetry  = 20 * time.Millisecond
)

// locked runs do while no other program writes in the folder, which is made
// where it is not there.
func locked(dir string, do func() error) error {
	if err := makeFolder(dir); err != nil {
		return notSaved(dir, err)
	}
	lock := flock.New(filepath.Join(dir, lockFile), flock.SetPermissions(fileMode))
	ctx, cancel := context.WithTimeout(context.Background(), lockWait)
	defer cancel()
	got, err := lock.TryLockContext(ctx, lockRetry)
	switch {
	case errors.Is(err, context.DeadlineExceeded), err == nil && !got:
		return fmt.Errorf("%s: nothing was saved: another program has been writing here for %v; close it and save again", dir, lockWait)
	case err != nil:
		return notSaved(dir, err)
	}
	return errors.Join(do(), lock.Unlock())
}

// replace puts data in the place of the file at path, or of the file that a link
// at path leads to. At any moment there is the old file or the new one, whole.
func replace(path string, data []byte) error {
	target, err := targetOf(path)
	if err != nil {
		return notSaved(path, err)
	}
	temp, err := writeTemp(target, data)
	if err != nil {
		return notSaved(path, err)
	}
	if err := os.Rename(temp, target); err != nil {
		return notSaved(path, errors.Join(err, os.Remove(temp)))
	}
	if err := syncFolder(filepath.Dir(target)); err != nil {
		return fmt.Errorf("%s is written, but may not outlast a power cut: %w", path, err)
	}
	return nil
}

// targetOf follows links to the file to be written, and makes the folder of a
// file that is not there.
func targetOf(path string) (string, error) {
	target, err := filepath.EvalSymlinks(path)
	if errors.Is(err, fs.ErrNotExist) {
		if leads, linked := os.Readlink(path); linked == nil {
			return "", fmt.Errorf("it is a link to %s, which is not there", leads)
		}
		return path, makeFolder(filepath.Dir(path))
	}
	if err != nil {
		return "", err
	}
	info, err := os.Stat(target)
	if err == nil && info.Mode().Perm()&0o200 == 0 {
		err = &fs.PathError{Op: "write", Path: target, Err: fs.ErrPermission}
	}
	return target, err
}

// makeFolder makes a folder that lasts through a power cut.
func makeFolder(dir string) error {
	if _, err := os.Stat(dir); err == nil {
		return nil
	}
	if err := os.MkdirAll(dir, folderMode); err != nil {
		return err
	}
	return syncFolder(filepath.Dir(dir))
}

// create writes a file that must not be there yet, and tells whether it did.
// The folder is locked.
func create(path string, data []byte) (made bool, err error) {
	if _, err := os.Lstat(path); !errors.Is(err, fs.ErrNotExist) {
		return false, err
	}
	return true, replace(path, data)
}

// writeTemp writes data to a file beside path, with the rights that path has,
// and leaves none behind on error. One that a killed program left there goes:
// the folder is locked, so nobody is writing it.
func writeTemp(path string, data []byte) (name string, err error) {
	name = filepath.Join(filepath.Dir(path), "."+filepath.Base(path)+".tmp")
	if err := os.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return "", err
	}
	file, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, fileMode)
	if err != nil {
		return "", err
	}
	defer func() {
		if err != nil {
			_ = os.Remove(name) // the first error is the one to tell
		}
	}()
	mode := fs.FileMode(fileMode)
	if info, err := os.Stat(path); err == nil {
		mode = info.Mode().Perm()
	}
	_, err = file.Write(data)
	if err == nil {
		err = file.Chmod(mode)
	}
	if err == nil {
		err = file.Sync()
	}
	return name, errors.Join(err, file.Close())
}

// syncFolder makes a rename last through a power cut. Windows has no such call
// and keeps its own journal.
func syncFolder(dir string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	folder, err := os.Open(dir)
	if err != nil {
		return err
	}
	return errors.Join(folder.Sync(), folder.Close())
}

// notSaved tells what could not be written, why, and what to do.
func notSaved(path string, err error) error {
	hint := "what was there is as it was"
	switch {
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT), errors.Is(err, syscall.EFBIG):
		hint += "; the disk is full: make room and save again"
	case errors.Is(err, syscall.EROFS), errors.Is(err, fs.ErrPermission):
		hint += "; the folder or file may not be written: give yourself the right to, or choose another with --dir"
	}
	return fmt.Errorf("%s was not saved: %w; %s", path, err, hint)
}

package journal

import (
	"context"
	"errors"
	"fmt"
	"io"
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
	lockWait   = 10 * time.Second
	lockRetry  = 2 * time.Millisecond
)

// locked runs do while no other program writes in the log. The lock is the
// kernel's: it is gone when the program that holds it is, however it ended.
func locked(path string, do func() error) error {
	lock := flock.New(path+".lock", flock.SetPermissions(fileMode))
	ctx, cancel := context.WithTimeout(context.Background(), lockWait)
	defer cancel()
	got, err := lock.TryLockContext(ctx, lockRetry)
	if errors.Is(err, context.DeadlineExceeded) || err == nil && !got {
		return fmt.Errorf("another program has been writing in it for %v; close it and try again", lockWait)
	}
	if err != nil {
		return err
	}
	return errors.Join(do(), lock.Unlock())
}

// targetOf follows links to the file to be written, and makes the folder of a
// log that is not there.
func targetOf(path string) (string, error) {
	target, err := filepath.EvalSymlinks(path)
	if !errors.Is(err, fs.ErrNotExist) {
		return target, err
	}
	if leads, linked := os.Readlink(path); linked == nil {
		return "", fmt.Errorf("it is a link to %s, which is not there", leads)
	}
	return path, makeFolder(filepath.Dir(path))
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

// appendTo adds text to the end of a log of a size, and tells of success only
// when it is on the disk. On error the log is as long as it was.
func appendTo(path string, size int64, text string) (err error) {
	log, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, log.Close()) }()
	_, err = log.WriteAt([]byte(text), size)
	if err == nil {
		err = log.Sync()
	}
	if err == nil {
		return nil
	}
	if back := log.Truncate(size); back != nil {
		return fmt.Errorf("%w; and what was written of it could not be taken back, so the next start will set it aside (%w)", err, back)
	}
	return errors.Join(err, log.Sync())
}

// replaceBy puts a copy of the first size bytes of the log, and text behind
// them, in the place of the log, which need not be there yet. At any moment
// there is the old log or the new one, whole.
func replaceBy(path string, size int64, text string) error {
	pattern := "." + filepath.Base(path) + ".*.tmp"
	removeLeftovers(filepath.Dir(path), pattern)
	temp, err := os.CreateTemp(filepath.Dir(path), pattern)
	if err != nil {
		return err
	}
	mode, err := copyLog(temp, path, size)
	if err == nil {
		_, err = io.WriteString(temp, text)
	}
	if err == nil {
		err = temp.Chmod(mode)
	}
	if err == nil {
		err = temp.Sync()
	}
	if err = errors.Join(err, temp.Close()); err == nil {
		err = os.Rename(temp.Name(), path)
	}
	if err != nil {
		_ = os.Remove(temp.Name()) // the first error is the one to tell
		return err
	}
	if err := syncFolder(filepath.Dir(path)); err != nil {
		return fmt.Errorf("%w: %w", errMayNotLast, err)
	}
	return nil
}

// removeLeftovers takes away what a program that was killed left half written.
// Only the holder of the lock writes such files.
func removeLeftovers(dir, pattern string) {
	there, err := os.ReadDir(dir)
	if err != nil {
		return // it will be told where it matters: at the writing
	}
	for _, file := range there {
		if ours, err := filepath.Match(pattern, file.Name()); err == nil && ours {
			_ = os.Remove(filepath.Join(dir, file.Name()))
		}
	}
}

// errMayNotLast is the one error after which the log is not as it was.
var errMayNotLast = errors.New("it is written, but may not outlast a power cut")

// copyLog copies the first size bytes of the log, and gives its rights.
func copyLog(to io.Writer, path string, size int64) (fs.FileMode, error) {
	log, err := os.Open(path)
	if errors.Is(err, fs.ErrNotExist) {
		return fileMode, nil
	}
	if err != nil {
		return 0, err
	}
	defer log.Close()
	info, err := log.Stat()
	if err != nil {
		return 0, err
	}
	_, err = io.Copy(to, io.NewSectionReader(log, 0, size))
	return info.Mode().Perm(), err
}

// syncFolder makes a new name last through a power cut. Windows has no such call
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

// notWritten tells what could not be written, why, and what to do.
func notWritten(path string, err error) error {
	if errors.Is(err, errMayNotLast) {
		return fmt.Errorf("%s: %w", path, err)
	}
	hint := "the log is as it was"
	switch {
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT), errors.Is(err, syscall.EFBIG):
		hint += "; the disk is full: make room and try again"
	case errors.Is(err, syscall.EROFS), errors.Is(err, fs.ErrPermission):
		hint += "; the folder or file may not be written: give yourself the right to, or choose another with --dir"
	}
	return fmt.Errorf("%s: nothing was written: %w; %s", path, err, hint)
}

// Package safefile writes files so that neither a crash nor a full disk nor a
// power cut leaves a half of one: at any moment there is the old file or the new
// one, whole. What it makes is for its owner's eyes only.
package safefile

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
)

// The rights of what is made here. A file that is replaced keeps its own.
const (
	FileMode   fs.FileMode = 0o600
	FolderMode fs.FileMode = 0o700
)

// ErrMayNotLast is the one error of [Replace] after which the file is not as it
// was.
var ErrMayNotLast = errors.New("is written, but may not outlast a power cut")

// Target follows links to the file that is meant by path, and makes the folder
// of one that is not there. A link that leads nowhere is an error.
func Target(path string) (string, error) {
	target, err := filepath.EvalSymlinks(path)
	if !errors.Is(err, fs.ErrNotExist) {
		return target, err
	}
	if leads, linked := os.Readlink(path); linked == nil {
		return "", fmt.Errorf("it is a link to %s, which is not there", leads)
	}
	return path, MakeFolder(filepath.Dir(path))
}

// MakeFolder makes a folder that lasts through a power cut, and those above it.
func MakeFolder(dir string) error {
	if _, err := os.Stat(dir); err == nil {
		return nil
	}
	if err := os.MkdirAll(dir, FolderMode); err != nil {
		return err
	}
	return SyncFolder(filepath.Dir(dir))
}

// SyncFolder makes a new name in a folder last through a power cut. Windows has
// no such call and keeps its own journal.
func SyncFolder(dir string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	folder, err := os.Open(dir)
	if err != nil {
		return err
	}
	return errors.Join(folder.Sync(), folder.Close())
}

// Replace puts what write writes in the place of the file at path, which need
// not be there; its folder must be. Links are not followed. The error is
// [ErrMayNotLast], or the file is as it was and nothing is left beside it.
func Replace(path string, write func(io.Writer) error) error {
	temp, err := writeBeside(path, write)
	if err != nil {
		return err
	}
	if err := os.Rename(temp, path); err != nil {
		return errors.Join(err, os.Remove(temp))
	}
	if err := SyncFolder(filepath.Dir(path)); err != nil {
		return fmt.Errorf("%w: %w", ErrMayNotLast, err)
	}
	return nil
}

// Bytes is what [Replace] is given to write data.
func Bytes(data []byte) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	}
}

// writeBeside writes a file in the folder of path, with the rights of path, and
// leaves none behind on error.
func writeBeside(path string, write func(io.Writer) error) (name string, err error) {
	file, err := os.CreateTemp(filepath.Dir(path), tempStart(path)+"*"+tempEnd)
	if err != nil {
		return "", err
	}
	defer func() {
		if err != nil {
			_ = os.Remove(file.Name()) // the first error is the one to tell
		}
	}()
	mode := FileMode
	if info, err := os.Stat(path); err == nil {
		mode = info.Mode().Perm()
	}
	err = write(file)
	if err == nil {
		err = file.Chmod(mode)
	}
	if err == nil {
		err = file.Sync()
	}
	return file.Name(), errors.Join(err, file.Close())
}

func tempStart(path string) string { return "." + filepath.Base(path) + "." }

const tempEnd = ".tmp"

// Sweep takes away what programs that were killed in [Replace] left beside path.
// It is for the holder of the lock under which the file is written.
func Sweep(path string) {
	dir := filepath.Dir(path)
	there, err := os.ReadDir(dir)
	if err != nil {
		return // it will be told where it matters: at the writing
	}
	for _, file := range there {
		if name := file.Name(); strings.HasPrefix(name, tempStart(path)) && strings.HasSuffix(name, tempEnd) {
			_ = os.Remove(filepath.Join(dir, name))
		}
	}
}

// Remedy is what to do about an error of writing, to be put behind it; again is
// the deed to repeat, as in "save again". It is "" where there is no advice.
func Remedy(err error, again string) string {
	switch {
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT), errors.Is(err, syscall.EFBIG):
		return "; the disk is full: make room and " + again
	case errors.Is(err, syscall.EROFS), errors.Is(err, fs.ErrPermission):
		return "; the folder or file may not be written: give yourself the right to, or choose another with --dir"
	}
	return ""
}

package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// WriteOutside puts data in the place of a file outside the data folder, where
// no lock is held: at any moment there is the old file or the new one, whole.
// A file that is there keeps its rights. The folder must be there.
func WriteOutside(path string, data []byte) error {
	temp, err := tempBeside(path, data)
	if err != nil {
		return outsideFault(path, err)
	}
	if err := os.Rename(temp, path); err != nil {
		return outsideFault(path, errors.Join(err, os.Remove(temp)))
	}
	if err := syncFolder(filepath.Dir(path)); err != nil {
		return fmt.Errorf("%s is written, but may not outlast a power cut: %w", path, err)
	}
	return nil
}

// tempBeside writes data to a file of its own in the folder of path, and leaves
// none behind on error.
func tempBeside(path string, data []byte) (name string, err error) {
	file, err := os.CreateTemp(filepath.Dir(path), "."+filepath.Base(path)+".*.tmp")
	if err != nil {
		return "", err
	}
	defer func() {
		if err != nil {
			_ = os.Remove(file.Name()) // the first error is the one to tell
		}
	}()
	_, err = file.Write(data)
	if info, there := os.Stat(path); err == nil && there == nil {
		err = file.Chmod(info.Mode().Perm())
	}
	if err == nil {
		err = file.Sync()
	}
	return file.Name(), errors.Join(err, file.Close())
}

func outsideFault(path string, err error) error {
	hint := "what was there is as it was"
	if errors.Is(err, fs.ErrNotExist) {
		hint += "; make the folder first, or name another file"
	}
	return fmt.Errorf("%s was not written: %w; %s", path, err, hint)
}

package store

import (
	"errors"
	"fmt"
	"io/fs"

	"washeve/model/store/safefile"
)

// WriteOutside puts data in the place of a file outside the data folder, where
// no lock is held: at any moment there is the old file or the new one, whole.
// A file that is there keeps its rights. The folder must be there.
func WriteOutside(path string, data []byte) error {
	err := safefile.Replace(path, safefile.Bytes(data))
	switch {
	case err == nil:
		return nil
	case errors.Is(err, safefile.ErrMayNotLast):
		return fmt.Errorf("%s %w", path, err)
	}
	hint := "what was there is as it was"
	if errors.Is(err, fs.ErrNotExist) {
		hint += "; make the folder first, or name another file"
	}
	return fmt.Errorf("%s was not written: %w; %s", path, err, hint)
}

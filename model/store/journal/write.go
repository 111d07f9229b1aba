package journal

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"time"

	"washeve/model/store/safefile"
)

const lockWait = 10 * time.Second

// locked runs do while no other program writes in the log.
func locked(path string, do func() error) error {
	unlock, err := safefile.Lock(path+".lock", lockWait)
	if errors.Is(err, safefile.ErrBusy) {
		return fmt.Errorf("another program has been writing in it for %v; close it and try again", lockWait)
	}
	if err != nil {
		return err
	}
	return errors.Join(do(), unlock())
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
// there is the old log or the new one, whole. The log is locked.
func replaceBy(path string, size int64, text string) error {
	safefile.Sweep(path)
	return safefile.Replace(path, func(to io.Writer) error {
		if err := copyLog(to, path, size); err != nil {
			return err
		}
		_, err := io.WriteString(to, text)
		return err
	})
}

// copyLog copies the first size bytes of the log, or nothing where there is none.
func copyLog(to io.Writer, path string, size int64) error {
	log, err := os.Open(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	defer log.Close()
	_, err = io.Copy(to, io.NewSectionReader(log, 0, size))
	return err
}

// notWritten tells what could not be written, why, and what to do.
func notWritten(path string, err error) error {
	if errors.Is(err, safefile.ErrMayNotLast) {
		return fmt.Errorf("%s %w", path, err)
	}
	return fmt.Errorf("%s: nothing was written: %w; the log is as it was%s", path, err, safefile.Remedy(err, "try again"))
}

package journal

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"washeve/model"
	"washeve/model/store/fault"
	"washeve/model/store/safefile"
)

// Append adds entries to the end of the log: all of them or none. When it gives
// no error they are on the disk. On error the log is as it was, and the error
// tells what to do; the entries are still the caller's to keep. What else was
// met on the way, such as an end cut off earlier, is told beside.
func (j *Journal) Append(entries ...model.Entry) ([]fault.Fault, error) {
	blocks, err := encodeAll(entries)
	if err != nil || len(blocks) == 0 {
		return nil, err
	}
	return j.add(func() ([]string, error) { return blocks, nil })
}

// add appends the blocks that choose gives, which is asked under the lock.
func (j *Journal) add(choose func() ([]string, error)) ([]fault.Fault, error) {
	path, err := safefile.Target(j.path)
	if err != nil {
		return nil, notWritten(j.path, err)
	}
	var told []fault.Fault
	err = locked(path, func() error {
		told, err = addLocked(path, choose)
		return err
	})
	if err != nil {
		return told, notWritten(j.path, err)
	}
	return told, nil
}

// addLocked appends one block in place. Several come by a copy of the log, so
// that they are there all at once; so does the first of a new log.
func addLocked(path string, choose func() ([]string, error)) ([]fault.Fault, error) {
	told, end, err := prepare(path)
	if err != nil {
		return nil, err
	}
	blocks, err := choose()
	if err != nil || len(blocks) == 0 {
		return told, err
	}
	text := end.lead + "\n" + strings.Join(blocks, "\n")
	if len(blocks) == 1 && end.size > 0 {
		return told, appendTo(path, end.size, text)
	}
	return told, replaceBy(path, end.size, text)
}

// An end is where a log that is whole goes on.
type end struct {
	size int64
	lead string // what must come first: a missing line end, or the header
}

// prepare makes sure that the log is this program's to add to, and that its end
// is whole.
func prepare(path string) (told []fault.Fault, at end, err error) {
	log, err := os.OpenFile(path, os.O_RDWR, 0)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, end{lead: header}, nil
	}
	if err != nil {
		return nil, end{}, err
	}
	defer log.Close()
	if err := refuseNewer(log); err != nil {
		return nil, end{}, err
	}
	torn, at, err := setEndAside(path, log)
	if torn != nil {
		told = []fault.Fault{*torn}
	}
	return told, at, err
}

// headBytes holds any head of a log that a person can have wanted.
const headBytes = 64 << 10

// refuseNewer is an error where the log says that a newer program wrote it.
func refuseNewer(log *os.File) error {
	data, err := io.ReadAll(io.NewSectionReader(log, 0, headBytes))
	if err != nil {
		return err
	}
	text := string(data)
	s := newScanner(filepath.Base(log.Name()), text)
	if len(data) == headBytes && !strings.Contains(text, "\n"+blockStart) {
		s.text = text[:lineStart(text, len(text))]
	}
	if !s.head() {
		return s.all[len(s.all)-1]
	}
	return nil
}

// tailBytes holds any entry that this program writes.
const tailBytes = 64 << 10

// setEndAside moves an end that was cut off into a file of its own, and tells
// where the log goes on. The log is locked.
func setEndAside(path string, log *os.File) (torn *fault.Fault, at end, err error) {
	text, from, err := readEnd(log)
	if err != nil {
		return nil, end{}, err
	}
	at.size = from + int64(len(text))
	if from == 0 && unfinishedHeader(text) {
		at.lead = header[len(text):]
		return nil, at, nil
	}
	if n := whole(text); n < len(text) {
		at.size = from + int64(n)
		torn, err = setAside(path, log, at.size)
		text = text[:n]
	}
	if text != "" && !strings.HasSuffix(text, "\n") {
		at.lead = "\n"
	}
	return torn, at, err
}

// readEnd gives the end of the log from the start of a line on, with at least
// one entry where there is any.
func readEnd(log *os.File) (text string, from int64, err error) {
	info, err := log.Stat()
	if err != nil {
		return "", 0, err
	}
	size := info.Size()
	if size > tailBytes {
		data, err := io.ReadAll(io.NewSectionReader(log, size-tailBytes, tailBytes))
		if err != nil {
			return "", 0, err
		}
		text := string(data)
		if i := strings.IndexByte(text, '\n'); i >= 0 && lastStart(text[i+1:]) >= 0 {
			return text[i+1:], size - tailBytes + int64(i) + 1, nil
		}
	}
	data, err := io.ReadAll(io.NewSectionReader(log, 0, size))
	return string(data), 0, err
}

// Package journal keeps the log in a file: plain TOML that is only ever added
// to. What was told to be written is on the disk, whatever happens next.
package journal

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/store/fault"
	"washeve/model/store/safefile"
)

// Journal is a log in a file.
type Journal struct{ path string }

// Open names the file, usually log.toml in the data folder. It need not be
// there, and nothing is read yet.
func Open(path string) *Journal { return &Journal{path: path} }

// Stamp is by what a log is taken for unchanged without being read.
type Stamp struct {
	Bytes   int64
	Changed time.Time // by the clock of the disk
}

// Stamp gives that of the log, and whether there is one, readable or not.
func (j *Journal) Stamp() (now Stamp, exists bool) {
	info, err := os.Stat(j.path)
	if err != nil {
		return Stamp{}, !errors.Is(err, fs.ErrNotExist)
	}
	return Stamp{info.Size(), info.ModTime()}, true
}

// Load reads the log. Entries that cannot be read are told with their line and
// left out. An end that was cut off is set aside and told. A file that is not
// there is an empty log.
func (j *Journal) Load() (model.Log, []fault.Fault) {
	s := scanFile(j.path)
	if s.torn {
		if told := j.mend(); told != nil {
			return model.NewLog(s.found), append(s.all, told...)
		}
		s = scanFile(j.path) // another program was writing, and has ended since
	}
	return model.NewLog(s.found), s.all
}

// Check reads a log and changes nothing.
func Check(path string) []fault.Fault {
	s := scanFile(path)
	if s.torn {
		s.add(fault.Notice, 1+strings.Count(s.text, "\n"), "", "the last entry was cut off while it was written; the next start sets it aside")
	}
	for _, f := range model.NewLog(s.found).Faults() {
		s.add(fault.Notice, 0, "", f.Error())
	}
	return s.all
}

// mend sets aside an end that was cut off. It looks once more under the lock:
// what looked cut off may have been another program's entry half written, and
// then there is nothing to tell.
func (j *Journal) mend() []fault.Fault {
	var told []fault.Fault
	path, err := safefile.Target(j.path)
	if err == nil {
		err = locked(path, func() error {
			told, _, err = prepare(path)
			return err
		})
	}
	if err != nil {
		return []fault.Fault{{File: filepath.Base(j.path), Severity: fault.Notice, Problem: fmt.Sprintf(
			"the last entry was cut off while it was written; it does not count, all before it stands, and it could not be moved out of the way: %v", err)}}
	}
	return told
}

// scanFile reads a log up to where it is whole.
func scanFile(path string) *scanner {
	file := filepath.Base(path)
	text, err := readText(path)
	if err != nil {
		s := newScanner(file, "")
		if !errors.Is(err, fs.ErrNotExist) {
			s.add(fault.Error, 0, "", whyNot(err))
		}
		return s
	}
	return scanText(file, text)
}

func scanText(file, text string) *scanner {
	end := whole(text)
	s := newScanner(file, text[:end])
	s.torn = end < len(text)
	if unfinishedHeader(text) {
		return s
	}
	if line := notText(s.text); line > 0 {
		s.add(fault.Error, line, "", "is not text in UTF-8; save the file as plain text in UTF-8")
		return s
	}
	if !s.head() {
		s.torn = false // who knows what a newer program writes
		return s
	}
	s.entriesInParts(partsFor(s.text))
	return s
}

// unfinishedHeader tells a log that was begun and never got to an entry.
func unfinishedHeader(text string) bool {
	return len(text) < len(header) && strings.HasPrefix(header, text)
}

// mostBytes is far over any log: a million entries.
const mostBytes = 1 << 29

// readText reads a file into a string at one go.
func readText(path string) (string, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return "", err
	case !info.Mode().IsRegular():
		return "", errors.New("is no ordinary file; a text file is needed")
	case info.Size() > mostBytes:
		return "", fmt.Errorf("is over %d MB; no log is, so this is something else", mostBytes>>20)
	}
	file, err := os.Open(path)
	if err != nil {
		return "", err
	}
	defer file.Close()
	var b strings.Builder
	b.Grow(int(info.Size()) + 512)
	if _, err := io.Copy(&b, io.LimitReader(file, mostBytes)); err != nil {
		return "", err
	}
	return b.String(), nil
}

func whyNot(err error) string {
	var at *fs.PathError
	switch {
	case errors.Is(err, fs.ErrPermission):
		return "may not be read: permission denied; give yourself the right to read it"
	case errors.As(err, &at):
		return "cannot be read: " + at.Err.Error()
	}
	return err.Error()
}

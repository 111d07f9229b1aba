package journal

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"washeve/model/store/fault"
	"washeve/model/store/safefile"
)

// whole gives how much of a log's text is whole: all of it, or all up to an end
// that was cut off while it was written. Entries are written one after the
// other, each with its identifier last, so only the last can be cut.
func whole(text string) int {
	if i := strings.IndexByte(text, 0); i >= 0 {
		// A file that had grown when the power went, but had not been filled.
		if end := lineStart(text, i); !strings.Contains(text[i:], "\n[") {
			return min(end, whole(text[:end]))
		}
	}
	last := lineStart(text, len(text))
	if tail := text[last:]; tail != "" && strings.HasPrefix(blockStart, tail) {
		return last
	}
	if start := lastStart(text); start >= 0 && !hasID(text[start:]) {
		return start
	}
	return len(text)
}

// lineStart is where the line of byte at begins.
func lineStart(text string, at int) int { return strings.LastIndexByte(text[:at], '\n') + 1 }

// lastStart is where the last entry begins, or -1.
func lastStart(text string) int {
	for end := len(text); end > 0; {
		i := strings.LastIndex(text[:end], "[[")
		if i < 0 {
			return -1
		}
		start := lineStart(text, i)
		if isStart(text[start:]) {
			return start
		}
		end = start
	}
	return -1
}

// hasID tells whether a line of a block gives the identifier, to its closing
// quote.
func hasID(block string) bool {
	for line := range strings.Lines(block) {
		rest, found := strings.CutPrefix(strings.TrimLeft(line, " \t"), idKey)
		rest, equals := strings.CutPrefix(strings.TrimLeft(rest, " \t"), "=")
		rest = strings.TrimLeft(rest, " \t")
		if !found || !equals || rest == "" || (rest[0] != '"' && rest[0] != '\'') {
			continue
		}
		if strings.IndexByte(rest[1:], rest[0]) > 0 {
			return true
		}
	}
	return false
}

// setAside moves the end of the log from byte at on into a file of its own, and
// tells it. The log is locked.
func setAside(path string, log *os.File, at int64) (*fault.Fault, error) {
	text, err := io.ReadAll(io.NewSectionReader(log, 0, 1<<62))
	if err != nil {
		return nil, err
	}
	name, err := keepBeside(path, text[at:])
	if err == nil {
		err = errors.Join(log.Truncate(at), log.Sync())
	}
	if err != nil {
		return nil, err
	}
	return &fault.Fault{
		File: filepath.Base(path), Line: 1 + bytes.Count(text[:at], []byte("\n")), Severity: fault.Notice,
		Problem: fmt.Sprintf("the last entry was cut off while it was written, by a crash or a power cut; what there is of it is kept in %s, and all before it stands. If you wrote it by hand, give it a last line such as id = \"mine-1\" and put it back", name),
	}, nil
}

// keepBeside writes data to the first free of log.torn-1.toml, log.torn-2.toml
// and so on. One that holds the same already is left from a try that did not end.
func keepBeside(path string, data []byte) (name string, err error) {
	ext := filepath.Ext(path)
	for n := 1; ; n++ {
		beside := fmt.Sprintf("%s.torn-%d%s", strings.TrimSuffix(path, ext), n, ext)
		file, err := os.OpenFile(beside, os.O_WRONLY|os.O_CREATE|os.O_EXCL, safefile.FileMode)
		if errors.Is(err, fs.ErrExist) {
			if there, err := os.ReadFile(beside); err == nil && bytes.Equal(there, data) {
				return filepath.Base(beside), nil
			}
			continue
		}
		if err != nil {
			return "", err
		}
		_, err = file.Write(data)
		if err = errors.Join(err, file.Sync(), file.Close()); err == nil {
			err = safefile.SyncFolder(filepath.Dir(beside))
		}
		if err != nil {
			return "", errors.Join(err, os.Remove(beside))
		}
		return filepath.Base(beside), nil
	}
}

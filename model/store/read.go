package store

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"unicode/utf8"
)

// mostBytes is far over any file a person writes, and small enough to read
// without a wait.
const mostBytes = 4 << 20

// readFile gives the bytes of a text file of sane size. The problem, where not
// "", tells why there are none; line is where it is, or 0.
func readFile(path string) (data []byte, line int, problem string) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, 0, whyNot(err)
	}
	switch {
	case info.IsDir():
		return nil, 0, "is a folder; a file is needed"
	case !info.Mode().IsRegular():
		return nil, 0, "is no ordinary file; a text file is needed"
	case info.Size() > mostBytes:
		return nil, 0, tooLarge(info.Size())
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, 0, whyNot(err)
	}
	defer file.Close()
	data, err = io.ReadAll(io.LimitReader(file, mostBytes+1))
	if err != nil {
		return nil, 0, whyNot(err)
	}
	if len(data) > mostBytes {
		return nil, 0, tooLarge(int64(len(data)))
	}
	if line := notText(data); line > 0 {
		return nil, line, "is not text in UTF-8; save the file as plain text in UTF-8"
	}
	return data, 0, ""
}

func tooLarge(size int64) string {
	return fmt.Sprintf("is %.1f MB; no such file is over %d MB, so this is something else: move it out of the folder, or name the right file", float64(size)/(1<<20), mostBytes>>20)
}

func whyNot(err error) string {
	var at *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "is not there"
	case errors.Is(err, fs.ErrPermission):
		return "may not be read: permission denied; give yourself the right to read it"
	case errors.As(err, &at):
		return "cannot be read: " + at.Err.Error()
	}
	return "cannot be read: " + err.Error()
}

// notText gives the line of the first byte that is no text, or 0.
func notText(data []byte) int {
	end := bytes.IndexByte(data, 0)
	if end < 0 && utf8.Valid(data) {
		return 0
	}
	if end < 0 {
		end = len(data)
	}
	for i := 0; i < end; {
		r, size := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && size == 1 {
			end = i
			break
		}
		i += size
	}
	return 1 + bytes.Count(data[:end], []byte("\n"))
}

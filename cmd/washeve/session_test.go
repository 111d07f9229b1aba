package main

import (
	"bytes"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var writeSession = flag.Bool("session", false, "write the README's session of plain lines anew")

// echo is a terminal: it shows what the program writes, and what is typed behind each
// question.
type echo struct {
	bytes.Buffer
	typed []string
	keys  *io.PipeWriter
}

func (e *echo) Write(p []byte) (int, error) {
	e.Buffer.Write(p)
	if bytes.HasSuffix(p, []byte("\n")) {
		return len(p), nil
	}
	if len(e.typed) == 0 {
		return len(p), e.keys.Close()
	}
	line := e.typed[0] + "\n"
	e.typed = e.typed[1:]
	e.Buffer.WriteString(line)
	_, err := io.WriteString(e.keys, line)
	return len(p), err
}

// The README's session is a real one: go test ./cmd/washeve -run Session -session
func TestTheSessionOfTheREADMEIsReal(t *testing.T) {
	const from, to = "<!-- session: written by go test ./cmd/washeve -run Session -session -->\n\n```text\n", "```\n\n<!-- end of session -->"
	in, keys := io.Pipe()
	e := &echo{keys: keys, typed: []string{
		"fresh", "walk needed", "33", "12 ft", "0.5 ft3", "210", "change vehicle length 33 yards", "34 ft", "undo", "why flow cap",
		"bed", "reading", "3", "yes", "unknown", "list", "undo", "yes", "back", "quit",
	}}
	var errs bytes.Buffer
	s := atTerminal(nil, &errs)
	s.in, s.out = in, e
	require.Zero(t, run([]string{"--plain", "--dir", t.TempDir()}, s), errs.String())

	path := filepath.Join("..", "..", "README.md")
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	before, rest, found := strings.Cut(string(data), from)
	require.True(t, found, "the README has lost its mark %q", from)
	kept, after, found := strings.Cut(rest, to)
	require.True(t, found, "the README has lost its mark %q", to)
	if *writeSession {
		require.NoError(t, os.WriteFile(path, []byte(before+from+e.String()+to+after), 0o644))
		return
	}
	assert.Equal(t, e.String(), kept, "renew it: go test ./cmd/washeve -run Session -session")
}

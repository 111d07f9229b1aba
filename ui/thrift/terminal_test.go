package thrift

import (
	"bytes"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/charmbracelet/x/vt"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// file is a terminal's file that keeps what is sent.
type file struct {
	bytes.Buffer
	full bool
}

func (f *file) Fd() uintptr  { return 0 }
func (f *file) Close() error { return nil }

func (f *file) Write(p []byte) (int, error) {
	if f.full {
		return 0, errors.New("no terminal any more")
	}
	return f.Buffer.Write(p)
}

// renderer writes frames as bubbletea does.
type renderer struct{ last []string }

func (r *renderer) frame(lines []string) []byte {
	var b strings.Builder
	b.WriteString(ansi.CursorHomePosition)
	for i, line := range lines {
		skip := i < len(r.last) && r.last[i] == line
		if i == 0 && r.last == nil {
			b.WriteString("\r")
		}
		if !skip {
			b.WriteString(line)
			if ansi.StringWidth(line) < across {
				b.WriteString(ansi.EraseLineRight)
			}
			if i < len(lines)-1 {
				b.WriteString("\r")
			}
		}
		if i < len(lines)-1 {
			b.WriteString("\n")
		}
	}
	if len(r.last) > len(lines) {
		b.WriteString(ansi.EraseScreenBelow)
	}
	b.WriteString(ansi.CursorPosition(0, len(lines)))
	r.last = slices.Clone(lines)
	return []byte(b.String())
}

const across, down = 60, 6

func anyLine(t *rapid.T) string {
	var b strings.Builder
	for range rapid.IntRange(0, 5).Draw(t, "pieces") {
		words := rapid.SampledFrom([]string{"bed", "24.1 gal", "─────", "░", "x", " ", "  ", "                    ", "水箱", "é", "e\u0301", "👩‍🔧"}).Draw(t, "words")
		code := rapid.SampledFrom([]string{"", "", "1", "38;5;80", "38;5;243", "96"}).Draw(t, "code")
		if len(words) == 1 { // what the hand is on
			code = reverse
		}
		if code != "" {
			words = csi + code + "m" + words + csi + "m"
		}
		b.WriteString(words)
	}
	return ansi.Truncate(Line(strings.TrimRight(b.String(), " ")), across, "")
}

// Whatever frames come in whatever order, the terminal shows what it would show
// had all been sent. The emulator is one that others wrote.
func TestATerminalShowsTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sent := &file{}
		thrifty, r := On(sent), &renderer{}
		all, less := vt.NewEmulator(across, down), vt.NewEmulator(across, down)
		defer all.Close()
		defer less.Close()
		show := func(p []byte) {
			n, err := thrifty.Write(p)
			require.NoError(t, err)
			require.Equal(t, len(p), n)
			_, err = all.Write(p)
			require.NoError(t, err)
			_, err = less.Write(sent.Bytes())
			require.NoError(t, err)
			sent.Reset()
		}
		show([]byte(strings.Repeat("#", across*down)))
		lines := make([]string, down)
		for range rapid.IntRange(1, 12).Draw(t, "frames") {
			switch rapid.IntRange(0, 9).Draw(t, "deed") {
			case 0:
				r.last = nil // it repaints, as after a change of size
			case 1:
				show([]byte(ansi.EraseEntireScreen + ansi.CursorHomePosition))
				r.last = nil
			case 2:
				show([]byte(ansi.HideCursor))
			case 3:
				lines = lines[:rapid.IntRange(1, len(lines)).Draw(t, "fewer")]
			default:
				lines = slices.Clone(lines)
				for range rapid.IntRange(1, 4).Draw(t, "changes") {
					lines[rapid.IntRange(0, len(lines)-1).Draw(t, "line")] = anyLine(t)
				}
			}
			show(r.frame(lines))
			require.Equal(t, cellsOf(all), cellsOf(less))
		}
	})
}

// cellsOf lists each letter with its colours. A blank looks the same in all but
// the reversed.
func cellsOf(screen *vt.Emulator) []string {
	var letters []string
	for y := range screen.Height() {
		for x := range screen.Width() {
			cell := screen.CellAt(x, y)
			if cell == nil {
				letters = append(letters, "")
				continue
			}
			letter := cell.Content
			if letter != " " || strings.Contains(cell.Style.String(), reverse) {
				letter += cell.Style.String()
			}
			letters = append(letters, letter)
		}
	}
	return letters
}

func TestOnlyTheChangedCellsAreSent(t *testing.T) {
	sent := &file{}
	thrifty, r := On(sent), &renderer{}
	frame := func(lines ...string) string {
		sent.Reset()
		_, err := thrifty.Write(r.frame(lines))
		require.NoError(t, err)
		return sent.String()
	}
	frame("DI 24.1 gal, and as far as it goes", "second")
	assert.Equal(t, "\x1b[1;5H5\x1b[2;H", frame("DI 25.1 gal, and as far as it goes", "second"))
	assert.Equal(t, "\x1b[1;5H4\x1b[1;31Hran\x1b[K\x1b[2;H", frame("DI 24.1 gal, and as far as it ran", "second"))
	assert.Equal(t, "\x1b[HBed\x1b[K\x1b[2;H", frame("Bed", "second"))
}

// After an error nobody knows what the terminal shows.
func TestAfterAnErrorAllIsSent(t *testing.T) {
	sent := &file{}
	thrifty, r := On(sent), &renderer{}
	_, err := thrifty.Write(r.frame([]string{"one", "two"}))
	require.NoError(t, err)
	sent.full = true
	_, err = thrifty.Write(r.frame([]string{"one", "twelve"}))
	require.Error(t, err)
	sent.full = false
	sent.Reset()
	_, err = thrifty.Write(r.frame([]string{"one", "twenty"}))
	require.NoError(t, err)
	assert.Contains(t, sent.String(), "twenty")
}

// FuzzWrite sends anything: nothing panics, and nothing is swallowed that is no
// frame.
func FuzzWrite(f *testing.F) {
	f.Add([]byte("\x1b[H\rbed\x1b[K\r\ntank\x1b[K\x1b[2;H"), []byte("\x1b[Hbet\x1b[K\r\n\x1b[2;H"))
	f.Add([]byte("\x1b[H\x1b[;H"), []byte("\x1b[?25l"))
	f.Fuzz(func(t *testing.T, first, second []byte) {
		sent := &file{}
		thrifty := On(sent)
		for _, p := range [][]byte{first, second} {
			sent.Reset()
			n, err := thrifty.Write(p)
			if n != len(p) || err != nil {
				t.Fatal(n, err)
			}
			if !bytes.HasPrefix(p, []byte(ansi.CursorHomePosition)) && !bytes.Equal(squeeze(p), sent.Bytes()) {
				t.Fatalf("%q became %q", p, sent.Bytes())
			}
		}
	})
}

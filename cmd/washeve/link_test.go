//go:build unix

package main

import (
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// late lets the terminal's answers come after a while, or never.
func late(by time.Duration) func([]byte) []byte {
	return func(answer []byte) []byte {
		time.Sleep(by)
		return answer
	}
}

func never([]byte) []byte { return nil }

// What a terminal answers is never taken for what a person types, however late it comes.
func TestAnswersThatComeLateOrNever(t *testing.T) {
	const patienceOfTheRuntime = 5 * time.Second
	for name, answers := range map[string]func([]byte) []byte{
		"late": late(time.Second), "later": late(patienceOfTheRuntime + 2*time.Second), "never": never,
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			var mu sync.Mutex
			answered := 0
			s := start(t, setup{answers: func(answer []byte) []byte {
				answer = answers(answer)
				mu.Lock()
				defer mu.Unlock()
				answered += len(answer)
				return answer
			}})
			s.sees("flow cap")
			s.press("j", "k")
			s.settles()
			first := s.text()
			if name == "later" {
				require.Eventually(t, func() bool { mu.Lock(); defer mu.Unlock(); return answered > 0 }, patience, 10*time.Millisecond)
			}
			s.press("j", "k")
			s.settles()
			assert.Equal(t, first, s.text(), "no answer is taken for keys")
			s.press("q")
			assert.Equal(t, done, s.ends())
		})
	}
}

// Several keys come at once: each means what it means where the one before has led.
func TestKeysThatComeAtOnce(t *testing.T) {
	t.Parallel()
	s := start(t, setup{})
	s.sees("flow cap")
	s.press("Dn")
	s.sees("easy: no face hurries", "heading", "esc as it was")
	s.press("north\r")
	s.sees("nose north,")
}

// The bytes of a key come one at a time, as over a bad line.
func TestKeysThatComeInPieces(t *testing.T) {
	t.Parallel()
	s := start(t, setup{})
	s.sees("flow cap")
	s.press("D")
	s.sees("easy: no face hurries")
	for _, key := range []string{"right", "pgdown", "shift+left"} {
		s.inPieces(sent[key])
	}
	s.sees("› 06:30 to")
	s.inPieces("\x1b[<64;10;10M")
	s.sees("› 06:15 to")
	s.press("s")
	s.sees("esc as it was")
	s.inPieces("\x1b[200~7:")
	s.inPieces("45\x1b[201~")
	s.sees("7:45")
	s.press("enter")
	s.sees("› 07:45 to")
	s.press("esc")
	s.sees("flow cap")
}

func (s *screen) inPieces(bytes string) {
	s.t.Helper()
	for _, b := range []byte(bytes) {
		_, err := s.pty.Write([]byte{b})
		require.NoError(s.t, err)
		time.Sleep(10 * time.Millisecond)
	}
}

// What is drawn is read slowly, and keys go on coming: the last frame is whole.
func TestAScreenThatIsReadSlowly(t *testing.T) {
	t.Parallel()
	s := start(t, setup{slow: 2 * time.Millisecond, margin: 4})
	s.sees("flow cap")
	for _, h := range []hop{{"D", "left right move"}, {"esc", "W wash day"}, {"C", "left right ways"}, {"esc", "W wash day"}} {
		s.press(h.keys)
		s.sees(h.sees)
		s.settles()
	}
	s.press(strings.Split("v tab tab tab tab tab tab m m j j k", " ")...)
	s.sees("v VEHICLE", "› name")
	s.leavesNothing("flow cap")
	s.fits(80, 24)
}

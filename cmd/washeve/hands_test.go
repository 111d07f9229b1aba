//go:build unix

package main

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const (
	wheelUp, wheelDown, leftButton = 64, 65, 0
)

// mouse sends a button as a terminal does, let go again.
func (s *screen) mouse(button, x, y int) {
	s.t.Helper()
	s.press(fmt.Sprintf("\x1b[<%d;%d;%dM", button, x+1, y+1))
	if button == leftButton {
		s.press(fmt.Sprintf("\x1b[<%d;%d;%dm", button, x+1, y+1))
	}
}

// at is where a text is seen.
func (s *screen) at(text string) (x, y int) {
	s.t.Helper()
	for y, line := range strings.Split(s.text(), "\n") {
		if before, _, found := strings.Cut(line, text); found {
			return len([]rune(before)), y
		}
	}
	require.Fail(s.t, "nowhere is "+text, s.text())
	return 0, 0
}

// The wheel and the button do what keys do, where they do anything.
func TestTheMouse(t *testing.T) {
	for _, c := range []struct {
		name, keys, sees string
		button           int
		on, then         string
	}{
		{"a line of the plan", "v", "› vehicle", leftButton, "shape", "› shape"},
		{"a step of the plan", "v", "› vehicle", leftButton, "Juniper Flats  ", "w WATER"},
		{"down the plan", "v", "› vehicle", wheelDown, "shape", "› name"},
		{"later on the day", "D", "› 06:15 to", wheelDown, "nose", "› 06:30 to"},
		{"down a page", "f", "lines 1 to", wheelDown, "The plan", "lines 4 to"},
		{"an item of the rig", "R", "What you own", leftButton, "yellow pen", "› ● yellow pen"},
		{"down the faces", "S", "› right", wheelDown, "right", "› rear"},
		{"along a trip", "T", "› June loop", wheelDown, "06-06", "› 06-01"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := start(t, setup{quiet: 50 * time.Millisecond})
			s.sees("flow cap")
			s.press(c.keys)
			s.sees(c.sees)
			s.settles()
			x, y := s.at(c.on)
			s.mouse(c.button, x, y)
			s.sees(c.then)
		})
	}
}

// Everywhere else, and beyond the window, it does no harm.
func TestTheMouseWhereItDoesNothing(t *testing.T) {
	for _, st := range stations() {
		if !st.looksItsOwn() {
			continue
		}
		t.Run(st.name, func(t *testing.T) {
			t.Parallel()
			s := st.open(t, setup{margin: 4, quiet: 50 * time.Millisecond})
			for _, at := range [][2]int{{0, 23}, {79, 23}, {500, 200}, {79, 0}} {
				for _, button := range []int{leftButton, 1, 2, 32, 35, 66, 67} {
					s.mouse(button, at[0], at[1])
				}
			}
			s.mouse(wheelUp, 500, 200)
			s.mouse(wheelDown, 500, 200)
			s.settles()
			s.fits(80, 24)
			s.press("ctrl+c")
			if s.asksWhetherToLose() {
				s.press("y")
			}
			assert.Equal(t, done, s.ends())
		})
	}
}

// What is pasted is text: a line end in it ends nothing, and a code in it does nothing.
func TestPaste(t *testing.T) {
	const before = "40 ft 6 in"
	for _, c := range []struct{ name, pasted, sees, then string }{
		{"a value", "38 ft", "38 ft", "38 ft"},
		{"a line and its end", "38 ft\r\n", "38 ft", "38 ft"},
		{"two lines", "38 ft\nq\n", "38 ft", before},
		{"a code", "38\x1b[2J\x1b[31m ft", "38", before},
		{"a long text", strings.Repeat("38 ft ", 400), "38 ft", before},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := start(t, setup{margin: 4})
			s.sees("flow cap")
			s.press("v", "down", "down", "down", "enter", "ctrl+u")
			s.sees("enter done   tab")
			s.press("\x1b[200~" + c.pasted + "\x1b[201~")
			s.sees("enter done   tab", c.sees)
			s.fits(80, 24)
			s.press("enter")
			if c.then == before {
				s.sees("Not taken")
				s.press("esc")
			}
			s.sees("length           "+c.then, "flow cap")
			obeyed(t, "the screen", s.output())
		})
	}
}

// What was typed is there after the window has changed, too small and back.
func TestAWindowThatChangesWhileOneTypes(t *testing.T) {
	for _, c := range []struct{ name, keys, seesFirst, typed string }{
		{"plan", "v down down down enter ctrl+u", "enter done   tab", "38 ft"},
		{"day", "D s", "esc as it was", "7:45"},
		{"bed", "B w", "A new entry", "31"},
		{"rig", "R n", "vehicle 2", "Tin Box"},
		{"search", "f /", "find these words", "bypassed"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := start(t, setup{margin: 4, quiet: 50 * time.Millisecond})
			s.sees("flow cap")
			keys := strings.Fields(c.keys)
			s.press(keys[0])
			s.settles()
			s.press(keys[1:]...)
			s.sees(c.seesFirst)
			half := len(c.typed) / 2
			s.press(c.typed[:half])
			for _, size := range [][2]int{{100, 30}, {40, 10}, {160, 50}, {81, 24}} {
				s.resize(size[0], size[1])
				s.settles()
			}
			s.press(c.typed[half:])
			s.sees(c.typed)
			s.fits(81, 24)
		})
	}
}

//go:build unix

package main

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The evening before, tomorrow is a word: the screen says which day it is, and the file
// holds its date. A day of the log may be yesterday.
func TestADayIsTypedInWords(t *testing.T) {
	b := newBay(t) // on Saturday 2026-05-16
	b.open()
	b.s.sees("The bed lasts this wash")
	b.s.press("d")
	b.s.sees("tomorrow or fri")
	b.s.press("enter")
	b.s.press("tomorrow")
	b.s.sees("Sun 2026-05-17")
	b.s.press("enter")
	b.s.sees("Sun 2026-05-17. Saved.")
	assert.Contains(t, read(t, filepath.Join(b.dir(), "washes", "example.toml")), "date = \"2026-05-17\"")
	b.s.press("B")
	b.s.sees("order by")
	b.s.press("s", "enter", "4 lb", "enter", "down", "enter", "yesterday 19:30")
	b.s.sees("Fri 2026-05-15 19:30")
	b.s.press("enter", "w")
	b.s.sees("2026-05-15 salt", "Written.")
	assert.Contains(t, read(t, filepath.Join(b.dir(), "log.toml")), "at = 2026-05-15T19:30:00-06:00")
}

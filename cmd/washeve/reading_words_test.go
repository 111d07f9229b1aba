package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// On the Bed page a reading can be told with its number, as on the wash day. Nothing is
// written before it is said whether the standing water is out.
func TestAReadingIsToldWithItsNumberOnTheBedPage(t *testing.T) {
	dir := mine(t)
	said := saidIn(t, dir, "bed", "reading abc", "reading 3", "back", "back")
	assert.Contains(t, said, `Read: reading, and "abc" behind it. Not taken: `)
	assert.Contains(t, said, "It reads 3 ppm NaCl, and is written when you say whether the standing water is out.")
	assert.NotContains(t, kept(t, dir)["log.toml"], "reading = ")

	for _, c := range []struct {
		said, answer string
		holds, not   string
	}{
		{"reading 3", "yes", `flush_water = "6.13 gal"`, ""},
		{"reading 3 ppm", "already", `flushed = "yes"`, "flush_water"},
		{"reading 3 ppm NaCl", "no", `flushed = "no"`, "flush_water"},
	} {
		dir := mine(t)
		said := saidIn(t, dir, "bed", c.said, c.answer, "back")
		assert.Contains(t, said, ": written", c.said)
		log := kept(t, dir)["log.toml"]
		assert.Equal(t, 1, strings.Count(log, "[[entry]]"), c.said)
		assert.Contains(t, log, `reading = "3 ppm`, c.said)
		assert.Contains(t, log, c.holds, c.said)
		if c.not != "" {
			assert.NotContains(t, log, c.not, c.said)
		}
	}
}

package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// On the Bed page a reading can be told with its number, as on the wash day. Nothing is
// written before it is said whether the standing water is out.
func TestAReadingIsToldWithItsNumberOnTheBedPage(t *testing.T) {
	dir := mine(t)
	said := saidIn(t, dir, "bed", "reading abc", "reading 3", "back", "back", "back")
	assert.Contains(t, said, `Read: reading, and "abc" behind it. Not taken: `)
	assert.Contains(t, said, "It reads 3 ppm NaCl. Read now; when: another time.\nFirst let the standing water run out: ")
	assert.NotContains(t, kept(t, dir)["log.toml"], "reading = ")

	for _, c := range []struct {
		said, answer string
		holds, not   string
	}{
		{"reading 3", "yes", `flush_water = "6.13 gal"`, ""},
		{"reading 3 ppm", "already", `flushed = "yes"`, "flush_water"},
		{"reading 3 ppm NaCl", "no", `flushed = "no"`, "flush_water"},
		{"reading 3 ppm NaCl", "ran 7 gal", `flush_water = "7 gal"`, "gallons_so_far"},
	} {
		dir := mine(t)
		said := saidIn(t, dir, "bed", c.said, c.answer, "back")
		assert.Contains(t, said, " written", c.said)
		log := kept(t, dir)["log.toml"]
		assert.Equal(t, 1, strings.Count(log, "[[entry]]"), c.said)
		assert.Contains(t, log, `reading = "3 ppm`, c.said)
		assert.Contains(t, log, c.holds, c.said)
		if c.not != "" {
			assert.NotContains(t, log, c.not, c.said)
		}
	}
}

// Of a fill whose age nobody said, a reading asks it, and keeps it in the log.
func TestAReadingAsksTheAgeOfAFill(t *testing.T) {
	for answer, holds := range map[string]string{"90 gal": `gallons_so_far = "96.1 gal"`, "0 gal": `gallons_so_far = "6.13 gal"`, "unknown": ""} {
		dir := mine(t)
		rig := kept(t, dir)["rig.toml"]
		require.NoError(t, os.WriteFile(filepath.Join(dir, "rig.toml"), []byte(regexp.MustCompile(`(?m)^gallons_so_far = .*\n`).ReplaceAllString(rig, "")), 0o600))
		said := saidIn(t, dir, "bed", "reading 3", "yes", answer, "back")
		assert.Contains(t, said, "Nobody said how much DI water this fill had given before", answer)
		log := kept(t, dir)["log.toml"]
		assert.Equal(t, 1, strings.Count(log, "[[entry]]"), answer)
		if holds == "" {
			assert.NotContains(t, log, "gallons_so_far", answer)
			continue
		}
		assert.Contains(t, log, holds, answer)
		assert.NotContains(t, saidIn(t, dir, "bed", "back"), "if it was new", answer)
	}
}

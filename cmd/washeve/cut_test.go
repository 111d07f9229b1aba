//go:build unix

package main

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui"
	"washeve/ui/keys"
)

// ownEntry is a line of the log: what a person wrote, which enter shows in full.
var ownEntry = regexp.MustCompile(`^[ ›?]+ \d{4}-\d\d-\d\d (wash|stage|reading|resin|salt|correction) `)

// No label, notice or number of the program's own is cut in the usual window: at every
// station, and on each line that the hand comes to from there.
func TestNothingOfTheProgramsOwnIsCut(t *testing.T) {
	const lines = 40
	met, entries := map[string]bool{}, 0
	for _, st := range stations() {
		a := st.twin(t)
		for range lines {
			for _, line := range strings.Split(shown(a.View()), "\n") {
				switch {
				case !strings.Contains(line, "…") || met[line]:
				case ownEntry.MatchString(line):
					entries++
				default:
					assert.Fail(t, "cut short", "%s: %s", st.name, line)
				}
				met[line] = true
			}
			a = given(a, keys.Press("down")).(ui.App)
		}
	}
	assert.Positive(t, entries, "the mark of what is cut is known here")
	assert.Greater(t, len(met), 2000)
}

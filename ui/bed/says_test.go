package bed

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/screen"
)

// oneLine is what is seen, with its lines joined.
func oneLine(seen string) string { return strings.Join(strings.Fields(seen), " ") }

// Trouble that is found behind a long status is read to its end, and the answer above and
// the entry under the hand stay in sight.
func TestTroubleIsReadToItsEnd(t *testing.T) {
	const trouble = `Not all of the log can be read; the answer is by what could be. Mend this line (and 2 more): log.toml:431: error: reading "6" needs its unit; write it like 6 ppm NaCl`
	p := play(t, seasonOptions(t), "r 1 2 enter y")
	said := p.M.status
	p.Send(screen.Said{Text: trouble, Alarm: true, Behind: true})
	for _, words := range []string{said, trouble, "Tight: the next wash", "order by", "Log: 1 of 54", "2026-09-13 reading"} {
		assert.Contains(t, oneLine(p.Seen()), words)
	}
	p.Keys("down up")
	assert.NotContains(t, oneLine(p.Seen()), "Not all of the log", "it is read by then")
	assert.Contains(t, p.Seen(), "Teaches most")
}

// What could not be written is told to its end as well.
func TestWhyNothingWasStruckOutIsReadToItsEnd(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "x")
	o.book().Fail = errFull
	p.Keys("y")
	assert.Contains(t, oneLine(p.Seen()), "Not written: "+errFull.Error())
}

// While the hand walks through the log, or looks for something, there are more entries in
// sight; on the newest the notes are there again.
func TestTheLogHasMoreLinesWhileTheHandIsInIt(t *testing.T) {
	entry := regexp.MustCompile(`(?m)^[ ›?] 2026-\d\d-\d\d [a-z]+`)
	entries := func(seen string) int { return len(entry.FindAllString(seen, -1)) }
	p := play(t, seasonOptions(t), "")
	assert.Equal(t, 3, entries(p.Seen()))
	p.Keys("down")
	assert.Equal(t, 6, entries(p.Seen()))
	assert.Contains(t, p.Seen(), "next wash", "the picture stays")
	p.Keys("pgdown")
	assert.Contains(t, p.Seen(), "Log: 8 of 53", "a page is what is in sight")
	p.Keys("home")
	assert.Contains(t, p.Seen(), "Teaches most")
	assert.Equal(t, 6, entries(p.Keys("/").Seen()))
}

package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/planner"
)

// A line that may be left out says so to whoever types that its value is not known.
func TestWhatIsNotKnownIsLeftEmpty(t *testing.T) {
	o := ours(t)
	o.Make = planner.Make
	p := play(t, o, "b")
	onKey(t, p, "gallons_so_far")
	p.Keys("enter '?'")
	assert.Contains(t, p.M.edit.Says(), "leave it empty where it is not known; assumed: 0 gal (PRACTICE)")
	assert.Contains(t, p.Keys("enter").Says(), `Not taken: gallons so far "?": leave it empty where it is not known; assumed: 0 gal (PRACTICE).`)
	p.Keys("backspace enter w")
	onKey(t, p, "hardness")
	assert.Contains(t, p.Keys("enter 'unknown'").M.edit.Says(), "leave it empty where it is not known; assumed: ")
	p.Keys("ctrl+u enter")
	onKey(t, p, "tds")
	assert.Contains(t, p.Keys("enter 'unknown'").M.edit.Says(), "nothing is planned without it; write it like 240 ppm NaCl; 240 ppm NaCl stays")
}

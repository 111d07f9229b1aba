package bed

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/ui/cells"
)

// What no bed can show or give is asked about before it is written, and can be put right
// or written all the same.
func TestWhatLooksLikeASlipIsAskedAbout(t *testing.T) {
	for name, c := range map[string]struct{ script, again, says string }{
		"a reading over the feed":      {"r 4 5 0 enter y", "enter y", "450 ppm NaCl after the bed is above the "},
		"a wash of more than it holds": {"w '5000 gal' enter w", "w", "5000 gal of DI water is more than this fill can have given"},
	} {
		o := seasonOptions(t)
		before := len(o.book().Kept)
		p := play(t, o, c.script)
		seen := func() string { return strings.Join(strings.Fields(p.Seen()), " ") }
		assert.Contains(t, seen(), c.says, name)
		assert.Contains(t, seen(), "Write it all the same? y or n", name)
		assert.False(t, p.M.Typing(), name+": letters are an answer")
		p.Keys("n")
		assert.Contains(t, seen(), "Not written: put it right", name)
		assert.Len(t, o.book().Kept, before, name)
		assert.Error(t, p.M.Leave(), name)
		p.Keys(c.again + " y")
		assert.Len(t, o.book().Kept, before+1, name)
		assert.NoError(t, p.M.Leave(), name)
	}
}

// What a note is cut to where room is short ends as a sentence does.
func TestAdviceIsCutAtASentence(t *testing.T) {
	note := learning.Job{Main: learning.Use{Capacities: 1.0 / 300, Units: 27}, Limit: 0.03}.Advise(learning.Start().Learn(learning.Fill{}).States, 300, learning.Trial{}).Note
	lines := cells.Clauses(note.Text(quantity.US)+" e evidence tells more.", 78, 1, "")
	assert.Equal(t, []string{"No reading teaches much yet."}, lines)
	lines = cells.Clauses(note.Text(quantity.US)+" e evidence tells more.", 90, 1, "")
	assert.Equal(t, []string{"No reading teaches much yet: a bed like this one reads about the same whatever it holds."}, lines)
}

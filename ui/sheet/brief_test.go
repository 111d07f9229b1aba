package sheet_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/sheet"
)

// section is what stands under a title of a page of text, in one line.
func section(t *testing.T, page, title string) string {
	t.Helper()
	_, after, found := strings.Cut(page, "\n"+title+" ")
	require.True(t, found)
	var words []string
	for _, line := range strings.Split(after, "\n")[1:] {
		if strings.HasSuffix(line, "─") || strings.HasPrefix(line, "Shortened") {
			break
		}
		words = append(words, strings.Fields(line)...)
	}
	return strings.Join(words, " ")
}

// What does not fit is left out by whole texts and whole clauses, and it is told where all
// of it stands.
func TestWhatIsShortenedEndsWhole(t *testing.T) {
	s := example(t, quantity.US, long)
	page := func(heed ...string) string {
		s.Heed = heed
		return section(t, sheet.Text(s, false), "HEED")
	}
	wordy := "The first clause is long enough to fill more than a third of what there is of room here, and goes on; " + strings.Repeat("the second one has no end in sight ", 20)
	assert.Equal(t, "- The first clause is long enough to fill more than a third of what there is of room here, and goes on. ... the rest of it and 2 more: `washeve plan` has all", page(wordy, "Two.", "Three."))
	assert.Equal(t, "- One. - Two. ... 2 more: `washeve plan` has all", page("One.", "Two.", strings.Repeat("three ", 30), "Four."))
	assert.Equal(t, "- One. - Two. - Three.", page("One.", "Two.", "Three."), "what fits is whole")
	endless := page(strings.Repeat("endless ", 60))
	assert.True(t, strings.HasSuffix(endless, "... ... the rest of it: `washeve plan` has all"), endless)
	assert.True(t, strings.HasSuffix(section(t, sheet.Text(s, false), "CAUTIONS"), "."), "a paragraph ends with a clause")
}

// The step that the flush is due before is found by what it is, not by its name, which
// another step may have as well.
func TestTheFlushIsDueBeforeTheStepWithDIWater(t *testing.T) {
	s := example(t, quantity.US, func(r *model.Rig, p model.Places, w *model.Wash) {
		undated(r, p, w)
		w.Stages[0].Name = w.Stages[2].Name
	})
	assert.Contains(t, s.Gate.Flush, "to waste before any water goes on the left:")
}

package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/layout"
)

// Warnings of this plan and the cautions of every wash are counted apart, what is shown
// already taken off, in words that are whole in the narrowest pane.
func TestWhatIsLeftToHeedIsCounted(t *testing.T) {
	for _, c := range []struct {
		warnings, cautions, shown int
		long, short               string
	}{
		{2, 10, 1, "1 more warning, 10 usual cautions: f shows all", "1 more warning, 10 cautions: f shows all"},
		{3, 1, 1, "2 more warnings, 1 usual caution: f shows all", "2 more warnings, 1 caution: f shows all"},
		{1, 10, 0, "1 warning, 10 usual cautions: f shows all", "1 warning, 10 usual cautions: f shows all"},
		{2, 10, 2, "10 usual cautions: f shows all", "10 usual cautions: f shows all"},
		{2, 10, 11, "1 more usual caution: f shows all", "1 more usual caution: f shows all"},
		{13, 11, 1, "12 more warnings, 11 usual cautions: f shows all", "12 more warnings, 11 cautions: f shows all"},
		{4, 0, 1, "3 more warnings: f shows all", "3 more warnings: f shows all"},
	} {
		m := Model{plan: planner.Plan{Warnings: make([]planner.Note, c.warnings), Cautions: make([]planner.Note, c.cautions)}}
		assert.Equal(t, c.long, m.besides(c.shown, 60))
		narrow := layout.Plan(layout.Least(), layout.PlanNeeds{}).Notes.W
		assert.Equal(t, c.short, m.besides(c.shown, narrow))
		assert.LessOrEqual(t, cells.Width(c.short), narrow)
	}
}

// By words they are counted as well, and full tells each.
func TestWhatIsToHeedIsCountedByWords(t *testing.T) {
	o := ours(t)
	told := said(t, o, "full", "quit")
	assert.Contains(t, told, "To heed: 2 warnings, 2 usual cautions; full tells them.\n")
	for _, words := range []string{"Silica bites glass.", "Drain before frost."} {
		assert.Contains(t, told, words)
	}
	made := o.Make
	o.Make = func(r model.Rig, p model.Places, w model.Wash) (planner.Plan, error) {
		plan, err := made(r, p, w)
		plan.Warnings, plan.Cautions = nil, nil
		return plan, err
	}
	assert.NotContains(t, said(t, o, "quit"), "To heed")
}

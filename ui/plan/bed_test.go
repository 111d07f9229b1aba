package plan

import (
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/screen"
)

func TestTheBedIsOneKeyAway(t *testing.T) {
	o := ours(t)
	p := play(t, o, "B")
	assert.Contains(t, p.Seen(), "Not now: there is no log to write in.")
	d := &sample.Log{}
	o.Book = entry.Book{
		Logger: d, Clock: func() time.Time { return time.Date(2026, 6, 11, 21, 0, 0, 0, time.UTC) },
		Past:  func(r model.Rig, ps model.Places) *planner.Past { return planner.Recall(d.Kept, r, ps) },
		NewID: func(model.Moment) (string, error) { return "abc", nil },
	}
	p = play(t, o, "")
	msg, ok := p.Send(hands.Key("B")).(screen.Go)
	require.True(t, ok)
	page := msg.To
	for _, k := range hands.Keys("r 1 2 enter y") {
		page, _ = page.Update(k)
	}
	assert.Contains(t, ansi.Strip(page.View(p.S)), "12 ppm NaCl written, 4 gal flushed.")
	assert.Len(t, d.Kept, 1)
	_, cmd := page.Update(hands.Key("esc"))
	back := cmd().(screen.Back)
	assert.Equal(t, entry.Written{}, back.With)
	p.M.planned = false
	p.Send(back.With)
	assert.True(t, p.M.planned, "the plan is made anew")
}

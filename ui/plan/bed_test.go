package plan

import (
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/layout"
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
	assert.Contains(t, ansi.Strip(page.View(p.S)), "12 ppm written, 4 gal flushed.")
	assert.Len(t, d.Kept, 1)
	_, cmd := page.Update(hands.Key("esc"))
	back := cmd().(screen.Back)
	assert.Equal(t, entry.Written{}, back.With)
	p.M.planned = false
	p.Send(back.With)
	assert.True(t, p.M.planned, "the plan is made anew")
}

// Gallons that the rig states of a bed stay as they are while the log counts on: the line
// says what they are of, and what the fill has given by now.
func TestTheGallonsOfTheRigBesideTheLog(t *testing.T) {
	at := func(text string) model.Moment {
		m, err := model.ParseMoment(text, nil)
		require.NoError(t, err)
		return m
	}
	wash := model.Entry{ID: "a234567890123456", At: at("2026-05-02T09:30:00-06:00"), Body: &model.WashDone{Place: "Willow Bend", DI: quantity.Some(38 * quantity.Gallon)}}
	fill := model.Entry{ID: "b234567890123456", At: at("2026-05-03T09:30:00-06:00"), Body: &model.Refill{Resin: quantity.Some(0.4 * quantity.CubicFoot)}}
	lines := func(stated string, log ...model.Entry) *player {
		o := ours(t)
		set(t, &o.Rig.Beds[0], map[string]string{"gallons_so_far": stated})
		o.Book.Past = func(r model.Rig, ps model.Places) *planner.Past { return planner.Recall(model.NewLog(log), r, ps) }
		o.Make = func(r model.Rig, ps model.Places, w model.Wash) (planner.Plan, error) {
			memory := planner.Memory{Past: o.Book.Past(r, ps)}
			return memory.Make(r, ps, w)
		}
		return play(t, o, "b down down down")
	}
	onRig := func(p *player) string {
		page := p.Send(hands.Key("R")).(screen.Go).To
		for _, k := range hands.Keys("pgdown enter down down") {
			page, _ = page.Update(k)
		}
		return strings.Join(strings.Fields(ansi.Strip(page.View(layout.Size{W: 160, H: 60}))), " ")
	}
	help := func(p *player) string {
		return strings.TrimSpace(strings.Join(p.M.helpLines(p.M.rects().Help, p.M.rows()), " "))
	}
	p := lines("60 gal", wash)
	assert.Regexp(t, `› gallons so far +60 gal`, p.Seen())
	assert.Equal(t, "gallons so far: what the fill had given before the log began; by now it has given 98 gal", help(p))
	assert.Contains(t, onRig(p), "gallons so far: what the fill had given before the log began; by now it has given 98 gal", "the rig says the same")
	assert.NotContains(t, help(p.Keys("enter")), "before the log began", "while it is typed")
	p = lines("60 gal", wash, fill)
	assert.Equal(t, "gallons so far: of the fill before 2026-05-03, counts no more; this one has given 0 gal", help(p))
	assert.Regexp(t, `tank diameter +\(8 in\) PRAC`, p.Seen(), "what nobody stated is an assumption")
	p = lines("", wash)
	assert.Regexp(t, `› gallons so far +\(38 gal\)`, p.Seen())
	assert.Contains(t, onRig(p), "gallons so far (38 gal)")
	p = lines("", fill)
	assert.Contains(t, onRig(p), "gallons so far (0 gal) LOG")
	assert.Regexp(t, `› gallons so far +\(0 gal\) LOG`, p.Seen())
	assert.NotRegexp(t, `\) your|\) YOUR`, p.Seen(), "nothing is both assumed and the user's own")
	assert.NotContains(t, help(p), "assumed")
	p.S = layout.Size{W: 160, H: 60}
	assert.Contains(t, p.Says(), "; 0 gal by the log")
	assert.NotContains(t, lines("60 gal").Seen(), "before the log", "there is none")
}

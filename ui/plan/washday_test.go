package plan

import (
	"errors"
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
	"washeve/ui/washday"
)

func TestTheWashDayIsOneKeyAway(t *testing.T) {
	o := ours(t)
	assert.Contains(t, play(t, o, "W").Seen(), "Not now: there is no log to write in.")
	at := time.Date(2026, 6, 12, 7, 0, 0, 0, time.UTC)
	d := &sample.Log{}
	o.Book = entry.Book{
		Logger: d, Clock: func() time.Time { return at },
		Past:  func(r model.Rig, ps model.Places) *planner.Past { return planner.Recall(d.Kept, r, ps) },
		NewID: func(model.Moment) (string, error) { return "abc", nil },
	}
	var left error
	o.Means = washday.Means{
		Instant: func() model.Instant { return model.Instant{Wall: at} },
		Left:    func() (model.Underway, bool, error) { return model.Underway{}, false, left },
	}
	msg, ok := play(t, o, "").Send(hands.Key("W")).(screen.Go)
	require.True(t, ok)
	assert.Contains(t, ansi.Strip(msg.To.View(play(t, o, "").S)), "step 1 of")

	// What is under way is seen on the plan, until it is over.
	o.Means.Left = func() (model.Underway, bool, error) {
		u := model.Underway{ID: "abc", Plan: model.WashDone{Vehicle: "Old Goose"}, Steps: []model.DayStep{{Kind: model.SetUp, Stage: "set up"}, {Kind: model.PackUp, Stage: "drain and pack"}}}
		u.Deeds = []model.Deed{{Does: model.GoOn, At: model.Instant{Wall: at}}}
		return u, left == nil, nil
	}
	p := play(t, o, "")
	assert.NotContains(t, p.Seen(), "under way")
	p.Send(entry.Written{})
	assert.Contains(t, p.Seen(), "A wash is under way: Old Goose, step 2 of 2, drain and pack; W goes on with it.")
	p.Keys("v down")
	assert.Contains(t, p.Seen(), "A wash is under way", "a key does not take it away")
	only := o
	only.Rig.Vehicles = only.Rig.Vehicles[:1:1]
	one := play(t, only, "")
	one.Send(entry.Written{})
	one.Keys("v down enter ctrl+u 'Grey Heron' enter").Keys("down")
	assert.Contains(t, one.Seen(), "A wash is under way: Grey Heron, step 2 of 2", "its only vehicle has another name")
	left = errors.New("over")
	p.Send(entry.Written{})
	assert.NotContains(t, p.Seen(), "under way")
	left = nil
	o.Means.Left = func() (model.Underway, bool, error) { return model.Underway{}, false, left }

	_, there := New(o).LeftWash()
	assert.False(t, there, "nothing was left under way")
	left = errors.New("underway.toml:3: something")
	page, there := New(o).LeftWash()
	require.True(t, there)
	assert.Contains(t, ansi.Strip(page.View(play(t, o, "").S)), "underway.toml:3")
}

package washday

import (
	"errors"
	"testing"
	"time"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/form"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

// frames are the places of a wash that are stored.
func frames(t *testing.T) map[string]*player {
	return map[string]*player{
		"set-up":  fresh(t, ""),
		"running": fresh(t, "enter space 100s"),
		"over":    fresh(t, "enter space 6m"),
		"read":    fresh(t, "").to(model.Read).keys("r '14'"),
		"no-go":   fresh(t, "").to(model.Read).keys("r '14 ppm NaCl' enter esc"),
		"ways":    fresh(t, "").to(model.Read).keys("r '14 ppm NaCl' enter down"),
		"rinse":   fresh(t, "").to(model.Read).keys("r '3 ppm NaCl' enter enter").to(model.LetDry).keys("enter space 130s"),
		"done":    fresh(t, "enter space 5m enter").to(model.Flush).keys("space 5m enter r '3 ppm NaCl' enter").to(model.PackUp).keys("enter"),
	}
}

func TestFrames(t *testing.T) {
	for name, p := range frames(t) {
		for size, at := range map[string]layout.Size{"80x24": {W: 80, H: 24}, "140x40": {W: 140, H: 40}} {
			p.s = at
			golden.Check(t, *update, name+"-"+size+".txt", p.seen())
		}
		p.s = layout.Least()
		p.m.th = theme.New(theme.Options{Plain: true})
		plain := p.seen()
		golden.Check(t, *update, name+"-plain.txt", plain)
		for _, r := range plain {
			require.Less(t, r, rune(0x7f), "%s: plain is ASCII", name)
		}
	}
}

func TestNothingIsWrittenBeforeTheFirstDeed(t *testing.T) {
	p := fresh(t, "")
	assert.Nil(t, p.b.kept)
	p.keys("enter")
	require.NotNil(t, p.b.kept)
	assert.Len(t, p.b.kept.Deeds, 1)
}

func TestAStepIsTimedAndLogged(t *testing.T) {
	p := fresh(t, "enter space 90s")
	assert.Contains(t, p.seen(), "This step: 1:30 of 5:44, 2.0 gal of 7.5 gal")
	p.keys("space 60s space 30s")
	assert.Contains(t, p.seen(), "2:00 of 5:44")
	assert.Empty(t, p.b.log)
	p.keys("enter")
	require.Len(t, p.b.log, 1)
	s := p.b.log[0].Body.(*model.StageDone)
	assert.InDelta(t, 120, s.Duration.Or(0).Seconds(), 1e-9)
	assert.Equal(t, "2.6 gal", s.Used.Words())
	p.keys("b space 30s enter")
	require.Len(t, p.b.log, 3, "struck, and written anew")
	assert.Len(t, p.b.log.Effective(), 1)
}

func TestTheBellRingsOnceUnlessTheRigSaysNo(t *testing.T) {
	ring := func(says model.Answer) int {
		b := &bay{}
		o := b.options()
		o.Rig.Defaults.Bell, o.Tick = says, 0
		p := play(t, b, o, "enter space")
		for range 3 {
			b.at += 6 * time.Minute
			if bell := p.send(ticked{p.m.ticks}); bell != nil {
				bell()
			}
		}
		assert.Contains(t, p.seen(), "The planned time of this step is over.", "it is told in words too")
		return b.bells
	}
	assert.Equal(t, 1, ring(""))
	assert.Equal(t, 1, ring(model.Yes))
	assert.Equal(t, 0, ring(model.No))
}

var sink string

// BenchmarkKey is a key that starts or stops the time, with all that follows: the
// file, the log, the frame.
func BenchmarkKey(b *testing.B) {
	p := fresh(b, "enter")
	p.m.th = theme.New(theme.Options{Profile: termenv.ANSI256})
	for b.Loop() {
		if len(p.m.u.Deeds) > 200 {
			p.m.u.Deeds = p.m.u.Deeds[:1]
		}
		p.send(hands.Key(" "))
		sink = p.m.View(p.s)
	}
}

// What the screen has said and what is being typed outlive a lesson of the log.
func TestALessonLeavesWhatIsSaidAndTyped(t *testing.T) {
	m := New(Options{Desk: entry.Desk{Answer: func() (planner.Plan, *planner.Past, error) { return planner.Plan{}, nil, errors.New("no plan") }}, Means: Means{Instant: func() model.Instant { return model.Instant{} }}})
	m = m.say("Kept as underway-kept.toml.")
	m.ending = true
	assert.Equal(t, "Kept as underway-kept.toml.", m.learned().status)
	assert.True(t, m.learned().ending)
}

// A lesson that comes while the ways out are listed closes no list and moves no hand.
func TestALessonLeavesTheWaysOutOpen(t *testing.T) {
	p := fresh(t, "w down down")
	require.NotNil(t, p.m.picker)
	code, title := p.m.ways[p.m.picker.At].code, p.m.picker.Title
	p.send(entry.Learned{})
	require.NotNil(t, p.m.picker)
	assert.Equal(t, code, p.m.ways[p.m.picker.At].code)
	assert.Contains(t, p.seen(), title)
	p.b.log = model.NewLog([]model.Entry{{ID: "refill00", At: model.MomentOf(p.b.instant().Wall.Add(-time.Hour)), Body: &model.Refill{Bed: "half-foot tank"}}})
	was := p.m.picker.Options[0].Note
	p.send(entry.Learned{})
	assert.Contains(t, p.seen(), title)
	assert.NotEqual(t, was, p.m.picker.Options[0].Note, "what the log teaches is in the list")
	p.keys("esc enter space")
	assert.True(t, p.m.state.Running)
}

// The hand stays on its way though others come before it or are there no more.
func TestTheHandStaysOnItsWay(t *testing.T) {
	list := func(codes ...string) (ways []wayOut) {
		for _, c := range codes {
			ways = append(ways, wayOut{code: c})
		}
		return ways
	}
	for _, c := range []struct {
		was, now []wayOut
		at, want int
	}{
		{list("a", "b"), list("x", "a", "b"), 1, 2},
		{list("a", "b", "c"), list("a", "c"), 2, 1},
		{list("a", "b", "c"), list("a"), 2, 0},
	} {
		m := Model{ways: c.now, picker: &form.Picker{}}
		assert.Equal(t, c.want, m.handOn(c.at, c.was).picker.At)
	}
}

// In a window that is too small to draw the step the water is stopped and started, and
// what is typed or listed meanwhile stays.
func TestTheWaterIsStoppedUnseen(t *testing.T) {
	p := fresh(t, "")
	assert.Empty(t, p.m.UnseenKeys(), "the first step has no time")
	p.keys("enter space 90s f '4'")
	assert.Contains(t, p.m.UnseenWords(), "the time runs")
	p.send(screen.Blindly{Does: run})
	assert.Contains(t, p.m.UnseenWords(), "4:14; the time stands.")
	assert.Len(t, p.b.kept.Deeds, 3, "in the file at once")
	assert.Equal(t, "4", p.m.edit.Text())
	p.keys("esc x y")
	assert.Empty(t, p.m.UnseenWords(), "it is over")
	p.send(screen.Blindly{Does: run})
	assert.True(t, p.m.state.Over)
}

package compare

import (
	"fmt"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/store"
	"washeve/planner/compare"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// journey is the built-in trip, on the first of May.
func journey() Options {
	lib := store.Example()
	means := func() (compare.Answerer, compare.Yearly) {
		return compare.NewOneTrip(lib.WashLike, nil, model.Date{Year: 2026, Month: 5, Day: 1}), compare.Yearly{}
	}
	return Options{
		Base: compare.Case{Rig: lib.Rig, Places: lib.Places, Trip: &lib.Trips[0].Trip}, Means: means,
		Theme: theme.New(theme.Options{Profile: termenv.Ascii}), Size: layout.Least(),
	}
}

func TestFramesOfATrip(t *testing.T) {
	start := New(journey())
	for name, opt := range map[string]theme.Options{"dark": {Profile: termenv.ANSI256}, "plain": {Plain: true}} {
		for _, size := range []layout.Size{{W: 80, H: 24}, {W: 140, H: 40}} {
			p := onto(hands.Play(t, start, ""), "series")
			p.M.th = theme.New(opt)
			frame := p.M.View(size)
			hands.Fits(t, frame, size)
			golden.Check(t, *update, fmt.Sprintf("trip-%s-%dx%d.txt", name, size.W, size.H), strings.ReplaceAll(frame, "\x1b", "^[")+"\n")
		}
	}
}

func TestAWayOfATripBecomesItsPlan(t *testing.T) {
	p := onto(hands.Play(t, New(journey()), ""), "change-once")
	done := p.Send(hands.Key("enter")).(screen.Back).With.(Done)
	assert.Equal(t, "2026-06-09", done.Way.Case.Trip.Changes[0].Date.Words())
	onto(p, "drip").Keys("+")
	done = p.Send(hands.Key("enter")).(screen.Back).With.(Done)
	assert.Equal(t, "drip 2.5 min", done.Way.Name)
	assert.True(t, done.Way.Case.Trip.Pause.Given())
}

// What no edit can bring is told before the key is pressed, and so is what to do then,
// for a trip and for a wash.
func TestWhatCannotBeThePlanIsToldBeforeTheKey(t *testing.T) {
	for name, o := range map[string]Options{"trip": journey(), "wash": ours()} {
		start := New(o)
		for _, key := range []string{"series", "purified", "salted"} {
			p := onto(hands.Play(t, start, ""), key)
			frame := strings.Join(strings.Fields(p.Seen()), " ")
			assert.Contains(t, frame, "It cannot be made the plan: "+p.M.way().Only, "%s: %s", name, key)
			assert.Contains(t, frame, "Instead: "+p.M.way().Instead[:40], "%s: %s", name, key)
			assert.Contains(t, frame, "Only compared: enter cannot make it the plan; what to do instead stands above.", "%s: %s", name, key)
			assert.NotContains(t, frame, "enter make it the plan", "%s: %s", name, key)
			assert.Nil(t, p.Send(hands.Key("enter")))
			assert.Contains(t, p.Seen(), "Not now: "+p.M.way().Only)
		}
		assert.Contains(t, onto(hands.Play(t, start, ""), "drip").Seen(), "enter make it the plan", name)
	}
}

// Ways out of sight are told of in words, however many there are.
func TestWaysOutOfSightAreTold(t *testing.T) {
	for name, o := range map[string]Options{"trip": journey(), "wash": ours()} {
		p := hands.Play(t, New(o), "")
		all := len(p.M.table.Ways)
		assert.Contains(t, p.Seen(), fmt.Sprintf("More ways: %d to the right.", all-5), name)
		p.Keys("end")
		assert.Contains(t, p.Seen(), fmt.Sprintf("More ways: %d to the left.", all-5), name)
		p.Keys("left left left left")
		assert.Contains(t, p.Seen(), fmt.Sprintf("More ways: %d to the left, 1 to the right.", all-6), name)
		p.S = layout.Size{W: 300, H: 40}
		p.M = p.M.to(1)
		assert.NotContains(t, p.Seen(), "More ways", name)
	}
}

func TestWhereTheNumbersOfATripComeFrom(t *testing.T) {
	p := onto(hands.Play(t, New(journey()), ""), "change-once")
	page := ansi.Strip(p.Send(hands.Key("y")).(screen.Go).To.View(layout.Size{W: 100, H: 250}))
	for _, words := range []string{"all on spec", "no product", "lead time", "price of a fill", "order by", "lead time of resin", "The numbers of its first wash", "DI gallons"} {
		assert.Contains(t, page, words)
	}
}

// A line by words tells what a way is chosen by, and not the water that is much the same.
func TestAWayByWordsTellsWhatDecides(t *testing.T) {
	trip, _, _ := strings.Cut(New(journey()).Spoken().Things()[0].Text, "; best in")
	assert.Regexp(t, "^all on spec .+, order by .+, resin to buy .+, resin changes ", trip)
	assert.NotContains(t, trip, "raw water")
	assert.Regexp(t, "^chance it lasts .+, DI less flush .+, working time .+, resin and salt ", New(ours()).Spoken().Things()[0].Text)
}

package trip

import (
	"slices"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	ways "washeve/planner/compare"
	"washeve/ui/compare"
	"washeve/ui/screen"
)

// Rigged tells every screen that a way which was made the plan of a trip put something
// into the rig.
type Rigged struct {
	Rig  model.Rig
	What string // in words: "a tank of 1 ft3"
}

// notCompared tells why there are no ways to set side by side; "" where there are.
func (m *Model) notCompared() string {
	switch {
	case m.planErr != nil:
		return "there is no answer to compare with yet"
	case !slices.ContainsFunc(m.plan.Washes, counted):
		return "no wash has a day and a stop yet"
	}
	return ""
}

// openCompare sets ways of the trip side by side. It comes back with [compare.Done]
// where one is to be the plan.
func (m Model) openCompare() tea.Cmd {
	t := m.now.Clone()
	means := func() (ways.Answerer, ways.Yearly) {
		return ways.NewOneTrip(m.like, m.taught().log, m.seenOn()), ways.Yearly{}
	}
	page := compare.New(compare.Options{
		Base: ways.Case{Rig: m.rig, Places: m.places, Trip: &t}, Means: means,
		Theme: m.th, Units: m.sys, Size: m.size,
	})
	return func() tea.Msg { return screen.Go{To: page} }
}

// tookWay makes a way the plan of the trip, as one edit. What it puts into the rig goes
// to the plan, whose rig it is.
func (m Model) tookWay(way ways.Way) (screen.Screen, tea.Cmd) {
	var told tea.Cmd
	added, words := way.Buys, "The trip is now: "+way.Name+". "+m.th.Key("u", "undo")+" takes it back."
	if r := way.Case.Rig; len(r.Beds) > len(m.rig.Beds) || len(r.Sprayers) > len(m.rig.Sprayers) {
		if added == "" {
			added = r.Sprayers[len(r.Sprayers)-1].Name
		}
		m.rig = r
		msg := screen.Everyone{Msg: Rigged{Rig: r, What: added}}
		told = func() tea.Msg { return msg }
		words = "Now: " + way.Name + ". " + m.th.Key("u", "undo") + " takes that back; " + added + " stays in the rig."
	}
	return m.commit(way.Case.Trip.Clone()).done(words), told
}

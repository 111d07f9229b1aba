package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/screen"
	"washeve/ui/trip"
)

// noTrips tells why there are no trips to look at.
func (m Model) noTrips() string {
	if m.trips == nil {
		return "there is no place to keep trips"
	}
	return ""
}

// openTrip shows the trips, planned with the rig as it stands.
func (m Model) openTrip() tea.Cmd {
	w := m.now
	o := trip.Options{
		Rig: w.rig, Places: w.places, Wash: w.wash, Example: w.example, Keeper: m.trips, Memory: m.seen,
		Theme: m.th, Units: m.sys, Size: m.size,
	}
	if m.book.Past != nil {
		o.Past = func() *planner.Past { return m.book.Past(w.rig, w.places) }
	}
	if m.book.Clock != nil {
		o.Today = model.MomentOf(m.book.Clock()).Date()
	}
	page := trip.New(o)
	return func() tea.Msg { return screen.Go{To: page} }
}

// rigged takes what a way of a trip put into the rig, as one edit.
func (m Model) rigged(msg trip.Rigged) Model {
	w := m.now.clone()
	w.rig = msg.Rig
	w.rig.Defaults.Units = m.now.rig.Defaults.Units // which may have been turned meanwhile
	return m.commit(w.clone()).done("In the rig now, for the trip: " + msg.What + ". " + m.th.Key("u", "undo") + " takes it out.")
}

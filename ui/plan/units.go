package plan

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/keeping"
	"washeve/ui/screen"
)

// otherUnits shows everything in the other units, and has a rig of one's own say so from
// now on; the built-in example, which is kept nowhere, is only shown so.
func (m Model) otherUnits() Model {
	other := m.sys.Other()
	if m.now.example {
		m.sys = other
		return m.say("Shown in " + other.Words() + ".")
	}
	w := m.now.clone()
	if w.rig.Defaults.Units = model.Units(other.String()); w.rig.Defaults.Units == m.now.rig.Defaults.Units {
		m.sys = other // a flag said otherwise, for this once
		return m.say("Shown in " + other.Words() + ", as your rig says.")
	}
	return m.commit(w).done("Shown in " + other.Words() + " from now on; " + m.th.Key("u", "undo") + " takes that back.")
}

// inUnits follows another screen to its units, as if they were turned here. What the plan
// says stays; that the rig could not be saved is told on the other screen.
func (m Model) inUnits(sys quantity.System) (screen.Screen, tea.Cmd) {
	if sys == m.sys {
		return m, nil
	}
	status, alarm := m.status, m.alarm
	if m = m.otherUnits(); m.unsaved == nil || m.now.example {
		m.status, m.alarm = status, alarm
		return m, nil
	}
	why := "Shown in " + sys.Words() + " till the program ends. " + keeping.NotSaved(m.unsaved, m.th)
	return m, func() tea.Msg { return screen.Said{Text: why, Alarm: true} }
}

// statesUnits has a work that the example was left for state the units that are shown, where
// it states none: the next start is in them wherever it is made.
func (m Model) statesUnits() Model {
	if m.now.rig.Defaults.Units == "" {
		m.now.rig.Defaults.Units = model.Units(m.sys.String())
	}
	return m
}

// follows shows the units that a work states, where they are not those of the one in force.
func (m Model) follows(w work) Model {
	if stated := w.rig.Defaults.Units; stated != m.now.rig.Defaults.Units {
		m.sys = m.unsaid
		if sys, err := quantity.ParseSystem(string(stated)); err == nil {
			m.sys = sys
		}
	}
	return m
}

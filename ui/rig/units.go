package rig

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
)

// otherUnits shows the other units, and has a rig of one's own say so, as on the plan: the
// screen below takes them over.
func (m Model) otherUnits() Model {
	other := m.sys.Other()
	s := m.now.Clone()
	switch s.Rig.Defaults.Units = model.Units(other.String()); {
	case m.example:
		m.sys = other
		return m.say("Shown in " + other.Words() + ".")
	case s.Rig.Defaults.Units == m.now.Rig.Defaults.Units:
		m.sys = other // a flag said otherwise, for this once
		return m.say("Shown in " + other.Words() + ", as your rig says.")
	}
	return m.commit(s).done("Shown in " + other.Words() + " from now on.")
}

// inUnitsOf shows the units that a stock states, where they are not those of the one in force.
func (m Model) inUnitsOf(s stock.Stock) Model {
	stated := s.Rig.Defaults.Units
	if stated == m.now.Rig.Defaults.Units {
		return m
	}
	m.sys = m.unsaid
	if sys, err := quantity.ParseSystem(string(stated)); err == nil {
		m.sys = sys
	}
	return m
}

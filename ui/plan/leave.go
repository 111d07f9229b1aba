package plan

import "washeve/ui/trip"

// Leave takes what is being typed, but for the name of a new item, which is left out; and
// saves what is unsaved. What is typed and cannot be taken would be lost.
func (m Model) Leave() error {
	lost := m.dropped()
	if m.adding != nil {
		m.edit = nil
		m = m.leftOut()
	}
	if m.edit != nil {
		m = m.offered().finishEdit()
	}
	if m.now.example && m.changed {
		return m.notKept()
	}
	if m.unsaved != nil {
		m = m.save()
	}
	if m.unsaved != nil {
		return m.unsaved
	}
	if m.trips != nil {
		if err := trip.KeepLeft(m.trips, m.now.example); err != nil {
			return err
		}
	}
	return lost
}

// dropped is why leaving would lose what is being typed; nil where it is taken, or nothing
// is typed.
func (m *Model) dropped() error {
	switch {
	case m.edit == nil:
		return nil
	case m.adding != nil:
		return m.edit.LostName(m.editAt.section)
	}
	return m.edit.Lost(m.label())
}

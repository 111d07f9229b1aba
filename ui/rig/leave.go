package rig

// Leave takes what is being typed, but for the name of a new item, which is left out; and
// saves. It saves again what is saved: the screen below may have had older work to save
// meanwhile. What is typed and cannot be taken would be lost.
func (m Model) Leave() error {
	lost := m.dropped()
	if m.typing != nil && m.typing.fresh {
		m = m.abandoned()
	}
	if m.typing != nil {
		m = m.offered().finishTyping()
	}
	switch {
	case !m.changed:
		return lost
	case m.example:
		return m.notKept()
	}
	if err := m.kept().unsaved; err != nil {
		return err
	}
	return lost
}

// dropped is why leaving would lose what is being typed; nil where it is taken, or nothing
// is typed.
func (m *Model) dropped() error {
	switch {
	case m.typing == nil:
		return nil
	case m.typing.fresh:
		return m.typing.LostName(m.typing.ref.Section)
	}
	return m.typing.Lost(m.typing.label())
}

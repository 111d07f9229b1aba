package washday

import (
	"washeve/ui/form"
	"washeve/ui/keys"
)

// refuse says why a key does nothing. Where it would have asked for a text, what is typed
// behind it belongs to that text, and none of it may act.
func (m Model) refuse(b keys.Binding) Model {
	m.refused, m.behind = b.Does == read || b.Does == check, false
	return m.warn(b.NotNow())
}

// heeded lets the letters act again.
func (m Model) heeded() Model {
	m.refused, m.behind = false, false
	return m
}

// refusedKeys are those after a text was refused. The water is turned on and off as before
// while nothing of a text is typed: a space is part of one only then.
func (m Model) refusedKeys() []keys.Binding {
	all := form.RefusedKeys()
	if !m.behind && !m.offered {
		all = append(all, m.runKey())
	}
	return all
}

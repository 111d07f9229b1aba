package guide

import (
	"strings"

	"washeve/ui/keys"
	"washeve/ui/layout"
)

// View draws the page, with its own keys at the foot.
func (m Model) View(size layout.Size) string {
	lines := strings.Split(m.reader.View(size), "\n")
	if last := len(lines) - 1; last > 0 && last == size.H-1 {
		lines[last] = keys.Hint(m.Keys(), m.th, size.W)
	}
	return strings.Join(lines, "\n")
}

package reader

import (
	"fmt"
	"strings"

	"github.com/charmbracelet/x/ansi"

	"washeve/ui/cells"
	"washeve/ui/keys"
	"washeve/ui/layout"
)

// View draws the page.
func (m Model) View(size layout.Size) string {
	if size != m.size {
		m = m.sized(size)
	}
	lines := make([]string, 0, size.H)
	lines = append(lines, m.th.Strong.On(cells.Clip(m.title, size.W, m.th.Marks.More)))
	for i := range m.rows() {
		line := ""
		if at := m.top + i; at < len(m.lines) {
			line = " " + m.marked(m.lines[at])
		}
		lines = append(lines, line)
	}
	lines = append(lines, m.status(size.W), keys.Hint(m.Keys(), m.th, size.W))
	return strings.Join(lines[:min(len(lines), size.H)], "\n")
}

// marked puts a mark before a line that holds what is looked for.
func (m Model) marked(line string) string {
	wanted := strings.ToLower(m.search.text)
	if wanted == "" || m.search.typing || !strings.Contains(strings.ToLower(ansi.Strip(line)), wanted) {
		return line
	}
	return m.th.Accent.On(m.th.Marks.Here) + line
}

func (m Model) status(width int) string {
	text := ""
	switch {
	case m.search.typing:
		return cells.Clip(m.th.Accent.On("find: "+m.search.text)+"_", width, "")
	case m.note != "":
		text = m.note
	case m.search.missed:
		text = fmt.Sprintf("%q is not on this page", m.search.text)
	case len(m.lines) > m.rows():
		text = fmt.Sprintf("lines %d to %d of %d", m.top+1, min(m.top+m.rows(), len(m.lines)), len(m.lines))
	}
	return m.th.Muted.On(cells.Clip(text, width, ""))
}

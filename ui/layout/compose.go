package layout

import (
	"sort"
	"strings"

	"washeve/ui/cells"
	"washeve/ui/thrift"
)

// Placed is a block of lines and where it goes.
type Placed struct {
	At    Rect
	Lines []string
}

// Compose draws blocks that do not overlap onto a screen. What does not fit
// into its rectangle is cut; blanks at the ends of lines are left out.
func Compose(size Size, blocks []Placed) string {
	sorted := append([]Placed(nil), blocks...)
	sort.SliceStable(sorted, func(i, j int) bool { return sorted[i].At.X < sorted[j].At.X })
	lines := make([]string, max(size.H, 0))
	for y := range lines {
		lines[y] = composeLine(size.W, y, sorted)
	}
	return strings.Join(lines, "\n")
}

func composeLine(width, y int, blocks []Placed) string {
	var b strings.Builder
	x := 0
	for _, block := range blocks {
		at := block.At
		row := y - at.Y
		if at.Empty() || row < 0 || row >= at.H || row >= len(block.Lines) || at.X < x {
			continue
		}
		text := cells.Clip(block.Lines[row], min(at.W, width-at.X), "")
		used := cells.Width(text)
		if used == 0 {
			continue
		}
		b.WriteString(cells.Blank(at.X - x))
		b.WriteString(text)
		x = at.X + used
	}
	return thrift.Line(strings.TrimRight(b.String(), " "))
}

package report

import (
	"slices"
	"strings"

	"washeve/ui/cells"
)

// Columns lays a table out, its heading first. All lines are equally wide.
func Columns(t Table) []string { return columns(t, "  ") }

// ColumnsWithin is [Columns] for so many cells. Where the table is wider, a unit that all of
// a column has stands in its head, then a single space stands between the columns; what is
// wider still is left so.
func ColumnsWithin(t Table, width int) []string {
	lines := Columns(t)
	if cells.Width(lines[0]) <= width {
		return lines
	}
	t = t.unitsInHeads()
	if lines = Columns(t); cells.Width(lines[0]) <= width {
		return lines
	}
	return columns(t, " ")
}

func columns(t Table, gap string) []string {
	all := append([][]string{t.Head}, t.Rows...)
	widths := make([]int, len(t.Head))
	for i := range widths {
		widths[i] = t.widthOf(i)
	}
	lines := make([]string, len(all))
	for y, row := range all {
		parts := make([]string, len(row))
		for i, cell := range row {
			if t.Numeric[i] {
				parts[i] = cells.Right(cells.Safe(cell), widths[i])
			} else {
				parts[i] = cells.Fit(cells.Safe(cell), widths[i])
			}
		}
		lines[y] = strings.Join(parts, gap)
	}
	return lines
}

// widthOf is the width of a column, its head counted.
func (t Table) widthOf(column int) int {
	width := cells.Width(cells.Safe(t.Head[column]))
	for _, row := range t.Rows {
		width = max(width, cells.Width(cells.Safe(row[column])))
	}
	return width
}

// unitsInHeads is the table with the unit of a column in its head, where all of its numbers
// have the same and the column gets no wider by it.
func (t Table) unitsInHeads() Table {
	out := Table{Head: slices.Clone(t.Head), Numeric: t.Numeric}
	for _, row := range t.Rows {
		out.Rows = append(out.Rows, slices.Clone(row))
	}
	for i := range t.Head {
		unit := t.unitOf(i)
		if unit == "" {
			continue
		}
		out.Head[i] += unit
		for _, row := range out.Rows {
			row[i] = strings.TrimSuffix(row[i], unit)
		}
		if out.widthOf(i) <= t.widthOf(i) {
			continue
		}
		out.Head[i] = t.Head[i]
		for y, row := range out.Rows {
			row[i] = t.Rows[y][i]
		}
	}
	return out
}

// unitOf is what stands behind all numbers of a column, with its space; "" where they differ.
func (t Table) unitOf(column int) string {
	unit := ""
	for _, row := range t.Rows {
		cell := row[column]
		if !t.Numeric[column] || !strings.ContainsAny(cell, "0123456789") {
			continue
		}
		own := cell[max(strings.LastIndex(cell, " "), 0):]
		if !strings.HasPrefix(own, " ") || unit != "" && own != unit {
			return ""
		}
		unit = own
	}
	return unit
}

package report

import (
	"strings"

	"washeve/model/quantity"
	"washeve/planner/compare"
	"washeve/ui/cells"
)

// The columns of a comparison: the labels, and each way with a blank and its
// mark before it. Five fit a page.
const (
	CompareLabel  = 15
	CompareColumn = 13
	compareCell   = CompareColumn - 2
)

// Cell writes one figure of a way.
func Cell(r compare.Row, c compare.Cell, sys quantity.System) string {
	switch {
	case !c.Known && c.Words == "":
		return "unknown"
	case c.Value.Kind == nil:
		return cells.Safe(c.Words)
	case r.Key == "time":
		return Time(quantity.Duration(c.Value.SI))
	case r.Key == "chance" || r.Key == "advised":
		return Odds(quantity.Fraction(c.Value.SI))
	}
	return c.Value.Show(sys)
}

// Head is the name of a way in two lines of so many cells.
func Head(w compare.Way, width int, more string) [2]string {
	var head [2]string
	copy(head[:], cells.WrapMost(cells.Safe(w.Name), width, 2, more))
	return head
}

// Compare prints the ways side by side, the plan's own beside each four of the
// others, and below what each changes. Best is the mark before the best figure of
// a row.
func Compare(t compare.Table, sys quantity.System, columns int, best, more string) string {
	var b strings.Builder
	b.WriteString(strings.Join(cells.Wrap(cells.Safe(CompareHeading(t)), columns), "\n") + "\n")
	for _, block := range compareBlocks(len(t.Ways), columns) {
		b.WriteString("\n")
		for _, line := range compareLines(t, block, sys, best, more) {
			b.WriteString(strings.TrimRight(line, " ") + "\n")
		}
	}
	b.WriteString("\n" + best + " best in its row; rows in which all are equal have none.\n")
	for i, w := range t.Ways[1:] {
		b.WriteString("\n" + cells.Safe(w.Name) + "\n")
		for _, text := range WayWords(t, i+1, sys) {
			for _, line := range cells.Wrap(cells.Safe(text), columns-2) {
				b.WriteString("  " + line + "\n")
			}
		}
	}
	for _, text := range CompareRest(t, sys) {
		b.WriteString("\n" + strings.Join(cells.Wrap(cells.Safe(text), columns), "\n") + "\n")
	}
	return b.String()
}

// compareBlocks lists the ways that stand side by side, the plan's own first in
// each block.
func compareBlocks(ways, columns int) [][]int {
	beside := max((columns-CompareLabel)/CompareColumn-1, 1)
	var blocks [][]int
	for from := 1; from < ways || from == 1; from += beside {
		block := []int{0}
		for i := from; i < min(from+beside, ways); i++ {
			block = append(block, i)
		}
		blocks = append(blocks, block)
	}
	return blocks
}

// CompareRows are the rows that say something. One that is unknown of every way for the
// same reason as a row above it says nothing more.
func CompareRows(t compare.Table) []compare.Row {
	var rows []compare.Row
	said := map[string]bool{}
	for _, r := range t.Rows {
		why := unknownOfAll(r)
		if why == "" || !said[why] {
			rows = append(rows, r)
		}
		said[why] = true
	}
	return rows
}

// unknownOfAll is why a row is unknown of every way; "" where it is known of any.
func unknownOfAll(r compare.Row) string {
	for _, c := range r.Cells {
		if c.Known || c.Words != "" || c.Why != r.Cells[0].Why {
			return ""
		}
	}
	return r.Cells[0].Why
}

func compareLines(t compare.Table, block []int, sys quantity.System, best, more string) []string {
	lines := compareHeads(t, block)
	for _, r := range CompareRows(t) {
		line, marked := cells.Fit(r.Label, CompareLabel), Best(r, sys)
		for _, at := range block {
			mark := ""
			if marked[at] {
				mark = best
			}
			line += CompareText(r, at, sys, mark, more)
		}
		lines = append(lines, line)
	}
	return lines
}

// compareHeads are the names of the ways in as many lines as the longest takes.
func compareHeads(t compare.Table, block []int) []string {
	heads, lines := make([][]string, len(block)), 2
	for i, at := range block {
		heads[i] = cells.Wrap(cells.Safe(t.Ways[at].Name), compareCell)
		lines = max(lines, len(heads[i]))
	}
	text := make([]string, lines)
	for k := range text {
		text[k] = cells.Blank(CompareLabel)
		for _, head := range heads {
			word := ""
			if k < len(head) {
				word = head[k]
			}
			text[k] += "  " + cells.Right(word, compareCell)
		}
	}
	return text
}

// CompareText is the figure of a way as wide as its column, with its mark before it.
func CompareText(r compare.Row, way int, sys quantity.System, mark, more string) string {
	return " " + cells.Right(mark+cells.Clip(Cell(r, r.Cells[way], sys), compareCell, more), CompareColumn-1)
}

// Best tells by way which are the best of a row as it is written: whatever shows the text
// of a best figure is as good as it. Where that is all that is known, none is.
func Best(r compare.Row, sys quantity.System) []bool {
	texts, shown := make([]string, len(r.Cells)), map[string]bool{}
	for i, c := range r.Cells {
		texts[i] = Cell(r, c, sys)
		if c.Best {
			shown[texts[i]] = true
		}
	}
	best, others := make([]bool, len(r.Cells)), false
	for i, c := range r.Cells {
		best[i] = c.Known && shown[texts[i]]
		others = others || c.Known && !best[i]
	}
	if !others {
		return make([]bool, len(r.Cells))
	}
	return best
}

// CompareHeading names what is compared: the wash or the trip.
func CompareHeading(t compare.Table) string {
	base := t.Ways[0].Figures
	if base.Trip != nil {
		return TripHeading(*base.Trip)
	}
	return Heading(base.Plan)
}

// WayWords tells of a way what it changes, whether it can be made the plan and what to
// do where it cannot, and what to know and to heed.
func WayWords(t compare.Table, way int, sys quantity.System) []string {
	w := t.Ways[way]
	words := []string{w.Changes}
	if kept := WayKept(w); kept != "" {
		words = append(words, kept)
	}
	words = append(words, w.Tells...)
	if p := w.Figures.Trip; p != nil && p.Late {
		words = append(words, "The day to order by is past: order now.")
	}
	return append(words, t.Warns(way, sys)...)
}

// WayKept tells what stands in the way of making it the plan, and what to do about
// that; "" where nothing does.
func WayKept(w compare.Way) string {
	switch {
	case w.Buys != "":
		return "Your rig has no such thing: this takes " + w.Buys + ". The plan stays as it is until you put it in."
	case w.Only != "":
		return "It cannot be made the plan: " + w.Only + ". Instead: " + w.Instead + "."
	}
	return ""
}

// Unknown tells what is not known of the plan's own way, and why.
func Unknown(t compare.Table) []string {
	var out []string
	seen := map[string]bool{}
	for _, r := range t.Rows {
		if c := r.Cells[0]; !c.Known && c.Words == "" && !seen[c.Why] {
			seen[c.Why] = true
			out = append(out, "Unknown ("+r.Label+"): "+c.Why+".")
		}
	}
	return out
}

// bedMeasures tells the two measures of a bed in the table of a wash apart.
const bedMeasures = `"bed left before" is what is left in the bed before the wash, after all readings: half of such beds have less. "a fill gives" is what the fill in the way's tank gives in all, what it gave already included: by the readings where they taught, as stated where nothing did. Money goes by that.`

// softMeasure tells when the softener is looked at.
const softMeasure = `"soft left after" is the soft water that is left in the softener after the wash, until its next salt.`

// compareWaters tells of which waters "water in all" is the sum.
func compareWaters(f compare.Figures, sys quantity.System) string {
	parts := []string{quantity.Show(f.DI, sys) + " of DI"}
	for _, w := range []struct {
		of     quantity.Volume
		called string
	}{{f.Softened, "softened"}, {f.Raw, "raw"}, {f.Through - f.DI, "to flush"}} {
		if w.of > 0 {
			parts = append(parts, quantity.Show(w.of, sys)+" "+w.called)
		}
	}
	return `"Water in all" counts the flush: ` + quantity.Show(f.Water, sys) + " as planned are " + strings.Join(parts, ", ") + "."
}

// CompareRest tells what the waters and the figures of the bed are, what is not known, and which ways
// are not compared.
func CompareRest(t compare.Table, sys quantity.System) []string {
	out := []string{compareWaters(t.Ways[0].Figures, sys)}
	if f := t.Ways[0].Figures; f.Trip == nil {
		out = append(out, bedMeasures)
		if f.Plan.Softener != nil {
			out = append(out, softMeasure)
		}
	}
	out = append(out, Unknown(t)...)
	for _, s := range t.Skipped {
		out = append(out, "Not compared: "+s.Name+"; "+s.Why+".")
	}
	return out
}

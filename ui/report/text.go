package report

import (
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
)

// Text is the plan as it is printed: the verdict first, then what to do. No
// line is wider than width where words can be broken; plain leaves out all
// drawing characters.
func Text(p planner.Plan, sys quantity.System, plain bool, width int) string {
	return (&page{width: max(width, 40), plain: plain}).plan(p, sys)
}

// Told is the plan as it is read out: plain, and no figure says by its column alone
// what it is.
func Told(p planner.Plan, sys quantity.System, width int) string {
	return (&page{width: max(width, 40), plain: true, told: true}).plan(p, sys)
}

func (w *page) plan(p planner.Plan, sys quantity.System) string {
	w.line(Heading(p))
	w.verdict(p, sys)
	w.shortage(p, sys)
	w.rows("Water", Water(p, sys))
	if drip := Drip(p, sys); drip != "" {
		w.wrapped("  ", "  ", drip)
	}
	w.flows(p, sys)
	w.prose("Before a reading", Flush(p, sys))
	w.stages(p, sys)
	w.table("Faces", FaceTable(p, sys))
	w.day(p, sys)
	w.rows("Bed", Bed(p, sys))
	w.rows("Softener", Softener(p, sys))
	w.prose("Cost", Cost(p, sys))
	w.notes("Warnings", p.Warnings, sys)
	w.notes("Cautions", p.Cautions, sys)
	w.assumptions(p, sys)
	return w.String()
}

// page gathers lines.
type page struct {
	strings.Builder
	width int
	plain bool
	told  bool // a table is told row by row
}

func (w *page) line(text string) {
	w.WriteString(strings.TrimRight(cells.Safe(text), " "))
	w.WriteByte('\n')
}

// wrapped writes text in lines that start with first, then with rest.
func (w *page) wrapped(first, rest, text string) {
	for i, part := range cells.Wrap(cells.Safe(text), max(w.width-cells.Width(first), 20)) {
		if i > 0 {
			first = rest
		}
		w.line(first + part)
	}
}

func (w *page) heading(text string) {
	w.WriteByte('\n')
	w.line(text)
	if !w.plain {
		w.line(cells.Repeat("─", cells.Width(text)))
	}
}

func (w *page) verdict(p planner.Plan, sys quantity.System) {
	w.WriteByte('\n')
	w.line(strings.ToUpper(Judged(&p)))
	w.wrapped("", "", "Chance that it lasts: "+Lasting(&p)+". "+Remaining(p, sys))
}

func (w *page) rows(title string, rows []Row) {
	if len(rows) == 0 {
		return
	}
	w.heading(title)
	label, value := 0, 0
	for _, r := range rows {
		label, value = max(label, cells.Width(cells.Safe(r.Label))), max(value, cells.Width(r.Value))
	}
	for _, r := range rows {
		first := "  " + cells.Fit(cells.Safe(r.Label), label) + "  " + cells.Right(r.Value, value) + "  "
		w.wrapped(first, cells.Blank(cells.Width(first)), r.Note)
	}
}

func (w *page) flows(p planner.Plan, sys quantity.System) {
	w.rows("How fast", Flows(p, sys))
	var limits []string
	for _, c := range Caps(p) {
		limits = append(limits, Bound(c.Name)+" "+Most(c.Flow, sys))
	}
	if len(limits) > 0 {
		w.wrapped("  limits: ", "          ", strings.Join(limits, ", "))
	}
}

func (w *page) stages(p planner.Plan, sys quantity.System) {
	if len(p.Stages) == 0 {
		return
	}
	w.heading("Steps")
	for i, row := range Stages(p, sys).Rows {
		number, name, water, flow, volume, time, faces := row[0], row[1], row[2], row[3], row[4], row[5], row[6]
		w.wrapped("  "+number+". ", "     ", name+", "+water+" water, "+faces)
		w.wrapped("     ", "     ", flow+", "+volume+", "+time)
		if valves := Valves(p.Stages[i].Valves); valves != "" {
			w.wrapped("     valves: ", "             ", valves)
		}
	}
}

func (w *page) prose(title, text string) {
	w.heading(title)
	w.wrapped("  ", "  ", text)
}

func (w *page) notes(title string, notes []planner.Note, sys quantity.System) {
	if len(notes) == 0 {
		return
	}
	w.heading(title)
	for _, n := range notes {
		w.wrapped("  - ", "    ", n.Text(sys))
	}
}

func (w *page) assumptions(p planner.Plan, sys quantity.System) {
	if len(p.Assumptions) == 0 {
		return
	}
	w.heading("What this rests on")
	for _, row := range Assumptions(p.Assumptions, sys).Rows {
		first := "  " + cells.Fit(row[2], 9) + "  "
		text := row[0] + ": " + row[1]
		if row[3] != "" {
			text += " (" + row[3] + ")"
		}
		w.wrapped(first, cells.Blank(cells.Width(first)), text)
	}
}

// table writes columns where they fit into the width, and a paragraph a row
// where they do not.
func (w *page) table(title string, t Table) {
	if len(t.Rows) == 0 {
		return
	}
	w.heading(title)
	lines := Columns(t)
	if w.told || cells.Width(lines[0])+2 > w.width {
		for _, row := range t.Rows {
			w.wrapped("  - ", "    ", paragraph(t.Head, row))
		}
		return
	}
	for _, line := range lines {
		w.line("  " + line)
	}
}

func paragraph(head, row []string) string {
	parts := make([]string, 0, len(row))
	for i, cell := range row {
		if head[i] == "" || i == 0 {
			parts = append(parts, cell)
			continue
		}
		parts = append(parts, head[i]+" "+cell)
	}
	return strings.Join(parts, ", ")
}

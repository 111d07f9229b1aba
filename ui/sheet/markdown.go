package sheet

import (
	"fmt"
	"strings"
)

// Markdown is the sheet with boxes and tables, as wide as it comes. What came
// from a person is written so that no reader takes it for markup.
func Markdown(s Sheet) string {
	m := &markdown{}
	m.paragraph("# " + literal(s.Title))
	if s.Notice != "" {
		m.paragraph("*" + s.Notice + "*")
	}
	m.paragraph("**" + s.Verdict + ".** " + literal(s.Chance+". "+s.Left))
	m.paragraph("**" + literal(s.Rules) + "**")
	m.list("Heed", s.Heed)
	m.tonight(s.Tonight)
	m.day(s.Day)
	m.steps(s.Steps)
	m.gate(s.Gate)
	m.list("How fast", s.Flow)
	m.after(s)
	m.list("Cautions", s.Caution)
	if len(s.Assumed) > 0 {
		m.heading("Not stated, and taken instead")
		m.paragraph("<small>" + literal(strings.Join(s.Assumed, "; ")) + "</small>")
	}
	m.paragraph("An estimate: the pen in the stream decides.")
	m.WriteString("<!-- " + mark + " -->\n")
	return Seal(m.String())
}

type markdown struct{ strings.Builder }

// literal keeps every mark of Markdown and HTML from being one.
var literal = strings.NewReplacer(
	`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "#", `\#`, "[", `\[`, "]", `\]`, "|", `\|`, "~", `\~`, "!", `\!`,
	"<", "&lt;", ">", "&gt;", "&", "&amp;", "\n", " ",
).Replace

func (m *markdown) paragraph(text string) { m.WriteString(text + "\n\n") }

func (m *markdown) heading(text string) { m.paragraph("## " + text) }

func (m *markdown) list(title string, texts []string) {
	if len(texts) == 0 {
		return
	}
	m.heading(title)
	m.items("- ", texts)
}

func (m *markdown) items(dash string, texts []string) {
	for _, t := range texts {
		m.WriteString(dash + literal(t) + "\n")
	}
	m.WriteByte('\n')
}

// table writes rows, each with a box before it.
func (m *markdown) table(head []string, rows [][]string) {
	m.WriteString("| done |" + cellsOf(head) + "\n| --- |" + strings.Repeat(" --- |", len(head)) + "\n")
	for _, row := range rows {
		m.WriteString("| [ ] |" + cellsOf(row) + "\n")
	}
	m.WriteByte('\n')
}

func cellsOf(row []string) string {
	line := ""
	for _, cell := range row {
		line += " " + literal(cell) + " |"
	}
	return line
}

func (m *markdown) tonight(all []Box) {
	if len(all) == 0 {
		return
	}
	m.heading("Tonight, in this order")
	for _, b := range all {
		m.WriteString("- [ ] **" + literal(b.What) + "**: " + literal(b.Why) + "\n")
	}
	m.WriteByte('\n')
}

func (m *markdown) day(d Day) {
	m.heading("The day")
	m.paragraph(literal(d.Start + ". " + d.How))
	if len(d.Notes) > 0 {
		m.items("- ", d.Notes)
	}
	head := []string{"face", "DI", "outlook"}
	if d.Timed {
		head = append(head, "from", "to", "section", "dries", "because")
	}
	var rows [][]string
	for _, t := range d.Turns {
		row := []string{t.Face, t.DI, t.Outlook}
		if d.Timed {
			row = append(row, t.From, t.To, t.Section, t.Dries, t.Why)
		}
		rows = append(rows, row)
	}
	if len(rows) > 0 {
		m.table(head, rows)
	}
}

func (m *markdown) steps(all []Step) {
	if len(all) == 0 {
		return
	}
	m.heading("The steps")
	head := []string{"step", "water", "faces", "with", "flow", "takes", "time"}
	for _, v := range all[0].Valves {
		head = append(head, v.Unit)
	}
	var rows [][]string
	for _, s := range all {
		row := []string{fmt.Sprintf("%d. %s", s.Number, s.Name), s.Water, s.Faces, s.Sprayer, s.Flow, s.Volume, s.Time}
		if s.Dry {
			row[4], row[5] = "none", "none"
		}
		for i := range all[0].Valves {
			row = append(row, s.stand(i))
		}
		rows = append(rows, row)
	}
	m.table(head, rows)
}

func (m *markdown) gate(g Gate) {
	if !g.Present {
		return
	}
	m.heading("Before the first DI rinse")
	m.WriteString("- [ ] " + literal(g.Flush) + "\n- [ ] Pen: \\_\\_\\_\\_\\_\\_ ppm, flow: \\_\\_\\_\\_\\_\\_, time: \\_\\_\\_\\_\\_\\_. Expect " + literal(g.Expect) + ".\n")
	m.WriteString("- **GO**: " + literal(clean(g.Go)+". "+g.Later) + "\n- **NO-GO**: the pen shows more. Then:\n")
	m.items("  - ", g.NoGo)
}

func (m *markdown) after(s Sheet) {
	m.heading("When done")
	if s.Gate.Present {
		m.WriteString("- [ ] Pen: \\_\\_\\_\\_\\_\\_ ppm, DI and flush: \\_\\_\\_\\_\\_\\_, time: \\_\\_\\_\\_\\_\\_. Expect " + literal(s.Gate.End) + ".\n")
	}
	m.items("- [ ] ", s.After)
}

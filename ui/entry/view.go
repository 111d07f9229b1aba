package entry

import (
	"fmt"

	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/theme"
)

// Lines draws the form in at most height lines of width cells: its title, the
// rows around the hand, and what there is to say of the one under it.
func (f Form) Lines(th theme.Theme, width, height int) []string {
	if height < 3 {
		return nil
	}
	if f.picker != nil {
		return f.picker.Lines(th, width, height)
	}
	help := f.help(th, width, min(2, height/4))
	if f.asked != "" {
		help = nil
		for _, line := range cells.WrapMost(cells.Safe(allTheSame(f.asked, th.YesOrNo())), width, max(height-2, 1), th.Marks.More) {
			help = append(help, th.Doubt.On(line))
		}
	}
	room := height - 1 - len(help)
	lines := []string{f.head(th, width, room)}
	from := min(max(f.hand-room+2, 0), max(len(f.rows)-room, 0))
	e := f.entry.Clone()
	for i := from; i < min(from+room, len(f.rows)); i++ {
		field, ok := f.field(&e, f.rows[i])
		if !ok {
			continue
		}
		row := form.Row{Label: field.Label, Value: f.shown(field), Must: field.Required && field.Key != "id", Here: i == f.hand}
		if field.Key == "id" && !field.Given() {
			row.Assumed = "given when it is written"
		}
		if row.Here {
			row.Edit = f.edit
		}
		lines = append(lines, row.Line(th, width))
	}
	for len(lines) < height-len(help) {
		lines = append(lines, "")
	}
	return append(lines, help...)
}

// head is the title and, where not all rows are seen, which of how many the hand is on.
func (f Form) head(th theme.Theme, width, room int) string {
	where := ""
	if len(f.rows) > room {
		where = fmt.Sprintf("  line %d of %d", f.hand+1, len(f.rows))
	}
	title := cells.Clip(cells.Safe(f.Title), max(width-cells.Width(where), 0), th.Marks.More)
	return th.Strong.On(title) + th.Muted.On(cells.Clip(where, width-cells.Width(title), th.Marks.More))
}

// help is about the field under the hand, or what is wrong with it.
func (f Form) help(th theme.Theme, width, most int) []string {
	field, ok := f.here()
	if !ok {
		return nil
	}
	text, ink := field.Label+": "+form.Help(field, f.edit != nil), th.Muted
	if f.edit != nil && f.edit.IsWhole() {
		text, ink = f.edit.OverHelp(form.Like(field)), th.Text
	}
	if f.edit != nil && f.edit.Says() != "" {
		text, ink = f.edit.Says(), f.edit.Ink(th)
	}
	if f.status != "" {
		text, ink = f.status, th.Doubt
	}
	var lines []string
	for _, line := range cells.Clauses(cells.Safe(text), width, most, th.Marks.More) {
		lines = append(lines, ink.On(line))
	}
	return lines
}

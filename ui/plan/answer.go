package plan

import (
	"cmp"
	"fmt"
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// answerBlocks draws the plan, or what it still needs.
func (m *Model) answerBlocks(r layout.PlanRects) []layout.Placed {
	if !m.planned {
		return []layout.Placed{
			{At: r.Verdict, Lines: []string{m.th.Doubt.On(m.th.Marks.Doubt + " No plan yet")}},
			{At: r.Numbers, Lines: m.needLines(r.Numbers)},
		}
	}
	coach := m.coach()
	blocks := []layout.Placed{
		{At: r.Verdict, Lines: m.verdictLines(r.Verdict)},
		{At: r.Numbers, Lines: m.numberLines(r.Numbers)},
		{At: r.Caps, Lines: m.barLines(r.Caps)},
		{At: r.Above, Lines: picture.Above(m.th, coach, r.Above.Size())},
		{At: r.Stages, Lines: m.stageLines(r.Stages)},
		{At: r.Curve, Lines: m.curve().Draw(m.th, r.Curve.Size())},
		{At: r.Notes, Lines: m.noteLines(r.Notes)},
	}
	return append(blocks, m.pictureBlocks(r, coach)...)
}

// pictureBlocks draws the coach and the tank. In words both are wider than they
// are high, and stand below each other.
func (m *Model) pictureBlocks(r layout.PlanRects, coach picture.Coach) []layout.Placed {
	before, after := m.plan.Bed.Before, m.plan.Bed.After
	if m.th.Plain && !r.Legend.Empty() {
		both := layout.Rect{X: r.Side.X, Y: r.Side.Y, W: r.Legend.W, H: r.Side.H + r.Legend.H}
		lines := picture.Side(m.th, coach, both.Size())
		return []layout.Placed{{At: both, Lines: append(lines, picture.Tank(m.th, before, after, both.Size())...)}}
	}
	blocks := []layout.Placed{
		{At: r.Side, Lines: picture.Side(m.th, coach, r.Side.Size())},
		{At: r.Tank, Lines: picture.Tank(m.th, before, after, r.Tank.Size())},
	}
	if !r.Legend.Empty() {
		line := picture.TankLegend(m.th, before, after, r.Legend.W)
		sides := []model.Side{model.Left, model.Roof}
		if r.Above.Empty() {
			sides = sides[:1]
		}
		const apart = 2
		if spots := picture.SpotLegend(m.th, coach, r.Legend.W-cells.Width(line)-apart, sides...); spots != "" {
			line += cells.Blank(apart) + spots
		}
		blocks = append(blocks, layout.Placed{At: r.Legend, Lines: []string{line}})
	}
	if !r.Faces.Empty() {
		blocks = append(blocks, layout.Placed{At: r.Faces, Lines: []string{picture.FaceLegend(m.th, coach, r.Faces.W, model.Left, model.Roof)}})
	}
	return blocks
}

// needLines says what a plan cannot do without.
func (m *Model) needLines(at layout.Rect) []string {
	var lines []string
	for _, r := range m.lacks {
		f, _ := m.shown().field(r)
		section := map[string]string{"wash": "", "place": "water "}[r.section]
		if r.section == "vehicle" || r.section == "bed" {
			section = r.section + " "
		}
		lines = append(lines, "  "+m.th.Text.On(section+f.Label)+m.th.Muted.On(", like "+m.suited(r, f).Example))
	}
	if len(lines) == 0 && m.planErr != nil {
		for _, line := range cells.Wrap(cells.Safe(m.planErr.Error()), at.W) {
			lines = append(lines, m.th.Doubt.On(line))
		}
		return lines
	}
	return append([]string{m.th.Text.On("It needs from you:")}, lines...)
}

func (m *Model) verdictLines(at layout.Rect) []string {
	if m.lag == entry.Unread {
		return []string{m.th.Strong.On(cells.Clip(m.th.Marks.Doubt+" "+entry.ReadingLog, at.W, "")), m.th.Muted.On(cells.Clip("the numbers below are by the rig alone", at.W, ""))}
	}
	mark, ink := picture.Verdict(m.th, m.plan.Verdict)
	chance := m.plan.Bed.ChanceLasts
	words, meter := report.Lasting(&m.plan), ""
	if !m.plan.InDoubt() {
		meter = picture.Meter(m.th, float64(chance), ink, min(at.W-cells.Width(words)-2, 16))
	}
	if meter == "" {
		words = "chance: " + words
	} else {
		meter += "  "
	}
	head := mark + " " + report.Judged(&m.plan)
	head = cells.Clip(head, at.W, m.th.Marks.More)
	return []string{ink.On(head) + m.pointer(at.W-cells.Width(head)), meter + m.th.Text.On(words)}
}

// numberLines is the answer in seven lines.
func (m *Model) numberLines(at layout.Rect) []string {
	p := m.plan
	rows := []report.Row{
		m.diRow(at.W - 21),
		m.leftRow(at.W - 21),
		m.otherRow(at.W - 21),
		m.capRow(), m.jugRow(),
		{Label: "flush", Value: quantity.Show(p.Flush.Volume, m.sys), Note: report.Time(p.Flush.Duration) + " before a reading"},
		m.dayRow(at.W - 21),
	}
	lines := make([]string, len(rows))
	for i, r := range rows {
		label, value := cells.Fit(r.Label, 9), cells.Right(r.Value, 10)
		ink := m.th.Text
		if r.Label == "DI water" || r.Label == "flow cap" {
			ink = m.th.Strong
		}
		if r.Value == "" { // the note has the room of both
			lines[i] = m.th.Text.On(label+"  ") + ink.On(cells.Clip(r.Note, at.W-11, m.th.Marks.More))
			continue
		}
		note := cells.Clip(r.Note, at.W-21, m.th.Marks.More)
		lines[i] = m.th.Text.On(label) + ink.On(value) + "  " + m.th.Text.On(note)
	}
	return lines
}

// diRow is the DI water, how long it runs, and what resin the wash takes by its price.
func (m *Model) diRow(room int) report.Row {
	p := m.plan
	row := report.Row{Label: "DI water", Value: quantity.Show(p.DI.Volume, m.sys), Note: report.Time(p.DI.Duration)}
	if !p.Cost.Known {
		return row
	}
	row.Note += ", " + report.Money(p.Cost.Wash, p.Cost.Currency)
	if of := row.Note + " of resin"; cells.Width(of) <= room {
		row.Note = of
	}
	return row
}

// capRow is how fast the bed may be run.
func (m *Model) capRow() report.Row {
	if p := m.plan; p.Cap.Useful() {
		bound := "bound by " + report.Bound(p.Cap.BoundBy)
		if p.Cap.BoundBy == planner.ByExchange {
			bound = report.Bound(p.Cap.BoundBy) + ": no safe flow"
		}
		note := cmp.Or(report.HeldTo(p, m.sys), bound)
		return report.Row{Label: "flow cap", Value: report.Most(p.Cap.Flow, m.sys), Note: note}
	}
	return report.Row{Label: "flow cap", Note: report.NoFlow}
}

// jugRow is how the flow is held without a meter.
func (m *Model) jugRow() report.Row {
	least, vessel := report.JugTime(m.plan, m.sys)
	row := report.Row{Label: "jug", Value: least}
	if vessel != "" {
		row.Note = "or longer for " + vessel
	}
	return row
}

// otherRow is the water that is not DI: its sum and what it is of, or where there is no
// room for both the gallons of each.
func (m *Model) otherRow(room int) report.Row {
	p := m.plan
	row := report.Row{Label: "not DI", Value: quantity.Show(p.Soft.Volume+p.Untreated.Volume, m.sys)}
	switch {
	case p.Soft.Volume > 0 && p.Untreated.Volume > 0:
		each := quantity.Show(p.Soft.Volume, m.sys) + " softened, " + quantity.Show(p.Untreated.Volume, m.sys) + " raw"
		if cells.Width(each) > room {
			return report.Row{Label: row.Label, Note: each}
		}
		row.Note = each
	case p.Soft.Volume > 0:
		row.Note = "softened water"
	default:
		row.Note = "raw water"
	}
	return row
}

// barLines sets the flows against each other. With little room the cap that
// binds stands for all, and with less it is the mark across the bars.
func (m *Model) barLines(at layout.Rect) []string {
	if at.Empty() {
		return nil
	}
	p := m.plan
	bar := func(label string, f quantity.Flow, ink theme.Ink, note string) picture.Bar {
		return picture.Bar{Label: label, Value: f.GPM(), Number: quantity.Show(f, m.sys), Ink: ink, Note: note}
	}
	capBar := func(c planner.Cap, ink theme.Ink, note string) picture.Bar {
		b := bar(report.Bound(c.Name), c.Flow, ink, note)
		b.Number = report.Most(c.Flow, m.sys)
		return b
	}
	var bars []picture.Bar
	held := p.Cap.Held()
	for _, c := range report.Caps(p) {
		switch {
		case c.Name == p.Cap.BoundBy && p.Cap.Useful() && at.H > 2:
			bars = append(bars, capBar(c, m.th.Accent, "binds"))
		case c.Name == planner.ByExchange && !p.Cap.Useful():
			continue
		case at.H >= len(p.Cap.Caps)+2:
			bars = append(bars, capBar(c, m.th.Muted, ""))
		}
	}
	limit := quantity.Flow(0) // none to set the flows against
	if p.Cap.Useful() {
		limit = p.Cap.Flow
	}
	over := m.th.Good
	if !p.Sprayer.WithinCap {
		over = m.th.Bad
	}
	hose := m.th.Bad
	if p.Sprayer.OpenHose <= held.Flow {
		hose = m.th.Good
	}
	bars = append(bars, bar("sprayer", p.Sprayer.Flow, over, against(p.Sprayer.Flow, limit)), bar("open hose", p.Sprayer.OpenHose, hose, against(p.Sprayer.OpenHose, limit)))
	return picture.Bars(m.th, bars, limit.GPM(), at.W)
}

// against says in a few letters how a flow stands to the cap.
func against(f, limit quantity.Flow) string {
	switch times := float64(f / limit); {
	case !(limit > 0):
		return ""
	case times <= 1:
		return "under the cap"
	default:
		return fmt.Sprintf("%.1f x the cap", times)
	}
}

// coach is what the pictures of the vehicle need.
func (m *Model) coach() picture.Coach {
	c := picture.Coach{Width: 8.5 * quantity.Foot, Faces: map[model.Side]picture.Face{}}
	if i := m.shown().chosen("vehicle"); i >= 0 {
		v := m.shown().rig.Vehicles[i]
		c.Length, c.Height, c.Width = v.Length.Or(0), v.Height.Or(0), v.Width.Or(c.Width)
	}
	unseen := slices.ContainsFunc(m.plan.Warnings, func(n planner.Note) bool { return n.Code == planner.RoofOutOfSight })
	for _, f := range m.plan.Faces {
		c.Faces[f.Name] = picture.Face{Water: f.Water, Spots: f.Spots, Dries: f.Dries, Unseen: f.Name == model.Roof && unseen}
	}
	return c
}

func (m *Model) curve() picture.Curve {
	b := m.plan.Bed
	return picture.Curve{Points: b.Curve, From: b.SoFar, To: b.SoFar + m.plan.Through(), Limit: m.plan.Limit.Number, System: m.sys}
}

func (m *Model) stageLines(at layout.Rect) []string {
	if at.Empty() {
		return nil
	}
	lines := report.Columns(report.Stages(m.plan, m.sys))
	for i, line := range lines {
		ink := m.th.Muted
		if i > 0 {
			ink = picture.WaterInk(m.th, m.plan.Stages[i-1].Water)
		}
		lines[i] = ink.On(cells.Clip(line, at.W, m.th.Marks.More))
	}
	return lines
}

package bed

import (
	"fmt"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/picture"
	"washeve/ui/report"
)

// mostPast is how many fills before this one are drawn.
const mostPast = 5

// drawing is what the picture of the fill needs.
func (m Model) drawing() picture.Fill {
	f := picture.Fill{Curve: picture.Curve{
		Points: m.ahead.Curve, From: m.ahead.Given, To: m.ahead.Given + m.ahead.Running.Job, Limit: m.plan.Limit.Number,
	}}
	if m.past == nil {
		return f
	}
	last := len(m.past.Fills) - 1
	for _, past := range m.past.Fills[max(last-mostPast, 0):last] {
		if len(past.Readings) > 0 {
			f.Past = append(f.Past, dotsOf(past))
		}
	}
	f.Readings = dotsOf(m.past.Fills[last])
	return f
}

func dotsOf(fill planner.FillPast) []picture.Dot {
	dots := make([]picture.Dot, len(fill.Readings))
	for i, r := range fill.Readings {
		dots[i] = picture.Dot{Volume: r.Gallons, PPM: r.PPM}
		switch {
		case r.Suspect != nil:
			dots[i].Kind = picture.Unexplained
		case !r.Counts:
			dots[i].Kind = picture.FirstCup
		}
	}
	return dots
}

// suspects are the readings of this fill that fit no bed, the newest first.
func (m Model) suspects() []planner.PastReading {
	if m.past == nil {
		return nil
	}
	var out []planner.PastReading
	for _, r := range m.past.Present().Readings {
		if r.Suspect != nil {
			out = append([]planner.PastReading{r}, out...)
		}
	}
	return out
}

// penInDoubt tells that the likeliest cause of a reading is the pen's scale: then
// every reading is in doubt.
func (m Model) penInDoubt() bool {
	for _, r := range m.suspects() {
		if c := r.Suspect.Causes; len(c) > 0 && c[0].Code == planner.OtherScale {
			return true
		}
	}
	return false
}

func (m Model) titleLine(width int) string {
	words, whose := "Bed", ""
	if m.err == nil {
		words = "Bed: " + m.plan.BedName + ", " + report.Resin(m.plan.Bed.Resin, m.sys)
	}
	if m.past != nil {
		fill := m.past.Present()
		if fill.Began.Given() {
			words += ", filled " + fill.Began.Date().String()
		}
		if fill.Lot != "" {
			words += ", lot " + fill.Lot
		}
		whose = quantity.Show(fill.Gallons, m.sys) + " given"
		if _, aged := m.past.Aged(); aged {
			whose = "about " + whose
		}
	}
	words = cells.Clip(cells.Safe(words), width-cells.Width(whose)-2, m.th.Marks.More)
	return m.th.Strong.On(words) + cells.Blank(width-cells.Width(words)-cells.Width(whose)) + m.th.Muted.On(whose)
}

func (m Model) verdictLine(width int) string {
	if m.err != nil {
		return m.th.Doubt.On(cells.Clip(m.th.Marks.Doubt+" No plan yet: "+cells.Safe(m.err.Error()), width, m.th.Marks.More))
	}
	if m.lag == entry.Unread {
		return m.th.Strong.On(cells.Clip(m.th.Marks.Doubt+" "+entry.ReadingLog+" until then the answer is by the rig alone", width, m.th.Marks.More))
	}
	if m.penInDoubt() {
		return m.th.Bad.On(cells.Clip("!! THE PEN'S SCALE IS IN DOUBT: trust no figure below until it is settled (e)", width, m.th.Marks.More))
	}
	mark, ink := picture.Verdict(m.th, m.plan.Verdict)
	join := ": chance "
	if m.plan.InDoubt() {
		join = "; "
	}
	words := mark + " " + nextWash(&m.plan) + join + report.Lasting(&m.plan)
	learned := m.learned()
	if cells.Width(words)+cells.Width(learned) > width {
		learned = ""
	}
	return ink.On(cells.Clip(words, width, m.th.Marks.More)) + m.th.Muted.On(learned)
}

// nextWash is the verdict. A good one says where it rests on nobody having said how old
// the fill is.
func nextWash(p *planner.Plan) string {
	if p.InDoubt() {
		return report.Judged(p)
	}
	switch p.Verdict {
	case planner.Lasts:
		if p.TakenAsNew() {
			return "It lasts the next wash, if just filled"
		}
		if p.CountedFromLog() {
			return "It lasts the next wash, if it was new"
		}
		return "It lasts the next wash"
	case planner.Tight:
		return "Tight: the next wash may be too much"
	}
	return "It will not last the next wash"
}

// learned says what the readings have taught of this fill.
func (m Model) learned() string {
	if m.past == nil || m.ahead.Used == 0 {
		return ""
	}
	readings := "readings"
	if m.ahead.Used == 1 {
		readings = "reading"
	}
	return fmt.Sprintf("; %d %s: holds %s", m.ahead.Used, readings, report.AsRated(m.ahead.Factor.P50))
}

// numberRows is the answer in four lines.
func (m Model) numberRows(width int) []string {
	if m.err != nil {
		return nil
	}
	rows := []report.Row{m.leftRow(), m.endsRow(), m.orderRow(), m.costRow()}
	lines := make([]string, len(rows))
	for i, r := range rows {
		ink := m.th.Strong
		if i == 3 {
			ink = m.th.Text
		}
		note := cells.Clip(r.Note, width-23, m.th.Marks.More)
		lines[i] = m.th.Muted.On(cells.Fit(r.Label, 9)) + ink.On(cells.Right(r.Value, 12)) + "  " + m.th.Text.On(note)
	}
	return lines
}

func (m Model) leftRow() report.Row {
	left, run := m.plan.Bed.Remaining, m.ahead.Running
	note := report.EightInTen(left, m.sys)
	if left.P90 <= 0 {
		note = "the limit is reached"
	}
	if run.Job > 0 {
		note += "; next wash with flush " + quantity.Show(run.Job, m.sys)
	}
	return report.Row{Label: "left", Value: quantity.Show(left.P50, m.sys), Note: note}
}

// spent tells that the fill is at its end, as likely as not.
func (m Model) spent() bool { return m.err == nil && m.plan.Bed.Remaining.P50 <= 0 }

func (m Model) endsRow() report.Row {
	ends, known := m.ahead.Ends.Get()
	switch {
	case m.spent():
		return report.Row{Label: "ends", Value: "now", Note: "the outlet has reached " + m.plan.Limit.String() + "; " + m.th.Key("c", "resin") + " changes the resin"}
	case known:
		return report.Row{Label: "ends", Value: ends.P50.String(), Note: fmt.Sprintf("%s to %s, at %s in 30 days", ends.P10, ends.P90, quantity.Show(m.ahead.Pace.Month(), m.sys))}
	case m.ahead.Pace.Known():
		return report.Row{Label: "ends", Value: "years off", Note: "at " + quantity.Show(m.ahead.Pace.Month(), m.sys) + " in 30 days"}
	}
	return report.Row{Label: "ends", Value: "no date yet", Note: "two weeks of washes in the log give the pace; " + m.th.Key("w", "wash") + " adds one"}
}

func (m Model) orderRow() report.Row {
	day, known := m.ahead.OrderBy.Get()
	days := fmt.Sprintf("%.0f days", float64(m.ahead.Lead/quantity.Day))
	switch {
	case m.spent():
		return report.Row{Label: "order by", Value: "now", Note: "resin takes " + days + ", and the bed is at its end"}
	case m.ahead.Overdue:
		return report.Row{Label: "order by", Value: "now", Note: "resin takes " + days + ", and one such bed in ten ends before"}
	case known:
		return report.Row{Label: "order by", Value: day.String(), Note: days + " before one such bed in ten has ended"}
	}
	return report.Row{Label: "order by", Value: "no date yet", Note: days + " before it ends"}
}

func (m Model) costRow() report.Row {
	run := m.ahead.Running
	if cost := report.CostOfFill(run, m.sys); cost.SoFar != "" {
		return report.Row{Label: "cost", Value: cost.SoFar, Note: cost.Beside(m.spent())}
	}
	if price, given := run.Price.Get(); given {
		return report.Row{Label: "cost", Value: report.Money(price.Amount(), price.Currency), Note: "for this fill, which has given little yet"}
	}
	return report.Row{Label: "cost", Value: "not known", Note: "state the price, in the rig or with the change of resin"}
}

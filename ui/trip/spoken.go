package trip

import (
	"cmp"
	"strings"

	"washeve/model"
	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// Spoken is the screen in words.
func (m Model) Spoken() talk.Page {
	p := talk.Page{Title: m.Title(), Like: "begin", Said: m.status, Tell: m.told}
	switch {
	case m.question != nil:
		p.Prompt = m.question.Spoken()
	case !m.begun:
		p.Words = []talk.Word{{Say: "begin", Does: begin}}
	case m.sheet != nil:
		return m.spokenSheet()
	default:
		p.Like, p.After, p.Things, p.Numbers, p.Words = "new wash, show 2 or full", m.answerTold, m.things, m.numbers, m.vocabulary()
	}
	return p
}

func (m Model) vocabulary() []talk.Word {
	return []talk.Word{
		{Say: "show", Does: open, Of: "LINE", Like: "show 2", Help: "its lines, to hear and to change"},
		{Say: "new wash", Does: newWash, Help: "a wash, or another user of the bed: then its lines"},
		{Say: "new stop", Does: newStop, Help: "a stop: then its lines"},
		{Say: "new change", Does: newChange, Help: "a planned change of resin: then its lines"},
		{Say: "take advice", Does: take},
		{Say: "drop", Does: dropLine, Of: "LINE", Like: "drop 3", Help: "take a line away"},
		{Say: "earlier", Does: earlier, Of: "LINE", Like: "earlier 3", Help: "a day earlier"},
		{Say: "later", Does: later, Of: "LINE", Like: "later 3", Help: "a day later"},
		{Say: "week earlier", Does: weekBefore, Of: "LINE", Like: "week earlier 3", Help: "a week earlier"},
		{Say: "week later", Does: weekAfter, Of: "LINE", Like: "week later 3", Help: "a week later"},
		{Say: "full", Does: full, Lines: func() []string { return split(report.TripTold(m.plan, m.sys, talk.Unwrapped)) }},
		{Say: "compare", Does: compared, Help: "this trip done in other ways, side by side; take makes one the plan"},
		{Say: "next trip", Does: nextTrip},
		{Say: "begin", Does: begin},
	}
}

// told is the answer, then every line.
func (m Model) told() []string {
	if !m.begun {
		return []string{"There is no trip yet. A trip is a list of stops and washes by date: it says before you leave whether the resin lasts, where to change it, what to carry, and the day to order by. begin starts one, two weeks from today, with a stop and a wash to change."}
	}
	lines := []string{m.now.Name + "."}
	if m.plan.Over {
		lines = []string{m.now.Name + ". This trip is over: its last day was " + m.plan.Last.String() + "."}
	}
	lines = append(append(lines, m.answerTold()...), report.OneFills(m.plan)...)
	for _, n := range m.plan.Notes {
		lines = append(lines, n.Text(m.sys))
	}
	return append(lines, "list tells its lines.")
}

// answerTold is the verdict, where to change, when to order, what to carry, what it
// costs, and what is wrong or lacking.
func (m Model) answerTold() []string {
	if m.planErr != nil {
		return []string{"There is no answer yet: " + m.planErr.Error() + ". State it on the plan."}
	}
	changes := strings.Join(report.TripChanges(m.plan), " ")
	if changes == "" {
		changes = report.TripUnchanged(m.plan)
	}
	lines := []string{report.TripVerdict(m.plan), changes, report.TripOrder(m.plan, m.sys), report.TripCarry(m.plan, m.sys) + " " + report.TripCost(m.plan)}
	if m.plan.Over {
		lines = append(lines, "begin starts another trip; later and week later move a line of this one.")
	}
	if problem := m.problem(); problem != "" {
		lines = append(lines, "Mind: "+problem+".")
	}
	return lines
}

// things are the trip itself and all that is in it, by date.
func (m Model) things() []talk.Thing {
	lines := m.lines()
	all := make([]talk.Thing, len(lines))
	for i, l := range lines {
		day := "no date"
		if d, given := l.date.Get(); given {
			day = d.String()
		}
		all[i] = talk.Thing{Name: "trip", Text: m.settings(), On: m.on(i)}
		if l.kind != theTrip {
			all[i].Name, all[i].Text = day+" "+l.kind.String(), m.lineTold(l)
		}
	}
	return all
}

// lineTold is what a line of the list says, without its marks.
func (m Model) lineTold(l line) string {
	name, details, _ := m.lineWords(l)
	detail := details[0]
	if l.kind == changeLine || l.kind == adviceLine {
		return "change of resin; " + detail
	}
	return strings.TrimSpace(name) + "; " + talk.Unmarked(m.th, []string{detail})[0]
}

func (m Model) on(i int) func() screen.Screen {
	return func() screen.Screen {
		m.hand = i
		return m
	}
}

// spokenSheet is one line of the trip, value by value.
func (m Model) spokenSheet() talk.Page {
	item := itemOf(&m.now, m.sheet.of)
	first, _ := m.suited(m.sheet.keys[0])
	like := "change " + first.Label + " " + first.Example
	p := talk.Page{Title: "Trip, this " + m.sheet.of.kind.String(), Like: like + ", walk or back", Said: m.status, Things: m.values, After: m.answerTold}
	p.Tell = func() []string {
		var lines []string
		for _, th := range m.values() {
			lines = append(lines, th.Name+": "+cmp.Or(th.Text, "not stated"))
		}
		return lines
	}
	f, _ := m.target()
	switch {
	case item == nil:
	case m.picker != nil:
		p.Asks = &talk.Question{Ask: m.picker.Title, List: m.picker}
	case m.edit != nil:
		p.Asks = &talk.Question{Ask: f.Label, Like: form.Like(f), Edit: m.edit}
	default:
		p.Words = []talk.Word{
			{Say: "change", Does: change, Of: "LINE", Takes: first.Example, Like: like, Help: "state a line"},
			{Say: "clear", Does: takeAway, Of: "LINE", Like: "clear name", Help: "take the value of a line away"},
		}
	}
	return p
}

// values are what can be stated of the line.
func (m Model) values() []talk.Thing {
	var all []talk.Thing
	for i, key := range m.sheet.keys {
		f, ok := m.suited(key)
		if !ok {
			continue
		}
		all = append(all, talk.Thing{Name: f.Label, Text: f.Text(), Like: form.Like(f), Must: f.Required, From: m.from(f), On: func() screen.Screen {
			s := *m.sheet
			s.hand = i
			m.sheet = &s
			return m
		}})
	}
	return all
}

// from is what a value is picked from; nil where it is typed.
func (m *Model) from(f model.Field) []string {
	if f.Refers == "" {
		return f.Choices
	}
	return m.namesFor(f)
}

// numbers are those of the answer, then what was stated or taken for them.
func (m Model) numbers() []talk.Number {
	if m.planErr != nil || len(m.plan.Washes) == 0 {
		return talk.Assumptions("", m.th, m.sys, m.plan.Assumptions)
	}
	p := m.plan
	order, changes := "no resin is needed", strings.Join(report.TripChanges(p), " ")
	if day, given := p.OrderBy.Get(); given {
		order = day.String()
	}
	switch {
	case changes == "" && p.Over:
		changes = "none was planned"
	case changes == "":
		changes = "none is planned, and none advised"
	}
	if p.Over {
		order = "no day any more"
	}
	said := func(name, value string, why ...string) talk.Number {
		return talk.Number{Name: name, Value: value, Lines: func(width int) []string {
			return cells.Wrap(cells.Safe(name+": "+value+". "+strings.Join(why, " ")), width)
		}}
	}
	all := []talk.Number{
		said("chance that every wash ends on spec", report.Odds(p.AllOnSpec), chanceWords),
		said("changes of resin", strings.TrimSuffix(changes, "."), "What is thrown out is the life left in the bed on that day, on average over the thousand ways."),
		said("order by", order, report.TripOrder(p, m.sys), "Resin must be at hand by the first change, or by the first wash at risk where no change is to be; and by the first day where it is carried from the start. The lead time is taken off that day."),
		said("to carry", strings.TrimSuffix(report.TripCarry(p, m.sys), "."), "One fill for each change; or one as a spare, where a wash is at risk and no change is to be."),
		said("cost", strings.TrimSuffix(report.TripCost(p), "."), "Each wash uses up a share of the fill, by the price of that fill; what is to buy is the fills to carry."),
	}
	if lines := report.OneFills(p); len(lines) > 0 {
		all = append(all, said("one fill, several washes", strings.TrimSuffix(strings.Join(lines, " "), "."), report.OrderWhy))
	}
	return append(all, talk.Assumptions("", m.th, m.sys, p.Assumptions)...)
}

var _ talk.Speaker = Model{}

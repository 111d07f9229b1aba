package compare

import (
	"fmt"
	"strings"

	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// Spoken is the screen in words.
func (m Model) Spoken() talk.Page {
	p := talk.Page{Title: m.Title(), Like: "way 2, or take 2", Said: m.status}
	if m.err != nil {
		p.Tell = func() []string { return []string{"Nothing can be compared: " + m.err.Error()} }
		p.Like = "back"
		return p
	}
	p.Tell, p.Things, p.Numbers = m.told, m.things, m.numbers
	if m.ask {
		p.Prompt = m.asks() + " yes or no"
		p.Words = []talk.Word{{Say: "yes", Does: take}, {Say: "no", Does: leaveOut}}
		return p
	}
	p.After = m.wayTold
	p.Words = []talk.Word{
		{Say: "way", Of: "WAY", Like: "way 2", Help: "all figures of a way, and what it changes; what is said next is about it"},
		{Say: "take", Does: adopt, Of: "WAY", Like: "take 2", Help: "make a way the plan; there undo takes it back"},
		{Say: "more", Does: more, Of: "WAY", Like: "more 2", Help: "more of what a way hangs on: ions held back, drip, target"},
		{Say: "less", Does: less, Of: "WAY", Like: "less 2", Help: "less of what a way hangs on"},
	}
	return p
}

// told lists the ways, and what is not known or not compared.
func (m Model) told() []string {
	lines := []string{fmt.Sprintf("%s, done in %d ways; way and a number tells all of one.", report.CompareHeading(m.table), len(m.table.Ways))}
	for i, th := range m.things() {
		lines = append(lines, fmt.Sprintf("%d %s: %s", i+1, th.Name, th.Text))
	}
	return append(lines, report.CompareRest(m.table, m.sys)...)
}

// wayTold is the way under the hand: its figures by name, and what it changes.
func (m Model) wayTold() []string {
	w := m.way()
	lines := []string{w.Name + "."}
	for _, r := range m.table.Rows {
		line := r.Label + ": " + report.Cell(r, r.Cells[m.hand], m.sys)
		if report.Best(r, m.sys)[m.hand] {
			line += ", the best"
		}
		lines = append(lines, line)
	}
	return append(lines, report.WayWords(m.table, m.hand, m.sys)...)
}

// decide are the figures that a way is chosen by, as a line of it tells them: of a wash,
// and of a trip.
func (m Model) decide() []string {
	if m.way().Figures.Trip != nil {
		return []string{"chance", "order", "buy", "changes"}
	}
	return []string{"chance", "di", "time", "cost"}
}

// things are the ways, each with the figures that decide and what it is best in.
func (m Model) things() []talk.Thing {
	all := make([]talk.Thing, len(m.table.Ways))
	marked := make([][]bool, len(m.table.Rows))
	for i, r := range m.table.Rows {
		marked[i] = report.Best(r, m.sys)
	}
	for i, w := range m.table.Ways {
		var words, best []string
		for _, key := range m.decide() {
			for _, r := range m.table.Rows {
				if r.Key == key {
					words = append(words, r.Label+" "+report.Cell(r, r.Cells[i], m.sys))
				}
			}
		}
		for k, r := range m.table.Rows {
			if marked[k][i] {
				best = append(best, r.Label)
			}
		}
		text := strings.Join(words, ", ")
		if len(best) > 0 {
			text += "; best in " + strings.Join(best, ", ")
		}
		all[i] = talk.Thing{Name: w.Name, Text: text, On: func() screen.Screen { return m.say("").chosen(i) }}
	}
	return all
}

func (m Model) numbers() []talk.Number {
	all := talk.Reasons(m.th, m.sys, m.table.Reasons(m.hand, m.washes))
	if m.way().Figures.Trip != nil {
		return all
	}
	return append(all, talk.Reasons(m.th, m.sys, m.way().Figures.Plan.Reasons)...)
}

var _ talk.Speaker = Model{}

package short

import (
	"fmt"
	"strings"

	"washeve/planner"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// The groups of what a word can be about.
const (
	faces   = "Faces"
	waysOut = "Ways out"
)

// Spoken is the screen in words.
func (m Model) Spoken() talk.Page {
	first := fmt.Sprintf("take %d", m.firstWay()+1)
	return talk.Page{
		Title: m.Title(), Like: "in left, out rear or " + first, Said: m.status, Tell: m.told, After: m.shareTold, Things: m.things, Numbers: m.numbers,
		Words: []talk.Word{
			{Say: "in", Does: pinIn, Of: "FACE", Among: faces, Like: "in left", Help: "this face gets DI water whatever else falls short"},
			{Say: "out", Does: pinOut, Of: "FACE", Among: faces, Like: "out rear", Help: "this face gets a towel instead"},
			{Say: "free", Does: turn, Of: "FACE", Among: faces, Like: "free left", Help: "free a face that is pinned; pin a free one the other way than it has it"},
			{Say: "free all", Does: free},
			{Say: "surer", Does: more},
			{Say: "less sure", Does: less},
			{Say: "take share", Does: take, On: m.on(0), Help: "make the share as it stands the plan, and go back"},
			{Say: "take", Does: take, Of: "WAY", Among: waysOut, Like: first, Help: "make a way out the plan, and go back; there undo takes it back"},
		},
	}
}

// firstWay is the first way out that there is, for example, by its place in the list.
func (m Model) firstWay() int {
	for i, w := range m.ways {
		if w.Not.Code == "" {
			return len(m.share.Faces) + i
		}
	}
	return len(m.share.Faces)
}

func (m Model) on(i int) func() screen.Screen {
	return func() screen.Screen { return m.onto(i) }
}

// told is the whole screen: the share, each face, each way out.
func (m Model) told() []string {
	lines := m.shareTold()
	for i, th := range m.things() {
		lines = append(lines, fmt.Sprintf("%d %s: %s", i+1, th.Name, th.Text))
	}
	return lines
}

// shareTold is what the share comes to.
func (m Model) shareTold() []string {
	if m.err != nil {
		return []string{m.err.Error()}
	}
	s := &m.share
	return []string{
		report.ShareGives(s, m.sys), report.ShareSays(s, m.sys),
		m.ends() + ".",
	}
}

// things are the faces, then the ways out, each with its numbers by their names.
func (m Model) things() []talk.Thing {
	if m.err != nil {
		return nil
	}
	var all []talk.Thing
	add := func(name, text, group string) {
		all = append(all, talk.Thing{Name: name, Text: text, Group: group, On: m.on(len(all))})
	}
	table := report.ShareTable(&m.share, m.sys)
	for i, f := range m.share.Faces {
		add(string(f.Name), named(table.Head, table.Rows[i])+". "+report.Turning(f, &m.share, m.sys), faces)
	}
	ways, row := report.WaysTable(m.ways, m.sys), 0
	for _, w := range m.ways {
		text := report.WaySays(w, m.sys)
		if w.Not.Code == "" {
			text = named(ways.Head, ways.Rows[row]) + ". " + text
			row++
		}
		add(w.Name, text, waysOut)
	}
	return all
}

// named sets the heads of a table before the values of a row, but for its first.
func named(head, row []string) string {
	var words []string
	for i := 1; i < len(row); i++ {
		if row[i] != "-" && row[i] != "" {
			words = append(words, head[i]+" "+row[i])
		}
	}
	return strings.Join(words, ", ")
}

func (m Model) numbers() []talk.Number {
	s := planner.Shortage{Share: m.share, Ways: m.ways}
	return talk.Reasons(m.th, m.sys, s.Reasons())
}

var _ talk.Speaker = Model{}

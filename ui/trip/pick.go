package trip

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/ui/form"
	"washeve/ui/keys"
)

// stopsOf are the stops that a wash may be at.
func stopsOf(t *model.Trip, l line) []int {
	day, given := t.Washes[l.index].Date.Get()
	if !given {
		return nil
	}
	return t.StopsOn(day)
}

// calledAnew lets the washes that named a stop name it as it is called now.
func calledAnew(before, now *model.Trip, stop int) {
	for i := range before.Washes {
		if at, named := before.StopOf(&before.Washes[i]); named && at == stop {
			now.Washes[i].Place = now.Stops[stop].Named()
		}
	}
}

// namesFor lists what a field of the sheet may hold: of a wash's stop those of its day,
// else all of the section that it refers to.
func (m *Model) namesFor(f model.Field) []string {
	if m.sheet.of.kind != washLine || f.Key != "place" {
		return m.names(f.Refers)
	}
	var names []string
	for _, i := range stopsOf(&m.now, m.sheet.of) {
		names = append(names, m.now.Stops[i].Named())
	}
	return names
}

// names lists what a field that refers to a section may hold.
func (m *Model) names(section string) []string {
	switch section {
	case "place":
		return m.places.Names()
	case "wash":
		names := m.keeper.Names()
		if m.wash.Name != "" && model.Find(names, m.wash.Name) < 0 {
			names = append([]string{m.wash.Name}, names...)
		}
		return names
	}
	return m.rig.Names(section)
}

func (m Model) openPicker(f model.Field) Model {
	var options []form.Option
	if f.Refers == "softener" { // before those that come and go: its number is always the same
		options = append(options, form.Option{Text: model.NoSoftener, Pick: model.NoSoftener, Note: "travel without one"})
	}
	for _, c := range append(append([]string(nil), f.Choices...), m.namesFor(f)...) {
		options = append(options, form.Option{Text: c, Pick: c})
	}
	if !f.Required {
		none := form.Option{Text: "not stated", Note: "it is assumed"}
		switch {
		case f.Refers == "place" && m.sheet.of.kind == washLine:
			none = form.Option{Text: "the last of that day", Note: m.lastStop()}
		case f.Refers == "place":
			none = form.Option{Text: "unknown water", Note: "a band, stated below"}
		}
		options = append(options, none)
	}
	p := form.Open(f.Label, options, f.Text())
	m.picker = &p
	return m
}

// lastStop is the stop of a wash that names none.
func (m *Model) lastStop() string {
	all := stopsOf(&m.now, m.sheet.of)
	if len(all) == 0 {
		return ""
	}
	return m.now.Stops[all[len(all)-1]].Called()
}

// stated is the text of the line under the hand.
func (m Model) stated() string {
	f, _ := m.target()
	return f.Text()
}

func (m Model) pick(does keys.Action, msg tea.KeyMsg) Model {
	next, picked, problem := m.picker.Press(does, msg.String())
	switch m.picker = next; {
	case problem != "":
		return m.warn(problem)
	case picked == nil:
	case picked.Pick == m.stated():
		return m.say(form.AsItWas)
	default:
		return m.state(m.sheet.key(), picked.Pick)
	}
	return m
}

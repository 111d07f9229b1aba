package rig

import (
	"slices"

	"washeve/model"
	"washeve/model/stock"
)

const defaults = "defaults"

// kind is one part of the list.
type kind struct {
	section string
	head    string
}

// kinds are the parts of the list, in their order.
func kinds() []kind {
	return []kind{
		{"vehicle", "Vehicles"},
		{"bed", "DI beds"},
		{"softener", "Softeners"},
		{"sprayer", "Sprayers"},
		{"hose", "Hoses"},
		{"pen", "Pens"},
		{"place", "Places"},
		{defaults, "Defaults"},
	}
}

func kindOf(section string) kind {
	for _, k := range kinds() {
		if k.section == section {
			return k
		}
	}
	return kind{section: section, head: section}
}

// spots lists where the hand can be: every item, one for a kind that has none,
// and the defaults.
func (m *Model) spots() []Spot {
	var spots []Spot
	for _, k := range kinds() {
		for i := range max(len(m.shown().Names(k.section)), 1) {
			spots = append(spots, Spot{k.section, i})
		}
	}
	return spots
}

// spotOf is where a spot is in the list, -1 where it is not.
func (m *Model) spotOf(at Spot) int { return slices.Index(m.spots(), at) }

// name is that of the chosen item; "" where there is none.
func (m *Model) name() string {
	names := m.shown().Names(m.at.Section)
	if m.at.Index < len(names) {
		return names[m.at.Index]
	}
	return ""
}

// isItem tells that an item with a name is chosen.
func (m *Model) isItem() bool { return m.at.Index < len(m.shown().Names(m.at.Section)) }

// moved goes up or down in the list, and ends at its ends.
func (m Model) moved(by int) Model {
	spots := m.spots()
	m.at = spots[min(max(m.spotOf(m.at)+by, 0), len(spots)-1)]
	m.hand = 0
	return m.looked()
}

// toKind goes to the first item of the next kind, or of the one before.
func (m Model) toKind(by int) Model {
	all := kinds()
	i := slices.IndexFunc(all, func(k kind) bool { return k.section == m.at.Section })
	m.at, m.hand = Spot{Section: all[(i+by+len(all))%len(all)].section}, 0
	return m.looked()
}

// line is one line of the list: the head of a kind, or a spot.
type line struct {
	head string
	spot Spot
}

func (m *Model) lines() []line {
	var lines []line
	for _, s := range m.spots() {
		if s.Index == 0 && s.Section != defaults {
			lines = append(lines, line{head: kindOf(s.Section).head})
		}
		lines = append(lines, line{spot: s})
	}
	return lines
}

// row is one line of the form: a heading, or a field.
type row struct {
	heading string
	ref     stock.Ref
	field   model.Field
}

// lacks tells that the field is needed and not stated.
func (r *row) lacks() bool { return r.heading == "" && r.field.Required && !r.field.Given() }

// formRows lists the lines of the chosen item's form.
func (m *Model) formRows() []row {
	s := m.shown()
	rows := rowsOf(s, stock.Ref{Section: m.at.Section, Index: m.at.Index})
	if m.at.Section != "vehicle" {
		return rows
	}
	for _, i := range s.Faces(m.at.Index) {
		rows = append(rows, row{heading: "Face: " + s.FaceName(i)})
		rows = append(rows, rowsOf(s, stock.Ref{Section: stock.Face, Index: i})...)
	}
	return rows
}

func rowsOf(s stock.Stock, at stock.Ref) []row {
	item := s.Item(at.Section, at.Index)
	if item == nil {
		return nil
	}
	var rows []row
	for _, f := range item.Fields() {
		rows = append(rows, row{ref: stock.Ref{Section: at.Section, Index: at.Index, Key: f.Key}, field: f})
	}
	return rows
}

// onto puts the hand on a row of the form, or on the next field in a direction.
func (m Model) onto(hand, by int) Model {
	rows := m.looks.rows
	for i := hand; i >= 0 && i < len(rows); i += by {
		if rows[i].heading == "" {
			m.hand = i
			return m
		}
	}
	return m
}

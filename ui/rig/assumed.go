package rig

import (
	"strings"

	"washeve/model"
	"washeve/model/stock"
	"washeve/planner"
	"washeve/ui/form"
	"washeve/ui/report"
)

// assumptions is what a wash with the chosen item takes for all that is not
// stated of it; none where a wash cannot be planned with it.
func (m *Model) assumptions() []planner.Assumption {
	s := m.shown().Clone()
	*s.Wash = model.Wash{}
	if m.at.Section != defaults && m.at.Section != "hose" {
		if s.Use(m.at.Section, m.at.Index) != nil {
			return nil
		}
	}
	plan, err := m.make(*s.Rig, *s.Places, *s.Wash)
	if err != nil {
		return nil
	}
	return plan.Assumptions
}

// assumedHelp tells what is taken for a field; "" where it is stated.
func (m *Model) assumedHelp(r stock.Ref, f model.Field) string {
	if f.Given() {
		return ""
	}
	return form.AssumedHelp(m.assumed(r, f))
}

// assumed finds what is taken for a field that is not stated, and its tag.
func (m *Model) assumed(r stock.Ref, f model.Field) (value, founded string) {
	if f.Refers != "" {
		if names := m.shown().Names(f.Refers); len(names) > 0 {
			return names[0], ""
		}
		return "none", ""
	}
	owner := r.Section
	if owner == stock.Face {
		owner = m.shown().FaceName(r.Index)
	}
	for _, name := range []string{owner + " " + f.Label, f.Label, owner + " " + strings.ReplaceAll(f.Key, "_", " "), f.Label + " while washing"} {
		for i := range m.looks.taken {
			if strings.EqualFold(m.looks.taken[i].Name, name) {
				return report.Value(m.looks.taken[i], m.sys), form.Founded(m.looks.taken[i].Source)
			}
		}
	}
	return "", ""
}

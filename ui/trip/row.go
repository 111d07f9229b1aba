package trip

import (
	"fmt"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/picture"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// lineWords is what a line of the list is called, and what there is to say of it: in full,
// then ever shorter, for what has little room.
func (m Model) lineWords(l line) (name string, details []string, tone theme.Ink) {
	switch l.kind {
	case stopLine:
		name, details = m.stopWords(l.index)
		return name, details, m.th.Muted
	case washLine:
		return m.washWords(l.index)
	case changeLine:
		details = []string{"planned"}
		if c := m.changePlan(l.index); c != nil {
			details = []string{"planned; throws out " + report.Percent(c.Wasted) + " of a fill", "planned"}
		}
		return "  R change of resin", details, m.th.Text
	}
	c := m.plan.Changes[l.index]
	t := m.th.Key("t", "take advice")
	wasted := "advised; throws out " + report.Percent(c.Wasted) + " of a fill"
	return "  r change of resin", []string{wasted + "; " + t + " plans it", wasted, "advised; " + t + " plans it"}, m.th.Muted
}

func (m *Model) stopWords(index int) (name string, details []string) {
	s := &m.now.Stops[index]
	p := m.stopPlan(index)
	switch {
	case p == nil && !s.Date.Given():
		return s.Called(), []string{"not counted: it needs a date"}
	case model.Find(m.places.Names(), s.Place) < 0 && !s.Unknown():
		return s.Called(), []string{"water not known: no place is called " + s.Place, "water not known"}
	case p == nil || p.TDS.P50 == 0:
		return s.Called(), []string{"water not known: its place has no TDS yet", "water not known"}
	}
	water, brief, more := report.PPM(p.TDS.P50), report.PPM(p.TDS.P50), ""
	if s.Unknown() {
		water, brief = fmt.Sprintf("unknown, %s to %s", quantity.Round(p.TDS.P10), report.PPM(p.TDS.P90)), "unknown"
	}
	limit := ""
	if onHand, limited := p.OnHand.Get(); limited {
		limit = "tank only: " + quantity.Show(p.Needs, m.sys) + " of " + quantity.Show(onHand, m.sys)
		more += ", " + limit
	}
	if s.Limits != "" && s.Limits != model.NoLimits {
		limit = "washing: " + string(s.Limits)
		more += ", " + limit
	}
	if p.Washes == 0 && p.Limits != model.NotAllowed {
		return s.Called(), []string{water + more + "; no wash here", brief + more + "; no wash here", "no wash here"}
	}
	if limit == "" {
		return s.Called(), []string{water, brief}
	}
	return s.Called(), []string{water + more, brief + more, more[len(", "):], limit}
}

func (m *Model) washWords(index int) (name string, details []string, tone theme.Ink) {
	w := &m.now.Washes[index]
	name = "  " + w.Called()
	p := m.washPlan(index)
	switch {
	case p == nil:
		return name, []string{"not counted: it needs a date, and a stop by then", "not counted: no date or stop"}, m.th.Doubt
	case p.Barred:
		return name, []string{"not counted: washing is not allowed here", "not counted: not allowed here"}, m.th.Doubt
	}
	mark, ink := picture.VerdictMark(m.th, *p)
	chance, then, first := mark+" "+report.Odds(p.Chance), "", ""
	if text := report.Then(*p); text != "" {
		then = ", then " + text
	}
	if p.Softener != nil && p.Softener.Regenerate {
		first = "; regenerate first"
	}
	told := func(at string) []string {
		head := chance + then + at
		return []string{
			head + "; " + report.TripDI(*p, m.sys) + first, head + "; " + report.TripDIBrief(*p, m.sys) + first, head + first, chance + at + first,
		}
	}
	if at := m.stopTold(w, p); at != "" {
		return name, append(told(", "+at), told("")...), ink
	}
	return name, told(""), ink
}

// stopTold tells the stop of a wash where there is more than one that day, or where it
// names another; else "".
func (m *Model) stopTold(w *model.TripWash, p *trip.WashPlan) string {
	at := "at " + m.plan.Stops[p.Stop].Name
	switch {
	case m.now.Elsewhere(w) != "":
		return at + ", not " + w.Place
	case len(m.now.StopsOn(p.Date)) < 2:
		return ""
	case p.Assumed:
		return at + ", assumed"
	}
	return at
}

// saidOfTarget tells a target that was just stated and changes nothing.
func (m Model) saidOfTarget() Model {
	for _, n := range m.plan.Notes {
		if n.Code == trip.IdleTarget {
			return m.say(n.Text(m.sys))
		}
	}
	return m
}

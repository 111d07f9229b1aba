package short

import (
	"fmt"
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/split"
	"washeve/ui/report"
)

// changed tells whether the pins or the confidence are others than at first.
func (m Model) changed() bool {
	return !slices.Equal(m.first.DIFaces, m.now.DIFaces) || !slices.Equal(m.first.TowelFaces, m.now.TowelFaces) ||
		m.first.Confidence.Or(model.UsualConfidence) != m.now.Confidence.Or(model.UsualConfidence)
}

// commit puts other pins in force.
func (m Model) commit(w model.Wash) Model {
	m.history = m.history.Edited(m.now)
	return m.settle(w)
}

// settle keeps the hand on its face, wherever that goes in the order.
func (m Model) settle(w model.Wash) Model {
	on, isFace := m.face()
	m.now = w
	m = m.reshared()
	if i := slices.IndexFunc(m.share.Faces, func(f planner.FaceShare) bool { return f.Name == on.Name }); isFace && i >= 0 {
		m.hand = i
	}
	return m
}

// turnPin pins a free face the other way than it has it, and frees a pinned one.
func (m Model) turnPin() Model {
	f, _ := m.face()
	switch {
	case f.Pin != split.Free:
		return m.pin(split.Free)
	case f.DI:
		return m.pin(split.Out)
	}
	return m.pin(split.In)
}

// pin decides on the face under the hand, and tells at once what that costs.
func (m Model) pin(p split.Pin) Model {
	f, _ := m.face()
	before := m.share
	w := m.now
	w.DIFaces, w.TowelFaces = without(w.DIFaces, f.Name), without(w.TowelFaces, f.Name)
	switch p {
	case split.In:
		w.DIFaces = append(w.DIFaces, f.Name)
	case split.Out:
		w.TowelFaces = append(w.TowelFaces, f.Name)
	}
	m = m.commit(w)
	if m.err != nil {
		return m
	}
	return m.tellPin(f.Name, p, &before)
}

// without shares nothing with what it is made from.
func without(sides []model.Side, one model.Side) []model.Side {
	return slices.DeleteFunc(slices.Clone(sides), func(s model.Side) bool { return s == one })
}

// tellPin says what a pin has changed.
func (m Model) tellPin(side model.Side, p split.Pin, before *planner.Share) Model {
	what := fmt.Sprintf("The %s is %s", side, report.Pin(p))
	if p == split.Free {
		what = fmt.Sprintf("The %s is free again", side)
	}
	now := &m.share
	if now.Short > 0 {
		return m.warn(fmt.Sprintf("%s: that does not fit, the bed is %s short.", what, quantity.Show(now.Short, m.sys)))
	}
	return m.say(fmt.Sprintf("%s: spared %s, was %s; DI %s; lasts %s.", what,
		report.Percent(now.Spared), report.Percent(before.Spared), quantity.Show(now.Takes, m.sys), report.Odds(now.Chance)))
}

// freed takes all pins away.
func (m Model) freed() Model {
	w := m.now
	w.DIFaces, w.TowelFaces = nil, nil
	return m.commit(w).say("No face is pinned.")
}

// confidences are those that the keys go through.
func confidences() []quantity.Fraction {
	return []quantity.Fraction{0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99}
}

// surer asks for the next confidence up or down.
func (m Model) surer(by int) Model {
	now := m.now.Confidence.Or(model.UsualConfidence)
	all := confidences()
	if by < 0 {
		slices.Reverse(all)
	}
	for _, c := range all {
		if by > 0 && c > now+1e-9 || by < 0 && c < now-1e-9 {
			w := m.now
			w.Confidence = quantity.Some(c)
			return m.commit(w).say("Shared out with " + report.Percent(c) + " confidence.")
		}
	}
	return m
}

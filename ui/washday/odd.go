package washday

import (
	"washeve/model"
	"washeve/planner"
	"washeve/planner/washday"
)

// readAgain is what to do first about a reading that no bed like this one would show. It
// is no way out: it is to be known first whether one is needed.
const readAgain = "read again"

// oddIn tells that the last reading is over the limit, and that by a plan that knows of it
// no bed like this one would show it.
func (m Model) oddIn(p *planner.Plan) bool {
	s := m.state
	s.Accepted = false
	return p.InDoubt() || s.Exceeds(&m.u) && p.Bed.OutletNow.P90 <= p.Limit.Number
}

// oddReading names the reading that is not believed. A first cup tells a plan nothing, so
// the one before it may be meant.
func (m Model) oddReading() string {
	switch last := washday.LastReading(&m.u); {
	case last == nil:
		return "The last reading in the log"
	case last.Flushed == model.No:
		return "A reading"
	default:
		reading, _ := last.Reading.Get()
		return reading.String()
	}
}

// doubtWords stand where the figures of the bed would: they hold only without the reading
// that is not believed.
func (m Model) doubtWords() string {
	words := m.oddReading() + " fits no bed like this: what is left and the chance hold only without that reading. Is the bypass shut? See to pen and scale too"
	if m.drawsDI() {
		words += ", then " + m.th.Key("r", "reading") + " again"
	}
	return words + "."
}

// oddWords tell of a reading that no bed like this one would show.
func (m Model) oddWords() string {
	return m.oddReading() + " is not believed: no bed like this would show it, and the chances leave it out. See to pen, scale and bypass."
}

// offerReading puts reading again before the ways out, where the pen can be read and the
// last reading is not believed.
func (m Model) offerReading() Model {
	if m.odd && m.drawsDI() {
		m.ways = append([]wayOut{{code: readAgain, name: readAgain}}, m.ways...)
	}
	return m
}

// highWords are the end that is foreseen where the pen shows more than that by now: the one or
// the other is wrong. Where it is read they tell how to find out which.
func (m Model) highWords(end string) string {
	words := "At the end: " + end + " if the pen errs, else " + m.high + " as read; lasts: " + m.chanceWords()
	if m.step().Kind == model.Read {
		words += ". Try the pen in distilled water: if it shows none there, the bed lets so much go now and to the end, and the chance is too good"
	}
	return words
}

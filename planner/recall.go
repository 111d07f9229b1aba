package planner

import (
	"fmt"
	"math"
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

var fromLog = tag.Source{Tag: tag.Yours, Text: "your log"}

// FromLog tells that the log alone says something.
func FromLog(s tag.Source) bool { return s == fromLog }

// remember puts what the log says over what the rig states: the resin as it was
// last changed, and the water through the softener since its last salt.
func (m *making) remember() {
	if past := m.past.Bed(m.bed.Name); past != nil {
		m.bed, m.sized = past.Bed, past.sized
	}
	m.rememberSoftener()
}

// stands is how the bed stands before the wash: by the log where it knows the
// bed, else by what the rig states of its age.
func (m *making) stands(flow quantity.Flow) stand {
	past := m.past.Bed(m.bed.Name)
	if m.setting.Fresh {
		m.bed = renewed(m.bed)
	}
	if m.setting.Fresh && past != nil {
		m.assume(Assumption{Name: bedHistory, Words: fmt.Sprintf("new resin, after %d fills", len(past.Fills)), Source: fromLog})
		return past.next().stand
	}
	if past == nil {
		if s, taught := m.standsAsTaught(flow); taught {
			return s
		}
	}
	if stood, same := m.setting.stood(m.bed.Name); same && past == nil {
		m.resin.statedAge(&m.ledger, m.bed, penScale(m.pen), flow)
		return stood
	}
	if past == nil {
		return m.resin.decideAge(&m.ledger, m.ages, m.bed, penScale(m.pen), m.aim.scale, flow)
	}
	f := past.Present()
	m.assume(Assumption{Name: bedHistory, Words: f.words(), Source: fromLog})
	source := f.gallonsFrom(m.bed)
	switch {
	case f.aged.Given():
		m.assume(Assumption{Name: bedByReadings, Value: quantity.ValueOf(f.aged.Or(Band[quantity.Volume]{}).P50), Source: practice("by its readings, which are high for a fresh fill: nobody said how old it was")})
		source = practice("your log, from the age on that the readings show")
	case !f.ageSaid(m.bed.SoFar):
		m.assume(Assumption{Name: bedBeforeLog, Words: "freshly filled", Source: practice("the log has no resin entry and nobody said otherwise: state gallons_so_far")})
		source = practice("your log, from a fresh fill on: nobody said how old it was")
	}
	m.assume(Assumption{Name: bedSoFar, Value: quantity.ValueOf(f.Gallons), Source: source})
	s := f.stand
	if n := len(f.Readings); n > 0 && f.Readings[n-1].Suspect != nil {
		s.odd = f.Readings[n-1].PPM
	}
	return s
}

// bedHistory is what the assumptions call what the log tells of the bed.
const bedHistory = "bed history"

// Logged tells that the log knows the plan's bed, so that its readings teach.
func (p *Plan) Logged() bool {
	return slices.ContainsFunc(p.Assumptions, func(a Assumption) bool { return a.Name == bedHistory })
}

// gallonsFrom is where the gallons of a fill are from: the log, the rig where the log adds
// none to what it states, or both.
func (f *FillPast) gallonsFrom(b model.Bed) tag.Source {
	stated, given := b.SoFar.Get()
	switch {
	case f.Began.Given() || f.metered > 0 || !given || stated == 0:
		return fromLog
	case f.Gallons == stated:
		return tag.Source{Tag: tag.Yours, Text: "stated in your rig"}
	}
	return tag.Source{Tag: tag.Yours, Text: "stated in your rig, and your log from there on"}
}

func (f *FillPast) words() string {
	text := fmt.Sprintf("washes: %d; readings: %d, used: %d", f.Washes, len(f.Readings), f.posterior.Used)
	if f.Began.Given() {
		text += ", since " + f.Began.Date().String()
	}
	return text
}

// tellPast warns of readings that no bed explains, and names what may be behind
// them.
func (m *making) tellPast() {
	past := m.past.Bed(m.bed.Name)
	if past == nil && m.past != nil && m.past.gone != "" && !m.bed.SoFar.Given() && !m.setting.Fresh {
		m.warnWords("log-of-another-bed", fmt.Sprintf("The log tells of a bed called %q, which is none of yours now, and nothing of %q: if it was renamed, what it has given is not counted. Name it as before, or state the gallons so far.", m.past.gone, m.bed.Name))
	}
	if past == nil || m.setting.Fresh {
		return
	}
	m.tellOtherFill(past)
	m.tellHigh(past)
	if before, aged := past.Aged(); aged {
		m.warn("age-by-readings", "Nobody said how old this fill is, and its readings are high for a fresh one: they fit one that had given %s to %s before the log (8 in 10). State the gallons if you know them.", quantity.ValueOf(before.P10), quantity.ValueOf(before.P90))
	}
	for _, r := range past.Present().Readings {
		if r.Suspect == nil {
			continue
		}
		expected := "something else"
		if !math.IsNaN(r.Expected) {
			expected = showPPM(r.Expected, m.aim.scale)
		}
		m.warnWords("unexplained-reading", fmt.Sprintf("The reading of %s on %s fits no bed like this, which would show %s. It is not used. Likely causes, and what to check, follow.", r.Reading, r.At.Date(), expected))
		m.warnCauses(r.Suspect)
	}
}

// FillOfLog is the code of the warning that the log's resin is in the tank, and not the rig's.
const FillOfLog = "fill-of-log"

// tellOtherFill warns where the rig states another amount of resin than the log says was
// filled in: the log's counts, whatever is stated of the rig.
func (m *making) tellOtherFill(past *BedPast) {
	fill := past.Present()
	if !fill.Began.Given() || !differ(fill.Resin, past.sized) {
		return
	}
	m.warn(FillOfLog, "In the tank is what the log says was filled in on "+fill.Began.Date().String()+", %s of resin, and not the rig's %s. To change that, log a change of resin, or correct that entry.", fill.Resin.AsResin(), past.sized.AsResin())
}

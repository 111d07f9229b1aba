package washday

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
	"washeve/ui/report"
)

// watch is how far over the cap a measured flow may be and count as at it: nobody stops a
// watch nearer, and the time of a jug is told rounded. PRACTICE: 1.01.
const watch = 1.01

// overCap tells whether the step at hand sends more through the bed than it can purify, and
// what it can. Of a bed that no flow keeps on spec nothing can be throttled.
func (m Model) overCap() (limit quantity.Flow, over bool) {
	s := m.step()
	limit, given := m.u.Outlook.Cap.Get()
	if most, told := m.u.Outlook.WasteCap.Get(); told && m.toWaste() {
		limit = most
	}
	return limit, given && limit > 0 && s != nil && s.Bed == model.Yes && s.Flow.Or(0) > watch*limit
}

// toWaste tells whether the water of the step at hand is run out: nobody rinses with it, so
// that it may be faster than the bed can purify.
func (m Model) toWaste() bool { s := m.step(); return s != nil && s.Kind == model.Flush }

// capWords say of a step under its cap what the cap is.
func (m Model) capWords() string {
	limit, given := m.u.Outlook.Cap.Get()
	switch s := m.step(); {
	case !given || s.Bed != model.Yes || m.overCapWords() != "":
		return ""
	case limit <= 0:
		return "; no flow keeps this bed on spec"
	case m.toWaste() && s.Flow.Or(0) > watch*limit:
		return "; to waste it may run faster than the cap of " + report.Most(limit, m.sys) + ", the rinse not"
	}
	return "; cap " + report.Most(limit, m.sys) + ": " + m.jugWords(limit)
}

// overCapWords tell of a flow over the cap what to do about it; "" of any other.
func (m Model) overCapWords() string {
	limit, over := m.overCap()
	if !over {
		return ""
	}
	throttle := "throttle until " + m.jugWords(limit)
	if held, stated := m.o.Wash.DIFlow.Get(); stated && held < limit {
		throttle = "throttle to the " + quantity.Show(held, m.sys) + " of this wash, where " + m.jugWords(held)
	}
	return "This flow is OVER THE CAP of " + report.Most(limit, m.sys) + ": " + throttle + ", then " + m.th.Key("f", "flow") + " measures again."
}

// jugWords say how a cap is kept to by a vessel and a watch.
func (m Model) jugWords(limit quantity.Flow) string {
	vessel, name := report.Vessel(m.sys)
	if m.sys == quantity.US {
		name += " jug"
	}
	return name + " takes " + report.Fills(vessel, limit) + " or longer"
}

// measuredWords tell of a measured flow what follows from it in the step at hand, which
// was planned so. The hand goes over a face in its own time, so the gallons change; what
// replaces a film or flushes a bed is gallons, so there the time does.
func (m Model) measuredWords(planned model.DayStep) string {
	words := "Measured: " + quantity.Show(m.step().Flow.Or(0), m.sys)
	if _, over := m.overCap(); over {
		return words + ", over the cap: throttle."
	}
	if washday.Hurried(&m.u, m.step(), m.step().Flow.Or(0)) {
		return words + ", for this flush alone: the rinse keeps its own flow. The time changes."
	}
	words += ". The steps from here on go by it: "
	if m.step().Duration.Or(0) != planned.Duration.Or(0) {
		return words + "so much water is needed, and the time changes."
	}
	if m.sys == quantity.Metric {
		return words + "the hand sets the time, and the litres change."
	}
	return words + "the hand sets the time, and the gallons change."
}

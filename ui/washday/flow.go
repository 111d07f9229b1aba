package washday

import (
	"strings"

	"washeve/model/quantity"
	"washeve/ui/report"
)

// flowExamples are the ways of stating a flow: the time that the vessel takes, a bucket and
// its time, the flow itself.
func flowExamples(sys quantity.System) [3]string {
	if sys == quantity.Metric {
		return [3]string{"120 s", "12 L in 144 s", "5 L/min"}
	}
	return [3]string{"46 s", "5 gal in 230 s", "1.3 gpm"}
}

// flowAsk asks for a flow, by the vessel that the screen speaks of.
func (m Model) flowAsk() string {
	_, vessel := report.Vessel(m.sys)
	like := flowExamples(m.sys)
	return strings.ToUpper(vessel[:1]) + vessel[1:] + " takes (or " + like[1] + ", or " + like[2] + "): "
}

// flowOf reads a flow, the time that the vessel takes, or "5 gal in 230 s" of a bucket.
func (m Model) flowOf(text string) (quantity.Flow, error) {
	if bucket, time, of := strings.Cut(text, " in "); of {
		v, err := quantity.Parse[quantity.Volume](bucket)
		if err != nil {
			return 0, err
		}
		d, err := quantity.Parse[quantity.Duration](time)
		if err != nil {
			return 0, err
		}
		return m.bounded(quantity.Flow(float64(v)/float64(d)), text)
	}
	if f, err := quantity.Parse[quantity.Flow](text); err == nil {
		return m.bounded(f, text)
	}
	d, err := quantity.Parse[quantity.Duration](text)
	if err != nil {
		return 0, err
	}
	if !(d > 0) {
		return m.bounded(0, text)
	}
	vessel, _ := report.Vessel(m.sys)
	return m.bounded(quantity.Flow(float64(vessel)/float64(d)), text)
}

// timedAs says of a time by itself which vessel it was taken to fill, and the flow.
func (m Model) timedAs(text string) string {
	flow, err := m.flowOf(text)
	if _, notATime := quantity.Parse[quantity.Duration](text); err != nil || notATime != nil {
		return ""
	}
	_, vessel := report.Vessel(m.sys)
	return vessel + " in that time is " + quantity.Show(flow, m.sys)
}

func (m Model) bounded(f quantity.Flow, text string) (quantity.Flow, error) {
	const least, most = 0.05 * quantity.GPM, 100 * quantity.GPM
	if !(f >= least && f <= most) {
		_, vessel := report.Vessel(m.sys)
		like := flowExamples(m.sys)
		return 0, &quantity.ParseError{
			What: "flow", Text: text, Reason: "is no flow between " + quantity.Show[quantity.Flow](least, m.sys) + " and " + quantity.Show[quantity.Flow](most, m.sys),
			Example: like[0] + " for " + vessel + ", " + like[1] + ", or " + like[2],
		}
	}
	return f, nil
}

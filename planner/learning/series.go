package learning

import (
	"math"

	"washeve/planner/bed"
)

// InSeries is [Job.Outlook] for the bed as the lead with a second one like it
// behind it, freshly filled. Of that one is believed what is believed of any
// fill, whatever the lead is like. Capacities and units are stated alike for
// both.
func (j Job) InSeries(states []State) Outlook {
	remaining := make([]weighted, len(states))
	now, end := make([]weighted, len(states)), make([]weighted, len(states))
	chance := 0.0
	contacts := Start().efficiencies(lagContacts)
	for i, s := range states {
		p := s.before(i, contacts)
		load := math.Exp(j.LoadSpread * s.luck)
		left := p.until(j.Main.Units, j.Limit)
		remaining[i] = weighted{left / (load * j.Main.Capacities), s.Weight}
		now[i] = weighted{p.outlet(j.Main.Units), s.Weight}
		last, held := p.run(j, load)
		if held {
			chance += s.Weight
		}
		end[i] = weighted{last, s.Weight}
	}
	return Outlook{
		Remaining: quantiles(remaining), ChanceLasts: math.Min(chance, 1),
		Now: quantiles(now), AtEnd: quantiles(end),
	}
}

// lagContacts is how finely the contact of the second bed is told.
const lagContacts = 24

// pair is a lead as it may stand, and a lag as it may be.
type pair struct {
	lead, lag Hypothesis
	series    bed.Series
}

// before puts a fresh bed behind state number i of a set: over the set its
// capacity and its contact are spread as believed, evenly along both.
func (s State) before(i int, contacts []float64) pair {
	// Multiples of the powers of the plastic number's inverse, another family than
	// that of [even], so that lead and lag have nothing to do with each other.
	_, u := math.Modf(0.5 + float64(i)*0.7548776662466927)
	_, v := math.Modf(0.5 + float64(i)*0.5698402909980532)
	z := math.Min(math.Max(math.Sqrt2*math.Erfinv(2*u-1), -Reach), Reach)
	lag := Hypothesis{Factor: math.Exp(CapacitySpread * z), Efficiency: contacts[int(v*float64(len(contacts)))]}
	return pair{lead: s.Hypothesis, lag: lag, series: bed.Series{Lead: s.Column, Ratio: lag.Factor / s.Factor}}
}

// outlet is outlet over feed at so many units of a perfect bed.
func (p pair) outlet(units float64) float64 {
	return p.series.Outlet(p.lead.Efficiency*units, p.lag.Efficiency*units)
}

// until is what can be fed until the limit, in stated capacities of one bed.
func (p pair) until(units, limit float64) float64 {
	return p.lead.Factor * p.series.Until(p.lead.Efficiency*units, p.lag.Efficiency*units, limit)
}

// feed is the pair after a use.
func (p pair) feed(u Use, load float64) pair {
	p.series = p.series.Feed(p.lead.Efficiency*u.Units, p.lag.Efficiency*u.Units, load*u.Capacities/p.lead.Factor)
	return p
}

// run does a job: what the outlet gives at the end, and whether it stayed under
// the limit all the way. See [Job.run].
func (p pair) run(j Job, load float64) (last float64, held bool) {
	units := j.Main.Units
	held = true
	for _, u := range j.Uses {
		p, units = p.feed(u, load), u.Units
		held = held && p.outlet(units) <= j.Limit
	}
	return p.outlet(units), held
}

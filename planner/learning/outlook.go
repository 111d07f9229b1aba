package learning

import (
	"math"
	"slices"
)

// LoadSpread is how far the load of a water may be off where it is worked out
// from conductivity alone: within 10 %, taken as two standard deviations.
// PUBLISHED: Standard Methods 1030 E for the 10 % (MEMORY).
const LoadSpread = 0.05

// Job is what a wash asks of the bed.
type Job struct {
	Uses       []Use
	Main       Use     // one gallon of the final rinse: its units and capacities
	Limit      float64 // outlet over feed at which the bed is stopped
	LoadSpread float64 // of ln(load)
}

// Quantiles are the values below which one in ten, one in two and nine in ten
// lie.
type Quantiles [3]float64

// Outlook is what follows for a job. Fractions are outlet over feed.
type Outlook struct {
	Remaining   Quantiles // gallons of the main use until the limit
	ChanceLasts float64
	Now, AtEnd  Quantiles // outlet over feed
}

// Outlook works a job out over all the ways in which the bed may stand.
// Job.Main.Capacities is per gallon, so Remaining is in gallons.
func (j Job) Outlook(states []State) Outlook {
	remaining := make([]weighted, len(states))
	now, end := make([]weighted, len(states)), make([]weighted, len(states))
	chance := 0.0
	for i, s := range states {
		n := s.Efficiency * j.Main.Units
		left, load := j.left(s)
		remaining[i] = weighted{left / (load * j.Main.Capacities), s.Weight}
		last, held := j.run(s, left, load)
		if held {
			chance += s.Weight
		}
		now[i] = weighted{s.Column.Outlet(n), s.Weight}
		end[i] = weighted{last, s.Weight}
	}
	return Outlook{
		Remaining: quantiles(remaining), ChanceLasts: math.Min(chance, 1),
		Now: quantiles(now), AtEnd: quantiles(end),
	}
}

// Left is the Remaining of [Job.Outlook] alone.
func (j Job) Left(states []State) Quantiles {
	remaining := make([]weighted, len(states))
	for i, s := range states {
		left, load := j.left(s)
		remaining[i] = weighted{left / (load * j.Main.Capacities), s.Weight}
	}
	return quantiles(remaining)
}

// left is what one bed can still be fed at the main flow until the limit, in stated
// capacities, and by how much its load is off.
func (j Job) left(s State) (left, load float64) {
	return s.Column.Until(s.Efficiency*j.Main.Units, j.Limit) * s.Factor, math.Exp(j.LoadSpread * s.luck)
}

// run does the job with one bed: what the outlet gives at the end, and whether
// it stayed under the limit all the way. left is what the bed can still be fed
// at the main flow, in stated capacities.
func (j Job) run(s State, left, load float64) (last float64, held bool) {
	c, units := s.Column, j.Main.Units
	held = true
	for _, u := range j.Uses {
		c, units = s.under(c, u, load), u.Units
		held = held && c.Outlet(s.Efficiency*units) <= j.Limit
	}
	if len(j.Uses) == 1 && units == j.Main.Units {
		held = left > 0 && left >= load*j.Uses[0].Capacities
	}
	return c.Outlet(s.Efficiency * units), held
}

type weighted struct{ value, weight float64 }

// quantiles sorts the values and reads off one in ten, one in two, nine in ten,
// going in a straight line between the middles of the weights.
func quantiles(values []weighted) Quantiles {
	slices.SortFunc(values, func(a, b weighted) int {
		return ascending(a.value, b.value)
	})
	return quantilesOfSorted(values)
}

func quantilesOfSorted(values []weighted) Quantiles {
	total := 0.0
	for _, v := range values {
		total += v.weight
	}
	var out Quantiles
	for k, p := range [3]float64{0.1, 0.5, 0.9} {
		out[k] = quantileAt(values, p*total)
	}
	return out
}

func quantileAt(values []weighted, want float64) float64 {
	if len(values) == 0 {
		return math.NaN()
	}
	below, last, lastMiddle := 0.0, values[0].value, 0.0
	for i, v := range values {
		middle := below + v.weight/2
		if middle >= want {
			if i == 0 || math.IsInf(v.value, 0) || middle == lastMiddle {
				return v.value
			}
			return last + (v.value-last)*(want-lastMiddle)/(middle-lastMiddle)
		}
		below, last, lastMiddle = below+v.weight, v.value, middle
	}
	return last
}

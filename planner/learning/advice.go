package learning

import (
	"math"
	"slices"
	"sort"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// The readings that could be taken next, as codes.
const (
	ReadNow    = "read-now"
	ReadFaster = "read-faster"
	ReadAtEnd  = "read-at-end"
	ReadLater  = "read-later"
)

// Trial is a flow to read at.
type Trial struct {
	Flow  quantity.Flow
	Units float64 // of a perfect bed
}

// Worth is what a reading is expected to teach.
type Worth struct {
	Code    string
	Shrinks quantity.Fraction // of the spread of ln(what is left)
}

// Told is how much of it is worth telling: it is an average, and finer steps would promise
// too much.
func (w Worth) Told() quantity.Fraction {
	const step = 0.05
	return quantity.Fraction(math.Round(float64(w.Shrinks)/step) * step)
}

// Advice says which reading teaches most.
type Advice struct {
	Options []Worth // the best first
	Note    tag.Note
}

const (
	// mostTrial states stand for the posterior in an advice.
	mostTrial = 60
	// leastWorth is the least narrowing that is worth a reading. PRACTICE.
	leastWorth = 0.05
	// leastLeft keeps the logarithm of nothing left within bounds, in stated
	// capacities.
	leastLeft = 0.02
)

// Advise compares a flushed reading now at the job's flow, one now at a faster
// flow, and one at the end of the job, by how much each is expected to narrow
// what is left: the standard deviation of ln(capacity left at the job's flow and
// limit), averaged over what the pen may show. feed is in ppm. A faster flow
// that is no faster is left out.
func (j Job) Advise(states []State, feed float64, faster Trial) Advice {
	if len(states) == 0 {
		return Advice{}
	}
	states = every(states, mostTrial)
	left := make([]float64, len(states))
	for i, s := range states {
		left[i] = math.Log(s.Column.Until(s.Efficiency*j.Main.Units, j.Limit)*s.Factor + leastLeft)
	}
	after := make([]State, len(states))
	last := j.Main.Units
	for i, s := range states {
		for _, u := range j.Uses {
			s.Column = s.under(s.Column, u, 1)
			last = u.Units
		}
		after[i] = s
	}
	a := Advice{Options: []Worth{
		{ReadNow, worth(states, left, feed, j.Main.Units)},
		{ReadAtEnd, worth(after, left, feed, last)},
	}}
	if faster.Units > 0 && faster.Units < j.Main.Units {
		a.Options = append(a.Options, Worth{ReadFaster, worth(states, left, feed, faster.Units)})
	}
	sort.SliceStable(a.Options, func(i, j int) bool { return a.Options[i].Shrinks > a.Options[j].Shrinks })
	a.Note = j.adviceNote(a.Options, states, feed, faster)
	return a
}

// every takes about n of the states, evenly.
func every(states []State, n int) []State {
	step := (len(states) + n - 1) / n
	if step < 2 {
		return states
	}
	out := make([]State, 0, n)
	for i := step / 2; i < len(states); i += step {
		out = append(out, states[i])
	}
	return out
}

// worth is one less the expected spread after a reading over the spread before.
// What the pen may show is taken from each state in turn, with three points of
// its error.
func worth(states []State, left []float64, feed, units float64) quantity.Fraction {
	truth := make([]float64, len(states))
	even := make([]float64, len(states))
	for i, s := range states {
		truth[i], even[i] = shown(feed*s.Column.Outlet(s.Efficiency*units)), s.Weight
	}
	before := spreadOf(left, even)
	if !(before > 0) {
		return 0
	}
	expected, all := 0.0, 0.0
	after := make([]float64, len(states))
	for i, s := range states {
		for _, miss := range [...]weighted{{-math.Sqrt(3), 1.0 / 6}, {0, 2.0 / 3}, {math.Sqrt(3), 1.0 / 6}} {
			z := truth[i] + PenSpread*miss.value
			for k := range after {
				d := (z - truth[k]) / PenSpread
				after[k] = even[k] * math.Exp(-d*d/2)
			}
			expected += s.Weight * miss.weight * spreadOf(left, after)
			all += s.Weight * miss.weight
		}
	}
	return quantity.Fraction(math.Max(1-expected/all/before, 0))
}

func spreadOf(values, weights []float64) float64 {
	sum, mean, square := 0.0, 0.0, 0.0
	for i, v := range values {
		sum += weights[i]
		mean += weights[i] * v
		square += weights[i] * v * v
	}
	mean /= sum
	return math.Sqrt(math.Max(square/sum-mean*mean, 0))
}

func (j Job) adviceNote(options []Worth, states []State, feed float64, faster Trial) tag.Note {
	best := options[0]
	shrinks := quantity.ValueOf(best.Told())
	if best.Shrinks < leastWorth {
		return tag.Note{Code: ReadLater, Format: "No reading teaches much yet: a bed like this one reads about the same whatever it holds. Read again after about %s more.",
			Values: []quantity.Value{quantity.ValueOf(j.wait(states, feed))}}
	}
	switch best.Code {
	case ReadFaster:
		return tag.Note{Code: ReadFaster, Format: "A flushed reading now at %s, for a moment and to waste, teaches most: expect it to narrow the range of what is left by %s. The wash itself keeps to the cap.",
			Values: []quantity.Value{quantity.ValueOf(faster.Flow), shrinks}}
	case ReadAtEnd:
		return tag.Note{Code: ReadAtEnd, Format: "A reading at the end of the next wash teaches most: expect it to narrow the range of what is left by %s.", Values: []quantity.Value{shrinks}}
	}
	return tag.Note{Code: ReadNow, Format: "A flushed reading now, at the job's flow, teaches most: expect it to narrow the range of what is left by %s.", Values: []quantity.Value{shrinks}}
}

// wait is the water until one state in four shows on the pen.
func (j Job) wait(states []State, feed float64) quantity.Volume {
	showing := math.Min((PenFloor+1)/feed, 1)
	until := make([]float64, len(states))
	for i, s := range states {
		until[i] = s.Column.Until(s.Efficiency*j.Main.Units, showing) * s.Factor / j.Main.Capacities
	}
	slices.Sort(until)
	return quantity.Volume(until[len(until)/4]) * quantity.Gallon
}

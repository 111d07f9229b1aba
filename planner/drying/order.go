package drying

import (
	"slices"
	"time"

	"washeve/model"
	"washeve/planner/drying/sun"
)

// Sunlit is a stretch of the day in which the beam reaches a face, by steps.
type Sunlit struct {
	Side     model.Side
	From, To time.Time // the first step with sun; the first without, or sunset before it
}

// rank is the place of a face in the order for a start at a step.
//
// The roof comes first, since what runs off it wets the sides again (PRACTICE).
// Then the faces in the shade, that whose sun comes soonest ahead of the
// others; then those in the sun, that which keeps its sun longest ahead of those
// it will leave sooner, so that each is done in the shade if waiting can do it.
type rank struct {
	face  int // in the input
	group group
	spell spell
}

// group is what comes first in the order.
type group int

const (
	onTop group = iota
	inShade
	inSun
)

// spell is how long sun or shade stay on a face, seen from a step.
type spell struct {
	end int    // first step at which it has changed, or the number of steps
	why string // in words
}

// sunAndShade gives the spell of each face at each step.
func (f *Forecast) sunAndShade() [][]spell {
	steps := f.Steps
	out := make([][]spell, len(steps))
	faces := len(steps[0].Faces)
	flat := make([]spell, len(steps)*faces)
	for i := len(steps) - 1; i >= 0; i-- {
		out[i] = flat[i*faces : (i+1)*faces]
		for n := range out[i] {
			if i+1 < len(steps) && steps[i+1].Faces[n].Sunlit == steps[i].Faces[n].Sunlit {
				out[i][n] = out[i+1][n]
				continue
			}
			out[i][n] = spell{end: i + 1, why: f.spellWords(i, n)}
		}
	}
	return out
}

// spellWords are the words for a spell of face n whose last step is i.
func (f *Forecast) spellWords(i, n int) string {
	words := "in the shade"
	switch face := &f.Steps[i].Faces[n]; {
	case face.Side == model.Roof:
		return "what runs off it wets the sides again"
	case face.Sunlit:
		words = "in the sun"
	}
	if i+1 == len(f.Steps) {
		return words + " for the rest of the day"
	}
	return words + " until " + f.hours.Label(f.spellEnd(i, n))
}

// spellEnd is when a spell of face n whose last step is i ends: sun at sunset where that
// comes before the next step, all else at the next step.
func (f *Forecast) spellEnd(i, n int) time.Time {
	if f.Steps[i].Faces[n].Sunlit {
		return f.setIn(i)
	}
	return f.Steps[min(i+1, len(f.Steps)-1)].At
}

// lit is the step whose sun and shade hold at an instant in step i: from sunset on the next.
func (f *Forecast) lit(i int, at time.Time) int {
	if i+1 == len(f.Steps) || f.setIn(i).After(at) {
		return i
	}
	return i + 1
}

// why is what sun and shade do to a face from an instant in step i on, in words: behind a
// sunset that comes after the last step of the day it is in the shade.
func (f *Forecast) why(i int, at time.Time, face int) string {
	i = f.lit(i, at)
	if i+1 == len(f.Steps) && f.Steps[i].Faces[face].Sunlit && f.Steps[i].Faces[face].Side != model.Roof {
		for _, set := range f.sunsets {
			if !set.Before(f.Steps[i].At) && !at.Before(set) {
				return "in the shade for the rest of the day"
			}
		}
	}
	return f.spells[i][face].why
}

// setIn is the sunset between a step and the next, or that next step where there is none.
func (f *Forecast) setIn(i int) time.Time {
	from, to := f.Steps[i].At, f.Steps[min(i+1, len(f.Steps)-1)].At
	for _, set := range f.sunsets {
		if !set.Before(from) && set.Before(to) {
			return set
		}
	}
	return to
}

// sets lists the sunsets between midnight and midnight, and the next one: that of the day
// before, too, where it falls behind midnight.
func (f *Forecast) sets() []time.Time {
	const day = 24 * time.Hour
	courses := []sun.Day{f.Sun}
	if f.Steps[0].Light {
		courses = append(courses, f.place.Day(f.hours.Start().Add(-day), f.hours.Start()))
	}
	var out []time.Time
	for _, c := range courses {
		if set, given := c.Set.Get(); given {
			out = append(out, set.In(f.hours.Start().Location()))
		}
	}
	return out
}

// ranked lists the faces, into ranks, in the order for a start at a moment with
// these spells. Faces of which sun and shade are not known are left out.
func ranked(ranks []rank, m *Moment, now []spell) []rank {
	for f := range m.Faces {
		face := &m.Faces[f]
		r := rank{face: f, group: inShade, spell: now[f]}
		switch {
		case face.Side == model.Roof:
			r.group = onTop
		case face.Sunlit:
			r.group = inSun
		}
		if face.Known {
			ranks = append(ranks, r)
		}
	}
	slices.SortStableFunc(ranks, func(a, b rank) int {
		switch {
		case a.group != b.group:
			return int(a.group - b.group)
		case a.group == inSun:
			return b.spell.end - a.spell.end
		}
		return a.spell.end - b.spell.end
	})
	return ranks
}

func (f *Forecast) sunlit() []Sunlit {
	var out []Sunlit
	for n := range f.Steps[0].Faces {
		out = append(out, f.sunOn(n)...)
	}
	return out
}

func (f *Forecast) sunOn(n int) []Sunlit {
	var out []Sunlit
	for i := 0; i < len(f.Steps); i++ {
		if !f.Steps[i].Faces[n].Sunlit {
			continue
		}
		start := i
		for i+1 < len(f.Steps) && f.Steps[i+1].Faces[n].Sunlit {
			i++
		}
		out = append(out, Sunlit{Side: f.Steps[start].Faces[n].Side, From: f.Steps[start].At, To: f.spellEnd(i, n)})
	}
	return out
}

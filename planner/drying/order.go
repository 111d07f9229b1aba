package drying

import (
	"slices"
	"time"

	"washeve/model"
)

// Sunlit is a stretch of the day in which the beam reaches a face, by steps.
type Sunlit struct {
	Side     model.Side
	From, To time.Time // the first step with sun, the first without
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

// spells gives the spell of each face at each step.
func spells(steps []Moment) [][]spell {
	out := make([][]spell, len(steps))
	faces := len(steps[0].Faces)
	flat := make([]spell, len(steps)*faces)
	for i := len(steps) - 1; i >= 0; i-- {
		out[i] = flat[i*faces : (i+1)*faces]
		for f := range out[i] {
			if i+1 < len(steps) && steps[i+1].Faces[f].Sunlit == steps[i].Faces[f].Sunlit {
				out[i][f] = out[i+1][f]
				continue
			}
			out[i][f] = spell{end: i + 1, why: spellWords(steps, i, f)}
		}
	}
	return out
}

// spellWords are the words for a spell whose last step is i.
func spellWords(steps []Moment, i, f int) string {
	words := "in the shade"
	switch face := &steps[i].Faces[f]; {
	case face.Side == model.Roof:
		return "what runs off it wets the sides again"
	case face.Sunlit:
		words = "in the sun"
	}
	if i+1 == len(steps) {
		return words + " for the rest of the day"
	}
	return words + " until " + steps[i+1].Label
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

func sunlitOf(steps []Moment) []Sunlit {
	var out []Sunlit
	for f := range steps[0].Faces {
		out = append(out, sunOn(steps, f)...)
	}
	return out
}

func sunOn(steps []Moment, f int) []Sunlit {
	var out []Sunlit
	for i := 0; i < len(steps); i++ {
		if !steps[i].Faces[f].Sunlit {
			continue
		}
		start := i
		for i+1 < len(steps) && steps[i+1].Faces[f].Sunlit {
			i++
		}
		end := steps[min(i+1, len(steps)-1)].At
		out = append(out, Sunlit{Side: steps[start].Faces[f].Side, From: steps[start].At, To: end})
	}
	return out
}

package drying

import (
	"sort"
	"time"

	"washeve/model"
)

// Order is the recommended order of the faces for a start at an hour.
type Order struct {
	At    time.Time
	Label string
	Turns []Turn
}

// Turn is one face and the reason for its place.
type Turn struct {
	Side model.Side
	Why  string
}

// Sunlit is a stretch of the day in which the beam reaches a face, by steps.
type Sunlit struct {
	Side     model.Side
	From, To time.Time // the first step with sun, the first without
}

// ordersOf makes an order for each full hour with light.
//
// The roof comes first, since what runs off it wets the sides again (PRACTICE).
// Then the faces in the shade, that whose sun comes soonest ahead of the
// others; then those in the sun, that which keeps its sun longest ahead of those
// it will leave sooner, so that each is done in the shade if waiting can do it.
func ordersOf(steps []Moment) []Order {
	var out []Order
	for i := range steps {
		if steps[i].Light && steps[i].FullHour {
			out = append(out, orderAt(steps, i))
		}
	}
	return out
}

type rank struct {
	turn  Turn
	group int // 0 roof, 1 shade, 2 sun
	steps int // to the next change of sun and shade
}

func orderAt(steps []Moment, i int) Order {
	var ranks []rank
	for f, face := range steps[i].Faces {
		if face.Known {
			ranks = append(ranks, rankOf(steps, i, f))
		}
	}
	sort.SliceStable(ranks, func(a, b int) bool {
		x, y := ranks[a], ranks[b]
		switch {
		case x.group != y.group:
			return x.group < y.group
		case x.group == 2:
			return x.steps > y.steps
		}
		return x.steps < y.steps
	})
	order := Order{At: steps[i].At, Label: steps[i].Label}
	for _, r := range ranks {
		order.Turns = append(order.Turns, r.turn)
	}
	return order
}

func rankOf(steps []Moment, i, f int) rank {
	face := &steps[i].Faces[f]
	change := i
	for change < len(steps) && steps[change].Faces[f].Sunlit == face.Sunlit {
		change++
	}
	r := rank{turn: Turn{Side: face.Side}, steps: change - i}
	changes := change < len(steps)
	switch {
	case face.Side == model.Roof:
		r.group, r.turn.Why = 0, "what runs off it wets the sides again"
	case !face.Sunlit && changes:
		r.group, r.turn.Why = 1, "in the shade until "+steps[change].Label
	case !face.Sunlit:
		r.group, r.turn.Why = 1, "in the shade for the rest of the day"
	case changes:
		r.group, r.turn.Why = 2, "in the sun until "+steps[change].Label
	default:
		r.group, r.turn.Why = 2, "in the sun for the rest of the day"
	}
	return r
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

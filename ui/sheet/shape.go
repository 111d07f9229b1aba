package sheet

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// coach is the vehicle from its left side, front at the left, and what each of
// its faces ends with.
type coach struct {
	length, height quantity.Length
	faces          []coachFace
}

type coachFace struct {
	side  model.Side
	water model.Water
	words string // "left: DI, no spots"
}

// A usual coach, for a plan whose vehicle is not at hand.
const (
	usualLength = 40 * quantity.Foot
	usualHeight = 12 * quantity.Foot
)

func coachOf(v model.Vehicle, p planner.Plan) coach {
	c := coach{length: v.Length.Or(usualLength), height: v.Height.Or(usualHeight)}
	for _, f := range p.Faces {
		c.faces = append(c.faces, coachFace{f.Name, f.Water, string(f.Name) + ": " + report.WaterName(f.Water) + ", " + report.SpotWords(f.Spots)})
	}
	return c
}

// of finds a face.
func (c coach) of(side model.Side) (coachFace, bool) {
	for _, f := range c.faces {
		if f.side == side {
			return f, true
		}
	}
	return coachFace{}, false
}

// tank is the bed upright, the feed coming in at the top, before and after the
// wash. The shares of a stand add up to one, or are all zero.
type tank struct{ before, after [3]float64 }

// layerNames are the layers from the inlet on.
var layerNames = [3]string{"spent", "working", "fresh"}

func tankOf(p planner.Plan) tank {
	return tank{shares(p.Bed.Before), shares(p.Bed.After)}
}

// shares makes layers drawable, whatever numbers they are.
func shares(l planner.Layers) [3]float64 {
	out := [3]float64{tame(l.Spent), tame(l.Working), tame(l.Fresh)}
	total := out[0] + out[1] + out[2]
	if total <= 0 {
		return [3]float64{}
	}
	for i := range out {
		out[i] /= total
	}
	return out
}

func tame(f quantity.Fraction) float64 {
	if v := float64(f); v > 0 && !math.IsInf(v, 0) {
		return math.Min(v, 1)
	}
	return 0
}

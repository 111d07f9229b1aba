// Package rinse computes stages: how much water goes on which face, how long it
// takes, and what the final rinse leaves behind.
package rinse

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
)

// MixingEfficiency is how well water that passes over a film replaces it, 1
// being perfect mixing. PRACTICE: no spray-rinse figure could be found in print.
const MixingEfficiency = 0.35

// Cover is the water and the time to go over an area: area x passes x flow over
// coverage rate.
func Cover(area quantity.Area, passes float64, coverage quantity.Coverage, flow quantity.Flow) (quantity.Volume, quantity.Duration) {
	time := quantity.Duration(float64(area) * passes / float64(coverage))
	return flow.Volume(time), time
}

// PPMAfter is what the film holds after v of water carrying clean ppm has
// passed over an area whose film, h deep, held dirty ppm:
//
//	C = clean + (dirty - clean) exp(-e v/h)        v in volume over area
//
// a stirred film that is displaced (the continuous rinse of the plating trade;
// MEMORY), with the mixing efficiency e.
func PPMAfter(dirty, clean float64, v quantity.Volume, area quantity.Area, h quantity.Film, e float64) float64 {
	if area <= 0 {
		return dirty
	}
	depth := float64(v) / float64(area)
	return clean + (dirty-clean)*math.Exp(-e*depth/float64(h))
}

// ToReach is the water that brings the film of an area from dirty to target
// ppm. It is false where no amount can, because the water itself carries the
// target or more.
func ToReach(target, dirty, clean float64, area quantity.Area, h quantity.Film, e float64) (quantity.Volume, bool) {
	if dirty <= target {
		return 0, true
	}
	if clean >= target {
		return 0, false
	}
	depth := float64(h) / e * math.Log((dirty-clean)/(target-clean))
	return quantity.Volume(depth * float64(area)), true
}

// Residue is what a film of h at so many ppm leaves when it dries.
func Residue(h quantity.Film, ppm float64) quantity.Residue {
	return quantity.Residue(float64(h) * ppm * float64(quantity.MilligramPerLitre))
}

// UsualCoverage is how fast a person goes over a body, one pass, where nobody
// measured it. PRACTICE.
func UsualCoverage(stage model.Stage, tool model.Tool) quantity.Coverage {
	rate := 50 * quantity.SquareFootPerMinute
	switch {
	case stage.Sprayer == model.ByHand:
		return 15 * quantity.SquareFootPerMinute
	case stage.Final:
		rate = 40 * quantity.SquareFootPerMinute
	}
	switch tool {
	case model.OpenHose:
		return 2.5 * rate
	case model.Nozzle:
		return 1.5 * rate
	}
	return rate
}

// UsualStages is the wash that nobody described: everything gets the final rinse, the
// roof where it shows. Without a softener, raw water takes the softened one's place.
func UsualStages(softener, roof bool) []model.Stage {
	soft := model.Softened
	if !softener {
		soft = model.Raw
	}
	body := []model.Side{model.Left, model.Right, model.Front, model.Rear}
	if roof {
		body = model.Sides()
	}
	return []model.Stage{
		{Name: "pre-rinse", Water: model.Raw},
		{Name: "soap", Water: soft},
		{Name: "contact wash", Water: soft, Sprayer: model.ByHand},
		{Name: "rinse", Water: soft},
		{Name: "final rinse", Water: model.DI, Faces: body, Final: true},
	}
}

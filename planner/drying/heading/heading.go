// Package heading is how the sun meets the faces of a vehicle, by the direction
// that it stands in.
package heading

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
)

// CosIncidence is the cosine of the angle between a face's outward normal and
// the sun: 1 with the sun square on, 0 and below with the face turned away.
// Sides are upright, the roof is level. A side of no name never meets the sun.
func CosIncidence(h model.Heading, side model.Side, altitude, azimuth quantity.Angle) quantity.Fraction {
	if side == model.Roof {
		return quantity.Fraction(math.Sin(float64(altitude)))
	}
	turn, ok := turnOf(side)
	if !ok {
		return -1
	}
	return quantity.Fraction(math.Cos(float64(altitude)) * math.Cos(float64(azimuth-quantity.Angle(h)-turn)))
}

func turnOf(side model.Side) (quantity.Angle, bool) {
	switch side {
	case model.Front:
		return 0, true
	case model.Right:
		return 90 * quantity.Degree, true
	case model.Rear:
		return 180 * quantity.Degree, true
	case model.Left:
		return -90 * quantity.Degree, true
	}
	return 0, false
}

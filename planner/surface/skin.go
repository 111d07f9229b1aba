package surface

import (
	"washeve/model"
	"washeve/model/quantity"
)

// Share is a part of a face.
type Share struct {
	Surface model.Surface
	Part    quantity.Fraction
}

// Shares gives what a face is made of where nobody said. PRACTICE.
func Shares(shape model.Shape, side model.Side, skin, roof model.Surface) []Share {
	glass, metal, wheels := parts(shape, side)
	if side == model.Roof {
		skin = roof
	}
	shares := []Share{{skin, 1 - glass - metal - wheels}}
	for _, s := range []Share{{model.Glass, glass}, {model.BrightMetal, metal}, {model.Wheels, wheels}} {
		if s.Part > 0 {
			shares = append(shares, s)
		}
	}
	return shares
}

func parts(shape model.Shape, side model.Side) (glass, metal, wheels quantity.Fraction) {
	upright := side == model.Left || side == model.Right
	switch {
	case side == model.Roof && !rounded(shape):
		return 0, 0, 0
	case shape == model.Coach && upright:
		return 0.18, 0.03, 0.03
	case shape == model.Coach && side == model.Front:
		return 0.45, 0.03, 0
	case shape == model.Trailer && upright:
		return 0.08, 0.02, 0.02
	case shape == model.Trailer:
		return 0.04, 0.01, 0
	case rounded(shape):
		return roundedParts(side, upright)
	case upright:
		return 0.15, 0.01, 0.04
	case side == model.Front:
		return 0.40, 0.03, 0
	}
	return 0.06, 0.03, 0
}

// rounded tells a shape that is no box.
func rounded(shape model.Shape) bool { return shape == model.Car || shape == model.Pickup }

func roundedParts(side model.Side, upright bool) (glass, metal, wheels quantity.Fraction) {
	if upright {
		return 0.25, 0.02, 0.10
	}
	if side == model.Roof {
		return 0.30, 0, 0
	}
	return 0.15, 0.08, 0
}

// UsualSkin is that of a vehicle that nobody described. PRACTICE.
const UsualSkin = model.Paint

// UsualRoof is what a roof is made of that nobody described: rubber on a coach or a
// trailer, else what the sides are made of. PRACTICE.
func UsualRoof(shape model.Shape, skin model.Surface) model.Surface {
	if low(shape) {
		return skin
	}
	return model.RubberRoof
}

// low tells a shape whose roof is seen, and dried, from the ground.
func low(shape model.Shape) bool { return rounded(shape) || shape == model.Van }

// RoofShows tells a roof that is worth the final rinse: that of a car, a pickup or a van,
// unless it is said to be of rubber. PRACTICE.
func RoofShows(shape model.Shape, stated model.Surface) bool {
	return low(shape) && stated != model.RubberRoof
}

// Shows is how much a spot shows on a surface, from 0 to 1. PRACTICE.
func Shows(s model.Surface) float64 {
	switch s {
	case model.Glass:
		return 1
	case model.Paint:
		return 0.9
	case model.BrightMetal:
		return 0.8
	case model.Wheels:
		return 0.5
	case model.GelCoat, model.Aluminium:
		return 0.45
	case model.Vinyl:
		return 0.3
	}
	return 0.05 // awning fabric, rubber roof
}

// FaceShows is how much a spot shows on a face, by its surfaces' parts.
func FaceShows(shares []Share) float64 {
	shows, whole := 0.0, 0.0
	for _, s := range shares {
		shows += float64(s.Part) * Shows(s.Surface)
		whole += float64(s.Part)
	}
	if whole == 0 {
		return 0
	}
	return shows / whole
}

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
	if side == model.Roof && (shape == model.Coach || shape == model.Trailer || shape == model.Van) {
		return []Share{{roof, 1}}
	}
	glass, metal, wheels := parts(shape, side)
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
	case shape == model.Coach && upright:
		return 0.18, 0.03, 0.03
	case shape == model.Coach && side == model.Front:
		return 0.45, 0.03, 0
	case shape == model.Trailer && upright:
		return 0.08, 0.02, 0.02
	case shape == model.Trailer:
		return 0.04, 0.01, 0
	case shape == model.Car || shape == model.Pickup:
		return roundedParts(side, upright)
	case upright:
		return 0.15, 0.01, 0.04
	case side == model.Front:
		return 0.40, 0.03, 0
	}
	return 0.06, 0.03, 0
}

func roundedParts(side model.Side, upright bool) (glass, metal, wheels quantity.Fraction) {
	if upright {
		return 0.25, 0.02, 0.10
	}
	if side == model.Roof {
		return 0.30, 0, 0
	}
	return 0.15, 0.08, 0
}

// Usual skins of a vehicle that nobody described. PRACTICE.
const (
	UsualSkin = model.Paint
	UsualRoof = model.RubberRoof
)

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

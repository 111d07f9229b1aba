package planner

import (
	"slices"

	"washeve/model"
	"washeve/planner/rinse"
	"washeve/planner/surface"
)

// The bands of what a film carries, in ppm. PRACTICE.
const (
	noneUpTo   = 10
	faintBelow = 25
	seenBelow  = 50
)

// aimed lets a rinse that was sized for exactly the band's edge count as within it.
const aimed = 1.01

// spotsAt is the outlook where a spot shows fully.
func spotsAt(ppm float64) Spots {
	switch {
	case ppm <= noneUpTo*aimed:
		return NoSpots
	case ppm < faintBelow:
		return Faint
	case ppm <= seenBelow:
		return Seen
	}
	return Towel
}

// hides is under which a surface forgives a band: a rubber roof does not show
// what glass does.
const hides = 0.3

// spotsOn is the outlook for a surface that shows spots so much.
func spotsOn(shows, ppm float64) Spots {
	if shows >= hides {
		return spotsAt(ppm)
	}
	return spotsAt(ppm * shows / hides)
}

// settle fills in what dries on the face, DI water having clean ppm and going on
// some surfaces only where these are named. The face's own figures are those of
// the part that gets it.
func (f *FacePlan) settle(shares []surface.Share, clean float64, only []model.Surface) {
	f.PPMLeft = f.film(clean, rinse.MixingEfficiency)
	f.Residue = rinse.Residue(f.Film, f.PPMLeft)
	f.Spots = spotsOn(surface.FaceShows(shares), f.PPMLeft)
	f.Surfaces = make([]SurfaceShare, len(shares))
	for i, s := range shares {
		left := f.PPMLeft
		if len(only) > 0 && !slices.Contains(only, s.Surface) {
			left = f.dirty
		}
		f.Surfaces[i] = SurfaceShare{Surface: s.Surface, Share: s.Part, Spots: spotsOn(surface.Shows(s.Surface), left)}
	}
}

func showsOf(f face) float64 { return surface.FaceShows(f.shares) }

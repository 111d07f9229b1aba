// Package surface computes what is to be washed: the area of each face, what it
// is made of, the water that stays on it and how a spot shows.
package surface

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
)

// Body is a vehicle's washable body as a box.
type Body struct {
	Shape     model.Shape
	Length    quantity.Length
	Width     quantity.Length
	Height    quantity.Length // of the roof above the ground
	Clearance quantity.Length
	Slides    int // slide-outs that stand out
}

// Sizes of a body that nobody measured.
const (
	// UsualWidth is the widest that a US road allows without a permit.
	// PUBLISHED: 23 CFR 658.15 (102 in).
	UsualWidth = 102 * quantity.Inch
	// UsualClearance is the lower edge of the body above the ground. PRACTICE.
	UsualClearance = 12 * quantity.Inch
)

// A slide-out that nobody measured. PRACTICE.
const (
	slideLength = 12 * quantity.Foot
	slideHeight = 6 * quantity.Foot
	slideDepth  = 3 * quantity.Foot
)

// Width is the usual width of a shape. PRACTICE for cars and pickups.
func Width(shape model.Shape) quantity.Length {
	switch shape {
	case model.Car:
		return 6 * quantity.Foot
	case model.Pickup, model.Van:
		return 6.75 * quantity.Foot
	}
	return UsualWidth
}

// factor is the area of a face over that of the box around it: openings taken
// out of a box, the slopes of a rounded body. PRACTICE.
func factor(shape model.Shape, side model.Side) quantity.Fraction {
	upright := side == model.Left || side == model.Right
	switch shape {
	case model.Car, model.Pickup:
		if upright {
			return 0.75
		}
		return 0.9
	}
	if upright {
		return 0.96 // wheel openings
	}
	return 1
}

// Tall is the height of the body itself.
func (b Body) Tall() quantity.Length { return max(b.Height-b.Clearance, 0) }

// Area of a face. It only grows with each size of the body.
func (b Body) Area(side model.Side) quantity.Area {
	across, up, along := float64(b.Width), float64(b.Tall()), float64(b.Length)
	var box float64
	switch side {
	case model.Left, model.Right:
		box = along * up
	case model.Front, model.Rear:
		box = across * up
	case model.Roof:
		box = along * across
	}
	return quantity.Area(box*float64(factor(b.Shape, side))) + b.slideArea(side)
}

// slideArea is what the slide-outs add where they stand out: their two cheeks to
// the side they are on, left first, and their top to the roof.
func (b Body) slideArea(side model.Side) quantity.Area {
	cheeks := quantity.Area(2 * float64(slideDepth) * float64(slideHeight))
	top := quantity.Area(float64(slideDepth) * float64(slideLength))
	switch side {
	case model.Left:
		return cheeks * quantity.Area((b.Slides+1)/2)
	case model.Right:
		return cheeks * quantity.Area(b.Slides/2)
	case model.Roof:
		return top * quantity.Area(b.Slides)
	}
	return 0
}

// Film left on a face that has dripped for a time.
//
// Upright faces: [Drained], bounded by the plating trade's table for vertical
// parts, well to very poorly drained (Metal Finishing Guide Book 2012-2013,
// Table II; PUBLISHED).
//
// Roof: the same table for horizontal parts; the middle (by ratio) of well and
// very poorly drained, whatever the time. PRACTICE for choosing the middle.
func Film(side model.Side, tall quantity.Length, nu quantity.KinematicViscosity, drip quantity.Duration) quantity.Film {
	if side == model.Roof {
		return quantity.Film(math.Sqrt(float64(WellDrainedFlat * VeryPoorlyDrainedFlat)))
	}
	return min(max(Drained(tall, nu, drip), WellDrained), VeryPoorlyDrained)
}

// Drained is the mean film on a wall that has drained for a time: the film at
// the depth z under the top is h = sqrt(nu z/(g t)), whose mean over the height
// H is (2/3) sqrt(nu H/(g t)). For water that wets a smooth plate and sheets
// down. Jeffreys, Proc. Camb. Phil. Soc. 26 (1930) 204; MEMORY.
func Drained(tall quantity.Length, nu quantity.KinematicViscosity, drip quantity.Duration) quantity.Film {
	const g = 9.80665
	return quantity.Film(2.0 / 3 * math.Sqrt(float64(nu)*float64(tall)/(g*float64(drip))))
}

// The drag-out table. PUBLISHED: Metal Finishing Guide Book 2012-2013, Table II
// (gal/1000 ft2).
const (
	gal1000ft2            = quantity.Film(float64(quantity.Gallon) / (1000 * float64(quantity.SquareFoot)))
	WellDrained           = 0.4 * gal1000ft2
	PoorlyDrained         = 2 * gal1000ft2
	VeryPoorlyDrained     = 4 * gal1000ft2
	WellDrainedFlat       = 0.8 * gal1000ft2
	VeryPoorlyDrainedFlat = 10 * gal1000ft2
)

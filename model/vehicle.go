package model

import (
	"fmt"

	"washeve/model/quantity"
)

// Shape is the kind of body a vehicle has.
type Shape string

// The shapes. Coaches, trailers and vans are boxes less their openings; pickups
// and cars are boxes times a factor.
const (
	Coach   Shape = "coach"
	Trailer Shape = "trailer"
	Van     Shape = "van"
	Pickup  Shape = "pickup"
	Car     Shape = "car"
)

// Side names a face of a vehicle.
type Side string

// The five faces.
const (
	Left  Side = "left"
	Right Side = "right"
	Front Side = "front"
	Rear  Side = "rear"
	Roof  Side = "roof"
)

// Sides lists the faces in the order in which the program shows them.
func Sides() []Side { return []Side{Roof, Left, Right, Front, Rear} }

// Surface is what a face is made of.
type Surface string

// The surfaces.
const (
	Paint       Surface = "paint" // clear-coated
	GelCoat     Surface = "gel coat"
	Glass       Surface = "glass"
	BrightMetal Surface = "bright metal"
	Aluminium   Surface = "bare aluminium"
	RubberRoof  Surface = "rubber roof"
	Vinyl       Surface = "vinyl"
	Awning      Surface = "awning fabric"
	Wheels      Surface = "wheels"
)

// Surfaces lists them all.
func Surfaces() []Surface {
	return []Surface{Paint, GelCoat, Glass, BrightMetal, Aluminium, RubberRoof, Vinyl, Awning, Wheels}
}

// Vehicle is a body to be washed.
type Vehicle struct {
	Name      string
	Shape     Shape
	Length    quantity.Opt[quantity.Length]
	Height    quantity.Opt[quantity.Length] // top of the roof above the ground
	Width     quantity.Opt[quantity.Length]
	Clearance quantity.Opt[quantity.Length] // ground to the lower edge of the body
	SlideOuts quantity.Opt[int]
	Skin      Surface // what the painted parts are: paint or gel coat
	RoofSkin  Surface
	Colour    Colour
	Faces     []Face
}

// Fields lists what can be stated of a vehicle, its faces apart.
func (v *Vehicle) Fields() []Field {
	return []Field{
		name("name", "name", "what you call this vehicle", "our coach", &v.Name).required(),
		choice("shape", "shape", "coach, trailer and van are boxes; pickup and car are rounded", []Shape{Coach, Trailer, Van, Pickup, Car}, &v.Shape),
		measure("length", "length", "overall length of the body", "40 ft 6 in", "5 ft", "75 ft", &v.Length).required(),
		measure("height", "height", "top of the roof above the ground", "12 ft 9 in", "3 ft", "14 ft", &v.Height).required(),
		measure("width", "width", "width of the body", "8 ft 6 in", "3 ft", "11 ft", &v.Width),
		measure("clearance", "ground clearance", "ground to the lower edge of the body", "12 in", "2 in", "4 ft", &v.Clearance),
		count("slide_outs", "slide-outs", "rooms that slide out", "3", 0, 6, &v.SlideOuts),
		choice("skin", "skin", "what most of the sides is made of", []Surface{Paint, GelCoat, Aluminium, Vinyl}, &v.Skin),
		choice("roof_skin", "roof skin", "what the roof is made of", []Surface{RubberRoof, Paint, GelCoat, Aluminium}, &v.RoofSkin),
		choice("colour", "colour", "how dark most of it is, which is how hot it gets in the sun", Colours(), &v.Colour),
	}
}

// Contradictions finds statements that cannot be true together.
func (v *Vehicle) Contradictions() []Fault {
	var faults []Fault
	height, okHeight := v.Height.Get()
	clearance, okClearance := v.Clearance.Get()
	if okHeight && okClearance && clearance >= height {
		faults = append(faults, Fault{Key: "clearance", Problem: fmt.Sprintf("%q leaves no body under a height of %q", v.Clearance.Words(), v.Height.Words())})
	}
	seen := map[Side]bool{}
	for i, face := range v.Faces {
		if seen[face.Side] && face.Side != "" {
			faults = append(faults, Fault{Key: "face", Face: i + 1, Problem: fmt.Sprintf("the face %q is stated twice", face.Side)})
		}
		seen[face.Side] = true
		total := quantity.Fraction(0)
		for _, share := range face.Shares {
			total += share.Or(0)
		}
		if total > 1.0001 {
			faults = append(faults, Fault{Key: "face", Face: i + 1, Problem: fmt.Sprintf("the shares of the face %q add up to %s, over 100 %%", face.Side, quantity.Show(total, quantity.US))})
		}
	}
	return faults
}

// Face is what a person knows better than the defaults about one face.
type Face struct {
	Side   Side
	Area   quantity.Opt[quantity.Area]
	Film   quantity.Opt[quantity.Film] // left after dripping
	Colour Colour
	Shares []quantity.Opt[quantity.Fraction]
}

// NewFace is a face with nothing stated.
func NewFace(side Side) Face {
	return Face{Side: side, Shares: make([]quantity.Opt[quantity.Fraction], len(Surfaces()))}
}

// Fields lists what can be stated of a face: its area, its film, its colour, and the share
// of each surface, whose key is the surface's name with underscores.
func (f *Face) Fields() []Field {
	if len(f.Shares) == 0 {
		f.Shares = make([]quantity.Opt[quantity.Fraction], len(Surfaces()))
	}
	fields := []Field{
		choice("side", "side", "which face this is", Sides(), &f.Side).required(),
		measure("area", "area", "washable area, where you have measured it", "320 ft2", "1 ft2", "1500 ft2", &f.Area),
		measure("film", "film after drip", "water left on the face when it has dripped", "60 mL/m2", "5 mL/m2", "500 mL/m2", &f.Film),
		choice("colour", "colour", "where it is not the vehicle's colour", Colours(), &f.Colour),
	}
	for i, s := range Surfaces() {
		fields = append(fields, measure(keyOf(string(s)), string(s), "share of this face that is "+string(s), "20 %", "0 %", "100 %", &f.Shares[i]))
	}
	return fields
}

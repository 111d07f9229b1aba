package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/surface"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// face is one side of the vehicle as the rinse sees it.
type face struct {
	side   model.Side
	area   quantity.Area
	film   quantity.Film
	pause  quantity.Duration // drip before the final rinse
	colour model.Colour
	shares []surface.Share
	part   quantity.Fraction // that DI water goes on

	tall     quantity.Length
	nu       quantity.KinematicViscosity
	measured bool // the film is stated, whatever the pause
	ownArea  bool // the area is stated
}

// filmAt is what is left on the face after a drip.
func (f face) filmAt(pause quantity.Duration) quantity.Film {
	if f.measured {
		return f.film
	}
	return surface.Film(f.side, f.tall, f.nu, max(pause, leastPause))
}

// UsualPause is the drip before the final rinse where nobody says. PRACTICE.
const UsualPause = 60 * quantity.Second

// leastPause keeps the drainage formula from an endless film at no drip at all.
const leastPause = 1 * quantity.Second

// measureBody works out the faces and writes down what was assumed.
func measureBody(l *ledger, c chosen, temperature quantity.Temperature) []face {
	v := c.vehicle
	shape := model.Shape(takeWords(l, "vehicle shape", string(v.Shape), string(model.Coach), practice("the vehicle this is made for")))
	b := surface.Body{
		Shape:     shape,
		Length:    take(l, "vehicle length", v.Length, 0, yours),
		Height:    take(l, "vehicle height", v.Height, 0, yours),
		Width:     take(l, "vehicle width", v.Width, surface.Width(shape), widthSource(shape)),
		Clearance: take(l, "vehicle ground clearance", v.Clearance, min(surface.UsualClearance, v.Height.Or(0)/4), practice("a low-floor body")),
	}
	slides := model.Position(takeWords(l, "slide-outs pushed while washing", string(c.wash.Slides), string(model.SlidesIn), practice("the usual way")))
	if slides == model.SlidesOut {
		b.Slides = v.SlideOuts.Or(0)
	}
	skin := model.Surface(takeWords(l, "vehicle skin", string(v.Skin), string(surface.UsualSkin), practice("most coaches")))
	roof := model.Surface(takeWords(l, "vehicle roof skin", string(v.RoofSkin), string(surface.UsualRoof(shape, skin)), roofSource(shape)))
	pause := take(l, "drip before final rinse", c.wash.Pause, UsualPause, practice("a walk around the vehicle"))
	nu := water.KinematicViscosity(temperature)
	faces := make([]face, 0, len(model.Sides()))
	for _, side := range model.Sides() {
		f := face{
			side: side, area: b.Area(side), pause: pause, colour: v.Colour, tall: b.Tall(), nu: nu,
			shares: surface.Shares(shape, side, skin, roof),
		}
		f.film = f.filmAt(pause)
		f = f.known(l, v.Faces)
		f.part = partFor(f.shares, c.wash.DISurfaces)
		faces = append(faces, f)
	}
	return faces
}

func widthSource(shape model.Shape) tag.Source {
	if shape == model.Coach || shape == model.Trailer {
		return tag.Source{Tag: tag.Published, Text: "23 CFR 658.15: 102 in, the widest that a US road allows"}
	}
	return practice("a usual body of this shape")
}

func roofSource(shape model.Shape) tag.Source {
	if shape == model.Coach || shape == model.Trailer {
		return practice("most coaches and trailers; state paint where it is painted")
	}
	return practice("as the sides, on a car, a pickup or a van")
}

// known puts what the user knows of a face over the defaults.
func (f face) known(l *ledger, stated []model.Face) face {
	for _, s := range stated {
		if s.Side != f.side {
			continue
		}
		name := string(f.side)
		if s.Area.Given() {
			f.area, f.ownArea = take(l, name+" area", s.Area, 0, yours), true
		}
		if s.Film.Given() {
			f.film, f.measured = take(l, name+" film", s.Film, 0, yours), true
		}
		if s.Colour != "" {
			f.colour = s.Colour
		}
		if shares := statedShares(s); len(shares) > 0 {
			f.shares = shares
		}
	}
	return f
}

func statedShares(s model.Face) []surface.Share {
	var shares []surface.Share
	for i, name := range model.Surfaces() {
		if i >= len(s.Shares) {
			break
		}
		if part, given := s.Shares[i].Get(); given && part > 0 {
			shares = append(shares, surface.Share{Surface: name, Part: part})
		}
	}
	return shares
}

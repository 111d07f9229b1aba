package drying

import (
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

const (
	// hotPanel is the temperature of a panel from which it is not washed: soap
	// dries on it at once, and it hurts the hand. PRACTICE: 50 C.
	hotPanel = (273.15 + 50) * quantity.Kelvin

	freezingPoint = 273.15 * quantity.Kelvin
)

// Limit is a stretch of the day in which something forbids washing, or asks for
// care.
type Limit struct {
	From, To time.Time  // the first step and the last
	Side     model.Side // "" where it is not of one face
	Note     tag.Note
}

// limits finds frost, panels too hot to wash, and a resin tank that the air
// alone warms past its label.
func (in Input) limits(steps []Moment) []Limit {
	out := stretches(steps, freezing, "", tag.Note{
		Code: "freezing", Format: "air or a wet panel at %s or below: water freezes on the panels, in hoses and in the tank",
		Values: []quantity.Value{quantity.ValueOf(freezingPoint)},
	})
	for i, face := range in.Faces {
		out = append(out, stretches(steps, func(m *Moment) bool { return hot(&m.Faces[i]) }, face.Side, tag.Note{
			Code: "hot-panel", Format: "the " + string(face.Side) + " is over %s when dry: too hot to wash; wait for shade or cool it with plain water first",
			Values: []quantity.Value{quantity.ValueOf(hotPanel)},
		})...)
	}
	if limit, given := in.TankLimit.Get(); given {
		out = append(out, stretches(steps, func(m *Moment) bool { return m.Air.Given() && m.Air.Or(0) > limit }, "", tag.Note{
			Code: "hot-tank", Format: "the air is over the resin tank's limit of %s, and a tank in the sun is warmer still: keep it in the shade and run water through it",
			Values: []quantity.Value{quantity.ValueOf(limit)},
		})...)
	}
	return out
}

// freezing counts a panel only while there is light to work by: at night a
// clear sky takes it below the air, and nobody washes.
func freezing(m *Moment) bool {
	if m.Air.Given() && m.Air.Or(0) <= freezingPoint {
		return true
	}
	for i := range m.Faces {
		if f := &m.Faces[i]; m.Light && f.Wet.Given() && f.Wet.Or(0) <= freezingPoint {
			return true
		}
	}
	return false
}

func hot(f *FaceMoment) bool { return f.Dry.Given() && f.Dry.Or(0) > hotPanel }

func stretches(steps []Moment, holds func(*Moment) bool, side model.Side, note tag.Note) []Limit {
	var out []Limit
	for i := 0; i < len(steps); i++ {
		if !holds(&steps[i]) {
			continue
		}
		start := i
		for i+1 < len(steps) && holds(&steps[i+1]) {
			i++
		}
		out = append(out, Limit{From: steps[start].At, To: steps[i].At, Side: side, Note: note})
	}
	return out
}

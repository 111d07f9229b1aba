package planner

import (
	"slices"

	"washeve/model"
)

// InTurn lists the faces in the order in which they are washed: the day's where the plan
// knows the day, else as the plan lists them.
func (p *Plan) InTurn() []model.Side {
	var faces []model.Side
	if p.Day != nil {
		for _, t := range p.Day.Start.Turns {
			faces = append(faces, t.Side)
		}
	}
	for i := range p.Faces {
		if side := p.Faces[i].Name; !slices.Contains(faces, side) {
			faces = append(faces, side)
		}
	}
	return faces
}

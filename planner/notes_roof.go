package planner

import (
	"cmp"
	"slices"

	"washeve/model"
	"washeve/planner/surface"
)

// RoofOutOfSight is the code of the note that a roof is left out of the DI rinse since
// nobody sees its spots from the ground.
const RoofOutOfSight = "roof-out-of-sight"

// tellRoof says why the usual stages leave the roof out of the DI rinse, where its water
// dries to spots. What a person stated of stages and faces speaks for itself.
func (p *Plan) tellRoof(l *ledger, c chosen) {
	v, w := c.vehicle, c.wash
	if len(w.Stages) > 0 || len(w.DISurfaces) > 0 || slices.Contains(w.TowelFaces, model.Roof) {
		return
	}
	spotted := func(f FacePlan) bool { return f.Name == model.Roof && f.DI <= 0 && f.Spots != NoSpots }
	if surface.RoofShows(v.Shape, v.RoofSkin) || !slices.ContainsFunc(p.Faces, spotted) {
		return
	}
	code, why := RoofOutOfSight, "nobody sees the roof of a "+string(cmp.Or(v.Shape, model.Coach))+" from the ground"
	if surface.RoofShows(v.Shape, "") {
		code, why = "roof-of-rubber", "it is of rubber, as you stated, which hides most spots"
	}
	l.warnWords(code, "The roof gets no DI rinse: "+why+`. To rinse it as well, name it under "DI first on" (di_faces).`)
}

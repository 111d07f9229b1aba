package planner

import (
	"washeve/model/quantity"
	"washeve/planner/water"
)

// What a wash aims at where nobody says, in ppm on the pen's scale. PRACTICE.
const (
	UsualLimit  = 10 // at the bed's outlet
	UsualTarget = 10 // in the film that dries
)

// aims are what the wash is held to.
type aims struct {
	scale         quantity.Scale
	limit, target float64 // ppm on scale
}

func decideAims(l *ledger, c chosen) aims {
	limit := c.wash.Limit
	if !limit.Given() {
		limit = c.defaults.Limit
	}
	scale, source := scaleOf(limit, c.pen, water.DefaultScale())
	if c.place.TDS.Or(quantity.Reading{}).Scale == scale {
		source = yours // with the reading of the tap, if nowhere else
	}
	l.assume(Assumption{Name: "scale of the ppm shown", Words: scale.String(), Source: source})
	return aims{
		scale:  scale,
		limit:  takePPM(l, "outlet limit", limit, UsualLimit, scale),
		target: takePPM(l, "target in the film", c.wash.Target, UsualTarget, scale),
	}
}

func takePPM(l *ledger, name string, given quantity.Opt[quantity.Reading], usual float64, scale quantity.Scale) float64 {
	reading, ok := given.Get()
	source := yours
	if !ok {
		reading, source = quantity.PPM(usual, scale), practice("no spots are seen under 10 ppm")
	}
	v := ppmOn(scale, reading.WithScale(scale))
	l.assume(ppmAssumption(name, v, scale, source))
	return v
}

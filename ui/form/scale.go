package form

import (
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/planner"
)

// Scales are those of a reading that is typed without one.
type Scales struct {
	Offered quantity.Scale // to a bare number: none where nobody states one
	Counted quantity.Scale // by which a reading counts whose scale nobody said
}

// ScalesOf are the scales of a reading in a field, by the pen that is in use. A target
// without a scale counts on that of the limit, where it has one: of those, the first that is
// given, else the wash's, else that of the defaults.
func ScalesOf(f model.Field, s stock.Stock, limits ...quantity.Opt[quantity.Reading]) Scales {
	offered := quantity.ScaleUnsaid
	if i := s.Chosen("pen"); i >= 0 {
		offered = s.Rig.Pens[i].Scale.Or(quantity.ScaleUnsaid)
	}
	counted := planner.UsualScale()
	if offered != quantity.ScaleUnsaid {
		counted = offered
	}
	if f.Key != "target" {
		return Scales{offered, counted}
	}
	for _, limit := range append(limits, s.Wash.Limit, s.Rig.Defaults.Limit) {
		if reading, given := limit.Get(); given {
			if reading.Scale != quantity.ScaleUnsaid && reading.Scale != quantity.ScaleConductivity {
				counted = reading.Scale
			}
			break
		}
	}
	return Scales{offered, counted}
}

// OnScales is the edit of a field that offers a bare reading the scale of the pen, and says
// what one without a scale counts as. That of any other field stays as it is.
func (e Edit) OnScales(f model.Field, s Scales) Edit {
	if !f.OfPen() {
		return e
	}
	number, _, _ := strings.Cut(f.Example, " ")
	e.example = strings.TrimSpace(number + " ppm " + s.Offered.String())
	return e.Telling(func(text string) string {
		if r, err := quantity.ParseReading(text); err == nil && r.Scale == quantity.ScaleUnsaid {
			return "no scale said: counted as " + s.Counted.String()
		}
		return ""
	})
}

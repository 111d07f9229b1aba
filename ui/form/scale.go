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

// PenScales are those of a reading by the pen of that name, "" for the one in use. A pen that
// states no scale has that offered by which the place's own TDS was read, where it would count
// otherwise; what one shows that the rig does not have counts on the scale of the one in use.
func PenScales(s stock.Stock, name string) Scales {
	at := s.Chosen("pen")
	scales := countedOn(scaleOf(s.Rig, at))
	if name == "" {
		return scales.orOf(s)
	}
	if at = model.Find(s.Names("pen"), name); at >= 0 {
		return countedOn(scaleOf(s.Rig, at)).orOf(s)
	}
	return Scales{quantity.ScaleUnsaid, scales.Counted}
}

// orOf are the scales with that of the chosen place's TDS offered, where no pen's is and a
// reading without one would count otherwise: it is the same pen that will read the bed.
func (s Scales) orOf(all stock.Stock) Scales {
	at := all.Chosen("place")
	if at < 0 || s.Offered != quantity.ScaleUnsaid {
		return s
	}
	if read := (*all.Places)[at].TDS.Or(quantity.Reading{}).Scale; read != s.Counted {
		s.Offered = read
	}
	return s
}

// scaleOf is the scale of a pen of the rig, by its number there; -1 for none.
func scaleOf(rig *model.Rig, pen int) quantity.Scale {
	if pen < 0 {
		return quantity.ScaleUnsaid
	}
	return rig.Pens[pen].Scale.Or(quantity.ScaleUnsaid)
}

// countedOn are the scales by the one that a pen states.
func countedOn(offered quantity.Scale) Scales {
	if offered == quantity.ScaleUnsaid {
		return Scales{offered, planner.UsualScale()}
	}
	return Scales{offered, offered}
}

// ScalesOf are the scales of a reading in a field, by the pen that is in use. A target
// without a scale counts on that of the limit, where it has one: of those, the first that is
// given, else the wash's, else that of the defaults.
func ScalesOf(f model.Field, s stock.Stock, limits ...quantity.Opt[quantity.Reading]) Scales {
	scales := PenScales(s, "")
	if f.Key != "target" {
		return scales
	}
	if scales.Offered == quantity.ScaleConductivity {
		scales.Offered = quantity.ScaleUnsaid // of solids, which are stated in ppm
	}
	for _, limit := range append(limits, s.Wash.Limit, s.Rig.Defaults.Limit) {
		if reading, given := limit.Get(); given {
			if reading.Scale != quantity.ScaleUnsaid && reading.Scale != quantity.ScaleConductivity {
				scales.Counted = reading.Scale
			}
			break
		}
	}
	return scales
}

// Bare is a reading that was typed as a bare number, with the scale that is offered to it.
func (s Scales) Bare(number string) string {
	if s.Offered == quantity.ScaleConductivity {
		return number + " " + s.Offered.String()
	}
	return strings.TrimSpace(number + " ppm " + s.Offered.String())
}

// Taken says of a right reading without a scale what it counts as; "" of any other text.
func (s Scales) Taken(text string) string {
	if r, err := quantity.ParseReading(text); err == nil && r.Scale == quantity.ScaleUnsaid {
		return "no scale said: counted as " + s.Counted.String()
	}
	return ""
}

// OnScales is the edit of a field that offers a bare reading the scale of the pen, and says
// what one without a scale counts as. That of any other field stays as it is.
func (e Edit) OnScales(f model.Field, s Scales) Edit {
	if !f.OfPen() {
		return e
	}
	number, _, _ := strings.Cut(f.Example, " ")
	e.example = s.Bare(number)
	return e.Telling(s.Taken)
}

package water

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Facts is what a person knows of a water. All but TDS may be left out.
type Facts struct {
	TDS         quantity.Reading
	Pen         quantity.Scale // of the pen, for a TDS without a scale
	Hardness    quantity.Opt[quantity.Hardness]
	Alkalinity  quantity.Opt[quantity.Hardness]
	PH          quantity.Opt[float64]
	Silica      quantity.Opt[quantity.Concentration] // as SiO2
	Chlorine    quantity.Opt[quantity.Concentration] // free
	Iron        quantity.Opt[quantity.Concentration]
	Temperature quantity.Opt[quantity.Temperature]
}

// FactsOf takes the facts of a place. The pen's scale is for a TDS that was
// stated without one.
func FactsOf(p *model.Place, pen quantity.Scale) Facts {
	return Facts{
		TDS: p.TDS.Or(quantity.Reading{}), Pen: pen,
		Hardness: p.Hardness, Alkalinity: p.Alkalinity, PH: p.PH,
		Silica: p.Silica, Chlorine: p.Chlorine, Iron: p.Iron, Temperature: p.Temperature,
	}
}

// Analysis is what the facts mean for a bed.
type Analysis struct {
	Conductivity quantity.Conductivity // at 25 C
	Temperature  quantity.Temperature
	Load         quantity.Load // of the cations, and of the anions that a pen sees
	Low, High    quantity.Load // the load lies between
	Ions         Ions
	CO2          quantity.Load // free carbon dioxide, on the anion side only
	Silica       quantity.Load // on the anion side only
	Slowest      Cation        // of the feed, which sets how fast a bed exchanges

	HardnessSaid   bool // measured; otherwise a share of the load was assumed
	AlkalinitySaid bool

	Contradictions []tag.Note       // readings that cannot both be right, and what was assumed
	Warnings       []tag.Note       // what in this water hurts a bed or a finish
	Assumed        []tag.Assumption // what was taken where nothing was said
}

// Hardness of the water, measured or assumed.
func (a Analysis) Hardness() quantity.Hardness { return quantity.Hardness(a.Ions.Hardness) }

// AnionExtra is what loads the anion side without moving a pen: free carbon
// dioxide and silica.
func (a Analysis) AnionExtra() quantity.Load { return a.CO2 + a.Silica }

// Effective is the load that uses a mixed bed up: that of the anion side, which
// in a usual bed is the scarcer one (three parts of anion resin hold less than
// two of cation resin) and here the more heavily loaded one. See
// [Analysis.EffectiveReason].
func (a Analysis) Effective() quantity.Load { return a.Load + a.AnionExtra() }

// EffectiveReason tells in words how [Analysis.Effective] comes about.
func (a Analysis) EffectiveReason() tag.Note {
	if a.AnionExtra() == 0 {
		return tag.Note{
			Code:   "load",
			Format: "cations and anions are each %s; free carbon dioxide and silica would add to the anion side, and none is known",
			Values: []quantity.Value{quantity.ValueOf(a.Load)},
		}
	}
	return tag.Note{
		Code:   "load",
		Format: "the anion side takes %s: %s that the pen sees, %s of free carbon dioxide and %s of silica that it does not",
		Values: []quantity.Value{
			quantity.ValueOf(a.Effective()), quantity.ValueOf(a.Load),
			quantity.ValueOf(a.CO2), quantity.ValueOf(a.Silica),
		},
	}
}

// PPM is what a pen of that scale shows in this water.
func (a Analysis) PPM(scale quantity.Scale) quantity.Reading { return PPM(a.Conductivity, scale) }

// Diffusivity of the slowest cation at the water's temperature.
func (a Analysis) Diffusivity() quantity.Diffusivity { return Diffusivity(a.Slowest, a.Temperature) }

// Class of the water by its hardness, measured or assumed.
func (a Analysis) Class() Class { return ClassOf(a.Hardness()) }

// Class is a class of hardness.
type Class string

// The classes.
const (
	Soft           Class = "soft"
	ModeratelyHard Class = "moderately hard"
	Hard           Class = "hard"
	VeryHard       Class = "very hard"
)

// ClassOf a hardness: soft to 60, moderately hard to 120, hard to 180 mg/L as
// CaCO3, very hard above. PUBLISHED: US Geological Survey, Hardness of Water
// (classes of Durfor and Becker, 1964).
func ClassOf(h quantity.Hardness) Class {
	switch {
	case h <= quantity.HardnessOf(60):
		return Soft
	case h <= quantity.HardnessOf(120):
		return ModeratelyHard
	case h <= quantity.HardnessOf(180):
		return Hard
	}
	return VeryHard
}

package water

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

const (
	// rule: total cations = total anions = EC/100 in meq/L, EC in uS/cm, within
	// 10 %. MEMORY: Standard Methods for the Examination of Water and Wastewater,
	// 1030 E. Sodium chloride alone carries 18 % less than the rule says.
	rule      quantity.Load     = 0.01 // eq/m3 for each uS/cm
	ruleError quantity.Fraction = 0.10

	// solvedError is that of a load solved from the ions. PRACTICE: a pen reads
	// within 2 %, and sulfate or nitrate counted as chloride moves it by some 3 %.
	solvedError quantity.Fraction = 0.05

	// Shares where nothing was measured. PRACTICE: a usual hard tap water; with
	// these shares the rule EC/100 holds exactly at 5 meq/L.
	usualHardness    quantity.Load = 0.75
	usualBicarbonate quantity.Load = 0.70

	// First dissociation of carbonic acid at 25 C. MEMORY: pK1 = 6.35, CRC
	// Handbook of Chemistry and Physics, section 5.
	firstDissociation = 6.35

	// mostCO2 is the free carbon dioxide that a tap can carry. PRACTICE: 5 mmol/L
	// is 220 mg/L; soda water under one atmosphere has some 34.
	mostCO2 quantity.Load = 5

	// silicaMass is the mass of one mole of SiO2, taken up as one equivalent.
	// PUBLISHED: any table of atomic weights.
	silicaMass = 60.08 * quantity.Gram

	// rounding is what does not count as a disagreement.
	rounding = 1e-9
)

// DefaultTemperature is that of a water that nobody measured. PRACTICE: a mains
// in the mild season.
const DefaultTemperature quantity.Temperature = (60 + 459.67) / 1.8

// Analyse finds out what the facts mean for a bed.
//
// With hardness and alkalinity the load is solved from the conductivity, the
// rest being sodium and chloride ([Ions.Conductivity]). Without either it is
// EC/100 meq/L within 10 % (Standard Methods 1030 E), and the ions that were
// not measured are shares of a usual tap water. A hardness or an alkalinity
// above that load is believed, since the larger load uses the bed up sooner and
// a plan on it is on the safe side; the band still reaches down to what the pen
// says. One that is above the load by more than its error is told in
// Contradictions.
func Analyse(f Facts) Analysis {
	ec := Conductivity(f.TDS, f.Pen)
	ions, allowed, within := ionsOf(f, ec)
	a := Analysis{
		Conductivity:   ec,
		Temperature:    f.Temperature.Or(DefaultTemperature),
		Load:           ions.Total(),
		Low:            allowed * quantity.Load(1-within),
		High:           ions.Total() * quantity.Load(1+within),
		Ions:           ions,
		HardnessSaid:   f.Hardness.Given(),
		AlkalinitySaid: f.Alkalinity.Given(),
		Silica:         quantity.Load(float64(f.Silica.Or(0)) / float64(silicaMass)),
	}
	a.Slowest = slowest(a)
	a.Contradictions = contradictions(f, a, allowed*quantity.Load(1+within))
	a.CO2 = freeCO2(f)
	if a.CO2 > mostCO2 {
		a.Contradictions = append(a.Contradictions, pHNote(f, a.CO2))
		a.CO2 = 0
	}
	a.Warnings = warnings(f, a)
	a.Assumed = assumed(f, a)
	return a
}

// ionsOf splits the load into ions. Allowed is the load that the conductivity
// admits, which is below the total where readings disagree; within is the error
// of the way it was found.
func ionsOf(f Facts, ec quantity.Conductivity) (ions Ions, allowed quantity.Load, within quantity.Fraction) {
	h, okHardness := f.Hardness.Get()
	b, okAlkalinity := f.Alkalinity.Get()
	hardness, bicarbonate := quantity.Load(h), quantity.Load(b)
	if okHardness && okAlkalinity {
		total := solveTotal(ec, hardness, bicarbonate)
		ions = fill(total, hardness, bicarbonate)
		if computed := ions.Conductivity(); computed > ec*(1+rounding) {
			return ions, total * quantity.Load(ec/computed), solvedError
		}
		return ions, total, solvedError
	}
	allowed = rule * quantity.Load(ec.MicroSiemensPerCm())
	total := max(allowed, hardness, bicarbonate)
	if !okHardness {
		hardness = usualHardness * total
	}
	if !okAlkalinity {
		bicarbonate = usualBicarbonate * total
	}
	return fill(total, hardness, bicarbonate), allowed, ruleError
}

func slowest(a Analysis) Cation {
	if a.Ions.Hardness > slowShare*a.Load {
		return Calcium
	}
	return Sodium
}

// freeCO2 is the carbon dioxide that goes with bicarbonate at a pH:
// [CO2] = [HCO3] 10^(pK1 - pH), activities taken as one. One mmol takes one meq
// of a strong anion resin.
func freeCO2(f Facts) quantity.Load {
	alkalinity, okAlkalinity := f.Alkalinity.Get()
	pH, okPH := f.PH.Get()
	if !okAlkalinity || !okPH {
		return 0
	}
	return quantity.Load(float64(alkalinity) * math.Pow(10, firstDissociation-pH))
}

// contradictions tells the readings above the most load that the conductivity
// admits, its error included.
func contradictions(f Facts, a Analysis, most quantity.Load) []tag.Note {
	var notes []tag.Note
	over := func(code, what string, reading quantity.Opt[quantity.Hardness]) {
		said, given := reading.Get()
		if !given || quantity.Load(said) <= most*(1+rounding) {
			return
		}
		notes = append(notes, tag.Note{
			Code: code,
			Format: "the " + what + " of %s and the TDS disagree: a conductivity of %s leaves room for %s at most. " +
				"Assumed: the " + what + " is right and the load is %s, since that uses the bed up sooner; measure both again",
			Values: []quantity.Value{
				quantity.ValueOf(said), quantity.ValueOf(a.Conductivity),
				quantity.ValueOf(quantity.Hardness(most)), quantity.ValueOf(quantity.Hardness(a.Load)),
			},
		})
	}
	over("hardness-over-tds", "hardness", f.Hardness)
	over("alkalinity-over-tds", "alkalinity", f.Alkalinity)
	return notes
}

func pHNote(f Facts, co2 quantity.Load) tag.Note {
	return tag.Note{
		Code: "ph-and-alkalinity",
		Format: "the pH and the alkalinity of %s disagree: together they mean %s of free carbon dioxide, more than a tap can carry. " +
			"Assumed: the pH is wrong and no carbon dioxide is counted; measure both again",
		Values: []quantity.Value{quantity.ValueOf(f.Alkalinity.Or(0)), quantity.ValueOf(co2)},
	}
}

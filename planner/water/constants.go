package water

import (
	"strconv"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, in the order in which
// they come into play, each with where it comes from.
func Constants() []tag.Assumption {
	crc := tag.Source{Tag: tag.Published, Text: "CRC Handbook of Chemistry and Physics, section 5, limiting ionic conductivity at 25 C"}
	onsager := tag.Source{Tag: tag.Memory, Text: "Onsager, Phys. Z. 28 (1927) 277; Robinson and Stokes, Electrolyte Solutions, 1959"}
	methods := tag.Source{Tag: tag.Memory, Text: "Standard Methods for the Examination of Water and Wastewater, 1030 E: cations = anions = EC/100"}
	return []tag.Assumption{
		tag.Text("TDS scales", "KCl, NaCl, 442 by conductivity", tag.Source{Tag: tag.Published, Text: "makers' tables of conductivity standards at 25 C, 23 to 2764 uS/cm; straight in logarithms between"}),
		tag.Text("load by conductivity", number(float64(rule), "meq/L for each uS/cm"), methods),
		tag.Quantity("error of that rule", ruleError, methods),
		tag.Text("conductance of sodium", number(conductanceSodium, "S cm2/eq"), crc),
		tag.Text("conductance of calcium", number(conductanceCalcium, "S cm2/eq"), crc),
		tag.Text("conductance of magnesium", number(conductanceMagnesium, "S cm2/eq"), crc),
		tag.Text("conductance of chloride", number(conductanceChloride, "S cm2/eq"), crc),
		tag.Text("conductance of bicarbonate", number(conductanceBicarbonate, "S cm2/eq"), crc),
		tag.Text("lowering by concentration, fixed part", number(2*braking, "S cm2/eq times sqrt(I)/(1 + sqrt(I))"), onsager),
		tag.Text("lowering by concentration, relative part", number(relaxation, "times sqrt(I)/(1 + sqrt(I))"), onsager),
		tag.Text("the same for calcium and magnesium", number(doubleCharge, "times as much"), onsager),
		tag.Quantity("calcium in the hardness", quantity.Fraction(calciumShare), tag.FromPractice("two parts of calcium to one of magnesium")),
		tag.Quantity("error of a load solved from ions", solvedError, tag.FromPractice("pen 2 %, sulfate and nitrate counted as chloride 3 %")),
		tag.Quantity("hardness where not measured, of the cations", quantity.Fraction(usualHardness), tag.FromPractice("a usual hard tap water")),
		tag.Quantity("bicarbonate where not measured, of the anions", quantity.Fraction(usualBicarbonate), tag.FromPractice("a usual tap water")),
		tag.Quantity("water temperature where not measured", DefaultTemperature, tag.FromPractice("a mains in the mild season")),
		tag.Text("pK1 of carbonic acid", number(firstDissociation, "at 25 C"), tag.Source{Tag: tag.Memory, Text: "CRC Handbook of Chemistry and Physics, section 5, dissociation constants"}),
		tag.Quantity("most free carbon dioxide in a tap", mostCO2, tag.FromPractice("more means that pH and alkalinity disagree")),
		tag.Text("silica for one equivalent", number(float64(silicaMass/quantity.Gram), "g SiO2"), tag.Source{Tag: tag.Published, Text: "atomic weights"}),
		tag.Quantity("calcium sets the exchange from, of the cations", quantity.Fraction(slowShare), tag.FromPractice("below it all of the calcium could come through under the usual end point")),
		tag.Quantity("chlorine warned of from", leastChlorine, tag.FromPractice("the first colour of a strip")),
		tag.Quantity("iron warned of from", leastIron, tag.FromPractice("what makers of resin ask of a feed")),
		tag.Quantity("heavy load from", heavyLoad, tag.FromPractice("500 mg/L as CaCO3")),
		tag.Text("hardness classes", "60, 120, 180 mg/L as CaCO3", tag.Source{Tag: tag.Published, Text: "US Geological Survey, Hardness of Water"}),
		tag.Text("density of water", "polynomial in C", tag.Source{Tag: tag.Memory, Text: "Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16; within 0.0004 % of IAPWS-95"}),
		tag.Text("viscosity of water", "four powers of T/300 K", tag.Source{Tag: tag.Memory, Text: "Patek and others, J. Phys. Chem. Ref. Data 38 (2009) 21; within 0.003 % of IAPWS R12-08"}),
		tag.Text("gas constant", number(gasConstant, "J/(mol K)"), tag.Source{Tag: tag.Published, Text: "CODATA 2018, exact"}),
		tag.Text("Faraday constant", number(faradayConstant, "C/mol"), tag.Source{Tag: tag.Published, Text: "CODATA 2018, exact"}),
		tag.Quantity("diffusivity of sodium at 25 C", Diffusivity(Sodium, quantity.Celsius(25)), crc),
		tag.Quantity("diffusivity of calcium at 25 C", Diffusivity(Calcium, quantity.Celsius(25)), crc),
	}
}

func number(v float64, unit string) string {
	return strconv.FormatFloat(v, 'g', 6, 64) + " " + unit
}

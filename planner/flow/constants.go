package flow

import (
	"strconv"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Constants lists the numbers that this package rests on, from the tap to the
// sprayer, each with where it comes from.
func Constants() []tag.Assumption {
	return []tag.Assumption{
		tag.Quantity("static pressure where not measured", usualStatic, tag.FromPractice("a usual tap")),
		tag.Quantity("pressure lost on the way to the tap, where not measured", usualTapLoss, tag.FromPractice("a usual outside tap")),
		tag.Quantity("at a flow of", usualTapFlow, tag.FromPractice("goes with the loss above")),
		tag.Text("fall of a tap's pressure", "as flow to the power 1.852", tag.Source{Tag: tag.Memory, Text: "NFPA 291, flow testing of hydrants (exponent 0.54 = 1/1.852)"}),
		tag.Quantity("pump shut-off pressure where not stated", usualShutOff, tag.FromPractice("a usual water pump of a coach")),
		tag.Quantity("pump flow wide open where not stated", usualPumpFlow, tag.FromPractice("a usual water pump of a coach")),
		tag.Text("fall of a pump's pressure", "in a straight line with flow", tag.FromPractice("diaphragm pumps")),
		tag.Text("friction of hose, Hazen-Williams C", pure(HoseRoughness), tag.Source{Tag: tag.Memory, Text: "handbooks of hydraulics: smooth hose and plastic"}),
		tag.Text("formula for hose", "Hazen-Williams", tag.Source{Tag: tag.Published, Text: "as EPANET 2.3.5 computes it; Rossman, EPANET 2 Users Manual, EPA/600/R-00/057, 2000"}),
		tag.Quantity("density of water in hoses and fittings", quantity.Density(waterDensity), tag.Source{Tag: tag.Published, Text: "IAPWS-95, 15 C"}),
		tag.Text("loss of a coupling, K", pure(CouplingK), tag.FromPractice("handbooks give wide ranges")),
		tag.Text("loss of an open valve, K, two to a tank", pure(ValveK), tag.FromPractice("on a bore of 3/4 in")),
		tag.Text("loss of a tank's head and distributors, K", pure(TankHeadK), tag.FromPractice("on a bore of 3/4 in")),
		tag.Text("formula for resin", "Ergun, 150 and 1.75", tag.Source{Tag: tag.Published, Text: "Ergun, Chem. Eng. Prog. 48 (1952) 89"}),
		tag.Quantity("most drop over the resin", MostResinDrop, tag.Source{Tag: tag.Published, Text: "AWWA/ASCE, Water Treatment Plant Design, 4th edition"}),
		tag.Quantity("pressure a sprayer needs", SprayerNeed, tag.FromPractice("so that a pump does not starve and a nozzle throws a fan")),
		tag.Quantity("margin on a pressure washer's flow", washerMargin, tag.FromPractice("so that the supply is never just enough")),
		tag.Text("nozzle number", "gpm at 4000 psi, as the root of the pressure", tag.FromPractice("the convention of the trade; agrees with printed charts")),
		tag.Quantity("flow of a pressure washer where not stated", UsualWasherFlow, tag.FromPractice("small ones take 1.2 to 1.4 gpm")),
		tag.Quantity("flow of a nozzle where not stated", usualNozzleFlow, tag.FromPractice("a usual garden nozzle")),
		tag.Quantity("pressure of that flow", usualNozzlePressure, tag.FromPractice("a usual garden nozzle")),
	}
}

func pure(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

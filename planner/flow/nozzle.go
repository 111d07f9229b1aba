package flow

import (
	"math"

	"washeve/model/quantity"
	"washeve/planner/water"
)

// nozzleRating is the pressure at which a nozzle's number is its flow in gpm.
// PRACTICE: the convention of the pressure-washer trade.
const nozzleRating = 4000 * quantity.PSI

// NozzleFlow is the flow of a nozzle of a number: number gpm at 4000 psi, and as
// the square root of the pressure. PRACTICE; agrees with printed charts for
// 500 to 5000 psi to their last digit.
func NozzleFlow(number float64, pressure quantity.Pressure) quantity.Flow {
	return quantity.Flow(number*math.Sqrt(max(0, float64(pressure/nozzleRating)))) * quantity.GPM
}

// NozzleNumber is the number of a nozzle that passes a flow at a pressure. See
// [NozzleFlow].
func NozzleNumber(flow quantity.Flow, pressure quantity.Pressure) float64 {
	return flow.GPM() / math.Sqrt(float64(pressure/nozzleRating))
}

// nozzleLoss is in Pa for each (m3/s)2.
func nozzleLoss(number float64) float64 {
	q := number * float64(quantity.GPM)
	return float64(nozzleRating) / (q * q)
}

// OrificeFlow is the flow through a hole into the air: Cd A sqrt(2 p/rho).
// PUBLISHED: any text on hydraulics. Cd (MEMORY, handbooks) is about 0.62 for a
// sharp edge, 0.80 for a short tube, 0.98 for a rounded one.
func OrificeFlow(hole quantity.Length, discharge float64, pressure quantity.Pressure, t quantity.Temperature) quantity.Flow {
	area := math.Pi / 4 * float64(hole) * float64(hole)
	return quantity.Flow(discharge * area * math.Sqrt(2*max(0, float64(pressure))/float64(water.Density(t))))
}

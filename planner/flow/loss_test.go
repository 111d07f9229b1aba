package flow

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/model/store/reference"
)

// Head loss read from EPANET 2.3.5, and Darcy-Weisbach with Colebrook's
// friction factor (fluids 1.0.22): hose-friction.csv.
func TestHazenWilliamsAgreesWithEPANET(t *testing.T) {
	for _, r := range reference.Rows(t, "hose-friction.csv") {
		bore := quantity.Length(r.Number(t, "bore_in")) * quantity.Inch
		length := quantity.Length(r.Number(t, "length_ft")) * quantity.Foot
		flow := quantity.Flow(r.Number(t, "flow_gpm")) * quantity.GPM
		drop := HazenWilliams(flow, bore, length, 140)
		head := float64(drop) / (waterDensity * gravity) / 0.3048
		// The file prints six digits, which is up to 5e-6.
		assert.InEpsilon(t, r.Number(t, "hw_head_ft"), head, 5e-6, r)
		assert.InEpsilon(t, r.Number(t, "hw_psi"), drop.PSI(), 1e-5, r)
		assert.InEpsilon(t, r.Number(t, "dw_psi"), drop.PSI(), 0.15, r)
	}
}

// The closed form that EPANET's values follow, in feet and cubic feet a second.
func TestHazenWilliamsIsTheClosedFormInFeet(t *testing.T) {
	flow, bore, length := 5*quantity.GPM, 0.625*quantity.Inch, 50*quantity.Foot
	cubicFeet := float64(flow) / math.Pow(0.3048, 3)
	feet := 4.727 * length.Feet() * math.Pow(cubicFeet, 1.852) / (math.Pow(140, 1.852) * math.Pow(bore.Feet(), 4.871))
	head := float64(HazenWilliams(flow, bore, length, 140)) / (waterDensity * gravity) / 0.3048
	assert.InEpsilon(t, feet, head, 1e-12)
}

// fluids 1.0.22, its docstring, and a tutorial's table: packed-bed-pressure-drop.csv.
func TestErgunAgreesWithTheReference(t *testing.T) {
	for _, r := range reference.Rows(t, "packed-bed-pressure-drop.csv") {
		bead := quantity.Length(r.Number(t, "bead_mm")) * quantity.Millimetre
		depth, voids := quantity.Length(r.Number(t, "depth_m")), quantity.Fraction(r.Number(t, "voidage"))
		v := r.Number(t, "v_superficial_mm_s") / 1000
		viscous, inertial := ergun(depth, bead, voids, r.Number(t, "rho_kg_m3"), r.Number(t, "mu_pa_s"))
		assert.InEpsilon(t, r.Number(t, "ergun_viscous_pa"), viscous*v, 1e-5, r)
		assert.InEpsilon(t, r.Number(t, "ergun_pa"), viscous*v+inertial*v*v, 1e-5, r)
		if r["t_c"] == "" {
			continue
		}
		drop := Ergun(quantity.Speed(v), depth, bead, voids, quantity.Celsius(r.Number(t, "t_c")))
		assert.InEpsilon(t, r.Number(t, "ergun_pa"), float64(drop), 1e-3, r)
	}
}

// Printed charts of the pressure-washer trade, and arithmetic for the plain
// orifice: nozzle-flow.csv.
func TestNozzlesAgreeWithTheCharts(t *testing.T) {
	for _, r := range reference.Rows(t, "nozzle-flow.csv") {
		pressure := quantity.Pressure(r.Number(t, "pressure_psi")) * quantity.PSI
		want := r.Number(t, "flow_gpm")
		switch r["kind"] {
		case "chart A":
			flow := NozzleFlow(r.Number(t, "nozzle_no"), pressure)
			assert.InEpsilon(t, want, flow.GPM(), 1e-5, r)
			assert.InDelta(t, r.Number(t, "flow_read_gpm"), flow.GPM(), 0.0101, r) // a unit of the last printed digit
			assert.InEpsilon(t, r.Number(t, "nozzle_no"), NozzleNumber(flow, pressure), 1e-12)
		case "chart B":
			flow := quantity.Flow(r.Number(t, "flow_read_gpm")) * quantity.GPM
			assert.InEpsilon(t, r.Number(t, "number_or_exact"), NozzleNumber(flow, pressure), 1e-3, r)
		case "orifice":
			hole := quantity.Length(r.Number(t, "hole_in")) * quantity.Inch
			flow := OrificeFlow(hole, r.Number(t, "cd"), pressure, quantity.Celsius(15))
			assert.InEpsilon(t, want, flow.GPM(), 1e-5, r)
			assert.InEpsilon(t, r.Number(t, "number_or_exact"), NozzleNumber(flow, pressure), 1e-4, r)
		}
	}
}

// Velocity head by hand: 2 m/s at K 1 is 999.1026 x 4/2 = 1998 Pa.
func TestFittingLossIsKVelocityHeads(t *testing.T) {
	bore := 20 * quantity.Millimetre
	flow := quantity.Flow(2 * math.Pi / 4 * 0.02 * 0.02)
	assert.InEpsilon(t, 1998.2, fittingLoss(bore, 1)*float64(flow)*float64(flow), 1e-4)
	assert.InEpsilon(t, 2*CouplingK*1998.2, float64(Hose("coupled", bore, 0).Drop(flow)), 1e-4)
}

// Beside its resin a tank takes its head and two open valves, on velocity heads in
// 3/4 in; by hand, 1 m/s: 999.1026/2 = 499.55 Pa each. Published tables give K 0.05 for
// an open ball valve and 0.17 for an open gate (Perry, table 6-4, from memory): the
// valves' K must hold either.
func TestATankTakesItsHeadAndTwoValves(t *testing.T) {
	flow := quantity.Flow(math.Pi / 4 * 0.01905 * 0.01905)
	beside := Tank("DI bed", halfFoot(), quantity.Celsius(15)).Drop(flow) - halfFoot().Drop(flow, quantity.Celsius(15))
	assert.InEpsilon(t, 499.55*(10+2*0.2), float64(beside), 1e-4)
	assert.GreaterOrEqual(t, ValveK, 0.17)
}

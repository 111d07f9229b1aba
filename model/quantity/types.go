package quantity

import "math"

// One type per dimension. The doc comment of each names its SI unit.
type (
	// Length in metres.
	Length float64
	// Area in square metres.
	Area float64
	// Volume in cubic metres.
	Volume float64
	// Flow in cubic metres a second.
	Flow float64
	// Pressure in pascals, gauge unless said otherwise.
	Pressure float64
	// Temperature in kelvins.
	Temperature float64
	// Duration in seconds.
	Duration float64
	// Mass in kilograms.
	Mass float64
	// Hardness in equivalents a cubic metre (shown as CaCO3).
	Hardness float64
	// Conductivity in siemens a metre, at 25 C.
	Conductivity float64
	// Load is the ionic load of a water in equivalents a cubic metre.
	Load float64
	// Capacity of a bed in equivalents (shown in grains as CaCO3).
	Capacity float64
	// CapacityDensity in equivalents a cubic metre of resin.
	CapacityDensity float64
	// Concentration by mass, in kilograms a cubic metre.
	Concentration float64
	// Dose of salt in kilograms a cubic metre of resin.
	Dose float64
	// Speed in metres a second; also the superficial velocity in a bed.
	Speed float64
	// ServiceRate is flow over resin volume, in 1/s.
	ServiceRate float64
	// Coverage is the area a sprayer goes over, in square metres a second.
	Coverage float64
	// Film is water held on a surface, in cubic metres a square metre.
	Film float64
	// Residue is what a dried film leaves, in kilograms a square metre.
	Residue float64
	// Irradiance in watts a square metre.
	Irradiance float64
	// Angle in radians.
	Angle float64
	// Fraction of one.
	Fraction float64
)

// Units as constants: 1.4*GPM is a flow.
const (
	Metre      Length = 1
	Millimetre Length = 1e-3
	Inch       Length = 0.0254
	Foot       Length = 0.3048

	SquareMetre Area = 1
	SquareFoot  Area = 0.09290304

	CubicMetre Volume = 1
	Litre      Volume = 1e-3
	Gallon     Volume = 0.003785411784
	CubicFoot  Volume = 0.028316846592

	GPM            Flow = 0.003785411784 / 60
	LitrePerMinute Flow = 1e-3 / 60

	Pascal Pressure = 1
	Bar    Pressure = 1e5
	PSI    Pressure = 4.4482216152605 / (0.0254 * 0.0254)

	Kelvin Temperature = 1

	Second Duration = 1
	Minute Duration = 60
	Hour   Duration = 3600
	Day    Duration = 86400

	Kilogram Mass = 1
	Gram     Mass = 1e-3
	Pound    Mass = 0.45359237

	MicroSiemensPerCm Conductivity = 1e-4

	EqPerCubicMetre Load = 1 // the same as meq/L

	Equivalent Capacity = 1
	// Grain is one grain as CaCO3: 64.79891 mg over 50.04 mg/meq.
	Grain Capacity = 64.79891e-3 / CaCO3

	GrainPerCubicFoot CapacityDensity = CapacityDensity(Grain) / CapacityDensity(CubicFoot)
	EqPerLitre        CapacityDensity = 1000

	MilligramPerLitre Concentration = 1e-3

	PoundPerCubicFoot Dose = Dose(Pound) / Dose(CubicFoot)

	MetrePerSecond   Speed = 1
	MilePerHour      Speed = 0.44704
	Knot             Speed = 1852.0 / 3600 // the international nautical mile of 1929, an hour
	GPMPerSquareFoot Speed = Speed(GPM) / Speed(SquareFoot)

	GPMPerCubicFoot ServiceRate = ServiceRate(GPM) / ServiceRate(CubicFoot)

	SquareFootPerMinute Coverage = Coverage(SquareFoot) / 60

	MillilitrePerSquareMetre Film = 1e-6

	MilligramPerSquareMetre Residue = 1e-6

	Degree Angle = math.Pi / 180

	Percent Fraction = 0.01
)

// CaCO3 is the equivalent mass of calcium carbonate, in grams.
// PUBLISHED: 100.09 g/mol over two (any table of atomic weights).
const CaCO3 = 50.04

// Celsius makes a temperature from degrees C.
func Celsius(c float64) Temperature { return Temperature(c + 273.15) }

// Fahrenheit makes a temperature from degrees F.
func Fahrenheit(f float64) Temperature { return Temperature((f + 459.67) / 1.8) }

// HardnessOf makes a hardness from milligrams a litre as CaCO3.
func HardnessOf(mgPerLitre float64) Hardness { return Hardness(mgPerLitre / CaCO3) }

// Metres leaves the type.
func (l Length) Metres() float64 { return float64(l) }

// Feet leaves the type.
func (l Length) Feet() float64 { return float64(l / Foot) }

// Inches leaves the type.
func (l Length) Inches() float64 { return float64(l / Inch) }

// SquareMetres leaves the type.
func (a Area) SquareMetres() float64 { return float64(a) }

// SquareFeet leaves the type.
func (a Area) SquareFeet() float64 { return float64(a / SquareFoot) }

// Litres leaves the type.
func (v Volume) Litres() float64 { return float64(v / Litre) }

// Gallons leaves the type (US gallons of 231 cubic inches).
func (v Volume) Gallons() float64 { return float64(v / Gallon) }

// CubicFeet leaves the type.
func (v Volume) CubicFeet() float64 { return float64(v / CubicFoot) }

// GPM leaves the type (US gallons a minute).
func (f Flow) GPM() float64 { return float64(f / GPM) }

// LitresPerMinute leaves the type.
func (f Flow) LitresPerMinute() float64 { return float64(f / LitrePerMinute) }

// Time is how long this flow takes for v. Without flow it never ends.
func (f Flow) Time(v Volume) Duration { return Duration(float64(v) / float64(f)) }

// Volume is what this flow gives in d.
func (f Flow) Volume(d Duration) Volume { return Volume(float64(f) * float64(d)) }

// PSI leaves the type.
func (p Pressure) PSI() float64 { return float64(p / PSI) }

// Celsius leaves the type.
func (t Temperature) Celsius() float64 { return float64(t) - 273.15 }

// Fahrenheit leaves the type.
func (t Temperature) Fahrenheit() float64 { return float64(t)*1.8 - 459.67 }

// Seconds leaves the type.
func (d Duration) Seconds() float64 { return float64(d) }

// Minutes leaves the type.
func (d Duration) Minutes() float64 { return float64(d / Minute) }

// Pounds leaves the type.
func (m Mass) Pounds() float64 { return float64(m / Pound) }

// GrainsPerGallon leaves the type.
func (h Hardness) GrainsPerGallon() float64 {
	return float64(h) * float64(Gallon) / float64(Grain)
}

// MilligramsPerLitre leaves the type, as CaCO3.
func (h Hardness) MilligramsPerLitre() float64 { return float64(h) * CaCO3 }

// MicroSiemensPerCm leaves the type.
func (c Conductivity) MicroSiemensPerCm() float64 { return float64(c / MicroSiemensPerCm) }

// MilliEqPerLitre leaves the type.
func (l Load) MilliEqPerLitre() float64 { return float64(l) }

// MilligramsPerLitre leaves the type, as CaCO3.
func (l Load) MilligramsPerLitre() float64 { return float64(l) * CaCO3 }

// In is what v of water of this load takes from a bed.
func (l Load) In(v Volume) Capacity { return Capacity(float64(l) * float64(v)) }

// Supply is how much water of this load takes c from a bed. Without load it
// never ends.
func (l Load) Supply(c Capacity) Volume { return Volume(float64(c) / float64(l)) }

// Grains leaves the type, as CaCO3.
func (c Capacity) Grains() float64 { return float64(c / Grain) }

// Of is the capacity of v of resin.
func (d CapacityDensity) Of(v Volume) Capacity { return Capacity(float64(d) * float64(v)) }

// For is the volume of resin that has a capacity.
func (d CapacityDensity) For(c Capacity) Volume { return Volume(float64(c) / float64(d)) }

// MilligramsPerLitre leaves the type.
func (c Concentration) MilligramsPerLitre() float64 { return float64(c / MilligramPerLitre) }

// SquareFeetPerMinute leaves the type.
func (c Coverage) SquareFeetPerMinute() float64 { return float64(c / SquareFootPerMinute) }

// MillilitresPerSquareMetre leaves the type.
func (f Film) MillilitresPerSquareMetre() float64 { return float64(f / MillilitrePerSquareMetre) }

// MilligramsPerSquareMetre leaves the type.
func (r Residue) MilligramsPerSquareMetre() float64 { return float64(r / MilligramPerSquareMetre) }

// Degrees leaves the type.
func (a Angle) Degrees() float64 { return float64(a / Degree) }

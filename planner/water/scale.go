// Package water tells what a water is like from what a person can measure: its
// conductivity, the ions it carries, what it takes from a bed, and the
// properties of the liquid by temperature.
package water

import (
	"math"

	"washeve/model/quantity"
)

// row is one line of the published scale table, at 25 C.
type row struct{ microSiemens, kcl, nacl, mix442 float64 }

// scaleTable pairs conductivity in uS/cm with ppm. PUBLISHED: makers' tables of
// conductivity standards; the 442 mix is 40 % Na2SO4, 40 % NaHCO3, 20 % NaCl by
// mass.
func scaleTable() [7]row {
	return [7]row{
		{23, 11.6, 10.7, 14.74},
		{84, 40.38, 38.04, 50.50},
		{447, 225.6, 215.5, 300.0},
		{1413, 744.7, 702.1, 1000},
		{1500, 757.1, 737.1, 1050},
		{2070, 1045, 1041, 1500},
		{2764, 1382, 1414.8, 2062.7},
	}
}

// lastStandard is the end of the table: above it a ppm is extrapolated.
const lastStandard = 2764 * quantity.MicroSiemensPerCm

// DefaultScale is that of a reading whose scale nobody said. PRACTICE: most
// cheap pens are on it.
func DefaultScale() quantity.Scale { return quantity.ScaleNaCl }

// Conductivity turns what a pen shows into conductivity at 25 C. A reading
// without a scale takes the fallback, and where that is unsaid too,
// [DefaultScale].
//
// Between the standards of the table ppm and conductivity are joined by straight
// lines in logarithms; below the first and beyond the last standard they are
// proportional. Strictly rising.
func Conductivity(r quantity.Reading, fallback quantity.Scale) quantity.Conductivity {
	scale := said(r.WithScale(fallback).Scale)
	if scale == quantity.ScaleConductivity {
		return quantity.Conductivity(r.Number) * quantity.MicroSiemensPerCm
	}
	if factor, plain := scale.Factor(); plain {
		return quantity.Conductivity(r.Number/factor) * quantity.MicroSiemensPerCm
	}
	ppm, microSiemens := columns(scale)
	return quantity.Conductivity(along(ppm, microSiemens, r.Number)) * quantity.MicroSiemensPerCm
}

// PPM is what a pen of that scale shows at a conductivity: the inverse of
// [Conductivity]. An unsaid scale is taken as [DefaultScale].
func PPM(ec quantity.Conductivity, scale quantity.Scale) quantity.Reading {
	scale = said(scale)
	number := ec.MicroSiemensPerCm()
	if factor, plain := scale.Factor(); plain {
		number *= factor
	} else if scale != quantity.ScaleConductivity {
		ppm, microSiemens := columns(scale)
		number = along(microSiemens, ppm, number)
	}
	return quantity.Reading{Number: number, Scale: scale}
}

func said(s quantity.Scale) quantity.Scale {
	if s == quantity.ScaleUnsaid {
		return DefaultScale()
	}
	return s
}

func columns(scale quantity.Scale) (ppm, microSiemens [7]float64) {
	for i, r := range scaleTable() {
		microSiemens[i] = r.microSiemens
		switch scale {
		case quantity.ScaleKCl:
			ppm[i] = r.kcl
		case quantity.Scale442:
			ppm[i] = r.mix442
		default:
			ppm[i] = r.nacl
		}
	}
	return ppm, microSiemens
}

// along goes from x to y on the table, straight in logarithms, and proportional
// outside it.
func along(xs, ys [7]float64, x float64) float64 {
	last := len(xs) - 1
	if !(x > xs[0]) {
		return x * ys[0] / xs[0]
	}
	if x >= xs[last] {
		return x * ys[last] / xs[last]
	}
	i := 1
	for xs[i] < x {
		i++
	}
	part := math.Log(x/xs[i-1]) / math.Log(xs[i]/xs[i-1])
	return ys[i-1] * math.Exp(part*math.Log(ys[i]/ys[i-1]))
}

package sky

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
)

// Cover is the middle of the word's share of the sky; of no word, nothing.
// MEMORY: few 1-2, scattered 3-4, broken 5-7 eighths (WMO No. 306, METAR code).
func Cover(s model.Sky) quantity.Fraction {
	switch s {
	case model.FewClouds:
		return 1.5 / 8
	case model.ScatteredClouds:
		return 3.5 / 8
	case model.BrokenClouds:
		return 6.0 / 8
	case model.Overcast:
		return 1
	}
	return 0
}

// Under is the light of a clear sky dimmed by cloud, by F. Kasten and G.
// Czeplak, Solar Energy 24 (1980) 177, from ten years of hours at Hamburg:
//
//	G = G_clear (1 - 0.75 c^3.4),  diffuse share of G = 0.3 + 0.7 c^2
//
// with c the covered part of the sky. PUBLISHED, the first as quoted in several
// public programs; the second MEMORY. The beam falls from its own clear value
// as theirs does, by (1 - 0.75 c^3.4)(1 - c^2); the rest of G is diffuse. That
// is the mean of an hour: through a gap the sun is as strong as ever, and thin
// high cloud takes away much less than this.
func (l Light) Under(cloud model.Sky) Light {
	c := float64(Cover(cloud))
	global := 1 - 0.75*math.Pow(c, 3.4)
	beam := global * (1 - c*c)
	level := float64(l.Global() - l.Diffuse)
	return Light{
		Beam:    l.Beam * quantity.Irradiance(beam),
		Diffuse: quantity.Irradiance(float64(l.Global())*global - level*beam),
		height:  l.height,
	}
}

// Emissivity of the whole sky for long waves, against a black body at the
// temperature of the air near the ground:
//
//	(0.787 + 0.764 ln(Tdew/273)) (1 + 0.0224 N - 0.0035 N2 + 0.00028 N3)
//
// Tdew in K, N the covered tenths. G. Clark and C. Allen (1978), cloud by G.
// Walton, NBSIR 83-2655 (1983) p. 21. PUBLISHED, as quoted in a building
// simulation support list. For dew points of about -20 to 25 C; at most 1.
func Emissivity(dew quantity.Temperature, cloud model.Sky) quantity.Fraction {
	n := 10 * float64(Cover(cloud))
	clear := 0.787 + 0.764*math.Log(float64(dew)/273)
	return quantity.Fraction(max(0.5, min(1, clear*(1+n*(0.0224+n*(-0.0035+n*0.00028))))))
}

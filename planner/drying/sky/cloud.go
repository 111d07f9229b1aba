package sky

import (
	"math"
	"strings"

	"washeve/model/quantity"
)

// Cloud is how much of the sky is covered, in a word.
type Cloud string

// The words of the weather observers.
const (
	Clear     Cloud = "clear"
	Few       Cloud = "few"       // 1 to 2 eighths
	Scattered Cloud = "scattered" // 3 to 4 eighths
	Broken    Cloud = "broken"    // 5 to 7 eighths
	Overcast  Cloud = "overcast"
)

// Clouds lists the words from bright to dark.
func Clouds() []Cloud { return []Cloud{Clear, Few, Scattered, Broken, Overcast} }

// ParseCloud reads one of the words. Errors are of type [*quantity.ParseError].
func ParseCloud(text string) (Cloud, error) {
	words := make([]string, 0, len(Clouds()))
	for _, c := range Clouds() {
		if strings.EqualFold(strings.TrimSpace(text), string(c)) {
			return c, nil
		}
		words = append(words, string(c))
	}
	return "", &quantity.ParseError{What: "cloud", Text: text, Reason: "is no word for cloud", Example: strings.Join(words, ", ")}
}

// Cover is the middle of the word's share of the sky; of no word, nothing.
// MEMORY: few 1-2, scattered 3-4, broken 5-7 eighths (WMO No. 306, METAR code).
func (c Cloud) Cover() quantity.Fraction {
	switch c {
	case Few:
		return 1.5 / 8
	case Scattered:
		return 3.5 / 8
	case Broken:
		return 6.0 / 8
	case Overcast:
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
func (l Light) Under(cloud Cloud) Light {
	c := float64(cloud.Cover())
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
func Emissivity(dew quantity.Temperature, cloud Cloud) quantity.Fraction {
	n := 10 * float64(cloud.Cover())
	clear := 0.787 + 0.764*math.Log(float64(dew)/273)
	return quantity.Fraction(max(0.5, min(1, clear*(1+n*(0.0224+n*(-0.0035+n*0.00028))))))
}

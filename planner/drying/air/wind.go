package air

import (
	"math"

	"washeve/model/quantity"
)

// At2m is the wind at 2 m above short grass from the wind at another height,
// such as the 10 m of a forecast: u 4.87 / ln(67.8 z - 5.42). FAO-56 (Allen et
// al., Rome 1998), eq. 47; PUBLISHED, checked by example 18 as copied in
// testdata/reference/evaporation.csv. From 0.5 to 100 m. Among trees and
// buildings there is less.
func At2m(u quantity.Speed, height quantity.Length) quantity.Speed {
	z := max(0.5, min(100, height.Metres()))
	return u * quantity.Speed(4.87/math.Log(67.8*z-5.42))
}

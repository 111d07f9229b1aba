package trip

import "math"

// normal is the quantile of the standard normal distribution.
func normal(u float64) float64 { return math.Sqrt2 * math.Erfinv(2*u-1) }

// below is the standard normal distribution.
func below(z float64) float64 { return 0.5 * math.Erfc(-z/math.Sqrt2) }

// A thousand states stand for all that may be. Counting those that keep the limit
// would be off by a part in a hundred; so each stands for a small stretch of margins,
// and the share of the stretch counts (a kernel estimate of the margin's distribution
// at the limit; Silverman, Density Estimation, 1986; MEMORY). The stretch is a small
// part of the spread of the margins, so that it adds little to it.
const stretch = 0.3

// bandwidth is half of that stretch.
func bandwidth(margins []float64) float64 {
	const least = 1e-4
	n, sum, square := 0.0, 0.0, 0.0
	for _, m := range margins {
		if !math.IsInf(m, 0) {
			n++
			sum += m
			square += m * m
		}
	}
	if n < 2 {
		return least
	}
	mean := sum / n
	return math.Max(stretch*math.Sqrt(math.Max(square/n-mean*mean, 0)), least)
}

// smooth is the part of a stretch from -1 to 1 about x that is over zero
// (Epanechnikov's kernel).
func smooth(x float64) float64 {
	switch {
	case x >= 1:
		return 1
	case x <= -1:
		return 0
	}
	return 0.5 + 0.75*x - 0.25*x*x*x
}

// bandOf reads the band off some values, whose order it changes.
func bandOf(values []float64) Band[float64] {
	n := len(values)
	if n == 0 {
		return Band[float64]{P10: math.NaN(), P50: math.NaN(), P90: math.NaN()}
	}
	low, middle, high := n/10, n/2, min(n-1-n/10, n-1)
	settle(values, middle)
	settle(values[:middle], low)
	settle(values[middle:], high-middle)
	return Band[float64]{P10: values[low], P50: values[middle], P90: values[high]}
}

// settle puts the value that would be at an index, were they sorted, there, with
// smaller ones before it and larger ones behind it (Hoare's selection).
func settle(values []float64, at int) {
	low, high := 0, len(values)-1
	for low < high {
		pivot, i, j := values[(low+high)/2], low, high
		for i <= j {
			for values[i] < pivot {
				i++
			}
			for values[j] > pivot {
				j--
			}
			if i <= j {
				values[i], values[j] = values[j], values[i]
				i++
				j--
			}
		}
		switch {
		case at <= j:
			high = j
		case at >= i:
			low = i
		default:
			return
		}
	}
}

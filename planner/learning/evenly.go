package learning

import (
	"math"
	"math/bits"
)

// EvenStates is how many states [Posterior.Many] gives: points that fill the space
// of what is uncertain evenly, however many axes it has.
const EvenStates = 1 << evenBits

const evenBits = 10

// StrongAxes is how many axes [Evenly] has. The first ones are those of the states
// themselves: capacity, contact, and the gallons' own factor.
const StrongAxes = 11

// StateAxes is how many of them the states take.
const StateAxes = 3

// Evenly gives the place of each state along an axis, 0 to 1. Axis 0 goes by their
// number; the others are Sobol's sequence with the direction numbers of Joe and Kuo
// (SIAM J. Sci. Comput. 30 (2008) 2635; MEMORY), each moved to the middles of its
// steps. So the states fill any two axes, and any box of a power of two along more,
// as evenly as can be.
func Evenly(axis int) []float64 {
	out := make([]float64, EvenStates)
	directions := directionsOf(axis)
	for j := range out {
		sum := uint32(j)
		if axis > 0 {
			sum = 0
			for k, d := range directions {
				if j>>k&1 == 1 {
					sum ^= d
				}
			}
		}
		out[j] = (float64(sum) + 0.5) / EvenStates
	}
	return out
}

// sobol is a primitive polynomial with its first direction numbers.
type sobol struct {
	degree, inner uint32
	first         []uint32
}

// directionsOf are the direction numbers of an axis from 1 on, as whole numbers of
// [evenBits] bits.
func directionsOf(axis int) [evenBits]uint32 {
	table := [...]sobol{
		{1, 0, []uint32{1}}, {2, 1, []uint32{1, 3}}, {3, 1, []uint32{1, 3, 1}}, {3, 2, []uint32{1, 1, 1}},
		{4, 1, []uint32{1, 1, 3, 3}}, {4, 4, []uint32{1, 3, 5, 13}}, {5, 2, []uint32{1, 1, 5, 5, 17}},
		{5, 4, []uint32{1, 1, 5, 5, 5}}, {5, 7, []uint32{1, 1, 7, 11, 19}},
	}
	var v [evenBits]uint32
	if axis < 2 { // van der Corput's sequence: the bits of the number, turned about
		for k := range v {
			v[k] = 1 << (evenBits - 1 - k)
		}
		return v
	}
	p := table[(axis-2)%len(table)]
	for k := range v {
		if k < len(p.first) {
			v[k] = p.first[k] << (evenBits - 1 - k)
			continue
		}
		s := int(p.degree)
		v[k] = v[k-s] ^ v[k-s]>>s
		for i := 1; i < s; i++ {
			if p.inner>>(s-1-i)&1 == 1 {
				v[k] ^= v[k-i]
			}
		}
	}
	return v
}

// Loosely gives the place of each state along a further axis, from 0 on: as many as
// are asked for, for what moves the answer little. They are the multiples of the
// square root of the axis's prime, without the whole part (Kronecker's sequences;
// Niederreiter, Random Number Generation and Quasi-Monte Carlo Methods, 1992;
// MEMORY).
func Loosely(axis int) []float64 {
	_, root := math.Modf(math.Sqrt(float64(primeNumber(axis))))
	out := make([]float64, EvenStates)
	for j := range out {
		// The numbers are turned about, so that neighbours in capacity are not
		// neighbours here.
		turned := bits.Reverse32(uint32(j)) >> (32 - evenBits)
		_, out[j] = math.Modf(0.5 + float64(turned+1)*root)
	}
	return out
}

// primeNumber is the prime of that number: 2 is number 0.
func primeNumber(number int) int {
	for n := 2; ; n++ {
		if prime(n) {
			if number == 0 {
				return n
			}
			number--
		}
	}
}

func prime(n int) bool {
	for d := 2; d*d <= n; d++ {
		if n%d == 0 {
			return false
		}
	}
	return true
}

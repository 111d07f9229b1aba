package learning

import (
	"math"
	"slices"
)

// freshShare is how likely a fill is thought to be fresh of which nobody said the age,
// before its readings; every other age is equally likely. PRACTICE: who begins a log has
// often just filled the tank.
const freshShare = 0.5

// Older is a fill of which nobody said how much it was fed before its first use, as its
// readings show it: what it was fed, in stated capacities, and what is believed of it in the
// middle of that, whose states are of all ages.
//
// It may be fresh ([freshShare]), or of any age from a twentieth of a capacity to a little past
// spent. Units are those of a perfect bed at the flow of that use. It is false where no age
// explains all readings. It costs some twenty times [Outset.Learn].
func (o Outset) Older(f Fill, units float64) (fed Quantiles, p Posterior, found bool) {
	const ages, step = 25, 0.05
	all := make([]older, 0, ages+1)
	for i := range ages + 1 {
		a := older{fed: step * float64(i), ln: math.Log((1 - freshShare) / ages)}
		if i == 0 {
			a.ln, a.Posterior = math.Log(freshShare), o.Learn(f)
		} else {
			a.Posterior = o.Learn(f.after(Use{a.fed, units}))
		}
		if len(a.Unexplained) == 0 {
			a.ln += a.mass
			all = append(all, a)
		}
	}
	if len(all) == 0 {
		return Quantiles{}, Posterior{}, false
	}
	p, fed = middleOf(all)
	return fed, p, true
}

// older is a fill that was fed so much before, with ln of how likely that is.
type older struct {
	fed, ln float64
	Posterior
}

// middleOf is the middle of some ages, with the states of all of them.
func middleOf(all []older) (Posterior, Quantiles) {
	best := slices.MaxFunc(all, func(a, b older) int { return ascending(a.ln, b.ln) }).ln
	total := 0.0
	for _, a := range all {
		total += math.Exp(a.ln - best)
	}
	var fed Quantiles
	below, next := 0.0, 0
	middle := all[0].Posterior
	ages := make([]age, len(all))
	for i, a := range all {
		below += math.Exp(a.ln-best) / total
		ages[i] = age{below, a.Posterior}
		for marks := [...]float64{0.1, 0.5, 0.9}; next < len(marks) && below >= marks[next]; next++ {
			if fed[next] = a.fed; next == 1 {
				middle = a.Posterior
			}
		}
	}
	middle.ages = ages
	middle.States = shareLuck(ofAges(ages, mostStates, func(p Posterior) []State { return p.States }))
	return middle, fed
}

// age is what is believed of a fill if it was of one age. Up to it lies that part of what is
// believed of the age.
type age struct {
	upTo float64
	Posterior
}

// ofAges takes n states of one weight from those of all ages, of each as many as it is
// likely, evenly from those that it has.
func ofAges(ages []age, n int, of func(Posterior) []State) []State {
	out := make([]State, n)
	at, taken := 0, -1
	var states []State
	for j := range out {
		for at < len(ages)-1 && ages[at].upTo < (float64(j)+0.5)/float64(n) {
			at++
		}
		if at != taken {
			states, taken = of(ages[at].Posterior), at
		}
		out[j] = states[int(even(j, 0)*float64(len(states)))]
		out[j].Weight = 1 / float64(n)
	}
	return out
}

// after is a fill with a use before all others.
func (f Fill) after(u Use) Fill {
	f.Uses = slices.Concat([]Use{u}, f.Uses)
	f.Readings = slices.Clone(f.Readings)
	for i := range f.Readings {
		f.Readings[i].After++
	}
	return f
}

package learning

import "math"

// What fills of one user have in common.
const (
	// FillSpread is the standard deviation of ln f from fill to fill of one user:
	// the same tank, seller and way of filling. PRACTICE.
	FillSpread = 0.15
	// MostPast is how many of the latest fills count for the next: resin, seller
	// and hand change over the years. PRACTICE.
	MostPast = 10
)

// Lesson is what one fill taught, told apart from what was believed before it.
type Lesson struct {
	lnFactor  float64 // where the fill's own evidence puts ln f
	precision float64 // of that: one over the variance; 0 where it taught nothing
	contact   contactLesson
}

// Taught tells that the fill taught anything of its capacity.
func (l Lesson) Taught() bool { return l.precision > 0 }

// Recall weighs the readings and the end of a past fill by themselves. It costs
// less than [Outset.Learn], and depends on that fill alone: work it out once.
func Recall(f Fill) Lesson {
	o := Start()
	c := f.course()
	s := newSearch(o, c, f.sights(c), coarseFronts)
	s.run(coarseContacts, coarseContacts)
	after, before := s.momentsOfFactor(), s.momentsBefore()
	const little = 0.05 // of the spread, and of the precision, before it
	least, shift := little/before.variance, after.mean-before.mean
	precision := 1/after.variance - 1/before.variance
	if precision < least && math.Abs(shift) < little*math.Sqrt(before.variance) {
		return Lesson{}
	}
	// Evidence may move the middle and leave the spread: it then counts with the least
	// precision that is kept, and moves the middle as far.
	precision = math.Max(precision, least)
	return Lesson{lnFactor: before.mean + shift*(1+1/(precision*before.variance)), precision: precision, contact: s.contactLesson()}
}

// momentsBefore are those of ln f without any reading: a normal distribution cut
// off at [Reach] standard deviations has this much of its variance left.
func (s *search) momentsBefore() moments {
	cut := 1 - 2*Reach*math.Exp(-Reach*Reach/2)/math.Sqrt(2*math.Pi)/(normalBelow(Reach)-normalBelow(-Reach))
	share, rest := s.part()
	return moments{mean: s.outset.median, variance: share*share*s.spread*s.spread*cut + rest*rest}
}

// After is what is believed of the next fill, from the lessons of past ones,
// oldest first; of many the last [MostPast] count.
//
// The capacity factors of a user's fills are taken as lognormal about a median
// of that user's own, with [FillSpread]; that median is lognormal about 1, so
// that a user without a past has [CapacitySpread] in all. Both are normal in
// ln f, and each lesson adds its precision (the conjugate rule; Gelman et al.,
// Bayesian Data Analysis, 3rd ed., 2013, section 5.4; MEMORY).
//
// Of the contact, all lessons together count for no more than one fill, and one
// alone for half: the next filling may lie otherwise. PRACTICE.
func After(past []Lesson) Outset {
	past = past[max(len(past)-MostPast, 0):]
	precision := 1 / (CapacitySpread*CapacitySpread - FillSpread*FillSpread)
	sum, taught := 0.0, 0
	var o Outset
	for _, l := range past {
		if l.precision <= 0 {
			continue
		}
		p := 1 / (FillSpread*FillSpread + 1/l.precision)
		precision += p
		sum += p * l.lnFactor
		taught++
		for i := range o.contact {
			o.contact[i] += l.contact[i]
		}
	}
	for i := range o.contact {
		o.contact[i] *= math.Min(0.5, 1/math.Max(float64(taught), 1))
	}
	o.median = sum / precision
	o.spread = math.Sqrt(FillSpread*FillSpread + 1/precision)
	return o
}

package planner

import (
	"cmp"
	"slices"
)

// ReadingHigh is the code of the warning that the bed last read more than a pen errs near zero,
// where next to nothing was expected; see [BedPast.High].
const ReadingHigh = "reading-high"

// NoStart is the code of the warning that the weather leaves no start on the day of the wash.
const NoStart = "no-start"

// Freezing is the code of the warning that water freezes while the wash is done.
const Freezing = "freezing"

// turns are how early a warning stands among the others; those that are not named come last, in
// the order in which they were told.
var turns = map[string]int{
	// the plan is for no wash that can be done: nothing else in it holds
	Misplaced: 1, PastDay: 1, Done: 1,
	// it can hurt somebody or break something
	NoStart: 2, Freezing: 2, "over-pressure": 2, "over-temperature": 2, "hot-tank": 2,
	// the answer itself is in doubt
	ReadingHigh: 3,
}

// inTurn puts those warnings first that a person must know though no other is read.
func inTurn(notes []Note) {
	last := len(turns)
	turn := func(n Note) int {
		if at := turns[n.Code]; at > 0 {
			return at
		}
		return last
	}
	slices.SortStableFunc(notes, func(a, b Note) int { return cmp.Compare(turn(a), turn(b)) })
}

// NoDay is what speaks against washing on the day of the plan at all, the gravest first: that the
// weather leaves no start, or that it freezes while the wash is done. It is false
// where neither does.
func (p *Plan) NoDay() (Note, bool) {
	at := slices.IndexFunc(p.Warnings, func(n Note) bool { return n.Code == NoStart || n.Code == Freezing })
	if at < 0 {
		return Note{}, false
	}
	return p.Warnings[at], true
}

// tellHigh warns of a last reading that a pen's error near zero explains as well as a bed that
// lets go: the chance is of beds that were as they are said to be.
func (m *making) tellHigh(past *BedPast) {
	_, aged := past.Aged()
	r, high := past.High()
	if aged || !high {
		return
	}
	behind := "the fill is older than said, or its resins are badly mixed"
	if past.Present().Began.Given() {
		behind = "the resins are badly mixed, or water gets past them"
	}
	expected := "under 0.1 ppm"
	if r.Expected >= 0.1 {
		expected = showPPM(r.Expected, m.aim.scale)
	}
	m.plan.ReadHigh = r.Reading.String()
	m.warnWords(ReadingHigh, "The bed last read "+r.Reading.String()+", where "+expected+" was expected. Try the pen in distilled water: if it shows none there, "+behind+", and the chance is too good.")
}

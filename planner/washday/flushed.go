package washday

import (
	"washeve/model"
	"washeve/model/quantity"
)

// enough is the part of a flush that does for a reading. What stands in the bed is two
// thirds of the flush that the plan asks for; nobody stops at the drop. PRACTICE: 0.9.
const enough = 0.9

// Flushes tells that water which ran out of a bed was enough of what a flush asks for.
func Flushes(ran, asked quantity.Volume) bool { return ran >= enough*asked }

// StandsAfter is how long a bed has stood when the water in it reads too low. At a
// rinse's flow water is in the bed for a minute or two; the wait for a face to drip or for
// a ladder to be moved is no standing. PRACTICE: a quarter of an hour.
const StandsAfter = 15 * quantity.Minute

// rest is how a bed has stood.
type rest struct {
	ran    bool              // DI water ran at all
	from   quantity.Duration // when it last ran, since the wash began
	read   bool              // the pen was read since then
	before quantity.Volume   // the DI water of the wash that ran before the bed last stood for long
}

// runs notes that DI water ran up to now.
func (f *folding) runs() { f.rest.ran, f.rest.from, f.rest.read = true, f.Took, false }

// stand notes that the bed has stood for long, when it comes to that in the time that has
// just passed: what ran before flushes it no more, and what was said of it is past.
func (f *folding) stand(passed quantity.Duration) {
	if stood := f.Took - f.rest.from; stood >= StandsAfter && stood-passed < StandsAfter {
		f.rest.before, f.rest.read, f.Vouched = f.Tally().DI, false, false
	}
}

// Stood is how long the bed has stood since DI water last ran in this wash; false where
// none ran yet, or so short a while ago that the water reads as it did.
func (s State) Stood() (quantity.Duration, bool) {
	stood := s.Took - s.rest.from
	return stood, s.rest.ran && stood >= StandsAfter
}

// Flushed is the DI water that has run since the last flush was begun, or since the bed
// last stood for long after it, and what that flush asked for; both are zero where none
// was come to. A flush that was gone on from without a time taken counts as planned, one
// that was skipped not at all.
func (s State) Flushed() (ran, asked quantity.Volume) {
	for i := min(s.At, len(s.Steps)-1); i >= 0; i-- {
		if s.Steps[i].Water == model.DI {
			ran += s.Done[i].Used
		}
		if s.Steps[i].Kind == model.Flush {
			return max(min(ran, s.Tally().DI-s.rest.before), 0), s.Steps[i].Volume.Or(0)
		}
	}
	return 0, 0
}

// Stands tells whether water that stood in the bed may still be in it: a reading would
// be too low.
func (s State) Stands() bool {
	ran, asked := s.Flushed()
	return !s.Vouched && !Flushes(ran, asked)
}

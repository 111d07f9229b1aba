package washday

import (
	"washeve/model"
	"washeve/model/quantity"
)

// enough is the part of a flush that does for a reading. What stands in the bed is two
// thirds of the flush that the plan asks for; nobody stops at the drop. PRACTICE: 0.9.
const enough = 0.9

// Flushed is the DI water that has run since the last flush was begun, and what that
// flush asked for; both are zero where none was come to. A flush that was gone on from
// without a time taken counts as planned, one that was skipped not at all.
func (s State) Flushed() (ran, asked quantity.Volume) {
	for i := min(s.At, len(s.Steps)-1); i >= 0; i-- {
		if s.Steps[i].Water == model.DI {
			ran += s.Done[i].Used
		}
		if s.Steps[i].Kind == model.Flush {
			return ran, s.Steps[i].Volume.Or(0)
		}
	}
	return 0, 0
}

// Stands tells whether water that stood in the bed may still be in it: a reading would
// be too low.
func (s State) Stands() bool {
	ran, asked := s.Flushed()
	return !s.Vouched && ran < enough*asked
}

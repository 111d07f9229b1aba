package washday

import (
	"slices"
	"time"

	"washeve/model"
	"washeve/model/quantity"
)

// State is where a wash stands at an instant.
type State struct {
	Steps   []model.DayStep // as they are in force: at the flows that were measured
	At      int             // the step that is at hand; past the last one when all are done
	Far     int             // the steps before this one were come to, or some of them done
	Running bool            // its time runs
	Done    []Done          // of each step
	Over    bool
	Early   bool // it was ended before its last step
	Sure    bool // false where a clock went back and a stretch of time was lost

	Began model.Moment      // of the first deed
	Took  quantity.Duration // since then

	// Reading is the last one since the step at hand was come to, or since a way out
	// that asks for a new one; Accepted tells that it was taken as good enough.
	// FirstCup tells that it is of water that stood in the bed.
	Reading  quantity.Opt[quantity.Reading]
	Accepted bool
	FirstCup bool
	Vouched  bool // the person said that the bed was flushed all the same, since the last flush was come to or the bed stood

	rest rest // since DI water last ran
}

// Done is what was done of a step.
type Done struct {
	Spent   quantity.Duration
	Passed  bool // gone on from
	Skipped bool
	Used    quantity.Volume   // of its water
	Left    quantity.Duration // when it was last gone on from, since the wash began
}

// Now is the moment to which the state was worked out. It goes on from the first
// deed by the time that has passed, so a wall's clock that was set meanwhile does
// not move it.
func (s State) Now() model.Moment { return s.moment(s.Took) }

func (s State) moment(since quantity.Duration) model.Moment {
	return s.Began.Plus(int64(since.Seconds()))
}

// Stand works out from its deeds where a wash stands. Time is the difference of
// moments: nothing is counted, so nothing drifts, and a program that was not there
// meanwhile misses nothing.
func Stand(u *model.Underway, now model.Instant) State {
	f := folding{u: u, State: State{Steps: slices.Clone(u.Steps), Done: make([]Done, len(u.Steps)), Sure: true}, gone: forgotten(u.Deeds)}
	for n := range u.Deeds {
		if u.Deeds[n].Does == model.Seen {
			continue // nobody did anything
		}
		f.pass(u.Deeds[n].At)
		f.deed(n)
	}
	if len(u.Deeds) > 0 && !f.Over {
		f.pass(now)
	}
	return f.State
}

// StandAtLast is where a wash stood at its last deed.
func StandAtLast(u *model.Underway) State {
	now := model.Instant{}
	if n := len(u.Deeds); n > 0 {
		now = u.Deeds[n-1].At
	}
	return Stand(u, now)
}

// folding is a state on its way through the deeds.
type folding struct {
	State
	u    *model.Underway
	gone map[int]bool  // what no longer counts, see [forgotten]
	at   model.Instant // up to which it is worked out
}

// pass lets time pass: while the water is on it is spent on the step at hand.
func (f *folding) pass(now model.Instant) {
	if !f.at.Given() {
		f.at, f.Began = now, now.Moment()
		return
	}
	d, sure := now.Since(f.at)
	spent := quantity.Duration(d.Seconds())
	f.at, f.Took, f.Sure = now, f.Took+spent, f.Sure && sure
	if !f.Running || f.Over {
		f.stand(spent)
		return
	}
	if f.drawsDI() {
		f.runs()
	}
	f.stand(spent)
	done := &f.Done[f.At]
	done.Spent += spent
	done.Used += quantity.Volume(float64(f.Steps[f.At].Flow.Or(0)) * float64(spent))
	f.Far = max(f.Far, f.At+1)
}

func (f *folding) deed(n int) {
	if f.Over {
		return
	}
	switch d := &f.u.Deeds[n]; d.Does {
	case model.WaterOn:
		f.Running = f.step() != nil
	case model.WaterOff:
		f.Running = false
	case model.GoOn, model.Skip:
		f.leave(d.Does == model.Skip)
	case model.GoBack:
		f.back()
	case model.TakeRead:
		f.read(d, n)
	case model.Measure:
		f.rest.read = f.rest.read && !f.drawsDI()
		f.Steps = measured(f.u, f.State, n, d.Flow.Or(0))
	case model.TakeWay:
		f.way(d, n)
	case model.Accept:
		f.Accepted = f.Accepted || !f.gone[n]
	case model.EndEarly, model.Finish:
		f.Running, f.Over, f.Early = false, true, d.Does == model.EndEarly
		if f.step() != nil {
			f.Done[f.At].Left = f.Took
		}
	}
}

func (f *folding) step() *model.DayStep {
	if f.At < len(f.Steps) {
		return &f.Steps[f.At]
	}
	return nil
}

// leave goes on to the next step. One whose time was not taken counts as planned.
// A drip begins by itself: nobody turns it on.
func (f *folding) leave(skipped bool) {
	f.Running = false
	s := f.step()
	if s == nil {
		return
	}
	done := &f.Done[f.At]
	done.Passed, done.Skipped, done.Left = true, skipped, f.Took
	if done.Spent == 0 && !skipped && s.Flow.Given() {
		done.Used = s.Volume.Or(0)
		if s.Water == model.DI && done.Used > 0 {
			f.runs()
		}
	}
	f.At++
	f.Far = max(f.Far, f.At)
	f.unread()
	if next := f.step(); next != nil && next.Kind == model.LetDry && f.Done[f.At].Spent == 0 {
		f.Running = true
	}
}

func (f *folding) back() {
	f.Running = false
	if f.step() != nil {
		f.Done[f.At].Left = f.Took
	}
	if f.At == 0 {
		return
	}
	f.At--
	done := &f.Done[f.At]
	done.Passed, done.Skipped = false, false
	if done.Spent == 0 {
		done.Used = 0
	}
	f.unread()
}

// read takes a reading that was not taken back.
func (f *folding) read(d *model.Deed, n int) {
	if f.gone[n] {
		return
	}
	f.Reading, f.Accepted, f.FirstCup = d.Reading, false, d.Flushed == model.No
	f.Vouched = f.Vouched || d.Flushed == model.Yes
	if !f.FirstCup {
		f.runs() // the pen is in the stream
	}
	f.rest.read = true
}

// drawsDI tells whether DI water runs in the step at hand.
func (f *folding) drawsDI() bool { s := f.step(); return s != nil && s.Water == model.DI }

// unread forgets the reading: the water is another from here on. At a flush so is the
// water that stands, and what is read after it is another reading.
func (f *folding) unread() {
	f.Reading, f.Accepted, f.FirstCup = quantity.Opt[quantity.Reading]{}, false, false
	if s := f.step(); s != nil && s.Kind == model.Flush {
		f.Vouched, f.rest.read = false, false
	}
}

// way takes a way out. The steps that are under way go at its flow as well. One that makes the bed read lower asks for a new reading;
// any other lives with the one there is.
func (f *folding) way(d *model.Deed, n int) {
	f.Steps = throttled(f.u.Steps, f.State, n, d.Flow.Or(0))
	if asksAgain(d.Way) {
		f.unread()
		f.rest.read = false
		return
	}
	f.Accepted = f.Accepted || !f.gone[n]
}

// Seconds is a duration for a clock to show, whole seconds rounded down.
func Seconds(d quantity.Duration) time.Duration {
	return time.Duration(float64(d)*float64(time.Second) + 0.5).Truncate(time.Second)
}

package washday

import (
	"fmt"

	"washeve/model"
	"washeve/model/quantity"
)

// Entries is all that the log is to hold of a wash by now: each step that water ran
// in or that was gone on from, each reading, and the wash itself when it is over.
// What came out otherwise after it was gone back to is struck out and written anew.
// The identifiers follow from the wash's and from the deed, so asking twice gives
// the same, and what the log has already can be told from what it lacks. A
// rehearsal has none.
func Entries(u *model.Underway) []model.Entry {
	if u.Unlogged == model.Yes {
		return nil
	}
	w := writing{u: u, stands: map[int]written{}}
	before := standBefore(u, 0)
	for n := range u.Deeds {
		if before.Over {
			break
		}
		after := standBefore(u, n+1)
		if u.Deeds[n].Does == model.TakeRead {
			w.entries = append(w.entries, readingEntry(u, before, n))
		}
		if after.At != before.At || after.Over {
			w.step(n, before.At, after)
			w.step(n, after.At, after)
		}
		if after.Over {
			w.entries = append(w.entries, washEntry(u, after, n))
		}
		before = after
	}
	return w.entries
}

// writing is the log of a wash as it grows.
type writing struct {
	u       *model.Underway
	entries []model.Entry
	stands  map[int]written // by step
}

// written is what the log says of a step.
type written struct {
	id   string
	done Done
}

// step makes the log say of a step what stands after deed n.
func (w *writing) step(n, i int, after State) {
	if i >= len(w.u.Steps) {
		return
	}
	was, stands := w.stands[i]
	done := after.Done[i]
	worth := done.Used > 0 || w.u.Steps[i].Kind == model.Work && (done.Spent > 0 || done.Passed && !done.Skipped)
	if stands && worth && was.done.Spent == done.Spent && was.done.Used == done.Used {
		return
	}
	if stands {
		w.entries = append(w.entries, strike(w.u, n, was.id))
		delete(w.stands, i)
	}
	if worth {
		e := stageEntry(w.u, i, done, n)
		w.entries = append(w.entries, e)
		w.stands[i] = written{e.ID, done}
	}
}

// standBefore is where the wash stood just before deed n.
func standBefore(u *model.Underway, n int) State {
	part := *u
	part.Deeds = u.Deeds[:n]
	now := model.Instant{}
	if n > 0 {
		now = u.Deeds[n-1].At
	}
	return Stand(&part, now)
}

// idFor makes the identifier of what deed n writes.
func idFor(u *model.Underway, n int, what string) string {
	return model.DerivedID(u.Deeds[n].At.Moment(), fmt.Sprintf("%s %d %s", u.ID, n, what))
}

// stageEntry is a step as it stands after deed n.
func stageEntry(u *model.Underway, i int, done Done, n int) model.Entry {
	s := &u.Steps[i]
	body := &model.StageDone{
		Wash: u.ID, Stage: s.Stage, Place: u.Plan.Place, Vehicle: u.Plan.Vehicle, Sprayer: s.Sprayer, Water: s.Water,
		Flow: s.Flow, Area: s.Area, PlannedUsed: s.Volume, PlannedDuration: s.Duration,
	}
	if s.Water == model.DI {
		body.Bed = u.Plan.Bed
	}
	if s.Flow.Given() {
		body.Used = quantity.Some(done.Used)
	}
	if done.Spent > 0 {
		body.Duration = quantity.Some(done.Spent)
	}
	return model.Entry{ID: idFor(u, n, fmt.Sprintf("step %d", i)), At: u.Deeds[n].At.Moment(), Note: string(s.Face), Body: body}
}

func strike(u *model.Underway, n int, id string) model.Entry {
	return model.Entry{
		ID: idFor(u, n, "strike "+id), At: u.Deeds[n].At.Moment(), Note: "gone back to",
		Body: &model.Correction{Of: id, Strike: model.Yes},
	}
}

func readingEntry(u *model.Underway, before State, n int) model.Entry {
	body := &model.Sample{
		Point: model.AfterBed, Reading: u.Deeds[n].Reading, Place: u.Plan.Place, Bed: u.Plan.Bed, Flushed: model.Yes, Flow: u.Deeds[n].Flow,
	}
	if body.Flow.Given() || before.At >= len(u.Steps) {
		return model.Entry{ID: idFor(u, n, "reading"), At: u.Deeds[n].At.Moment(), Body: body}
	}
	if s := &u.Steps[before.At]; s.Water == model.DI {
		body.Flow = s.Flow
	}
	return model.Entry{ID: idFor(u, n, "reading"), At: u.Deeds[n].At.Moment(), Body: body}
}

// washEntry is the wash as it was done, ended by deed n.
func washEntry(u *model.Underway, s State, n int) model.Entry {
	body := u.Plan
	t := s.Tally(u)
	body.DI, body.Softened, body.Raw = quantity.Some(t.DI), quantity.Some(t.Softened), quantity.Some(t.Raw)
	body.Flow = body.PlannedFlow
	for i := range u.Steps {
		if u.Steps[i].Water == model.DI && s.Done[i].Used > 0 {
			body.Flow = u.Steps[i].Flow
		}
	}
	if took, sure := u.Deeds[n].At.Since(u.Deeds[0].At); sure {
		body.Duration = quantity.Some(quantity.Duration(took.Seconds()))
	}
	e := model.Entry{ID: u.ID, At: u.Deeds[n].At.Moment(), Body: &body}
	if s.Early {
		e.Note = "ended early"
	}
	return e
}

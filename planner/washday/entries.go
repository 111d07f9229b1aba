package washday

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// Lacks is what a log does not hold yet of a wash: each step that water ran in or
// that was gone on from, each reading, and the wash itself when it is over. What
// came out otherwise after it was gone back to, or has another name by now, is struck out
// and written anew; a reading that was taken back is struck out, and one of a thing that has
// another name by now is put right. The identifiers follow from the wash's and from what is
// written, so that what was appended before the program was killed is found again and not appended twice. A
// rehearsal has none.
func Lacks(u *model.Underway, log model.Log) []model.Entry {
	if u.Unlogged == model.Yes || len(u.Deeds) == 0 {
		return nil
	}
	w := writing{u: u, state: StandAtLast(u), log: log, held: heldOf(u.ID, log)}
	w.readings()
	w.stages()
	if w.state.Over {
		w.add(model.Entry{ID: u.ID, At: w.state.Now(), Note: remarks(w.state), Body: w.wash()})
	}
	w.strikes()
	return w.lacks
}

// writing is what the log lacks, as it is gathered.
type writing struct {
	u      *model.Underway
	state  State
	log    model.Log
	held   held
	wanted map[string]bool
	lacks  []model.Entry
}

// held is what of a wash a log holds.
type held struct {
	ids    map[string]bool
	stages []string // identifiers of its stages, struck ones too
	struck map[string]bool

	samples map[string]*model.Sample // all of the log, by identifier
	right   map[string][]model.Entry // the corrections of an entry, in the order of the log
}

func heldOf(wash string, log model.Log) held {
	h := held{ids: map[string]bool{}, struck: map[string]bool{}, samples: map[string]*model.Sample{}, right: map[string][]model.Entry{}}
	for i := range log {
		h.ids[log[i].ID] = true
		switch b := log[i].Body.(type) {
		case *model.StageDone:
			if b.Wash == wash {
				h.stages = append(h.stages, log[i].ID)
			}
		case *model.Sample:
			h.samples[log[i].ID] = b
		case *model.Correction:
			if b.Strike == model.Yes {
				h.struck[b.Of] = true
			}
			h.right[b.Of] = append(h.right[b.Of], log[i])
		}
	}
	return h
}

func (w *writing) add(e model.Entry) {
	if !w.held.ids[e.ID] {
		w.lacks = append(w.lacks, e)
	}
}

// id makes an identifier from what is written.
func (w *writing) id(what string) string {
	return model.DerivedID(w.state.Began, w.u.ID+"\n"+what)
}

// Fed tells whether the bed is fed through the softener in a wash; "" where it has no step
// through the bed.
func Fed(u *model.Underway) model.Answer {
	for i := range u.Steps {
		if s := &u.Steps[i]; s.Bed == model.Yes {
			return cmp.Or(s.Softener, model.No)
		}
	}
	return ""
}

func (w *writing) readings() {
	gone := forgotten(w.u.Deeds)
	for n := range w.u.Deeds {
		d, id := &w.u.Deeds[n], w.id("reading "+strconv.Itoa(n))
		if d.Does != model.TakeRead {
			continue
		}
		if gone[n] {
			w.strike(id, "taken back at the wash")
			continue
		}
		part := *w.u
		part.Deeds = w.u.Deeds[:n+1]
		s := &model.Sample{
			Point: model.AfterBed, Reading: d.Reading, Place: w.u.Plan.Place, Bed: w.u.Plan.Bed, Pen: d.Pen,
			Flushed: cmp.Or(d.Flushed, model.Yes), Flow: Loggable(d.Flow.Or(0)), SoFar: d.SoFar,
			Feed: Fed(w.u), Wash: w.u.ID,
		}
		w.add(model.Entry{ID: id, At: StandAtLast(&part).Now(), Body: s})
		w.callsAnew(id, s)
	}
}

// stages writes the steps that were left.
func (w *writing) stages() {
	w.wanted = map[string]bool{}
	for i := range w.state.Steps {
		s, done := &w.state.Steps[i], w.state.Done[i]
		worth := done.Used > 0 || s.Kind == model.Work && (done.Spent > 0 || done.Passed && !done.Skipped)
		if !worth || i == w.state.At && !w.state.Over {
			continue
		}
		e := model.Entry{At: w.state.moment(done.Left), Note: string(s.Face), Body: w.stage(s, done)}
		for n := 0; e.ID == "" || w.held.struck[e.ID]; n++ {
			e.ID = w.id(fmt.Sprintf("step %d, %d\n%s", i, n, (&model.Entry{Body: e.Body}).Content()))
		}
		w.wanted[e.ID] = true
		w.add(e)
	}
}

// stage is a step as the log has it. The area teaches a pace, so it stands only
// where the time was taken.
func (w *writing) stage(s *model.DayStep, done Done) *model.StageDone {
	body := &model.StageDone{
		Wash: w.u.ID, Stage: s.Stage, Place: w.u.Plan.Place, Vehicle: w.u.Plan.Vehicle, Sprayer: s.Sprayer, Water: s.Water,
		Flow: Loggable(s.Flow.Or(0)), PlannedUsed: planned(s.Volume, Hundredths), PlannedDuration: planned(s.Duration, seconds),
	}
	if s.Water == model.DI {
		body.Bed = w.u.Plan.Bed
	}
	if s.Flow.Given() {
		body.Used = Hundredths(done.Used)
	}
	if done.Spent > 0 {
		body.Duration, body.Area = seconds(done.Spent), s.Area
	}
	return body
}

// strikes takes back what the log says of steps that came out otherwise.
func (w *writing) strikes() {
	for _, id := range w.held.stages {
		if !w.wanted[id] {
			w.strike(id, w.otherwise())
		}
	}
}

// otherwise is why what was written of a step does not stand any more.
func (w *writing) otherwise() string {
	if slices.ContainsFunc(w.u.Deeds, func(d model.Deed) bool { return d.Does == model.GoBack }) {
		return "gone back to"
	}
	return "written anew by another name"
}

// strike takes back an entry that the log holds and lets count.
func (w *writing) strike(id, why string) {
	if !w.held.ids[id] || w.held.struck[id] {
		return
	}
	w.held.struck[id] = true
	w.add(model.Entry{ID: w.id("strike " + id), At: w.state.Now(), Note: why, Body: &model.Correction{Of: id, Strike: model.Yes}})
}

// wash is the whole as it was done. The minutes stand only where every step was timed:
// beside gallons that were counted as planned, those of a few steps are no time for them.
func (w *writing) wash() *model.WashDone {
	body := w.u.Plan
	t := w.state.Tally()
	body.DI, body.Softened, body.Raw = Hundredths(t.DI), Hundredths(t.Softened), Hundredths(t.Raw)
	body.Flow = body.PlannedFlow
	for i := range w.state.Steps {
		if w.state.Steps[i].Water == model.DI && w.state.Done[i].Used > 0 {
			body.Flow = Loggable(w.state.Steps[i].Flow.Or(0))
		}
	}
	if steps, _ := w.state.Untimed(); steps == 0 {
		body.Duration = seconds(w.state.Spent())
	}
	body.PlannedDI, body.PlannedSoftened, body.PlannedRaw = planned(body.PlannedDI, Hundredths), planned(body.PlannedSoftened, Hundredths), planned(body.PlannedRaw, Hundredths)
	body.PlannedDuration = planned(body.PlannedDuration, seconds)
	return &body
}

// Loggable is a flow as a log can hold it: to the thousandth of a gallon a minute, and
// none that no hose gives.
func Loggable(f quantity.Flow) quantity.Opt[quantity.Flow] {
	if f < 0.05*quantity.GPM || f > 100*quantity.GPM {
		return quantity.Opt[quantity.Flow]{}
	}
	return written[quantity.Flow](f.GPM(), 3, "gpm")
}

// remarks tell of a wash what its figures do not.
func remarks(s State) string {
	var parts []string
	if s.Early {
		parts = append(parts, "ended early")
	}
	if steps, used := s.Untimed(); steps > 0 {
		parts = append(parts, fmt.Sprintf("steps not timed: %d, with %.1f gal as planned", steps, used.Gallons()))
	}
	return strings.Join(parts, "; ")
}

// Hundredths is a volume as a person would write it down: in hundredths of a gallon, and
// no more than a log takes.
func Hundredths(v quantity.Volume) quantity.Opt[quantity.Volume] {
	return written[quantity.Volume](min(v.Gallons(), 100000), 2, "gal")
}

// seconds is a duration as a person would write it down, and no more than a log takes.
func seconds(d quantity.Duration) quantity.Opt[quantity.Duration] {
	return written[quantity.Duration](min(d, 3*quantity.Day).Seconds(), 0, "s")
}

// written is a number with so many decimals, as it reads.
func written[Q quantity.Quantity](number float64, decimals int, unit string) quantity.Opt[Q] {
	text := strconv.FormatFloat(number, 'f', decimals, 64)
	if decimals > 0 {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	text += " " + unit
	v, err := quantity.Parse[Q](text)
	if err != nil {
		return quantity.Opt[Q]{}
	}
	return quantity.Typed(v, text)
}

func planned[Q quantity.Quantity](v quantity.Opt[Q], as func(Q) quantity.Opt[Q]) quantity.Opt[Q] {
	if q, given := v.Get(); given {
		return as(q)
	}
	return v
}

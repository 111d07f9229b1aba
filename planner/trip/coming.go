package trip

import (
	"cmp"
	"slices"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// coming notes the washes that are planned by themselves with the bed of the trip before
// its first day, by date: the trip starts from the bed as it stands today. What one takes
// is left out where its place or its rig lacks something.
func (t *tripping) coming(m *Memory) {
	var notes []tag.Note
	washes := slices.Clone(t.in.Coming)
	sort.SliceStable(washes, func(i, j int) bool {
		return washes[i].Date.Or(model.Date{}).Compare(washes[j].Date.Or(model.Date{})) < 0
	})
	for i := range washes {
		w := &washes[i]
		day, given := w.Date.Get()
		if _, done := t.in.Past.Did(w.Name, day); !given || done || !t.before(day) || !strings.EqualFold(t.in.bedOf(w), t.plan.Bed) {
			continue
		}
		who := "Not counted: " + plain(cmp.Or(w.Name, "the wash")+", "+day.String())
		why := ". It uses this bed before the trip, which starts from the bed as it stands today: log that wash once it is done, or give the trip a stop of that day with the wash."
		through, known := m.through(t.in, *w)
		switch {
		case known && through == 0:
		case known:
			notes = append(notes, tag.Note{Code: planner.PlannedBefore, Format: who + ", %s with its flush" + why, Values: []quantity.Value{quantity.ValueOf(through)}})
		default:
			notes = append(notes, tag.Note{Code: planner.PlannedBefore, Format: who + why})
		}
	}
	t.plan.Notes = append(notes, t.plan.Notes...)
}

// before tells that a day lies between today and the trip, with nothing in the log that
// the bed gave on it.
func (t *tripping) before(day model.Date) bool {
	today := t.in.Today
	if today == (model.Date{}) || day.Compare(today) < 0 || day.Compare(t.plan.First) >= 0 {
		return false
	}
	return !t.in.Past.Gave(t.plan.Bed, day)
}

// bedOf is the name of the bed of a wash; as a plan has it, the first one where none is named.
func (in *Input) bedOf(w *model.Wash) string {
	if name := cmp.Or(w.Bed, in.Rig.Defaults.Bed); name != "" || len(in.Rig.Beds) == 0 {
		return name
	}
	return in.Rig.Beds[0].Name
}

// through is what a wash sends through the bed at its own place, the flush included;
// false where that cannot be told.
func (m *Memory) through(in *Input, w model.Wash) (quantity.Volume, bool) {
	at := model.Find(in.Places.Names(), cmp.Or(w.Place, in.Rig.Defaults.Place))
	if at < 0 {
		return 0, false
	}
	w.Name, w.Date, w.Place = "", quantity.Opt[model.Date]{}, in.Places[at].Name
	d, err := m.demand(in, asked{wash: w, place: in.Places[at]})
	return d.DI.Volume + d.Flush.Volume, err == nil
}

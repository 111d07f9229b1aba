package planner

import (
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// washEvents are the washes of a log in their order. One in the middle of which
// the resin of its bed was changed is an event for each fill, so that no fill is
// charged with what another one gave.
func washEvents(log model.Log) []event {
	refills := refillsOf(log)
	washes := log.Washes()
	events := make([]event, 0, len(washes))
	for i := range washes {
		w := &washes[i]
		changes := changesIn(w, refills)
		if len(changes) == 0 {
			events = append(events, event{id: w.ID, at: w.At, wash: w})
			continue
		}
		events = append(events, parted(log, w, changes)...)
	}
	slices.SortStableFunc(events, func(a, b event) int { return a.at.Compare(b.at) })
	return events
}

func refillsOf(log model.Log) []*model.Entry {
	var refills []*model.Entry
	for i := range log {
		if _, ok := log[i].Body.(*model.Refill); ok {
			refills = append(refills, &log[i])
		}
	}
	return refills
}

// changesIn are the moments of the changes of a wash's bed that may lie in it: within
// one day's work.
func changesIn(w *model.WashRecord, refills []*model.Entry) []model.Moment {
	var changes []model.Moment
	for _, r := range refills {
		apart := quantity.Duration(r.At.Time().Sub(w.At.Time()).Seconds())
		bed := r.Body.(*model.Refill).Bed
		if max(apart, -apart) <= sameWash && len(w.Stages) > 0 && (bed == "" || strings.EqualFold(bed, w.Wash.Bed)) {
			changes = append(changes, r.At)
		}
	}
	return changes
}

// parted shares the DI water of a wash out by the changes of resin in it. What the
// stages do not tell, and all else of the wash, goes with its last part.
func parted(log model.Log, w *model.WashRecord, changes []model.Moment) []event {
	volumes, ends := make([]quantity.Volume, len(changes)+1), make([]model.Moment, len(changes)+1)
	told := quantity.Volume(0)
	last := 0
	for i := range log {
		s, ok := log[i].Body.(*model.StageDone)
		if !ok || s.Wash != w.ID || s.Water != model.DI {
			continue
		}
		part := 0
		for part < len(changes) && changes[part].Compare(log[i].At) <= 0 {
			part++
		}
		volumes[part] += s.Used.Or(0)
		ends[part], last = log[i].At, max(last, part)
		told += s.Used.Or(0)
	}
	var events []event
	for part := range last {
		if volumes[part] > 0 {
			before := &model.WashRecord{ID: w.ID, At: ends[part], Wash: w.Wash, Broken: w.Broken}
			before.Wash.DI = quantity.Some(volumes[part])
			before.Wash.Softened, before.Wash.Raw = quantity.Opt[quantity.Volume]{}, quantity.Opt[quantity.Volume]{}
			events = append(events, event{id: w.ID, at: ends[part], wash: before})
		}
	}
	rest := *w
	if rest.At.Compare(ends[last]) < 0 {
		rest.At = ends[last]
	}
	rest.Wash.DI = quantity.Some(volumes[last] + max(w.Wash.DI.Or(0)-told, 0))
	return append(events, event{id: w.ID, at: rest.At, wash: &rest})
}

package planner

import (
	"sort"
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
		changes := changesIn(w, log, refills)
		if len(changes) == 0 {
			events = append(events, event{id: w.ID, at: w.At, last: w.Index, wash: w})
			continue
		}
		events = append(events, parted(log, w, changes)...)
	}
	sort.SliceStable(events, func(i, j int) bool { return events[i].compare(events[j]) < 0 })
	return events
}

// refillsOf are the changes of resin, by their place in the log.
func refillsOf(log model.Log) []int {
	var refills []int
	for i := range log {
		if _, ok := log[i].Body.(*model.Refill); ok {
			refills = append(refills, i)
		}
	}
	return refills
}

// changesIn are the changes of a wash's bed that may lie in it, by their place in the
// log: within one day's work.
func changesIn(w *model.WashRecord, log model.Log, refills []int) []int {
	var changes []int
	for _, i := range refills {
		apart := quantity.Duration(log[i].At.Time().Sub(w.At.Time()).Seconds())
		bed := log[i].Body.(*model.Refill).Bed
		if max(apart, -apart) <= sameWash && len(w.Stages) > 0 && (bed == "" || strings.EqualFold(bed, w.Wash.Bed)) {
			changes = append(changes, i)
		}
	}
	return changes
}

// parted shares the DI water of a wash out by the changes of resin in it. What the
// stages do not tell, and all else of the wash, goes with its last part that had any.
func parted(log model.Log, w *model.WashRecord, changes []int) []event {
	volumes, ends := make([]quantity.Volume, len(changes)+1), make([]int, len(changes)+1)
	told := quantity.Volume(0)
	last := 0
	for i := range log {
		s, ok := log[i].Body.(*model.StageDone)
		if !ok || s.Wash != w.ID || s.Water != model.DI {
			continue
		}
		part := 0
		for part < len(changes) && changes[part] < i {
			part++
		}
		volumes[part] += s.Used.Or(0)
		ends[part], last = i, max(last, part)
		told += s.Used.Or(0)
	}
	var events []event
	for part := range last {
		if at := log[ends[part]].At; volumes[part] > 0 {
			before := &model.WashRecord{ID: w.ID, At: at, Wash: w.Wash, Broken: w.Broken}
			before.Wash.DI = quantity.Some(volumes[part])
			before.Wash.Softened, before.Wash.Raw = quantity.Opt[quantity.Volume]{}, quantity.Opt[quantity.Volume]{}
			events = append(events, event{id: w.ID, at: at, last: ends[part], wash: before})
		}
	}
	rest := *w
	rest.Index = max(w.Index, ends[last])
	if told > 0 && last < len(changes) && rest.Index > changes[last] {
		rest.Index = ends[last] // written down behind a change that none of it is behind
	}
	rest.At = log[rest.Index].At
	rest.Wash.DI = quantity.Some(volumes[last] + max(w.Wash.DI.Or(0)-told, 0))
	return append(events, event{id: w.ID, at: rest.At, last: rest.Index, wash: &rest})
}

package model

import (
	"fmt"
	"slices"
	"strings"
)

// StopsOn lists the stops at which the vehicle stands at some time of a day, in the
// order in which it comes to them: the one that it leaves or stays at, then each that
// begins on that day. There is none before the first.
func (t *Trip) StopsOn(day Date) []int {
	before := -1
	var began []int
	for i := range t.Stops {
		from, given := t.Stops[i].Date.Get()
		switch {
		case !given || from.Compare(day) > 0:
		case from == day:
			began = append(began, i)
		case before < 0 || from.Compare(t.Stops[before].Date.Or(Date{})) >= 0:
			before = i
		}
	}
	if before < 0 {
		return began
	}
	return append([]int{before}, began...)
}

// StopOn is the index of the stop at which the vehicle stands on a day: the last
// one that it has come to by then; -1 before the first. Of two that begin on one
// day, the later in the list counts.
func (t *Trip) StopOn(day Date) int {
	all := t.StopsOn(day)
	if len(all) == 0 {
		return -1
	}
	return all[len(all)-1]
}

// StopOf is the index of the stop of a wash: of those of its day the one that it names,
// which is named then, else that of [Trip.StopOn]; -1 where there is none.
func (t *Trip) StopOf(w *TripWash) (stop int, named bool) {
	day, given := w.Date.Get()
	if !given {
		return -1, false
	}
	all := t.StopsOn(day)
	for _, i := range slices.Backward(all) {
		if w.Place != "" && t.Stops[i].goesBy(w.Place) {
			return i, true
		}
	}
	return t.StopOn(day), false
}

// Assumed tells that a wash names no stop though several begin on its day, so that
// the last of them is only taken for it.
func (t *Trip) Assumed(w *TripWash) bool {
	day, given := w.Date.Get()
	if !given || w.Place != "" {
		return false
	}
	began := 0
	for _, i := range t.StopsOn(day) {
		if t.Stops[i].Date.Or(Date{}) == day {
			began++
		}
	}
	return began > 1
}

// goesBy tells that a wash may call the stop so: by its place, or by its own name.
func (s *Stop) goesBy(name string) bool {
	return strings.EqualFold(s.Place, name) || strings.EqualFold(s.Called(), name)
}

// Named is what a wash calls the stop: its place, else its own name.
func (s *Stop) Named() string {
	if s.Place != "" {
		return s.Place
	}
	return s.Called()
}

// Elsewhere says what is wrong where a wash names a stop at which the vehicle does not
// stand on its day, and what would be right; "" where it does, or where there is no stop.
func (t *Trip) Elsewhere(w *TripWash) string {
	stop, named := t.StopOf(w)
	if w.Place == "" || named || stop < 0 {
		return ""
	}
	day := w.Date.Or(Date{})
	var there []string
	for _, i := range t.StopsOn(day) {
		there = append(there, t.Stops[i].Named())
	}
	return fmt.Sprintf("%q is no stop of %s: the vehicle stands at %s then, and %s is taken; name a stop of that day, or leave the place out",
		w.Place, day, strings.Join(there, " and "), t.Stops[stop].Named())
}

// homeless are the faults of a wash on a day on which there is no stop, or not the one
// that it names.
func (t *Trip) homeless(i int) []Fault {
	w := &t.Washes[i]
	day, given := w.Date.Get()
	switch elsewhere := t.Elsewhere(w); {
	case elsewhere != "":
		return []Fault{{Section: "wash", Index: i, Key: "place", Lacks: true, Problem: elsewhere}}
	case !given || t.StopOn(day) >= 0:
		return nil
	}
	problem := fmt.Sprintf("%s is before the first stop, so its water is not known; add a [[stop]] by then", day)
	if len(t.Stops) == 0 {
		problem = "there is no stop yet, so its water is not known; add a [[stop]] with its date"
	}
	return []Fault{{Section: "wash", Index: i, Key: "date", Lacks: true, Problem: problem}}
}

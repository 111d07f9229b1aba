package main

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/planner"
	"washeve/ui/washday"
)

// means is what a wash day is done with. The file of the wash under way has a store
// of its own: it is read and written while the others are edited.
func (p *program) means(b *book, dir string) washday.Means {
	keep := store.Open(dir)
	return washday.Means{
		Instant: p.clock.Instant,
		Left: func() (model.Underway, bool, error) {
			u, there, faults := keep.Underway()
			return u, there, errorOf(faults)
		},
		Keep:  keep.SaveUnderway,
		Close: keep.CloseUnderway,
		Aside: func() (string, error) { return keep.SetUnderwayAside(p.now()) },
		Bell:  func() { fmt.Fprint(p.out, "\a") },
		Tick:  time.Second,
		Rest:  b.rest, Ways: b.shorten, Make: b.planNow, Fresh: b.renewed, Past: b.pastNow,
	}
}

// errorOf joins the faults that keep a file from being used.
func errorOf(faults []fault.Fault) error {
	var words []string
	for _, f := range faults {
		if !f.Severity.Stands() {
			words = append(words, f.Error())
		}
	}
	if len(words) == 0 {
		return nil
	}
	return errors.New(strings.Join(words, "; "))
}

// planNow makes a plan with all that the log teaches by now.
func (b *book) planNow(rig model.Rig, places model.Places, wash model.Wash) (planner.Plan, error) {
	b.memory.Past = b.pastNow(rig, places)
	return b.memory.Make(rig, places, wash)
}

// rest looks at the bed in the middle of a wash, with what the log teaches.
func (b *book) rest(rig model.Rig, places model.Places, wash model.Wash, ran, left quantity.Volume, flow quantity.Flow) (planner.Plan, error) {
	b.memory.Past = b.pastNow(rig, places)
	return b.memory.Rest(rig, places, wash, ran, left, flow)
}

// renewed is a plan with new resin in the bed, with what the log teaches.
func (b *book) renewed(rig model.Rig, places model.Places, wash model.Wash) (planner.Plan, error) {
	b.memory.Past = b.pastNow(rig, places)
	return b.memory.MakeIn(planner.Setting{Fresh: true}, rig, places, wash)
}

// shorten works the ways out of a short bed out, with what the log teaches.
func (b *book) shorten(rig model.Rig, places model.Places, wash model.Wash) (planner.Shortage, error) {
	b.memory.Past = b.pastNow(rig, places)
	return b.memory.Shorten(rig, places, wash)
}

package day

import (
	"math"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/ui/history"
)

// commit puts a wash in force: it can be undone, and the plan follows.
func (m Model) commit(w model.Wash) Model {
	m.history = m.history.Edited(poseOf(m.now))
	m.now = w
	return m.replan(w)
}

func (m Model) undone() Model {
	was, past := m.history.Undone(poseOf(m.now))
	words := history.UndoneWords(history.PartsOfWash(&m.now), history.PartsOfWash(new(was.in(m.now))))
	m.now, m.history = was.in(m.now), past
	return m.replan(m.now).say(words)
}

func (m Model) redone() Model {
	next, past := m.history.Redone(poseOf(m.now))
	words := history.RedoneWords(history.PartsOfWash(&m.now), history.PartsOfWash(new(next.in(m.now))))
	m.now, m.history = next.in(m.now), past
	return m.replan(m.now).say(words)
}

// state sets a field at once.
func (m Model) state(key, text string) Model {
	w := m.now
	if err := set(&w, key, text); err != nil {
		return m.warn(err.Error())
	}
	return m.commit(w)
}

// step is the time between two starts.
const step = time.Duration(drying.Step) * time.Second

// moved begins so many quarters of an hour later, within the light.
func (m Model) moved(by int) Model {
	at := m.day().Start.At
	onGrid := at.Truncate(step)
	if by < 0 && !onGrid.Equal(at) {
		by++
	}
	return m.begin(onGrid.Add(time.Duration(by) * step))
}

// begin chooses the start nearest to an instant that can be told by the clock.
// Where the clock shows a time twice, the first is meant: on the way forward the
// second is passed over.
func (m Model) begin(at time.Time) Model {
	first, last := m.bounds()
	d := m.day()
	forward := at.After(d.Start.At)
	at = at.Truncate(step)
	if at.Before(first) {
		at = first
	}
	for ; !at.After(last); at = at.Add(step) {
		clock := model.TimeOfDayAt(at)
		s, _, err := d.Starting(clock)
		if err == nil && s.At.Equal(d.Start.At) && m.now.Start.Given() && !forward {
			return m
		}
		if err == nil && (!forward || s.At.After(d.Start.At)) {
			w := m.now
			w.Start = quantity.Some(clock)
			return m.commit(w)
		}
	}
	return m.warn("There is no later start with light.")
}

func (m Model) recommended() Model {
	best, _ := m.day().Recommended.Get()
	w := m.now
	w.Start = quantity.Some(model.TimeOfDayAt(best.At))
	return m.commit(w).say("The recommended start, " + best.Label + ".")
}

// turned points the nose to the next point of the compass; from no heading, to
// the north.
func (m Model) turned(by float64) Model {
	const point = 22.5 * quantity.Degree
	w := m.now
	next := model.Heading(0)
	if h, given := w.Heading.Get(); given {
		points := float64(h.Angle() / point)
		if whole := math.Round(points); math.Abs(points-whole) < 1e-9 {
			points = whole + by
		} else if by > 0 {
			points = math.Ceil(points)
		} else {
			points = math.Floor(points)
		}
		next = model.HeadingOf(quantity.Angle(points) * point)
	}
	w.Heading = quantity.Typed(next, next.Word())
	return m.commit(w)
}

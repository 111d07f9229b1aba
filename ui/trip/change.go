package trip

import (
	"cmp"
	"slices"
	"strconv"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/cells"
	"washeve/ui/history"
	"washeve/ui/keeping"
	"washeve/ui/layout"
)

// commit puts a trip in force: it can be undone, the plan follows, and it is kept.
func (m Model) commit(t model.Trip) Model {
	m.history = m.history.Edited(m.version())
	return m.settle(t)
}

func (m *Model) version() Version { return Version{m.now, m.at, len(m.trips)} }

// settle plans a trip that is now in force, and keeps it.
func (m Model) settle(t model.Trip) Model {
	m.now = t
	m = m.replan(t)
	if n := len(m.lines()); m.hand >= n {
		m.hand = max(n-1, 0)
	}
	return m.save()
}

func (m Model) undone() Model { return m.settled(history.UndoneWords, m.history.Undone) }

func (m Model) redone() Model { return m.settled(history.RedoneWords, m.history.Redone) }

// parts are what the trip is made of, beside another version: where only one of them has
// it, the trip itself.
func (v *Version) parts(beside *Version) []history.Part {
	switch {
	case v.Trips < beside.Trips:
		return nil
	case v.Trips > beside.Trips:
		return []history.Part{{Kind: "trip", Name: "the trip " + v.Trip.Name, Item: &v.Trip}}
	}
	return history.PartsOfTrip(&v.Trip)
}

// settled goes a step through the history, and says what that changed.
func (m Model) settled(say func(from, to []history.Part) string, step func(Version) (Version, history.Of[Version])) Model {
	now := m.version()
	v, past := step(now)
	words := say(now.parts(&v), v.parts(&now))
	m, err := m.turned(v)
	switch {
	case err != nil:
		return m.warn("The trip stays: " + err.Error())
	case !m.begun:
		m.history, m.plan, m.planErr, m.unsaved, m.lost = past, trip.Plan{}, nil, nil, false
		return m.say(words)
	}
	m.history = past
	return m.settle(v.Trip).done(words)
}

// turned shows the trip of a version, with as many trips as there were: one that was begun
// since is taken away, for good. On error nothing is.
func (m Model) turned(v Version) (Model, error) {
	if v.At == m.at && v.Trips == len(m.trips) {
		return m, nil
	}
	if v.Trips < len(m.trips) {
		if err := m.keeper.Drop(); err != nil {
			return m, err
		}
	}
	m.trips = m.withShown()[:min(v.Trips, len(m.trips))]
	if v.Trips > len(m.trips) {
		m.trips = append(m.trips, v.Trip)
	}
	m.at, m.now, m.begun, m.hand = v.At, v.Trip, v.Trips > 0, 0
	return m, nil
}

// withShown is all trips, the one that is shown as it stands.
func (m *Model) withShown() []model.Trip {
	all := slices.Clone(m.trips)
	if m.begun {
		all[m.at] = m.now
	}
	return all
}

// done says what was done, unless there is trouble to tell.
func (m Model) done(words string) Model {
	if m.alarm || m.question != nil {
		return m
	}
	return m.say(words)
}

// save keeps the trip. That of the example is kept only while the program runs.
func (m Model) save() Model {
	m.unsaved = m.keeper.Keep(m.at, m.now.Clone())
	if m.unsaved == nil {
		if m.example {
			m.lost = true
			return m.say("Changed here. It is the built-in example, so it is kept nowhere.")
		}
		return m.say(keeping.Saved)
	}
	if q := keeping.Question(m.unsaved, m.th, Model.rewrite); q != nil {
		m.question = q
		return m
	}
	return m.warn(keeping.NotSaved(m.unsaved, m.th))
}

// whyAsked is the reason of the question, in the place of the list.
func (m *Model) whyAsked(at layout.Rect) []string {
	lines := cells.WrapMost(cells.Safe(m.question.Why), at.W, at.H, m.th.Marks.More)
	for i := range lines {
		lines[i] = m.th.Doubt.On(lines[i])
	}
	return lines
}

func (m Model) rewrite(r keeping.Rewriter) Model {
	backup, err := r.Rewrite()
	if err != nil {
		m.unsaved = err
		return m.warn(keeping.NotSaved(err, m.th))
	}
	if m = m.save(); m.unsaved != nil {
		return m
	}
	return m.say(keeping.SavedAnew(backup))
}

// start begins a trip with sensible lines: two weeks from now at the usual place,
// with a wash like the present one, and a stop of unknown water a week later.
func (m Model) start() Model {
	const ahead, week = 14, 7
	day := func(n int) quantity.Opt[model.Date] {
		d := m.today.Plus(n)
		return quantity.Typed(d, d.String())
	}
	place := cmp.Or(m.rig.Defaults.Place, m.wash.Place)
	if place == "" && len(m.places) > 0 {
		place = m.places[0].Name
	}
	m.history = m.history.Edited(m.version())
	m.trips = m.withShown()
	m.at, m.begun = len(m.trips), true
	m.now = model.Trip{
		Name:  m.freeName(),
		Stops: []model.Stop{{Date: day(ahead), Place: place}, {Date: day(ahead + week), Name: "next stop"}},
		Washes: []model.TripWash{
			{Date: day(ahead + 3), Like: m.wash.Name}, {Date: day(ahead + week + 3), Like: m.wash.Name},
		},
	}
	m.trips = append(m.trips, m.now)
	m.hand = 1
	return m.settle(m.now).done("A trip to start from. " + m.th.Key("enter", "show") + " changes a line; " + m.th.Key("n", "new wash") + " adds a wash, " + m.th.Key("o", "new stop") + " a stop.")
}

// freeName is a name that no other trip has: without a day, since a trip is moved.
func (m *Model) freeName() string {
	names := make([]string, len(m.trips))
	for i := range m.trips {
		names[i] = m.trips[i].Name
	}
	for n := len(names) + 1; ; n++ {
		if name := "trip " + strconv.Itoa(n); model.Find(names, name) < 0 {
			return name
		}
	}
}

// dayHere is the day that a new line begins with: that of the line under the hand.
func (m *Model) dayHere() quantity.Opt[model.Date] {
	l, ok := m.here()
	day, given := l.date.Get()
	if !ok || !given {
		if _, last, known := m.now.Days(); known {
			day = last
		} else {
			day = m.today
		}
	}
	return quantity.Typed(day, day.String())
}

// dayOfStop is the day that a new stop begins with: the one after all that is under the
// stop of the line under the hand, so that this one keeps its washes.
func (m *Model) dayOfStop() quantity.Opt[model.Date] {
	here := m.dayHere()
	day := here.Or(m.today)
	if len(m.now.Stops) == 0 {
		return here
	}
	last := day
	for _, l := range m.lines() {
		on := l.date.Or(model.Date{})
		if l.kind == stopLine && on.Compare(day) > 0 {
			break
		}
		if on.Compare(last) > 0 {
			last = on
		}
	}
	next := last.Plus(1)
	return quantity.Typed(next, next.String())
}

// add puts a new line in, and opens its sheet.
func (m Model) add(k kind) Model {
	t := m.now.Clone()
	day := m.dayHere()
	var index int
	switch k {
	case washLine:
		w := model.TripWash{Date: day, Like: m.wash.Name}
		if w.Like != "" && model.Find(m.names("wash"), w.Like) < 0 {
			w.Like = ""
		}
		t.Washes, index = append(t.Washes, w), len(t.Washes)
	case stopLine:
		t.Stops, index = append(t.Stops, model.Stop{Date: m.dayOfStop()}), len(t.Stops)
	default:
		t.Changes, index = append(t.Changes, model.ResinChange{Date: day}), len(t.Changes)
	}
	m = m.commit(t).onto(k, index)
	if m.question != nil {
		return m
	}
	return m.openSheet()
}

// advised takes the advice under the hand, or the first.
func (m Model) advised() Model {
	l, _ := m.here()
	for i, c := range m.plan.Changes {
		if !c.Advised || l.kind == adviceLine && l.index != i {
			continue
		}
		t := m.now.Clone()
		t.Changes = append(t.Changes, model.ResinChange{Date: quantity.Typed(c.Date, c.Date.String())})
		return m.commit(t).onto(changeLine, len(t.Changes)-1).done("The change of " + c.Date.String() + " is planned now.")
	}
	return m
}

// drop takes the line under the hand away.
func (m Model) drop() Model {
	l, _ := m.here()
	t := m.now.Clone()
	switch l.kind {
	case stopLine:
		t.Stops = append(t.Stops[:l.index], t.Stops[l.index+1:]...)
	case washLine:
		t.Washes = append(t.Washes[:l.index], t.Washes[l.index+1:]...)
	case changeLine:
		t.Changes = append(t.Changes[:l.index], t.Changes[l.index+1:]...)
	}
	return m.commit(t).done("Taken away; " + m.th.Key("u", "undo") + " brings it back.")
}

// moved puts the line under the hand so many days later. The hand goes with it.
func (m Model) moved(by int) Model {
	l, _ := m.here()
	day, given := l.date.Get()
	if !given {
		return m
	}
	t := m.now.Clone()
	next := day.Plus(by)
	if err := itemOf(&t, l).Fields()[0].Set(next.String()); err != nil {
		return m.warn(err.Error())
	}
	return m.commit(t).onto(l.kind, l.index)
}

// other shows the trip after this one.
func (m Model) other() Model {
	m.trips = m.withShown()
	m.at = (m.at + 1) % len(m.trips)
	m.now = m.trips[m.at].Clone()
	m.history, m.hand = history.Of[Version]{}, 0
	return m.replan(m.now).say("Now: " + m.now.Name + ".")
}

package plan

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/form"
	"washeve/ui/history"
	"washeve/ui/keeping"
)

// commit puts a work in force: it can be undone, the plan follows, and it is
// saved.
func (m Model) commit(w work) Model {
	m.history = m.history.Edited(m.now)
	return m.settle(w)
}

// settle makes the plan of a work that is now in force, and saves it.
func (m Model) settle(w work) Model {
	m = m.follows(w)
	m.now = w
	if m.underway != "" {
		m.underway = m.washUnderway() // of what may be called otherwise now
	}
	m = m.replan(w)
	m.begins = m.begins && m.planErr != nil
	if m.hand >= len(m.rows()) {
		m = m.onto(len(m.rows())-1, -1)
	}
	return m.save()
}

func (m Model) undone() Model { return m.settled(history.UndoneWords, m.history.Undone) }

func (m Model) redone() Model { return m.settled(history.RedoneWords, m.history.Redone) }

// settled goes a step through the history, and says what that changed.
func (m Model) settled(words func(from, to []history.Part) string, step func(work) (work, history.Of[work])) Model {
	w, past := step(m.now)
	m.history = past
	said := words(history.PartsOf(m.now.stock()), history.PartsOf(w.stock()))
	return m.settle(w).done(said)
}

// done says what was done, unless there is trouble to tell.
func (m Model) done(words string) Model {
	if m.alarm || m.question != nil {
		return m
	}
	return m.say(words)
}

// save keeps the work. The example is not kept before someone makes it theirs.
func (m Model) save() Model {
	if m.now.example {
		m.changed = true
		return m
	}
	m.unsaved = m.keep(m.now.stock())
	if m.unsaved == nil {
		m.changed = false
		return m.say(keeping.Saved)
	}
	if q := keeping.Question(m.unsaved, m.th, Model.rewrite); q != nil {
		m.question = q
		return m
	}
	return m.warn(keeping.NotSaved(m.unsaved, m.th))
}

func (m Model) rewrite(r keeping.Rewriter) Model {
	backup, err := r.Rewrite()
	if err != nil {
		m.unsaved = err
		return m.warn(keeping.NotSaved(err, m.th))
	}
	m = m.save()
	if m.unsaved != nil {
		return m
	}
	return m.say(keeping.SavedAnew(backup))
}

// adopt makes the example the person's own.
func (m Model) adopt() Model {
	was, is, err := m.keeper.Adopt()
	if err != nil {
		return m.warn("Could not write it out: " + err.Error())
	}
	owned := func(w work) work { return owned(w, was, is) }
	m.now, m.history = owned(m.now), history.Map(m.history, owned)
	stated := m.now.rig.Defaults.Units
	m = m.statesUnits().replan(m.now)
	if m.changed || stated == "" {
		if m = m.save(); m.unsaved != nil {
			return m
		}
	}
	if is != was {
		return m.say("It is yours now, on the coming days. Its weather is made up: " + m.th.Key("d", "walk day") + " states yours.")
	}
	return m.say("It is yours now: change what is not so, line by line.")
}

// owned is the example as the person's own, with the day that its wash has now.
func owned(w work, was, is model.Date) work {
	w.example = false
	if w.wash.Date.Or(model.Date{}) == was && is != was {
		w.wash.Date = quantity.Typed(is, is.String())
	}
	return w
}

// startFresh begins with an empty rig. It is saved with the first value.
func (m Model) startFresh() Model {
	m.history = m.history.Edited(m.now)
	m.now, m.changed = empty(), false
	if m.sys != m.unsaid {
		m = m.statesUnits()
	}
	m = m.replan(m.now).toFirst()
	m.begins = true
	return m.say("Your own, empty. Type what is needed; the rest is assumed until you state it.")
}

// makeNew lets the name of a new item be typed, or its word be picked: it is there, and
// kept, only once that is done.
func (m Model) makeNew(section string) Model {
	w := m.now.clone()
	at, err := w.add(section, m.plan)
	if err != nil {
		return m.warn(err.Error())
	}
	m.adding = &addition{work: w, open: m.open, hand: m.hand}
	if i, j, ok := w.stepOf(at); ok {
		m.open, m.hand = i, j
	}
	m = m.replan(w)
	first := w.item(at.section, at.index).Fields()[0]
	if len(first.Choices) > 0 {
		return m.openPicker(at)
	}
	return m.nameNew()
}

// nameNew lets the name under the hand be typed, in the place of one that is free.
func (m Model) nameNew() Model {
	_, f, _ := m.target()
	return m.startEdit(f.Text())
}

// leftOut is the screen without the item that was to be new; the hand is where it was.
func (m Model) leftOut() Model {
	if m.adding == nil {
		return m
	}
	m.open, m.hand, m.adding = m.adding.open, m.adding.hand, nil
	return m.replan(m.now)
}

func (m Model) drop() Model {
	section, index := m.sectionHere()
	w := m.now.clone()
	if err := w.remove(section, index); err != nil {
		return m.warn(err.Error())
	}
	return m.commit(w).done("Taken away; " + m.th.Key("u", "undo") + " brings it back.")
}

// referred lists what is there whatever is owned, then the items of a section, each with
// what tells it from others: a number keeps its meaning when an item is added.
func (m Model) referred(section string) []form.Option {
	var options []form.Option
	switch section {
	case "softener":
		options = append(options, form.Option{Text: model.NoSoftener, Pick: model.NoSoftener, Note: "wash without one"})
	case "sprayer":
		if usual, ok := m.usualSprayer(); ok {
			options = append(options, form.Option{Text: usual.Name, Pick: usual.Name, Note: usual.Flow.Words() + ", as assumed; this makes it yours"})
		}
		options = append(options, form.Option{Text: model.ByHand, Pick: model.ByHand, Note: "with a mitt"})
	}
	for i, name := range m.now.names(section) {
		options = append(options, form.Option{Text: name, Pick: name, Note: m.noteOf(section, i)})
	}
	return append(options, form.Option{Text: "new " + section, New: true})
}

func (m Model) noteOf(section string, index int) string {
	f, ok := m.now.field(ref{section, index, stock.Telling(section)})
	if !ok || !f.Given() {
		return ""
	}
	return f.Text()
}

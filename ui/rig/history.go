package rig

import (
	"errors"

	"washeve/model/stock"
	"washeve/ui/history"
	"washeve/ui/keeping"
)

// backupWords begin what is said of a backup.
const backupWords = "The file as it was is in "

// commit puts a stock in force: it can be undone, and it is saved.
func (m Model) commit(s stock.Stock) Model {
	m.history = m.history.Edited(m.version())
	return m.settle(s)
}

func (m Model) settle(s stock.Stock) Model {
	m = m.inUnitsOf(s)
	m.now, m.changed = s, true
	return m.looked().kept()
}

func (m *Model) version() Version { return Version{m.now, m.example} }

func (m Model) undone() Model { return m.settled(history.UndoneWords, m.history.Undone) }

func (m Model) redone() Model { return m.settled(history.RedoneWords, m.history.Redone) }

// settled goes a step through the history, and says what that changed: of the plan it may
// be what is not shown here.
func (m Model) settled(words func(from, to []history.Part) string, step func(Version) (Version, history.Of[Version])) Model {
	v, past := step(m.version())
	said := words(history.PartsOf(m.now), history.PartsOf(v.Stock))
	m.history, m.example = past, v.Example
	return m.settle(v.Stock).done(said)
}

// kept saves. Items that the person took out go without another word, and the
// file as it was is kept aside; whatever else would be lost is asked about. The
// example is not kept before someone makes it theirs.
func (m Model) kept() Model {
	if m.example {
		return m
	}
	backup := ""
	for range 4 + len(*m.now.Others) { // every file once
		m.unsaved = m.save(m.now)
		var r keeping.Rewriter
		switch {
		case m.unsaved == nil:
			return m.said(backup)
		case !errors.As(m.unsaved, &r):
			return m.notSaved(m.unsaved)
		case !r.TakesOut():
			return m.asksRewrite()
		}
		name, err := r.Rewrite()
		if err != nil {
			return m.notSaved(err)
		}
		backup = name
	}
	return m.notSaved(m.unsaved)
}

// notSaved keeps the work on the screen, and says why it is nowhere else.
func (m Model) notSaved(err error) Model {
	m.unsaved = err
	return m.warn(keeping.NotSaved(err, m.th))
}

func (m Model) said(backup string) Model {
	if backup == "" {
		return m.say(keeping.Saved)
	}
	return m.say(backupWords + backup + ".")
}

// asksRewrite asks where there is no room for the reason but behind the question.
func (m Model) asksRewrite() Model {
	q := keeping.Question(m.unsaved, m.th, Model.rewritten)
	q.Text, q.Why = q.Text+". "+q.Why, ""
	m.ask = q
	return m
}

func (m Model) rewritten(r keeping.Rewriter) Model {
	backup, err := r.Rewrite()
	if err != nil {
		return m.notSaved(err)
	}
	m = m.kept()
	if m.unsaved != nil || m.alarm {
		return m
	}
	return m.said(backup)
}

package bed

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/entry"
)

// presetWash fills in what the plan says of the rig: what was most likely used, whenever it was.
func (m Model) presetWash(w *model.WashDone) {
	p := m.plan
	w.Place, w.Vehicle, w.Bed, w.Sprayer = p.Place, p.Vehicle, p.BedName, p.Sprayer.Name
	w.Softener = model.NoSoftener
	if p.Softener != nil {
		w.Softener, w.Feed = p.Softener.Name, m.o.Wash.Feed
	}
	w.Flow = entry.Stated(p.Sprayer.Flow, m.sys)
}

// besideSprayer puts the sprayer's flow beside a reading after the bed, and takes it out of one
// elsewhere. What was typed in its place stays.
func (m Model) besideSprayer() func(*model.Entry) {
	own := entry.Stated(m.plan.Sprayer.Flow, m.sys)
	return func(e *model.Entry) {
		s, reads := e.Body.(*model.Sample)
		switch {
		case !reads:
		case s.Point == model.AfterBed && !s.Flow.Given():
			s.Flow = own
		case s.Point != model.AfterBed && s.Flow == own:
			s.Flow = quantity.Opt[quantity.Flow]{}
		}
	}
}

// planned are the plan's own figures, as a wash that was done by it has them.
func (m Model) planned() *model.WashDone {
	p := m.plan
	return &model.WashDone{
		Plan:      p.Wash,
		PlannedDI: entry.Stated(p.Through(), m.sys), PlannedSoftened: entry.Stated(p.Soft.Volume, m.sys), PlannedRaw: entry.Stated(p.Untreated.Volume, m.sys),
		PlannedFlow: entry.Stated(p.Sprayer.Flow, m.sys), PlannedDuration: entry.Stated(p.DI.Duration+p.Soft.Duration+p.Untreated.Duration, m.sys),
	}
}

// planDay is the day for which the plan was made: today where it names none.
func (m Model) planDay() model.Date { return m.o.Wash.Date.Or(m.o.Now().Date()) }

// besidePlan puts the plan's figures beside a wash that was done on the plan's day, and takes
// them out of one of another day, which was not done by this plan. What was typed in their
// place stays.
func (m Model) besidePlan() func(*model.Entry) {
	planned, day := m.planned().Fields(), m.planDay()
	return func(e *model.Entry) {
		onDay := e.At.Date() == day
		for i, f := range e.Body.Fields() {
			switch own := planned[i].Text(); {
			case own == "":
			case onDay && !f.Given():
				_ = f.Set(own) // it is the text of a field like this one
			case !onDay && f.Text() == own:
				_ = f.Set("")
			}
		}
	}
}

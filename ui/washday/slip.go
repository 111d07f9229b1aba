package washday

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/keys"
	"washeve/ui/report"
)

// slipOf says of a reading what makes it look like a slip of the hand; "" of one that is
// as a bed can read.
func (m Model) slipOf(text string) string {
	reading, err := m.readingOf(text)
	if err != nil {
		return ""
	}
	plan, err := m.o.Make(m.o.Rig, m.o.Places, m.o.Wash)
	if err != nil {
		return ""
	}
	sample := model.Sample{
		Point: model.AfterBed, Reading: quantity.Some(reading), Place: m.u.Plan.Place, Bed: m.u.Plan.Bed, Pen: m.o.Pen(), Feed: washday.Fed(&m.u),
	}
	note, odd := plan.Slip(&m.o.Rig, &sample)
	switch {
	case !odd:
		return ""
	case note.Code != planner.ReadingOverFeed:
		return note.Text(m.sys)
	}
	feed := plan.FeedTDS(sample.Feed)
	return "Over the " + report.PPM(feed.Number) + " " + feed.Scale.String() + " that goes into the bed."
}

// askSlip asks whether the pen reads so all the same.
func (m Model) askSlip() string { return m.slip + " Write it all the same? " + m.th.YesOrNo() }

// answerSlip takes the reading that is typed, or has it typed anew.
func (m Model) answerSlip(does keys.Action) Model {
	m.slip = ""
	switch does {
	case sayYes:
		return m.typedReading(m.typedText())
	case sayNo:
		return m.ask(aReading).say("Not written: type it anew.")
	}
	m.edit = nil
	return m.say(nothingWritten)
}

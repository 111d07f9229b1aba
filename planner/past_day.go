package planner

import (
	"fmt"
	"time"

	"washeve/model"
)

// PastDay is the code of the warning that the day of the wash is over.
const PastDay = "past-day"

// Seen warns, before all else, where the day of the wash is before today. The plan
// knows no clock, so that who has one says what day it is.
func (p *Plan) Seen(today model.Date) {
	day, given := p.Date.Get()
	if !given || day.Compare(today) >= 0 {
		return
	}
	ago := "yesterday"
	if n := daysBetween(day, today); n > 1 {
		ago = fmt.Sprintf("%d days ago", n)
	}
	note := Note{Code: PastDay, Format: "This day is past: " + ago + ". State the day of the wash."}
	p.Warn(note)
}

// Warn puts a warning first, behind those that a person must know before it.
func (p *Plan) Warn(n Note) {
	p.Warnings = append([]Note{n}, p.Warnings...)
	inTurn(p.Warnings)
}

func daysBetween(from, to model.Date) int {
	at := func(d model.Date) time.Time { return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC) }
	return int(at(to).Sub(at(from)).Hours() / 24)
}

// Package clock lists the hours of a day in a zone with daylight saving: the
// hour that does not exist and the hour that comes twice included.
package clock

import (
	"fmt"
	"time"

	"washeve/model"
	"washeve/model/quantity"
)

// Day is a day of the calendar in a time zone.
type Day struct {
	Date  model.Date
	Zone  *time.Location
	spans []span
}

// span is a stretch of the day with one offset from universal time.
type span struct {
	from, to time.Time
	midnight time.Time // when the clock of this offset shows 00:00 of the date
}

// NewDay finds when the day begins and ends. It fails where the zone is
// missing, and where the zone left the day out (Samoa had no 30 December 2011).
func NewDay(date model.Date, zone *time.Location) (Day, error) {
	if zone == nil {
		return Day{}, fmt.Errorf("the time zone is missing; write it like America/Denver")
	}
	day := Day{Date: date, Zone: zone}
	universal := time.Date(date.Year, date.Month, date.Day, 0, 0, 0, 0, time.UTC)
	const reach = 26 * time.Hour // further than any offset
	from, to := universal.Add(-reach).In(zone), universal.Add(24*time.Hour+reach).In(zone)
	for _, change := range append(changes(from, to), to) {
		day.add(universal.Add(-time.Duration(offset(from))*time.Second).In(zone), from, change)
		from = change
	}
	if len(day.spans) == 0 {
		return Day{}, fmt.Errorf("%s was left out of the calendar in %s; take the day before or after", date, zone)
	}
	return day, nil
}

// changes lists the instants at which the offset changes. They are looked for
// hour by hour and not by [time.Time.ZoneBounds], which on the last day of a
// leap year after 2037 gives an end that is not after its own time (Go 1.26).
func changes(from, to time.Time) []time.Time {
	var out []time.Time
	for at := from; at.Before(to); at = at.Add(time.Hour) {
		before, after := at, at.Add(time.Hour)
		if offset(before) == offset(after) {
			continue
		}
		for after.Sub(before) > time.Second {
			middle := before.Add(after.Sub(before) / 2).Truncate(time.Second)
			if offset(middle) == offset(before) {
				before = middle
			} else {
				after = middle
			}
		}
		out = append(out, after)
	}
	return out
}

func offset(at time.Time) int {
	_, seconds := at.Zone()
	return seconds
}

// add cuts the 24 hours from midnight to the bounds of the offset.
func (d *Day) add(midnight, start, end time.Time) {
	s := span{from: midnight, to: midnight.Add(24 * time.Hour), midnight: midnight}
	if start.After(s.from) {
		s.from = start
	}
	if end.Before(s.to) {
		s.to = end
	}
	if s.from.Before(s.to) {
		d.spans = append(d.spans, s)
	}
}

// Start is the first instant of the day: not always 00:00.
func (d Day) Start() time.Time { return d.spans[0].from }

// End is the first instant after the day.
func (d Day) End() time.Time { return d.spans[len(d.spans)-1].to }

// Length is 23, 24 or 25 hours in most zones.
func (d Day) Length() quantity.Duration {
	total := time.Duration(0)
	for _, s := range d.spans {
		total += s.to.Sub(s.from)
	}
	return quantity.Duration(total.Seconds())
}

// Every lists the instants of the day from its start, a step apart. A step of
// nothing or less gives the start alone.
func (d Day) Every(step quantity.Duration) []time.Time {
	gap := time.Duration(float64(step) * float64(time.Second))
	if gap < time.Second {
		return []time.Time{d.Start()}
	}
	out := make([]time.Time, 0, int(d.End().Sub(d.Start())/gap)+1)
	for at := d.Start(); at.Before(d.End()); at = at.Add(gap) {
		if d.holds(at) {
			out = append(out, at)
		}
	}
	return out
}

func (d Day) holds(at time.Time) bool {
	for _, s := range d.spans {
		if !at.Before(s.from) && at.Before(s.to) {
			return true
		}
	}
	return false
}

// Hour is an instant of the day at which the clock shows a full hour.
type Hour struct {
	At    time.Time
	Label string // "07:00"; with the zone's letters where it comes twice
}

// Hours lists the full hours of the day in order. An hour that does not exist
// is not in it; one that comes twice is in it twice, told apart by its label.
func (d Day) Hours() []Hour {
	var out []Hour
	for _, s := range d.spans {
		for h := range 24 {
			at := s.midnight.Add(time.Duration(h) * time.Hour)
			if !at.Before(s.from) && at.Before(s.to) {
				out = append(out, Hour{At: at, Label: d.Label(at)})
			}
		}
	}
	return out
}

// Label writes an instant as the clock shows it, with the zone's letters where
// the clock shows it twice on this day.
func (d Day) Label(at time.Time) string {
	local := at.In(d.Zone)
	shown := model.TimeOfDayAt(local)
	if len(d.spans) > 1 && len(d.instants(shown)) > 1 {
		return local.Format("15:04 MST")
	}
	return shown.String()
}

// Word tells what is odd about the day's clock, or "".
func (d Day) Word() string {
	switch missing := 24*quantity.Hour - d.Length(); {
	case missing > 0:
		return fmt.Sprintf("the clocks go forward on this day: it is %g min short", missing.Minutes())
	case missing < 0:
		return fmt.Sprintf("the clocks go back on this day: %g min of it come twice", -missing.Minutes())
	}
	return ""
}

// At finds the instants at which the clock shows t on this day: one, or two
// where it comes twice. Where the clock skips t the error says so.
func (d Day) At(t model.TimeOfDay) ([]time.Time, error) {
	found := d.instants(t)
	if len(found) == 0 {
		return nil, fmt.Errorf("%s does not exist on %s in %s: the clocks skip it; take an earlier or later time", t, d.Date, d.Zone)
	}
	return found, nil
}

func (d Day) instants(t model.TimeOfDay) []time.Time {
	var found []time.Time
	for _, s := range d.spans {
		at := s.midnight.Add(time.Duration(t.Hour)*time.Hour + time.Duration(t.Minute)*time.Minute)
		if !at.Before(s.from) && at.Before(s.to) {
			found = append(found, at)
		}
	}
	return found
}

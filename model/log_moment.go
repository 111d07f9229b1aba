package model

import (
	"cmp"
	"strings"
	"time"

	"washeve/model/quantity"
)

// Moment is a second in time with the offset from UTC of the clock that told
// it. The zero value is "not given". Moments compare with ==, which asks for the
// same second on the same clock.
type Moment struct {
	unix   int64 // seconds, kept apart from zero by given
	offset int32 // seconds east of UTC
	given  bool
}

const momentExample = "2026-06-12T08:15:00-06:00"

// MomentOf drops what a log does not keep of t: parts of a second, the name of
// the zone, and odd seconds of its offset.
func MomentOf(t time.Time) Moment {
	_, offset := t.Zone()
	return Moment{unix: t.Unix(), offset: int32(offset / 60 * 60), given: true}
}

// Given tells whether there is a moment.
func (m Moment) Given() bool { return m.given }

// Time is the moment in a zone of its own offset.
func (m Moment) Time() time.Time {
	if m.offset == 0 {
		return time.Unix(m.unix, 0).UTC()
	}
	return time.Unix(m.unix, 0).In(time.FixedZone("", int(m.offset)))
}

// Date is the day on the clock that told the moment.
func (m Moment) Date() Date {
	year, month, day := m.Time().Date()
	return Date{year, month, day}
}

// Plus is so many seconds later on the same clock.
func (m Moment) Plus(seconds int64) Moment {
	m.unix += seconds
	return m
}

// Compare is below, at or above zero as m is before, at or after n. A moment
// that is not given is before all others.
func (m Moment) Compare(n Moment) int {
	if m.given != n.given {
		if n.given {
			return -1
		}
		return 1
	}
	return cmp.Compare(m.unix, n.unix)
}

// String writes the moment as in RFC 3339.
func (m Moment) String() string {
	if !m.given {
		return ""
	}
	return m.Time().Format(time.RFC3339)
}

// Told is the moment as its own clock told it, to the minute, as a person writes it:
// 2026-06-12 08:15. Where it was another zone than the reader's at that moment the zone
// is behind it: 2026-06-12 14:15 UTC, or 2026-06-12 09:15 UTC-05:00.
func (m Moment) Told(reader *time.Location) string {
	if !m.given {
		return ""
	}
	text := m.Time().Format("2006-01-02 15:04")
	if m.offset == MomentOf(m.Time().In(reader)).offset {
		return text
	}
	if text += " UTC"; m.offset != 0 {
		text += m.Time().Format("-07:00")
	}
	return text
}

// ParseMoment reads 2026-06-12T08:15:00-06:00. The seconds may be left out, and
// a space stands for the T. Where zone is not nil the offset may be left out
// too, or the hour with it, which is then noon.
func ParseMoment(text string, zone *time.Location) (Moment, error) {
	if m, ok := scanMoment(text); ok {
		return m, nil
	}
	tidy := strings.Replace(strings.ToUpper(strings.TrimSpace(text)), " ", "T", 1)
	for _, layout := range []string{time.RFC3339, "2006-01-02T15:04Z07:00"} {
		if t, err := time.Parse(layout, tidy); err == nil {
			return sane(t, text)
		}
	}
	if zone == nil {
		return noMoment(text, "is no moment with its offset from UTC")
	}
	for _, layout := range []string{"2006-01-02T15:04:05", "2006-01-02T15:04", time.DateOnly} {
		if t, err := time.ParseInLocation(layout, tidy, zone); err == nil {
			if layout == time.DateOnly {
				t = time.Date(t.Year(), t.Month(), t.Day(), 12, 0, 0, 0, zone)
			}
			return sane(t, text)
		}
	}
	return noMoment(text, "is no moment")
}

func noMoment(text, reason string) (Moment, error) {
	return Moment{}, &quantity.ParseError{What: "moment", Text: text, Reason: reason, Example: momentExample}
}

func sane(t time.Time, text string) (Moment, error) {
	_, offset := t.Zone()
	switch {
	case t.Year() < 1990 || t.Year() > 2200:
		return noMoment(text, "is not between 1990 and 2200")
	case offset < -14*3600 || offset > 14*3600:
		return noMoment(text, "is over 14 hours from UTC")
	}
	return MomentOf(t), nil
}

// scanMoment reads the form that String writes, which is nearly every moment
// ever read, at a tenth of the cost.
func scanMoment(text string) (Moment, bool) {
	const form = "0000-00-00T00:00:00"
	if len(text) < len(form)+1 || text[4] != '-' || text[7] != '-' || text[10] != 'T' || text[13] != ':' || text[16] != ':' {
		return Moment{}, false
	}
	offset, ok := scanOffset(text[len(form):])
	if !ok {
		return Moment{}, false
	}
	bad := 0
	year := 100*two(text, 0, &bad) + two(text, 2, &bad)
	month, day := two(text, 5, &bad), two(text, 8, &bad)
	hour, minute, second := two(text, 11, &bad), two(text, 14, &bad), two(text, 17, &bad)
	if bad > 0 || year < 1990 || year > 2200 || month > 12 || month < 1 || hour > 23 || minute > 59 || second > 59 {
		return Moment{}, false
	}
	t := time.Date(year, time.Month(month), day, hour, minute, second, 0, time.UTC)
	if day < 1 || t.Day() != day {
		return Moment{}, false
	}
	return Moment{unix: t.Unix() - int64(offset), offset: int32(offset), given: true}, true
}

// two reads two digits, and counts where there are none.
func two(text string, at int, bad *int) int {
	a, b := text[at]-'0', text[at+1]-'0'
	if a > 9 || b > 9 {
		*bad++
	}
	return 10*int(a) + int(b)
}

func scanOffset(text string) (seconds int, ok bool) {
	if text == "Z" {
		return 0, true
	}
	if len(text) != len("-06:00") || text[3] != ':' || (text[0] != '-' && text[0] != '+') {
		return 0, false
	}
	bad := 0
	hours, minutes := two(text, 1, &bad), two(text, 4, &bad)
	if bad > 0 || hours > 13 || minutes > 59 {
		return 0, false
	}
	seconds = 3600*hours + 60*minutes
	if text[0] == '-' {
		seconds = -seconds
	}
	return seconds, true
}

func momentField(key, label, help string, at *Moment) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: momentExample, Scalar: true, Moment: true,
		value: spoken{
			say: func() string { return at.String() },
			hear: func(text string) error {
				m, err := ParseMoment(text, nil)
				if err == nil {
					*at = m
				}
				return err
			},
			drop: func() { *at = Moment{} },
		},
	}
}

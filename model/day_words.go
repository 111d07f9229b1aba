package model

import (
	"cmp"
	"errors"
	"strconv"
	"strings"
	"time"

	"washeve/model/quantity"
)

// How a person may type a day or a moment. Files hold whole dates and moments only.
const (
	ComingDays  = "2026-06-12, 06-12, tomorrow or fri"
	PastMoments = "06-12 08:15, yesterday 19:30 or 3 weeks ago"

	pastDays = "06-12, last sat or 3 weeks ago"
)

const noDay = "is no day of the calendar"

// Plus is so many days later.
func (d Date) Plus(days int) Date {
	t := time.Date(d.Year, d.Month, d.Day+days, 12, 0, 0, 0, time.UTC)
	return Date{t.Year(), t.Month(), t.Day()}
}

// Weekday is the day's own.
func (d Date) Weekday() time.Weekday {
	return time.Date(d.Year, d.Month, d.Day, 12, 0, 0, 0, time.UTC).Weekday()
}

// Full is the day with its weekday, such as "Sat 2026-11-28".
func (d Date) Full() string { return d.Weekday().String()[:3] + " " + d.String() }

// ComingDay reads the day of something planned as a person types it on the day today: a
// whole date, "today", "tomorrow", a weekday or at least three letters of it (the next
// such day; today's own name is today), or month and day such as 06-12, jun 12 or 12 June
// (the next such day that is not before since), with or without the year. Where today is not known, the zero value, only whole dates
// are read. Errors are of type [*quantity.ParseError].
func ComingDay(text string, today, since Date) (Date, error) {
	return dayInWords(text, dayRule{today: today, since: since, way: 1, refused: "yesterday", why: "is over", like: ComingDays})
}

// PastDay reads the day of something done as [ComingDay] does that of something planned:
// "yesterday" in the place of "tomorrow", and the last such day in the place of the next;
// "last sat" is the Saturday before today, "3 weeks ago" and "2 days ago" are counted back.
func PastDay(text string, today Date) (Date, error) {
	return dayInWords(text, dayRule{today: today, since: today, way: -1, refused: "tomorrow", why: "is still to come", like: pastDays})
}

// dayRule is how words for a day are read.
type dayRule struct {
	today, since Date
	way          int    // 1 for days to come, -1 for past ones
	refused, why string // the word that lies the other way
	like         string // what would be right
}

func dayInWords(text string, r dayRule) (Date, error) {
	if r.today == (Date{}) {
		return ParseDate(text)
	}
	word := strings.ToLower(strings.TrimSpace(text))
	wrong := func(reason string) (Date, error) {
		return Date{}, &quantity.ParseError{What: "date", Text: text, Reason: reason, Example: r.like}
	}
	switch word {
	case "today":
		return r.today, nil
	case r.refused:
		return wrong(r.why)
	case "tomorrow", "yesterday":
		return r.today.Plus(r.way), nil
	}
	if d, ok := r.weekday(word); ok {
		return d, nil
	}
	if d, ok := r.ago(word); ok {
		return d, nil
	}
	if d, ok := r.withYear(word); ok {
		return d, nil
	}
	if d, err := ParseDate(text); err == nil {
		return d, nil
	}
	if reason, meant := slashedDay(word); reason != "" {
		r.like = cmp.Or(offered(meant, ""), r.like)
		return wrong(reason)
	}
	return wrong(noDay)
}

// ago reads so many days or weeks before today, where days are past ones: "3 weeks ago".
func (r dayRule) ago(word string) (Date, bool) {
	const week, most = 7, 5000
	parts := strings.Fields(word)
	if r.way > 0 || len(parts) != 3 || parts[2] != "ago" {
		return Date{}, false
	}
	n, err := strconv.Atoi(parts[0])
	if parts[0] == "a" || parts[0] == "one" {
		n, err = 1, nil
	}
	days := map[string]int{"day": 1, "week": week}[strings.TrimSuffix(parts[1], "s")]
	if err != nil || n < 0 || n > most || days == 0 {
		return Date{}, false
	}
	return r.today.Plus(-n * days), true
}

// weekday reads a weekday: the nearest one, today's own name for today; of past days also
// "last sat", which is never today.
func (r dayRule) weekday(word string) (Date, bool) {
	const week = 7
	name, isLast := word, false
	if r.way < 0 {
		name, isLast = strings.CutPrefix(word, "last ")
	}
	day, ok := weekdayOf(strings.TrimSpace(name))
	off := (int(day-r.today.Weekday())*r.way + week) % week
	if isLast && off == 0 {
		off = week
	}
	return r.today.Plus(off * r.way), ok
}

// weekdayOf reads the name of a weekday, or three letters of it and more.
func weekdayOf(word string) (time.Weekday, bool) {
	const least = 3
	for day := time.Sunday; day <= time.Saturday; day++ {
		if len(word) >= least && strings.HasPrefix(strings.ToLower(day.String()), word) {
			return day, true
		}
	}
	return 0, false
}

// withYear reads a day in another form than the whole date: without its year the next such
// day or, backwards, the last one.
func (r dayRule) withYear(word string) (Date, bool) {
	const leapYears = 8 // apart, at most
	form, ok := formOf(word)
	if !ok {
		return Date{}, false
	}
	if form.year > 0 {
		d, err := ParseDate(form.String())
		return d, err == nil
	}
	for years := range leapYears + 1 {
		form.year = r.since.Year + years*r.way
		d, err := ParseDate(form.String())
		if err == nil && d.Compare(r.since)*r.way >= 0 {
			return d, true
		}
	}
	return Date{}, false
}

// PastMoment reads a moment as a person types it at now, for something done: what
// [ParseMoment] reads in the zone of now, or a day as [PastDay] reads it with a time of
// day behind it. A day alone is its noon, or now where that is still to come.
func PastMoment(text string, now time.Time) (Moment, error) {
	word, clock := dayAndClock(text, MomentOf(now).Date())
	day, err := PastDay(word, MomentOf(now).Date())
	var wrong *quantity.ParseError
	switch {
	case err == nil && clock == "":
		if noon := day.at(TimeOfDay{Hour: 12}, now.Location()); noon.Before(now) || day != MomentOf(now).Date() {
			return sane(noon, text)
		}
		return MomentOf(now), nil
	case err == nil:
		if at, err := ParseTimeOfDay(clock); err == nil && !maybeYear(word, clock) {
			return sane(day.at(at, now.Location()), text)
		}
	case errors.As(err, &wrong) && wrong.Reason != noDay:
		wrong.What = "moment"
		switch {
		case wrong.Example == pastDays:
			wrong.Example = PastMoments
		case clockReads(clock): // behind a day that is offered in other signs
			_, meant := slashedDay(word)
			wrong.Example = offered(meant, clock)
		}
		return Moment{}, wrong
	}
	m, err := ParseMoment(text, now.Location())
	if errors.As(err, &wrong) {
		wrong.Example = PastMoments
	}
	return m, err
}

// maybeYear tells that an hour alone behind a day may be meant as its year: "12 jun 20".
func maybeYear(day, clock string) bool {
	return BareHour(clock) && strings.ContainsAny(day, "0123456789")
}

func clockReads(text string) bool {
	_, err := ParseTimeOfDay(text)
	return err == nil
}

// dayAndClock parts a moment behind its day, which may be of up to three words.
func dayAndClock(text string, today Date) (day, clock string) {
	const most = 3
	words := strings.Fields(text)
	for n := min(most, len(words)); n > 1; n-- {
		day = strings.Join(words[:n], " ")
		if _, err := PastDay(day, today); err == nil {
			return day, strings.Join(words[n:], " ")
		}
	}
	day, clock, _ = strings.Cut(strings.TrimSpace(text), " ")
	return day, clock
}

// at is a time of the day in a zone.
func (d Date) at(t TimeOfDay, zone *time.Location) time.Time {
	return time.Date(d.Year, d.Month, d.Day, t.Hour, t.Minute, 0, 0, zone)
}

// Full is the moment as its own clock told it, with the weekday: "Sat 2026-11-28 08:15".
func (m Moment) Full() string { return m.Date().Full() + m.Time().Format(" 15:04") }

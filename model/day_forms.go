package model

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"washeve/model/pattern"
)

var (
	// monthFirst is a day without its year, the month first as in a whole date.
	monthFirst = pattern.Of(`^(\d\d?)-(\d\d?)$`)
	// monthNamed is a day with the name of its month, before or behind, with or without a year.
	monthNamed = pattern.Of(`^(?:([a-z]{3,9})\.? (\d\d?)|(\d\d?)\.? ([a-z]{3,9})\.?)(?:,? (\d{4}))?$`)
	// yearFirst and slashed are days with other signs between their numbers than ours.
	yearFirst = pattern.Of(`^(\d{4})[/.](\d\d?)[/.](\d\d?)$`)
	slashed   = pattern.Of(`^(\d\d?)[/.](\d\d?)(?:[/.](\d{4}|\d\d)?)?$`)
)

// A dayForm is what a text says of a day, which may be none of the calendar.
type dayForm struct{ year, month, day int } // the year is 0 where none is said

// formOf reads "06-12", "jun 12", "12 June" and "June 12, 2026", in small letters.
func formOf(word string) (dayForm, bool) {
	if p := monthFirst().FindStringSubmatch(word); p != nil {
		return dayForm{month: numberOf(p[1]), day: numberOf(p[2])}, true
	}
	p := monthNamed().FindStringSubmatch(strings.Join(strings.Fields(word), " "))
	if p == nil {
		return dayForm{}, false
	}
	month := monthOf(p[1] + p[4])
	return dayForm{numberOf(p[5]), month, numberOf(p[2] + p[3])}, month > 0
}

// monthOf is the number of a month by its name, or by three letters of it and more; 0 of
// any other word.
func monthOf(word string) int {
	for m := time.January; m <= time.December; m++ {
		if len(word) >= 3 && strings.HasPrefix(strings.ToLower(m.String()), word) {
			return int(m)
		}
	}
	return 0
}

// numberOf is the number of a few digits, 0 where there are none.
func numberOf(digits string) int {
	n, _ := strconv.Atoi(digits)
	return n
}

// real tells whether the calendar has the day, in a leap year where no year is said.
func (f dayForm) real() bool {
	_, err := time.Parse(time.DateOnly, dayForm{cmp.Or(f.year, 2024), f.month, f.day}.String())
	return err == nil
}

// String is the form as it is read: "2026-06-12", or "06-12".
func (f dayForm) String() string {
	if f.year == 0 {
		return fmt.Sprintf("%02d-%02d", f.month, f.day)
	}
	return fmt.Sprintf("%04d-%02d-%02d", f.year, f.month, f.day)
}

// offered are forms as they are written right, each with its time of the day and with its
// day in words: "06-12 8:00 (12 June)"; the clock is "" where none goes with them.
func offered(forms []dayForm, clock string) string {
	texts := make([]string, len(forms))
	for i, f := range forms {
		texts[i] = fmt.Sprintf("%s (%d %s)", strings.TrimSpace(f.String()+" "+clock), f.day, time.Month(f.month))
	}
	return strings.Join(texts, " or ")
}

// slashedDay tells of a text with slashes or points why it is not read, and which days it
// may mean: both where month and day could be either way about, since people differ in
// which comes first; none where two digits may be the year or the day. "" of any other text.
func slashedDay(word string) (reason string, meant []dayForm) {
	var ways []dayForm
	p, q := yearFirst().FindStringSubmatch(word), slashed().FindStringSubmatch(word)
	switch {
	case p != nil:
		ways = []dayForm{{numberOf(p[1]), numberOf(p[2]), numberOf(p[3])}}
	case q == nil:
		return "", nil
	case len(q[3]) == len("26"):
		return "has a year of two digits", nil
	default:
		year, a, b := numberOf(q[3]), numberOf(q[1]), numberOf(q[2])
		ways = []dayForm{{year, a, b}, {year, b, a}}
	}
	for _, f := range ways {
		if f.real() && !slices.Contains(meant, f) {
			meant = append(meant, f)
		}
	}
	switch len(meant) {
	case 0:
		return "", nil
	case 1:
		return "is not read with slashes or points", meant
	}
	return "may be either of two days", meant
}

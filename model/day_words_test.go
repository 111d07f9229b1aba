package model

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

// saturday is the last one of November 2026, by any calendar on a wall.
var saturday = Date{2026, time.November, 28}

func TestADayToComeIsTypedInWords(t *testing.T) {
	for text, want := range map[string]string{
		"today": "Sat 2026-11-28", "Tomorrow": "Sun 2026-11-29", " sat ": "Sat 2026-11-28", "sunday": "Sun 2026-11-29", "Fri": "Fri 2026-12-04", "thurs": "Thu 2026-12-03",
		"11-28": "Sat 2026-11-28", "12-1": "Tue 2026-12-01", "11-27": "Sat 2027-11-27", "02-29": "Tue 2028-02-29", "2026-06-12": "Fri 2026-06-12",
		"nov 30": "Mon 2026-11-30", "30 Nov": "Mon 2026-11-30", "Nov. 30": "Mon 2026-11-30", "30. november": "Mon 2026-11-30", "sept 1": "Wed 2027-09-01", "may 27": "Thu 2027-05-27", "June 12, 2027": "Sat 2027-06-12", "12 jun 2027": "Sat 2027-06-12",
	} {
		d, err := ComingDay(text, saturday, saturday)
		require.NoError(t, err, text)
		assert.Equal(t, want, d.Full(), text)
	}
	for text, want := range map[string]string{
		"yesterday": `"yesterday" is over; write the date like 2026-06-12, 06-12, tomorrow or fri`,
		"":          "is no day of the calendar", "fr": "is no day of the calendar", "fridays": "is no day of the calendar", "02-30": "is no day of the calendar", "13-01": "is no day of the calendar", "nov 31": "is no day of the calendar", "feb 29 2027": "is no day of the calendar", "13/32": "is no day of the calendar", "nob 3": "is no day of the calendar", "-1-2": "is no day of the calendar",
	} {
		_, err := ComingDay(text, saturday, saturday)
		assert.ErrorContains(t, err, want, text)
	}
	for text, want := range map[string]string{
		"11/30": `"11/30" is not read with slashes or points; write the date like 11-30 (30 November)`, "30/11": "write the date like 11-30 (30 November)", "30.11.": "write the date like 11-30 (30 November)",
		"26/6/12": `"26/6/12" has a year of two digits; write the date like 2026-06-12, 06-12, tomorrow or fri`, "11/30/26": "has a year of two digits; write the date like 2026-06-12, ", "2026/11/03": "write the date like 2026-11-03 (3 November)", "4/4": "write the date like 04-04 (4 April)", "2/29": "write the date like 02-29 (29 February)",
		"03/04": `"03/04" may be either of two days; write the date like 03-04 (4 March) or 04-03 (3 April)`, "3/4/2027": "write the date like 2027-03-04 (4 March) or 2027-04-03 (3 April)",
	} {
		_, err := ComingDay(text, saturday, saturday)
		assert.ErrorContains(t, err, want, text)
	}
	_, err := ParseDate("11/30/2026")
	require.EqualError(t, err, `"11/30/2026" is not read with slashes or points; write the date like 2026-11-30 (30 November)`)
	d, err := ComingDay("06-12", saturday, Date{2027, time.July, 1})
	require.NoError(t, err)
	assert.Equal(t, "2028-06-12", d.String(), "not before the day that it follows")
}

func TestAPastDayIsTypedInWords(t *testing.T) {
	for text, want := range map[string]string{
		"today": "2026-11-28", "yesterday": "2026-11-27", "sat": "2026-11-28", "last sat": "2026-11-21", "Last Saturday": "2026-11-21", "last fri": "2026-11-27", "fri": "2026-11-27", "sunday": "2026-11-22",
		"11-28": "2026-11-28", "11-29": "2025-11-29", "2-29": "2024-02-29", "nov 27": "2026-11-27", "30 nov": "2025-11-30", "2027-01-01": "2027-01-01",
		"3 weeks ago": "2026-11-07", "a week ago": "2026-11-21", "1 day ago": "2026-11-27", "40 Days Ago": "2026-10-19", "0 days ago": "2026-11-28",
	} {
		d, err := PastDay(text, saturday)
		require.NoError(t, err, text)
		assert.Equal(t, want, d.String(), text)
	}
	_, err := ComingDay("last sat", saturday, saturday)
	require.ErrorContains(t, err, "is no day of the calendar")
	_, err = ComingDay("3 weeks ago", saturday, saturday)
	require.ErrorContains(t, err, "is no day of the calendar")
	for _, text := range []string{"-3 weeks ago", "3 months ago", "weeks ago", "99999 weeks ago", "3 weeks"} {
		_, err = PastDay(text, saturday)
		require.ErrorContains(t, err, "is no day of the calendar", text)
	}
	_, err = PastDay("tomorrow", saturday)
	assert.EqualError(t, err, `"tomorrow" is still to come; write the date like 06-12, last sat or 3 weeks ago`)
}

// Files hold whole dates: words need somebody's today, and ParseDate knows none.
func TestWordsAreNoDateWithoutAToday(t *testing.T) {
	for _, text := range []string{"today", "tomorrow", "fri", "06-12", "nov 30", "11/30"} {
		_, err := ParseDate(text)
		require.ErrorContains(t, err, "write the date like 2026-06-12", text)
		_, err = ComingDay(text, Date{}, Date{})
		require.ErrorContains(t, err, "write the date like 2026-06-12", text)
	}
}

// A weekday is at most six days off, and today where it is today's own.
func TestAWeekdayIsTheNearestOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		today := Date{2026, time.January, 1}.Plus(rapid.IntRange(-9000, 9000).Draw(t, "today"))
		name := time.Weekday(rapid.IntRange(0, 6).Draw(t, "weekday")).String()
		letters := rapid.IntRange(3, len(name)).Draw(t, "letters")
		next, err := ComingDay(name[:letters], today, today)
		require.NoError(t, err)
		last, err := PastDay(strings.ToLower(name), today)
		require.NoError(t, err)
		assert.Equal(t, name, next.Weekday().String())
		assert.Equal(t, name, last.Weekday().String())
		assert.True(t, next.Compare(today) >= 0 && next.Compare(today.Plus(6)) <= 0)
		assert.True(t, last.Compare(today) <= 0 && last.Compare(today.Plus(-6)) >= 0)
		assert.Equal(t, next == today, last == today)
	})
}

func TestAPastMomentIsTypedInWords(t *testing.T) {
	morning := time.Date(2026, 11, 28, 9, 5, 30, 0, time.FixedZone("", -7*3600))
	for text, want := range map[string]string{
		"last sat": "2026-11-21T12:00:00-07:00", "last saturday 9": "2026-11-21T09:00:00-07:00",
		"yesterday 19:30": "2026-11-27T19:30:00-07:00", "3 weeks ago 8:15": "2026-11-07T08:15:00-07:00", "2 days ago": "2026-11-26T12:00:00-07:00", "fri 7:30 pm": "2026-11-27T19:30:00-07:00", "yesterday": "2026-11-27T12:00:00-07:00",
		"today": "2026-11-28T09:05:30-07:00", "today 8:00": "2026-11-28T08:00:00-07:00", "11-02 7 am": "2026-11-02T07:00:00-07:00", "nov 2 7:15 am": "2026-11-02T07:15:00-07:00", "2  nov  19:30": "2026-11-02T19:30:00-07:00", "2 nov 2025 8:00": "2025-11-02T08:00:00-07:00", "nov 2": "2026-11-02T12:00:00-07:00",
		"2026-11-02 08:15": "2026-11-02T08:15:00-07:00", "2026-11-02 08:15:10": "2026-11-02T08:15:10-07:00", "2026-11-02T08:15:00Z": "2026-11-02T08:15:00Z", "2026-11-02": "2026-11-02T12:00:00-07:00",
	} {
		m, err := PastMoment(text, morning)
		require.NoError(t, err, text)
		assert.Equal(t, want, m.String(), text)
	}
	m, err := PastMoment("today", morning.Add(6*time.Hour))
	require.NoError(t, err)
	assert.Equal(t, "Sat 2026-11-28 12:00", m.Full(), "noon, once it is past")
	for text, want := range map[string]string{
		"tomorrow 8:00":    `"tomorrow" is still to come; write the moment like 06-12 08:15, yesterday 19:30 or 3 weeks ago`,
		"fri noonish":      `"fri noonish" is no moment; write the moment like 06-12 08:15, yesterday 19:30 or 3 weeks ago`,
		"11/27 8:00":       `"11/27" is not read with slashes or points; write the moment like 11-27 8:00 (27 November)`,
		"2026/06/12 14:00": "write the moment like 2026-06-12 14:00 (12 June)", "3/4/2026 2 pm": "write the moment like 2026-03-04 2 pm (4 March) or 2026-04-03 2 pm (3 April)",
		"11/27": "write the moment like 11-27 (27 November)", "11/27 25:00": "write the moment like 11-27 (27 November)",
		"26/6/12 14:00": `"26/6/12" has a year of two digits; write the moment like 06-12 08:15, yesterday 19:30 or 3 weeks ago`,
		"12 jun 20":     "is no moment", "fri 5": "is no moment",
		"fri 25:00": "is no moment", "": "is no moment", "1890-01-01 08:00": "is no",
	} {
		_, err := PastMoment(text, morning)
		assert.ErrorContains(t, err, want, text)
	}
}

func FuzzComingDay(f *testing.F) {
	for _, seed := range []string{"fri", "06-12", "2026-06-12", "99-99", "today", "\xff", "-", "nov 30", "03/04/26"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, read := range []func() (Date, error){
			func() (Date, error) { return ComingDay(text, saturday, saturday) },
			func() (Date, error) { return PastDay(text, saturday) },
		} {
			d, err := read()
			if err != nil {
				require.ErrorAs(t, err, new(*quantity.ParseError))
				continue
			}
			again, err := ParseDate(d.String())
			require.NoError(t, err)
			require.Equal(t, d, again)
		}
	})
}

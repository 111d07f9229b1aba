package clock_test

import (
	"testing"
	"time"
	_ "time/tzdata"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/drying/clock"
)

func day(t *testing.T, date, zone string) clock.Day {
	t.Helper()
	loc, err := time.LoadLocation(zone)
	require.NoError(t, err)
	d, err := model.ParseDate(date)
	require.NoError(t, err)
	got, err := clock.NewDay(d, loc)
	require.NoError(t, err)
	return got
}

// Source of the changes below: the IANA time zone database, embedded.
func TestHoursOfOddDays(t *testing.T) {
	cases := []struct {
		date, zone string
		hours      int
		first      string
	}{
		{"2026-06-12", "America/Denver", 24, "00:00"},
		{"2026-03-08", "America/Chicago", 23, "00:00"},
		{"2026-11-01", "America/Chicago", 25, "00:00"},
		{"2024-02-29", "America/Phoenix", 24, "00:00"},
		{"2026-03-08", "America/Phoenix", 24, "00:00"},
		{"2026-04-05", "Australia/Sydney", 25, "00:00"}, // southern autumn
		{"2026-10-04", "Australia/Sydney", 23, "00:00"}, // southern spring
		{"2026-03-29", "Asia/Beirut", 23, "01:00"},      // midnight is skipped
		{"2018-11-04", "America/Sao_Paulo", 23, "01:00"},
		{"2026-06-12", "Pacific/Kiritimati", 24, "00:00"},
		{"2026-06-12", "Pacific/Pago_Pago", 24, "00:00"},
	}
	for _, c := range cases {
		d := day(t, c.date, c.zone)
		hours := d.Hours()
		assert.Len(t, hours, c.hours, c)
		assert.Equal(t, c.first, hours[0].Label, c)
		assert.InDelta(t, float64(c.hours), float64(d.Length()/quantity.Hour), 1e-9, c)
		assert.Equal(t, c.hours != 24, d.Word() != "", c)
		for i := 1; i < len(hours); i++ {
			assert.True(t, hours[i-1].At.Before(hours[i].At), c)
			assert.NotEqual(t, hours[i-1].Label, hours[i].Label, c)
		}
	}
}

func TestHourThatComesTwice(t *testing.T) {
	d := day(t, "2026-11-01", "America/Chicago")
	hours := d.Hours()
	assert.Equal(t, "01:00 CDT", hours[1].Label)
	assert.Equal(t, "01:00 CST", hours[2].Label)
	both, err := d.At(model.TimeOfDay{Hour: 1, Minute: 30})
	require.NoError(t, err)
	require.Len(t, both, 2)
	assert.Equal(t, time.Hour, both[1].Sub(both[0]))
}

func TestHourThatDoesNotExist(t *testing.T) {
	_, err := day(t, "2026-03-08", "America/Chicago").At(model.TimeOfDay{Hour: 2, Minute: 30})
	assert.ErrorContains(t, err, "02:30 does not exist on 2026-03-08 in America/Chicago")
}

// Samoa went over the date line: it had no 30 December 2011.
func TestDayThatDoesNotExist(t *testing.T) {
	loc, err := time.LoadLocation("Pacific/Apia")
	require.NoError(t, err)
	_, err = clock.NewDay(model.Date{Year: 2011, Month: 12, Day: 30}, loc)
	assert.ErrorContains(t, err, "left out")
	_, err = clock.NewDay(model.Date{Year: 2011, Month: 12, Day: 31}, loc)
	assert.NoError(t, err)
	_, err = clock.NewDay(model.Date{Year: 2011, Month: 12, Day: 31}, nil)
	assert.ErrorContains(t, err, "time zone is missing")
}

// St John's once put its clocks back at one minute past midnight: the day has
// a minute of its own, then the day before goes on, then it begins again.
func TestDayThatBeginsTwice(t *testing.T) {
	d := day(t, "2010-11-07", "America/St_Johns")
	assert.InDelta(t, 24*60+1, d.Length().Minutes(), 1e-9)
	assert.Equal(t, "00:00 NDT", d.Hours()[0].Label)
	assert.Equal(t, "00:00 NST", d.Hours()[1].Label)
	assert.Len(t, d.Every(15*quantity.Minute), 97)
}

// Lord Howe's clocks move by half an hour.
func TestHalfHourOfSaving(t *testing.T) {
	short, long := day(t, "2026-10-04", "Australia/Lord_Howe"), day(t, "2026-04-05", "Australia/Lord_Howe")
	assert.InDelta(t, 23.5, float64(short.Length()/quantity.Hour), 1e-9)
	assert.InDelta(t, 24.5, float64(long.Length()/quantity.Hour), 1e-9)
}

// The last days of a leap year past the end of the zone tables.
func TestLastDayOfALeapYear(t *testing.T) {
	for _, zone := range []string{"America/Chicago", "Pacific/Auckland", "Europe/Dublin"} {
		assert.Len(t, day(t, "2040-12-31", zone).Hours(), 24, zone)
		assert.Len(t, day(t, "2040-12-30", zone).Hours(), 24, zone)
	}
}

// Every instant of a day belongs to its date, and days follow without a gap.
func TestDaysFollowOneAnother(t *testing.T) {
	zones := []string{"America/Chicago", "America/St_Johns", "Australia/Lord_Howe", "Asia/Beirut", "Pacific/Auckland", "UTC", "America/Havana"}
	rapid.Check(t, func(t *rapid.T) {
		loc, err := time.LoadLocation(rapid.SampledFrom(zones).Draw(t, "zone"))
		require.NoError(t, err)
		noon := time.Date(rapid.IntRange(2012, 2200).Draw(t, "year"), 1, rapid.IntRange(1, 365).Draw(t, "day"), 12, 0, 0, 0, loc)
		next := noon.AddDate(0, 0, 1)
		today, err := clock.NewDay(model.Date{Year: noon.Year(), Month: noon.Month(), Day: noon.Day()}, loc)
		require.NoError(t, err)
		tomorrow, err := clock.NewDay(model.Date{Year: next.Year(), Month: next.Month(), Day: next.Day()}, loc)
		require.NoError(t, err)
		require.True(t, today.End().Equal(tomorrow.Start()))
		for _, at := range today.Every(15 * quantity.Minute) {
			require.Equal(t, noon.Day(), at.Day())
			found, err := today.At(model.TimeOfDayAt(at))
			require.NoError(t, err)
			require.NotEmpty(t, found)
		}
	})
}

func TestEveryOfNothing(t *testing.T) {
	assert.Len(t, day(t, "2026-06-12", "UTC").Every(0), 1)
	assert.Len(t, day(t, "2026-06-12", "UTC").Every(15*quantity.Minute), 96)
}

package entry_test

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/talk"
	"washeve/ui/theme"
)

// A moment is asked for, and a wrong one answered, as a person writes it.
func TestAMomentIsWrittenAsADayAndAnHour(t *testing.T) {
	f := entry.New("A new entry", model.Entry{Body: &model.Refill{}}, entry.Known{Clock: func() time.Time { return time.Date(2026, 6, 14, 9, 0, 0, 0, time.UTC) }}, "at")
	_, err := f.State("at", "tomorrow")
	require.Error(t, err)
	assert.Contains(t, err.Error(), "like 06-12 08:15")
	for _, text := range []string{"2026-06-12 08:15", "2026-06-12", "yesterday", ""} {
		_, err = f.State("at", text)
		assert.NoError(t, err, text)
	}
	said, err := f.State("at", "fri 19:30")
	require.NoError(t, err)
	assert.Equal(t, "2026-06-12T19:30:00Z", said.Entry().At.String())
	assert.Equal(t, "06-12 08:15, yesterday 19:30 or 3 weeks ago", f.Spoken(nil).Things()[0].Like)
}

// Who has words is asked for the age as well, where nobody said how many gallons the fill
// has given.
func TestAReadingOfAFillOfUnknownAgeByWords(t *testing.T) {
	asked := func(assumed string) *talk.Question {
		plan := planner.Plan{Assumptions: []planner.Assumption{{Name: assumed, Source: tag.FromPractice("taken so")}}}
		r := entry.Desk{Clock: func() time.Time { return time.Time{} }}.NewReading(plan, 1)
		r, err := r.Reads("3 ppm NaCl")
		require.NoError(t, err)
		r, _ = r.Update(hands.Key("y"))
		return r.Spoken(theme.New(theme.Options{Plain: true, Words: true}), quantity.US).Asks
	}
	require.NotNil(t, asked("bed gallons so far"))
	assert.Contains(t, asked("bed gallons so far").More[0], "Nobody said how much DI water this fill had given before")
	assert.Nil(t, asked("limit"))
}

// A moment stands on the form as the person's clock tells it, and stays to the second where
// it is only looked at.
func TestAMomentIsShownByItsOwnClock(t *testing.T) {
	mountain := time.FixedZone("", -6*3600)
	known := entry.Known{Clock: func() time.Time { return time.Date(2026, 6, 14, 9, 0, 0, 0, mountain) }}
	shown := func(at time.Time, script string) (string, string) {
		f := entry.New("A new entry", model.Entry{At: model.MomentOf(at), Body: &model.Refill{}}, known, "at")
		for _, k := range hands.Keys(script) {
			f, _ = f.Update(k)
		}
		return strings.Join(f.Lines(theme.New(theme.Options{Plain: true}), 78, 8), "\n"), f.Entry().At.String()
	}
	own := time.Date(2026, 6, 12, 8, 15, 59, 0, mountain)
	lines, _ := shown(own, "")
	assert.Regexp(t, `when +2026-06-12 08:15 *\n`, lines)
	lines, kept := shown(own, "enter")
	assert.Regexp(t, `when +2026-06-12 08:15[^:]`, lines)
	assert.Equal(t, "2026-06-12T08:15:59-06:00", kept)
	_, kept = shown(own, "enter enter")
	assert.Equal(t, "2026-06-12T08:15:59-06:00", kept)
	lines, _ = shown(own, "enter 'sun'") // which is the 14th itself
	assert.Contains(t, lines, "Sun 2026-06-14 09:00")
	lines, kept = shown(own, "enter 'sun' enter")
	assert.Contains(t, lines, "Read as Sun 2026-06-14 09:00.", "the weekday is said back on the line behind it")
	assert.Equal(t, "2026-06-14T09:00:00-06:00", kept)
	lines, _ = shown(own, "enter 'last sun' enter")
	assert.Contains(t, lines, "Read as Sun 2026-06-07 12:00.")
	lines, _ = shown(own.UTC(), "")
	assert.Regexp(t, `when +2026-06-12 14:15 UTC *\n`, lines)
	_, kept = shown(own.UTC(), "enter enter")
	assert.Equal(t, "2026-06-12T14:15:59Z", kept)
}

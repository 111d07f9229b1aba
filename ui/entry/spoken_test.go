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
	"washeve/ui/theme"
)

// A moment is asked for, and a wrong one answered, as a person writes it.
func TestAMomentIsWrittenAsADayAndAnHour(t *testing.T) {
	f := entry.New("A new entry", model.Entry{Body: &model.Refill{}}, entry.Known{Clock: func() time.Time { return time.Date(2026, 6, 14, 9, 0, 0, 0, time.UTC) }}, "at")
	_, err := f.State("at", "tomorrow")
	require.Error(t, err)
	assert.Contains(t, err.Error(), "like 2026-06-12 08:15")
	for _, text := range []string{"2026-06-12 08:15", "2026-06-12", "yesterday", ""} {
		_, err = f.State("at", text)
		assert.NoError(t, err, text)
	}
	said, err := f.State("at", "fri 19:30")
	require.NoError(t, err)
	assert.Equal(t, "2026-06-12T19:30:00Z", said.Entry().At.String())
	assert.Equal(t, "2026-06-12 08:15, yesterday 19:30 or fri", f.Spoken(nil).Things()[0].Like)
}

// Who has words is told as well that a reading counts at no gallons, where nobody said how
// many the fill has given.
func TestAReadingOfAFillOfUnknownAgeByWords(t *testing.T) {
	told := func(assumed string) string {
		plan := planner.Plan{Assumptions: []planner.Assumption{{Name: assumed, Source: tag.FromPractice("taken so")}}}
		page := entry.Desk{Clock: func() time.Time { return time.Time{} }}.NewReading(plan, 1).Spoken(theme.New(theme.Options{Plain: true, Words: true}), quantity.US)
		return strings.Join(page.Tell(), "\n")
	}
	assert.Contains(t, told("bed gallons so far"), "It counts at 0 gallons so far")
	assert.NotContains(t, told("limit"), "so far")
}

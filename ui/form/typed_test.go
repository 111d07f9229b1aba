package form_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/form"
)

func TestADayInWordsIsWrittenAsItsDate(t *testing.T) {
	c := form.From(model.Date{Year: 2026, Month: time.November, Day: 28})
	var w model.Wash
	name, date := w.Fields()[0], w.Fields()[1]
	text, err := c.Written(date, "fri")
	require.NoError(t, err)
	assert.Equal(t, "2026-12-04", text)
	assert.Equal(t, "Fri 2026-12-04", c.Taken(date, "fri"))
	assert.Empty(t, c.Taken(date, "frid?"))
	_, err = c.Written(date, "soon")
	require.ErrorContains(t, err, "tomorrow or fri", "the error names what may be typed")
	for _, same := range []string{"", " "} {
		text, err = c.Written(date, same)
		require.NoError(t, err)
		assert.Equal(t, same, text, "nothing takes the day away")
	}
	text, err = c.Written(name, "fri")
	require.NoError(t, err)
	assert.Equal(t, "fri", text, "a wash may be called so")
	assert.Empty(t, c.Taken(name, "fri"))
	assert.Contains(t, form.Help(date), "like 2026-06-12, 06-12, tomorrow or fri; a weekday is today or the next one")
	_, err = form.Calendar{}.Written(date, "fri")
	require.Error(t, err, "no clock, no words")
}

func TestTheDayThatIsReadIsSaidWhileItIsTyped(t *testing.T) {
	c := form.From(model.Date{Year: 2026, Month: time.November, Day: 28})
	var w model.Wash
	date := w.Fields()[1]
	e := form.Start("2026-06-12", date.Example).Telling(func(text string) string { return c.Taken(date, text) })
	assert.Empty(t, e.Says(), "nothing was typed yet")
	try := func(text string) error { _, err := c.Written(date, text); return err }
	e = e.With("tomorrow", try)
	assert.Equal(t, "Sun 2026-11-29", e.Says())
	e = e.With("tomorrows", try)
	assert.Equal(t, "is no day of the calendar; write it like 2026-06-12, 06-12, tomorrow or fri; tomorrow stays", e.Says())
}

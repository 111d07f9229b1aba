package form_test

import (
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/ui/form"
)

// set states a field of a noun by the calendar, and gives the noun's texts by key.
func set(c form.Calendar, item model.Item, key, text string) (map[string]string, error) {
	fields := map[string]model.Field{}
	for _, f := range item.Fields() {
		fields[f.Key] = f
	}
	err := c.Set(fields[key], text, func(key, text string) error { return fields[key].Set(text) })
	texts := map[string]string{}
	for k, f := range fields {
		if f.Given() {
			texts[k] = f.Text()
		}
	}
	return texts, err
}

func day() form.Calendar { return form.From(model.Date{Year: 2026, Month: time.November, Day: 28}) }

func TestADayInWordsIsWrittenAsItsDate(t *testing.T) {
	var w model.Wash
	got, err := set(day(), &w, "date", "fri")
	require.NoError(t, err)
	assert.Equal(t, map[string]string{"date": "2026-12-04"}, got)
	name, date := w.Fields()[0], w.Fields()[1]
	assert.Equal(t, "Fri 2026-12-04", day().Taken(date, "fri"))
	assert.Empty(t, day().Taken(date, "frid?"))
	_, err = set(day(), &w, "date", "soon")
	require.ErrorContains(t, err, "tomorrow or fri", "the error names what may be typed")
	_, err = set(form.Calendar{}, &w, "date", "fri")
	require.Error(t, err, "no clock, no words")
	got, err = set(day(), &w, "date", " ")
	require.NoError(t, err)
	assert.Empty(t, got, "nothing takes the day away")
	got, err = set(day(), &w, "name", "fri")
	require.NoError(t, err)
	assert.Equal(t, map[string]string{"name": "fri"}, got, "a wash may be called so")
	assert.Empty(t, day().Taken(name, "fri"))
	assert.Contains(t, form.Help(date, false), "like 2026-06-12, 06-12, tomorrow or fri; a weekday is today or the next one")
}

func TestDegreesGetTheirSide(t *testing.T) {
	for _, c := range []struct{ key, typed, north, east, taken string }{
		{"latitude", "33.45", "33.45 N", "", "33.45 N"},
		{"latitude", "-33,45", "33.45 S", "", "33.45 S"},
		{"latitude", "33.45 N", "33.45 N", "", ""},
		{"longitude", "-112.07", "", "112.07 W", "112.07 W"},
		{"longitude", "112.07", "", "112.07 E", "112.07 E; for the west write 112.07 W"},
		{"longitude", "+112.07", "", "112.07 E", "112.07 E"},
		{"latitude", "33.45, -112.07", "33.45 N", "112.07 W", "33.45 N, 112.07 W"},
		{"latitude", "33,45, -112,07", "33.45 N", "112.07 W", "33.45 N, 112.07 W"},
		{"latitude", "33.45, 112.07", "33.45 N", "112.07 E", "33.45 N, 112.07 E; for the west write 112.07 W"},
		{"longitude", "33° 27' N, 112° 4' W", "33° 27' N", "112° 4' W", "33° 27' N, 112° 4' W"},
	} {
		var p model.Place
		got, err := set(day(), &p, c.key, c.typed)
		require.NoError(t, err, c.typed)
		assert.Equal(t, [2]string{c.north, c.east}, [2]string{got["latitude"], got["longitude"]}, c.typed)
		for _, f := range p.Fields() {
			if f.Key == c.key {
				assert.Equal(t, c.taken, day().Taken(f, c.typed), c.typed)
			}
		}
	}
}

func TestAZoneWithoutSummerTimeIsSaid(t *testing.T) {
	for _, f := range (&model.Place{}).Fields() {
		if f.Key == model.ZoneKey {
			assert.Equal(t, "no summer time; where clocks change, write one like America/Denver", day().Taken(f, "MST"))
			assert.Empty(t, day().Taken(f, "America/Denver"))
			return
		}
	}
	t.Fatal("a place has no zone")
}

func TestTheDayThatIsReadIsSaidWhileItIsTyped(t *testing.T) {
	var w model.Wash
	date := w.Fields()[1]
	e := form.Start("2026-06-12", date.Example).Telling(func(text string) string { return day().Taken(date, text) })
	assert.Empty(t, e.Says(), "nothing was typed yet")
	try := func(text string) error { _, err := set(day(), &model.Wash{}, "date", text); return err }
	e = e.With("tomorrow", try)
	assert.Equal(t, "Sun 2026-11-29", e.Says())
	e = e.With("tomorrows", try)
	assert.Equal(t, "is no day of the calendar; write it like 2026-06-12, 06-12, tomorrow or fri; 2026-06-12 stays", e.Says())
}

// A letter of a name is a key until enter, and that of an empty day or heading is text: the
// line says so, and that of a number nothing.
func TestHelpSaysWhatEnterDoes(t *testing.T) {
	var wash model.Wash
	says := map[string]string{"name": "; enter, then type, like", "date": "; type it, like", "heading": "; type it, like", "di_faces": "; enter, then type, like", "vehicle": ", like our coach; enter lists them", "start": ", like"}
	for _, f := range wash.Fields() {
		words, asked := says[f.Key]
		if !asked {
			continue
		}
		assert.Contains(t, form.Help(f, false), f.Help+words, f.Key)
		assert.NotContains(t, form.Help(f, true), "enter", f.Key)
		delete(says, f.Key)
	}
	assert.Empty(t, says)
	require.NoError(t, wash.Fields()[1].Set("2026-06-12"))
	assert.Contains(t, form.Help(wash.Fields()[1], false), "day of the wash; enter, then type, like", "what is stated is retyped")
}

// A letter is told to be no key, and how it is typed where it can be.
func TestALetterThatIsNoKeySaysHowItIsTyped(t *testing.T) {
	letter := tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("o")}
	assert.True(t, form.IsLetter(letter))
	for _, other := range []tea.KeyMsg{
		{Type: tea.KeyEnter}, {Type: tea.KeySpace, Runes: []rune(" ")},
		{Type: tea.KeyRunes, Runes: []rune("'")}, {Type: tea.KeyRunes, Runes: []rune("o"), Alt: true}, {Type: tea.KeyRunes, Runes: []rune("o"), Paste: true},
	} {
		assert.False(t, form.IsLetter(other), other)
	}
	typed, listed := "o is no key here: enter, then type.", "o is no key here."
	for _, f := range (&model.Wash{}).Fields() {
		switch f.Key {
		case "name", "date", "pause":
			assert.Equal(t, typed, form.NoKey(f, letter), f.Key)
		case "vehicle", "sky":
			assert.Equal(t, listed, form.NoKey(f, letter), f.Key)
		}
	}
	assert.Equal(t, listed, form.NoKey(model.Field{}, letter), "no line is under the hand")
}

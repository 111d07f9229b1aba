package plan

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
)

// twoWashes are the coach's of Friday, which is in hand, and the van's.
func twoWashes(t *testing.T) (Options, *book, *others) {
	o, shelf := shelved(t)
	set(t, &o.Wash, map[string]string{"date": "2026-06-12"})
	van := model.Wash{Name: "Van wash", Vehicle: "Tin Box", Place: "Sand Hollow"}
	set(t, &van, map[string]string{"date": "2026-06-13"})
	o.Others = []*stock.Kept{{File: "van.toml", Wash: van}}
	return o, o.Keeper.(*book), shelf
}

func TestAnotherWashIsTakenInHand(t *testing.T) {
	o, kept, shelf := twoWashes(t)
	p := play(t, o, "L")
	for _, words := range []string{"Washes; 1 is in hand", "1 Friday wash  2026-06-12", "2 Van wash  2026-06-13", "3 new wash", "Friday wash: 2026-06-12, Old Goose"} {
		assert.Contains(t, p.Seen(), words)
	}
	p.Keys("2")
	assert.Contains(t, p.Seen(), "Van wash: Tin Box at Sand Hollow")
	assert.Contains(t, p.Says(), "In hand now, in its own file: Van wash. Undo starts anew.")
	assert.Equal(t, "van.toml", shelf.file)
	p.Keys("u")
	assert.Contains(t, p.Says(), "there is nothing to undo")
	p.Keys("p 1")
	assert.Equal(t, "Van wash at Willow Bend", kept.wash.Name+" at "+kept.wash.Place, "an edit is of the wash in hand")
	require.Len(t, shelf.kept, 1)
	assert.Equal(t, "friday.toml", shelf.kept[0].File)
	assert.Equal(t, "Friday wash", shelf.kept[0].Wash.Name)
	p.Keys("L 2")
	assert.Contains(t, p.Seen(), "Friday wash: Old Goose at Willow Bend")
	assert.Equal(t, "friday.toml", shelf.file)
	p.Keys("L 1")
	assert.Contains(t, p.Says(), "Friday wash is in hand already.")
	p.Keys("L esc")
	assert.Equal(t, "friday.toml", shelf.file)
}

func TestANewWashIsLikeTheOneInHandButForItsDay(t *testing.T) {
	o, kept, shelf := twoWashes(t)
	p := play(t, o, "L 3")
	assert.Contains(t, p.Seen(), "Friday wash 2")
	assert.Contains(t, p.Seen(), "one; esc leaves it out")
	p.Keys("esc")
	assert.Equal(t, "Friday wash", p.M.now.wash.Name)
	assert.Zero(t, kept.saves, "nothing is kept of what was left out")
	p.Keys("N ctrl+u 'van wash' enter")
	assert.Contains(t, p.Seen(), `"van wash" is the name of another wash already`)
	p.Keys("ctrl+u 'Saturday wash' enter")
	assert.Contains(t, p.Says(), "New, in its own file: Saturday wash. Undo starts anew.")
	assert.Empty(t, shelf.file, "the keeper finds a file for it")
	assert.Equal(t, "Saturday wash", kept.wash.Name)
	assert.Equal(t, "Willow Bend", kept.wash.Place)
	assert.False(t, kept.wash.Date.Given(), "the day is that of the other wash")
	require.Len(t, shelf.kept, 2)
	assert.Equal(t, "2026-06-12", shelf.kept[0].Wash.Date.Words(), "the wash put away is as it was")
	p.Keys("u")
	assert.Contains(t, p.Says(), "there is nothing to undo")
}

// Which of several washes is in hand at the start is told, and how to come to the others.
func TestTheStartTellsWhichWashIsInHand(t *testing.T) {
	o, _, _ := twoWashes(t)
	o.InHand = "the next from today on"
	assert.Contains(t, play(t, o, "").Says(), "In hand: the next from today on, Friday wash. L lists the other one.")
	o.Others = nil
	assert.NotContains(t, play(t, o, "").Says(), "In hand")
}

// Weather is of a day: a new wash has none, and is planned as any without weather is.
func TestANewWashHasNoWeatherYet(t *testing.T) {
	o, kept, _ := twoWashes(t)
	set(t, &o.Wash, map[string]string{"low": "58 F", "high": "86 F", "sky": "clear", "heading": "north", "start": "14:15"})
	p := play(t, o, "N ctrl+u 'Saturday wash' enter")
	assert.Contains(t, p.Says(), "New, in its own file: Saturday wash. Undo starts anew. Its weather is not stated yet: it was the other day's.")
	assert.False(t, kept.wash.Low.Given() || kept.wash.High.Given() || kept.wash.Sky != "")
	assert.False(t, kept.wash.Start.Given(), "the start went by the other day's weather")
	assert.Equal(t, "north", kept.wash.Heading.Words())
	require.Len(t, p.M.now.others, 2)
	assert.Equal(t, "58 F", p.M.now.others[0].Wash.Low.Words(), "the other keeps its own")
}

// A wash of a day and a place whose weather another wash states begins with that weather, which
// is said, on its lines as well; of another day or place it has none.
func TestAWashOfTheSameDayAndPlaceHasItsWeather(t *testing.T) {
	o, kept, _ := twoWashes(t)
	set(t, &o.Wash, map[string]string{"low": "58 F", "high": "86 F", "sky": "clear", "start": "14:15"})
	p := play(t, o, "N ctrl+u 'Second wash' enter d")
	onKey(t, p, "date")
	p.Keys("'2026-06-13' enter")
	assert.False(t, kept.wash.HasWeather(), "it is another day's")
	onKey(t, p, "date")
	p.Keys("'2026-06-12'")
	assert.Equal(t, "58 F", p.M.shown().wash.Low.Words(), "before enter")
	p.Keys("enter")
	assert.Contains(t, p.Says(), "Its weather is that of Friday wash, the same day and place; u takes both back.")
	assert.Equal(t, "58 F 86 F clear", kept.wash.Low.Words()+" "+kept.wash.High.Words()+" "+string(kept.wash.Sky))
	assert.False(t, kept.wash.Start.Given())
	onKey(t, p, "low")
	assert.Contains(t, p.Says(), "; as in Friday wash")
	p.Keys("'60 F' enter")
	assert.NotContains(t, p.Says(), "as in Friday wash")
	p.Keys("p 2")
	assert.Equal(t, "60 F", kept.wash.Low.Words(), "what is stated stays")
	p.Keys("u u u")
	assert.False(t, kept.wash.HasWeather())
	assert.Equal(t, "2026-06-13", kept.wash.Date.Words())

	p.Keys("p 2 d")
	onKey(t, p, "date")
	p.Keys("'2026-06-12' enter")
	assert.False(t, kept.wash.HasWeather(), "it is another place's")
	p.Keys("p 1")
	assert.Equal(t, "58 F", kept.wash.Low.Words())
	assert.Contains(t, p.Says(), "Its weather is that of Friday wash")
}

func TestUnsavedWorkStaysInHand(t *testing.T) {
	o, kept, shelf := twoWashes(t)
	p := play(t, o, "p 2 L")
	kept.fail = errors.New("no space left on the disk")
	p.Keys("2")
	assert.Contains(t, p.Says(), "no space left on the disk")
	assert.Contains(t, p.Seen(), "Friday wash: Old Goose at Sand Hollow")
	assert.Equal(t, "friday.toml", shelf.file)
	p.Keys("L")
	assert.Contains(t, p.Says(), "Not now: this wash is not saved yet; s tries again.")
	kept.fail = nil
	p.Keys("s N")
	kept.fail = stubborn{kept, false}
	p.Keys("'Saturday wash' enter")
	assert.Contains(t, p.Seen(), "Write it anew, and keep the old file aside? y or n")
	p.Keys("y")
	assert.Equal(t, "Friday wash", kept.wash.Name)
	assert.Equal(t, "friday.toml", shelf.file)
}

func TestTheExampleIsOneWash(t *testing.T) {
	o, _, _ := twoWashes(t)
	o.Example = true
	for _, key := range []string{"L", "N"} {
		assert.Contains(t, play(t, o, key).Says(), "Not now: the example is one wash; a makes it yours first.")
	}
}

func TestWashesByWords(t *testing.T) {
	o, kept, shelf := twoWashes(t)
	got := said(t, o, "washes", "van", "change place Willow Bend", "washes 2", "new wash Saturday wash", "new wash van wash", "", "L", "")
	for _, words := range []string{
		"Washes; 1 is in hand", "1 Friday wash: 2026-06-12, Old Goose at Willow Bend", "2 Van wash: 2026-06-13, Tin Box at Sand Hollow", "3 new wash",
		"In hand now, in its own file: Van wash", "In hand now, in its own file: Friday wash", "New, in its own file: Saturday wash", `"van wash" is the name of another wash already`, "1 Saturday wash: no day",
	} {
		assert.Contains(t, got, words)
	}
	assert.Equal(t, "Saturday wash", kept.wash.Name)
	require.Len(t, shelf.kept, 2)
	assert.Equal(t, "Van wash at Willow Bend", shelf.kept[1].Wash.Name+" at "+shelf.kept[1].Wash.Place)
}

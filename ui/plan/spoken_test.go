package plan

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/talk"
	"washeve/ui/theme"
)

func said(t *testing.T, o Options, lines ...string) string {
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	var out strings.Builder
	require.NoError(t, talk.Run(t.Context(), hands.Root{Screen: New(o)}, strings.NewReader(strings.Join(lines, "\n")+"\n"), &out))
	return out.String()
}

func TestWordsFromNothing(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	got := said(t, o, "fresh", "walk vehicle", "", "", "", "33 yards", "33", "12 ft", ".", "walk bed", "", "", "0.5 ft3", ".", "v", "", "", "", ".", "change TDS 210", "change", "TDS", "", "quit")
	assert.Contains(t, got, "No plan yet. It needs: vehicle length, vehicle height, bed resin volume, place TDS.")
	assert.Contains(t, got, `Not taken: length "33 yards" has the unit "yards"`)
	assert.Contains(t, got, "Read as 33 ft.")
	assert.Contains(t, got, "Read as 210 ppm.")
	assert.Contains(t, got, "my wash: my coach at home")
	assert.Contains(t, got, "TDS, now 210 ppm; a value like 240 ppm NaCl", "what is in force is said, and what is right")
	assert.Equal(t, "33 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())
	for _, r := range got {
		assert.Less(t, r, rune(0x7f))
	}
}

func TestWordsChangeThePlaceAndTellAll(t *testing.T) {
	o := ours(t)
	got := said(t, o, "p", "nowhere", "help", "sand", "full", "why inputs", "why zz", "undo", "undo", "zz", "new", "walk water", "-", "", "", "-", ".", "undo 3")
	for _, words := range []string{
		"Old Goose at Sand Hollow", "TIGHT: THE BED MAY NOT LAST", "front, area 84 ft2, last water DI, DI 8 gal", `Not taken: "nowhere" is not in the list; write a number from 1 to 3 or a name`,
		"Write a number from 1 to 3 or a name, like Willow Bend.", `the name "zz". There is no such number here`, "Not now: there is nothing to undo.",
		`Read: "zz". There is no such word here; write one like walk vehicle`, "near it are: new vehicle, new bed", "TDS cannot be left out", `Read: undo, and "3" behind it; write it like undo.`,
	} {
		assert.Contains(t, got, words)
	}
}

func TestALineIsFoundByItsNumberOrAllOfItsName(t *testing.T) {
	o := ours(t)
	got := said(t, o, "change length 20 ft", "change vehicle length 20 ft", "list length", "list qq", "change 999", "clear vehicle length")
	assert.Contains(t, got, "Several are called so: say the number, or more of the name, of 4 vehicle length, ")
	assert.Contains(t, got, "vehicle length: 20 ft.")
	assert.Contains(t, got, "4 vehicle length: 20 ft\n")
	assert.Contains(t, got, `Read: list, and "qq" behind it. No line here holds that.`)
	assert.Contains(t, got, "The numbers go from 1 to ")
	assert.Contains(t, got, "Not now: length cannot be left out.")
	assert.Equal(t, "20 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())
}

// What is to be done with the weather of an example that became one's own is named by its word.
func TestTheExampleMadeOnesOwnByWords(t *testing.T) {
	o := ours(t)
	o.Example = true
	kept := o.Keeper.(*book)
	kept.was, kept.is = model.Date{Year: 2026, Month: 5, Day: 16}, model.Date{Year: 2026, Month: 11, Day: 28}
	assert.Contains(t, said(t, o, "adopt"), "Its weather is made up: walk day states yours.")
}

// What a word is about is asked until a line is named; another word is done instead.
func TestWhichLineIsAskedUntilOneIsNamed(t *testing.T) {
	told := said(t, ours(t), "change", "nonsense", "1", "2", "clear", "units", "quit")
	assert.Contains(t, told, `Read: "nonsense". No line here is called so`)
	assert.Contains(t, told, "vehicle: Tin Box.", "it asks again")
	assert.Contains(t, told, "Shown in metric units from now on; undo takes that back.", "a word is done, and is no answer")
}

package plan

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/planner"
	"washeve/ui/theme"
)

func asked(t *testing.T, o Options, lines ...string) string {
	o.Theme = theme.New(theme.Options{Plain: true})
	var out strings.Builder
	require.NoError(t, Prompt(o, strings.NewReader(strings.Join(lines, "\n")+"\n"), &out))
	return out.String()
}

func TestPromptFromNothing(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	got := asked(t, o, "e", "v", "", "", "", "33", "33 ft", "12 ft", ".", "b", "", "", "0.5 ft3", ".", "w", "", "", "210 ppm", ".", "q")
	assert.Contains(t, got, "No plan yet. It needs: vehicle length, vehicle height, bed resin volume, place TDS.")
	assert.Contains(t, got, `"33" has no unit`)
	assert.Contains(t, got, "my wash: my coach at home")
	assert.Contains(t, got, "DI water")
	assert.Equal(t, "33 ft", o.Keeper.(*book).rig.Vehicles[0].Length.Words())
	for _, r := range got {
		assert.Less(t, r, rune(0x7f))
	}
}

func TestPromptChangesPlaceAndTellsAll(t *testing.T) {
	o := ours(t)
	got := asked(t, o, "p", "Sand Hollow", "f", "y", "u", "u", "zz", "w", "-", "", "-", ".")
	for _, words := range []string{"Old Goose at Sand Hollow", "TIGHT: THE BED MAY NOT LAST", "What the plan rests on", "There is no zz here.", "TDS cannot be left out"} {
		assert.Contains(t, got, words)
	}
}

func TestPromptSaysWhatIsNotKept(t *testing.T) {
	o := ours(t)
	o.Theme = theme.New(theme.Options{Plain: true})
	o.Keeper = &book{fail: errors.New("the folder is read-only")}
	var out strings.Builder
	err := Prompt(o, strings.NewReader("p\nSand Hollow\nq\n"), &out)
	assert.ErrorContains(t, err, "the folder is read-only")
}

package ui

import (
	"errors"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/entry"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/plan"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// full is a disk without room.
type full struct{ err error }

func (f *full) Save(model.Rig, model.Places, model.Wash) error { return f.err }

func (f *full) Adopt() (was, is model.Date, err error) { return was, is, f.err }

func app(keeper plan.Keeper) tea.Model {
	th := theme.New(theme.Options{Plain: true})
	return NewApp(th, plan.New(plan.Options{
		Rig:    model.Rig{Vehicles: []model.Vehicle{{Name: "our coach"}}, Beds: []model.Bed{{Name: "tank"}}},
		Places: model.Places{{Name: "home"}, {Name: "camp"}}, Wash: model.Wash{Name: "wash"},
		Keeper: keeper, Theme: th,
		Make: func(model.Rig, model.Places, model.Wash) (planner.Plan, error) { return sample.Plan(), nil },
	}))
}

// press sends keys, and the messages that follow from them, but for a quit.
func press(a tea.Model, script string) (tea.Model, bool) {
	for _, key := range hands.Keys(script) {
		var cmd tea.Cmd
		a, cmd = a.Update(key)
		for cmd != nil {
			msg := cmd()
			if _, quits := msg.(tea.QuitMsg); quits {
				return a, true
			}
			a, cmd = a.Update(msg)
		}
	}
	return a, false
}

func see(a tea.Model) string { return ansi.Strip(a.View()) }

func TestQuitKeepsTheWork(t *testing.T) {
	for _, script := range []string{"q", "ctrl+c", "v enter esc q", "? ctrl+c", "down down '5' ctrl+c"} {
		_, quits := press(app(&full{}), script)
		assert.True(t, quits, script)
	}
}

func TestQuitAsksWhereWorkWouldBeLost(t *testing.T) {
	keeper := &full{errors.New("no space left on the disk")}
	a, quits := press(app(keeper), "p 2 q")
	require.False(t, quits)
	assert.Contains(t, see(a), "This would be lost: no space left on the disk")
	a, quits = press(a, "x n")
	require.False(t, quits)
	assert.Contains(t, see(a), "not saved", "the work is still on the screen")
	_, quits = press(a, "q y")
	assert.True(t, quits)
	keeper.err = nil
	_, quits = press(a, "q")
	assert.True(t, quits, "there is room again")
}

// A text that cannot be taken is asked about once, by ctrl+c too: n stays at it, and a second
// ctrl+c ends the program.
func TestQuitAsksAboutATextThatCannotBeTaken(t *testing.T) {
	a, quits := press(app(&full{}), "v down down down '33 yards' ctrl+c")
	require.False(t, quits)
	assert.Contains(t, see(a), `This would be lost: what is typed: length "33 yards"`)
	a, quits = press(a, "n")
	require.False(t, quits)
	assert.Contains(t, see(a), "33 yards")
	_, quits = press(a, "ctrl+c ctrl+c")
	assert.True(t, quits)
	_, quits = press(a, "esc q")
	assert.True(t, quits, "it was let go of on purpose")
}

func TestHelpListsEveryKeyThatWorks(t *testing.T) {
	a, _ := press(app(&full{}), "?")
	a, _ = a.Update(tea.WindowSizeMsg{Width: 100, Height: 100})
	seen := see(a)
	bindings := append(plan.New(plan.Options{Keeper: &full{}, Make: func(model.Rig, model.Places, model.Wash) (planner.Plan, error) { return sample.Plan(), nil }}).Keys(), App{screens: []screen.Screen{plan.Model{}}}.keys()...)
	for _, b := range bindings {
		assert.Contains(t, seen, b.Help().Key+" ", b.Help().Desc)
	}
	a, _ = press(a, "esc")
	assert.NotContains(t, see(a), "Keys: Plan")
}

func TestDayComesBackAsOneEdit(t *testing.T) {
	rig, places, wash := sample.Day()
	var kept planner.Memory
	th := theme.New(theme.Options{Plain: true})
	var a tea.Model = NewApp(th, plan.New(plan.Options{Rig: rig, Places: places, Wash: wash, Keeper: &full{}, Theme: th, Make: kept.Make}))
	a, _ = press(a, "D s '9:00' enter right .")
	assert.Contains(t, see(a), "nose ESE")
	assert.Contains(t, see(a), "> 09:15 to ")
	a, _ = press(a, "esc")
	assert.Contains(t, see(a), "Saved.")
	assert.Contains(t, see(a), "begin 09:15")
	a, _ = press(a, "u")
	assert.Contains(t, see(a), "best from")
	a, _ = press(a, "u")
	assert.Contains(t, see(a), "there is nothing to undo")
}

func TestLettersAreTextWhileTyping(t *testing.T) {
	a, quits := press(app(&full{}), "v down enter ctrl+u 'quay?' enter")
	assert.False(t, quits)
	assert.Contains(t, see(a), "quay?")
}

func TestReadingPagesScrollAndFind(t *testing.T) {
	a, _ := press(app(&full{}), "f up")
	assert.Contains(t, see(a), "Not now: this is the start.")
	a, _ = press(a, "esc f")
	first := see(a)
	for _, step := range []string{"down", " ", "b", "end", "home"} {
		next, _ := a.Update(hands.Key(step))
		a = next
	}
	assert.Equal(t, first, see(a))
	a, _ = press(a, "/ 'silica' enter")
	assert.Contains(t, see(a), "Silica bites glass.")
	a, _ = press(a, "n / 'pumpkinz' backspace enter")
	assert.Contains(t, see(a), `"pumpkin" is not on this page`)
	a, _ = press(a, "/ esc G g j k pgdown pgup")
	a, _ = a.Update(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	a, _ = a.Update(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	a, _ = press(a, "esc")
	assert.Contains(t, see(a), "DI water")
}

func TestSmallWindowSaysWhatItNeeds(t *testing.T) {
	a, _ := app(&full{}).Update(tea.WindowSizeMsg{Width: 60, Height: 20})
	assert.Contains(t, see(a), "60 x 20")
	assert.Contains(t, see(a), "80 x 24")
	_, quits := press(a, "q")
	assert.True(t, quits)
}

// What cannot be seen takes no key: a value that is being typed is as it was, and q quits.
func TestASmallWindowHidesNoField(t *testing.T) {
	a, _ := press(app(&full{}), "v down enter ctrl+u 'quay'")
	a, _ = a.Update(tea.WindowSizeMsg{Width: 79, Height: 24})
	a, quits := press(a, "'x' esc enter ?")
	assert.False(t, quits)
	_, quits = press(a, "q")
	assert.True(t, quits)
	a, _ = a.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
	assert.Contains(t, see(a), "quay_")
}

func TestTroubleIsShownUntilAKey(t *testing.T) {
	a, _ := app(&full{}).Update(entry.Learned{Err: errors.New("the log is locked")})
	assert.Contains(t, see(a), "the log is locked")
	a, _ = press(a, "down")
	assert.NotContains(t, see(a), "the log is locked")
}

func TestAnySizeAndKeyFits(t *testing.T) {
	names := []string{"down", "up", "tab", "enter", "esc", "p", "2", "y", "f", "?", "n", "x", " ", "/", "b", "q", "m", "u"}
	rapid.Check(t, func(t *rapid.T) {
		a := app(&full{errors.New("no space left on the disk")})
		for range rapid.IntRange(1, 15).Draw(t, "steps") {
			a, _ = press(a, rapid.SampledFrom(names).Draw(t, "key"))
			w, h := rapid.IntRange(1, 150).Draw(t, "w"), rapid.IntRange(1, 45).Draw(t, "h")
			a, _ = a.Update(tea.WindowSizeMsg{Width: w, Height: h})
			lines := strings.Split(see(a), "\n")
			if len(lines) > h {
				t.Fatalf("%d lines on %d", len(lines), h)
			}
			for _, line := range lines {
				if cells.Width(line) > w {
					t.Fatalf("%q is wider than %d", line, w)
				}
			}
		}
	})
}

// What only tests import stays out of the program, and the screens see of the
// planner its results.
func TestImports(t *testing.T) {
	err := filepath.WalkDir(".", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		require.NoError(t, err)
		results := []string{
			"washeve/planner/tag", "washeve/planner/compare", "washeve/planner/split", "washeve/planner/washday", "washeve/planner/packing", "washeve/planner/trip",
			"washeve/planner/drying", "washeve/planner/drying/sun",
		}
		for _, spec := range file.Imports {
			name := strings.Trim(spec.Path.Value, `"`)
			forTests := strings.HasPrefix(name, "washeve/ui/internal/") && !strings.HasPrefix(filepath.ToSlash(path), "internal/")
			assert.False(t, forTests, "%s imports %s", path, name)
			inner := strings.HasPrefix(name, "washeve/planner/") && !slices.Contains(results, name)
			assert.False(t, inner, "%s imports %s", path, name)
		}
		return nil
	})
	require.NoError(t, err)
}

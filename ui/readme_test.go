package ui

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/entry"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/sample"
	"washeve/ui/keys"
	"washeve/ui/plan"
	"washeve/ui/theme"
	"washeve/ui/trip"
	"washeve/ui/washday"
)

var update = golden.Flag()

// pages are the screens of the README's key table, and how a hand gets there
// from the plan. A new screen is one line here.
func pages() [][2]string {
	return [][2]string{
		{"Plan", ""},
		{"Plan, while a value is typed", "v down enter"},
		{"Plan, while one is picked from a list", "p"},
		{"The day", "D"},
		{"Bed and log", "B"},
		{"Bed, while an entry is stated", "B w"},
		{"The change of resin", "B c"},
		{"Compare", "C"},
		{"Short bed", "S"},
		{"Wash day", "W"},
		{"Rig and places", "R"},
		{"Trips", "T"},
		{"Trips, with a trip", "T enter"},
		{"A page to read", "f"},
		{"The guide", "?"},
	}
}

// logbook is a log in memory.
type logbook struct{ log model.Log }

func (l *logbook) Append(entries ...model.Entry) error {
	l.log = model.Merge(l.log, model.NewLog(entries))
	return nil
}
func (l *logbook) Log() model.Log { return l.log }

// tripBook is trips in memory.
type tripBook struct{ all []model.Trip }

func (b *tripBook) Trips(bool) ([]model.Trip, int) { return b.all, 0 }
func (b *tripBook) Keep(i int, t model.Trip) error {
	b.all = append(b.all[:i:i], t)
	return nil
}
func (b *tripBook) Drop() error {
	b.all = b.all[:len(b.all)-1]
	return nil
}
func (b *tripBook) Like(string) (model.Wash, bool) { return model.Wash{}, false }
func (b *tripBook) Washes() []model.Wash           { return nil }
func (b *tripBook) Names() []string                { return nil }
func (b *tripBook) Left() (trip.Left, bool)        { return trip.Left{}, false }
func (b *tripBook) Leave(trip.Left)                {}

// wholePage is the program with all that its screens need.
func wholePage() tea.Model { return wholeKept(&full{}) }

// wholeKept is the same with somebody to keep its work.
func wholeKept(keeper plan.Keeper) tea.Model {
	rig, places, wash := sample.Day()
	memory, log := &planner.Memory{}, &logbook{}
	th := theme.New(theme.Options{Plain: true})
	day := time.Date(2026, 5, 15, 20, 0, 0, 0, time.UTC)
	return NewApp(th, plan.New(plan.Options{
		Rig: rig, Places: places, Wash: wash, Keeper: keeper, Theme: th, Make: memory.Make, Sharing: memory.Sharing,
		Means: washday.Means{Instant: func() model.Instant { return model.Instant{Wall: day.AddDate(0, 0, 1)} }, Left: func() (model.Underway, bool, error) { return model.Underway{}, false, nil }},
		Trips: &tripBook{},
		Book: entry.Book{
			Logger: log, Clock: func() time.Time { return day },
			Past:  func(r model.Rig, p model.Places) *planner.Past { return planner.Recall(log.log, r, p) },
			NewID: func(model.Moment) (string, error) { return "20260515-abc", nil },
		},
	}))
}

// keyTables are the keys of every page as tables.
func keyTables(t *testing.T) string {
	var b strings.Builder
	everywhere := NewApp(theme.Theme{}, plan.Model{}).keys()
	writeKeys(&b, "Everywhere", everywhere)
	for _, page := range pages() {
		a, quits := press(wholePage(), page[1])
		require.False(t, quits, page[0])
		app, ok := a.(App)
		require.True(t, ok)
		require.NoError(t, app.trouble, page[0])
		require.Equal(t, page[1] == "", app.top().Title() == "Plan" && !app.top().Typing() && len(app.top().Keys()) > 8, "%s is not reached; it shows\n%s", page[0], see(a))
		writeKeys(&b, page[0], app.top().Keys())
	}
	return b.String()
}

func writeKeys(b *strings.Builder, title string, all []keys.Binding) {
	fmt.Fprintf(b, "\n**%s**\n\n| key | does |\n| --- | --- |\n", title)
	for _, k := range all {
		words := k.Help().Desc
		if k.Long != "" {
			words = k.Long
		}
		fmt.Fprintf(b, "| `%s` | %s |\n", k.Help().Key, strings.ReplaceAll(words, "|", "\\|"))
	}
}

// The README lists the keys that the screens have: go test ./ui -update
func TestREADMEListsEveryKey(t *testing.T) {
	const from, to = "<!-- keys: written by go test ./ui -update -->\n", "\n<!-- end of keys -->"
	path := filepath.Join("..", "README.md")
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	before, rest, found := strings.Cut(string(data), from)
	require.True(t, found, "the README has lost its mark %q", from)
	listed, after, found := strings.Cut(rest, to)
	require.True(t, found, "the README has lost its mark %q", to)
	want := keyTables(t)
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(before+from+want+to+after), 0o644))
		return
	}
	assert.Equal(t, want, listed, "renew it: go test ./ui -update")
}

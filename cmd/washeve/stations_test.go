//go:build unix

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"washeve/model/store"
)

// station is a page of the program as it may stand, and how a hand gets there from
// the plan.
type station struct {
	screen string // in whose folder of ui the page's keys are
	name   string
	own    bool // with a rig of one's own and the log of a season, else the built-in example
	way    []hop
}

// hop is some keys, apart by blanks, and what is seen after them.
type hop struct{ keys, sees string }

// stations are every screen, as it opens and in each of the ways it asks: a new
// screen or a new question is a line here.
func stations() []station {
	bed, refill := hop{"B", "r reading"}, hop{"c", "Old resin out"}
	trip, step := hop{"T", "June loop, 2026"}, hop{"W", "step 1 of"}
	return []station{
		{"plan", "plan", false, nil},
		{"plan", "plan of one's own", true, nil},
		{"plan", "plan, a value typed", false, []hop{{"v down enter", "enter done   tab add the unit"}}},
		{"plan", "plan, a word picked", false, []hop{{"p", "4 new place"}}},
		{"plan", "plan, a choice under the hand", false, []hop{{"v down down", "› shape"}}},
		{"plan", "plan, a number under the hand", false, []hop{{"v down down down", "› length"}}},
		{"plan", "plan, something to undo", false, []hop{{"v down down right", "trailer"}}},
		{"plan", "plan, something to redo", false, []hop{{"v down down right", "trailer"}, {"u", "coach  "}}},
		{"plan", "plan, something to take away", false, []hop{{"w", "› place"}}},
		{"plan", "plan, something taken away", false, []hop{{"w X", "u brings it back"}}},
		{"day", "day", false, []hop{{"D", "no face hurries you"}}},
		{"day", "day, the start typed", false, []hop{{"D", "no face hurries you"}, {"s", "esc as it was"}}},
		{"day", "day, another start", false, []hop{{"D", "no face hurries you"}, {"pgdown pgdown", "08:15 to"}}},
		{"day", "day, undone", false, []hop{{"D", "no face hurries you"}, {"right u", "none chosen"}}},
		{"bed", "bed", false, []hop{bed}},
		{"bed", "bed with a log", true, []hop{bed}},
		{"bed", "bed, an older entry", true, []hop{bed, {"down down", "› "}}},
		{"bed", "bed, kinds of entries", false, []hop{bed, {"n", "what about?"}}},
		{"bed", "bed, a search", true, []hop{bed, {"/", "show all"}}},
		{"bed", "bed, an entry written", true, []hop{bed, {"s", "write it in the log"}, {"w", "Written"}}},
		{"bed", "bed, asks whether to strike", true, []hop{bed, {"x", "y yes"}}},
		{"entry", "bed, an entry stated", false, []hop{bed, {"w", "A new entry: wash"}}},
		{"entry", "bed, an entry typed", false, []hop{bed, {"w", "A new entry: wash"}, {"3", "line before"}}},
		{"entry", "bed, an entry with a value", false, []hop{bed, {"w", "A new entry: wash"}, {"3 0 enter up", "30 gal"}}},
		{"entry", "bed, a word of an entry picked", false, []hop{bed, {"s", "A new entry"}, {"down enter", "1-9"}}},
		{"entry", "bed, is it out", false, []hop{bed, {"r", "Is it out?"}}},
		{"entry", "bed, a reading typed", false, []hop{bed, {"r", "Is it out?"}, {"y", "write it"}}},
		{"entry", "bed, a first cup typed", false, []hop{bed, {"r", "Is it out?"}, {"n", "write it"}}},
		{"refill", "change of resin", false, []hop{bed, refill}},
		{"refill", "change of resin, amounts", false, []hop{bed, refill, {"right", "in one bag"}}},
		{"refill", "change of resin, an amount typed", false, []hop{bed, refill, {"right", "in one bag"}, {"enter", "enter done"}}},
		{"refill", "change of resin, its last step", true, []hop{bed, refill, {"right right right right right right right right", "write it"}, {"w", "The new fill is in the log"}, {"right", "r reading"}}},
		{"entry", "change of resin, the fill", false, []hop{bed, refill, {"right right right right right right right right", "write it"}}},
		{"compare", "compare", false, []hop{{"C", "as planned"}}},
		{"compare", "compare, a way that can be turned", false, []hop{{"C", "as planned"}, {"end", "+ more"}}},
		{"short", "short bed", false, []hop{{"S", "two fills"}}},
		{"short", "short bed, a face pinned", false, []hop{{"S", "two fills"}, {"o", "pinned out"}}},
		{"short", "short bed, undone", false, []hop{{"S", "two fills"}, {"o u", "two fills"}}},
		{"trip", "trip", false, []hop{trip}},
		{"trip", "trip, a wash under the hand", true, []hop{trip, {"down down", "› 06-06"}}},
		{"trip", "trip, line by line", false, []hop{trip, {"enter", "value down"}}},
		{"trip", "trip, a value typed", false, []hop{trip, {"enter", "value down"}, {"enter", "line before"}}},
		{"trip", "trip, a word picked", false, []hop{trip, {"enter", "value down"}, {"down enter", "1-9"}}},
		{"rig", "rig", false, []hop{{"R", "What you own"}}},
		{"rig", "rig of one's own", true, []hop{{"R", "What you own"}}},
		{"rig", "rig, the fields", false, []hop{{"R", "What you own"}, {"tab down down", "› length"}}},
		{"rig", "rig, a name typed", false, []hop{{"R", "What you own"}, {"n", "vehicle 2"}}},
		{"rig", "rig, a word picked", false, []hop{{"R", "What you own"}, {"tab down enter", "1-9"}}},
		{"rig", "rig, asks whether to take out", true, []hop{{"R", "What you own"}, {"pgdown pgdown pgdown X", "y yes"}}},
		{"washday", "wash day", false, []hop{step}},
		{"washday", "wash day, the time runs", false, []hop{step, {"enter", "step 2 of"}, {"space", "the time runs"}}},
		{"washday", "wash day, asks whether to end", false, []hop{step, {"x", "End the wash here?"}}},
		{"washday", "wash day, a flow typed", false, []hop{step, {"enter", "step 2 of"}, {"f", "enter done"}}},
		{"washday", "wash day, ways out", false, []hop{step, {"w", "none of them"}}},
		{"washday", "wash day, over", false, []hop{step, {"x", "End the wash here?"}, {"y", "ended early"}}},
		{"reader", "plan in full", false, []hop{{"f", "The plan in full"}}},
		{"reader", "where from", false, []hop{{"y", "Where the numbers come from"}}},
		{"reader", "a search in a page", false, []hop{{"f", "The plan in full"}, {"/", "find these words"}}},
		{"reader", "the middle of a page", false, []hop{{"f", "The plan in full"}, {"space", "The plan in full"}, {"/", "find these words"}, {"D I enter", "lines 2"}}},
		{"guide", "keys", false, []hop{{"?", "Keys: Plan"}}},
		{"guide", "terms", false, []hop{{"?", "Keys: Plan"}, {"tab", "Terms of the trade"}}},
		{"guide", "trouble", false, []hop{{"?", "Keys: Plan"}, {"tab", "Terms of the trade"}, {"tab space", "When something goes wrong"}}},
	}
}

// sees is what tells the station from where the hand was before.
func (st station) sees() string {
	if len(st.way) == 0 {
		return "flow cap"
	}
	return st.way[len(st.way)-1].sees
}

// open starts the program and goes to the station.
func (st station) open(t *testing.T, s setup) *screen {
	t.Helper()
	s.home = st.home(t)
	sc := start(t, s)
	sc.sees("flow cap")
	for _, h := range st.way {
		sc.press(strings.Fields(h.keys)...)
		sc.sees(h.sees)
	}
	return sc
}

// home is a person's folder, with the data folder of a station in it.
func (st station) home(t *testing.T) string {
	t.Helper()
	home := t.TempDir()
	if !st.own {
		return home
	}
	dir := filepath.Join(home, "data", "washeve")
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	log, err := os.ReadFile(filepath.Join("..", "..", "testdata", "season", "log.toml"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, logFile), log, 0o600))
	return home
}

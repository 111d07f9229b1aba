//go:build unix

package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"washeve/model/store"
)

// station is a page of the program as it may stand, and how a hand gets there from
// the plan.
type station struct {
	screen string // the folders of ui that have its keys; the first is that of the page
	name   string
	own    bool // with a rig of one's own and the log of a season, else the built-in example
	way    []hop
}

// hop is some keys, apart by blanks, and what is seen after them.
type hop struct{ keys, sees string }

// These stand for a key: an editor changes every file, and takes that back; a wash was left before the
// program starts, or what is left of its file. And all keys up to the pen, and up to the DI water.
const (
	editor = "EDITOR"
	undone = "UNDONE" // by the editor
	left   = "LEFT"
	torn   = "TORN"
	pen    = "s s s s s enter"
	di     = "s s s s s s s s s s s s s s s s s s s s s s s s s s s s s s"
)

// stations are every screen, as it opens and in each of the ways it asks: a new
// screen or a new question is a line here.
func stations() []station {
	bed, refill := hop{"B", "r reading"}, hop{"c", "Old resin out"}
	trip, step := hop{"T", "June loop, 2026"}, hop{"W", "step 1 of"}
	waiting := []hop{{"N enter", "New, in its own"}, {"d t o m o r r o w enter", "Saved"}, {"tab N enter", "New, in its own"}, {"d t o m o r r o w enter", "Saved"}}
	return []station{
		{"plan", "plan", false, nil},
		{"plan", "plan of one's own", true, nil},
		{".", "plan, asks whether to lose the work", false, []hop{{"v down down right", "trailer"}, {"q", "This would be lost"}}},
		{"plan", "plan, a value typed", false, []hop{{"v down enter", "enter done   tab add the unit"}}},
		{"plan", "plan, a number refused", false, []hop{{"w 3", "letters act again"}}},
		{"plan", "plan, a text refused", false, []hop{{"v down down down", "› length"}, {"9 9 enter", "Not taken"}}},
		{"plan", "plan, a word picked", false, []hop{{"p", "4 new place"}}},
		{"plan", "plan, a choice under the hand", false, []hop{{"v down down", "› shape"}}},
		{"plan", "plan, a number under the hand", false, []hop{{"v down down down", "› length"}}},
		{"plan", "plan, a word awaited", false, []hop{{"d delete", "a-z 0-9 type it"}}},
		{"plan", "plan, something to undo", false, []hop{{"v down down right", "trailer"}}},
		{"plan", "plan, something to redo", false, []hop{{"v down down right", "trailer"}, {"u", "Undone: "}}},
		{"plan", "plan, something to take away", false, []hop{{"w", "› place"}}},
		{"plan", "plan, something taken away", false, []hop{{"w X", "u brings it back"}}},
		{"plan", "plan, asks whether to write anew", true, []hop{{"w X", "y yes"}}},
		{"plan", "plan, unsaved", true, []hop{{editor + " v down down right", "still here"}, {undone, "still here"}}},
		{"plan", "plan, asks whether to read anew", true, []hop{{editor + " v down down right", "still here"}, {"A", "y yes"}}},
		{"plan", "plan, washes", true, []hop{{"L", "Washes; 1 is in hand"}}},
		{"plan", "plan, a new wash named", true, []hop{{"N", "type its name, or enter"}}},
		{"plan", "plan, washes that wait for one bed", true, waiting},
		{"reader", "one fill, several washes", true, append(slices.Clone(waiting), hop{"O", "Washes that wait for"})},
		{"day", "day", false, []hop{{"D", "easy: no face hurries"}}},
		{"day", "day, the start typed", false, []hop{{"D", "easy: no face hurries"}, {"s", "esc as it was"}}},
		{"day", "day, a start refused", false, []hop{{"D", "easy: no face hurries"}, {"s 9 9 enter", "Not taken"}}},
		{"day", "day, another start", false, []hop{{"D", "easy: no face hurries"}, {"pgdown pgdown", "08:15 to"}}},
		{"day", "day, undone", false, []hop{{"D", "easy: no face hurries"}, {"right", "06:30 to"}, {"u", "Undone: "}}},
		{"bed", "bed", false, []hop{bed}},
		{"bed", "bed with a log", true, []hop{bed}},
		{"bed", "bed, an older entry", true, []hop{bed, {"down down", "Log: 3 of 53"}}},
		{"bed", "bed, kinds of entries", false, []hop{bed, {"n", "what about?"}}},
		{"bed", "bed, a search", true, []hop{bed, {"/", "show all"}}},
		{"bed", "bed, a first cup", true, []hop{bed, {"/", "show all"}, {"f i r s t enter", "3 entries hold"}}},
		{"bed", "bed, an entry written", true, []hop{bed, {"s", "write it in the log"}, {"w", "Written"}}},
		{"bed", "bed, asks whether to strike", true, []hop{bed, {"x", "y yes"}}},
		{"bed", "bed, asks whether to strike a wash with its readings", true, []hop{{"W", "Begin it now?"}, {"y", "step 1 of"}, {pen, "step 7 of"}, {"r", "The pen shows:"}, {"7 enter", "Good water now"}, {"x", "End the wash here?"}, {"y", "ended early"}, {"esc", "flow cap"}, bed, {"x", "its reading too"}}},
		{"bed", "bed, asks about a reading over the feed", true, []hop{bed, {"r", "It reads"}, {"9 0 0 enter", "Was the standing"}, {"y", "y yes   n no"}}},
		{"bed entry", "bed, an entry stated", false, []hop{bed, {"w", "A new entry: wash"}, {"down", "› time"}}},
		{"entry", "bed, an entry typed", false, []hop{bed, {"w", "A new entry: wash"}, {"3", "line before"}}},
		{"entry", "bed, a text refused", false, []hop{bed, {"w", "A new entry: wash"}, {"3 x enter", "Not taken"}}},
		{"bed entry", "bed, an entry with a value", false, []hop{bed, {"w", "A new entry: wash"}, {"3 0 enter", "› time"}, {"up", "› DI water"}}},
		{"entry", "bed, a word of an entry picked", false, []hop{bed, {"s", "A new entry"}, {"down enter", "1-9"}}},
		{"entry", "bed, a reading typed", false, []hop{bed, {"r", "It reads"}}},
		{"entry", "bed, a reading refused", false, []hop{bed, {"r", "It reads"}, {"3 x enter", "A number is needed"}}},
		{"entry", "bed, is it out", true, []hop{bed, {"r", "It reads"}, {"3 enter", "Was the standing"}}},
		{"entry", "bed, another flush", true, []hop{bed, {"r", "It reads"}, {"3 enter", "Was the standing"}, {"o", "Run out for it"}}},
		{"refill", "change of resin", false, []hop{bed, refill}},
		{"refill", "change of resin, amounts", false, []hop{bed, refill, {"right", "in one bag"}}},
		{"refill", "change of resin, an amount typed", false, []hop{bed, refill, {"right", "in one bag"}, {"enter", "enter done"}}},
		{"refill", "change of resin, an amount refused", false, []hop{bed, refill, {"right", "in one bag"}, {"9 9 enter", "Not taken"}}},
		{"refill", "change of resin, its last step", true, []hop{bed, refill, {"right right right right right right right right", "write it"}, {"w", "The new fill is in the log"}, {"right", "r reading"}}},
		{"refill entry", "change of resin, the fill", false, []hop{bed, refill, {"right right right right right right right right", "write it"}}},
		{"compare", "compare", false, []hop{{"C", "as planned"}}},
		{"compare", "compare, further down", false, []hop{{"C", "as planned"}, {"right down down down", "rinsed last"}}},
		{"compare", "compare, asks whether to make it the plan", false, []hop{{"C", "as planned"}, {"l enter", "y make it"}}},
		{"compare", "compare, asks whether to put it in", false, []hop{{"C", "as planned"}, {"right right right right right enter", "y put it"}}},
		{"compare", "compare, a way that can be turned", false, []hop{{"C", "as planned"}, {"end", "+ more"}}},
		{"short", "short bed", false, []hop{{"S", "two fills"}, {"down", "› rear"}}},
		{"short", "short bed, a face pinned", false, []hop{{"S", "two fills"}, {"o", "pinned out"}}},
		{"short", "short bed, undone", false, []hop{{"S", "two fills"}, {"o", "pinned out"}, {"u", "Undone: "}}},
		{"trip", "trip", false, []hop{trip}},
		{"trip", "trip, a wash under the hand", false, []hop{trip, {"down down", "› 06-06"}}},
		{"trip", "trip, something to undo", false, []hop{trip, {"down down", "› 06-06"}, {".", "› 06-07"}}},
		{"trip", "trip, something to redo", false, []hop{trip, {"down down", "› 06-06"}, {".", "› 06-07"}, {"u", "Undone: "}}},
		{"trip", "trip, another one", false, []hop{trip, {"b", "(2 of 2)"}}},
		{"trip", "trip, asks whether to write anew", true, []hop{trip, {"down down down X", "y yes"}}},
		{"trip", "trip, unsaved", true, []hop{trip, {editor + " down .", "still here"}, {undone, "still here"}}},
		{"trip", "trip, asks whether to read anew", true, []hop{trip, {editor + " down .", "still here"}, {"A", "y yes"}}},
		{"trip", "trip, line by line", false, []hop{trip, {"enter", "value down"}, {"down", "› bed"}}},
		{"trip", "trip, line by line, undone", false, []hop{trip, {"down down", "› 06-06"}, {".", "› 06-07"}, {"u", "Undone: "}, {"enter", "value down"}}},
		{"trip", "trip, a number under the hand", false, []hop{trip, {"enter", "value down"}, {"down down down down", "› lead time"}}},
		{"trip", "trip, line by line, something to undo", false, []hop{trip, {"enter", "value down"}, {"down down down down 4 enter", "4 d"}}},
		{"trip", "trip, a value typed", false, []hop{trip, {"enter", "value down"}, {"down down down down enter", "line before"}}},
		{"trip", "trip, a number refused", false, []hop{trip, {"enter", "value down"}, {"down 3", "letters act again"}}},
		{"trip", "trip, a text refused", false, []hop{trip, {"enter", "value down"}, {"down down down down", "› lead time"}, {"4 x enter", "Not taken"}}},
		{"trip", "trip, a word picked", false, []hop{trip, {"enter", "value down"}, {"down enter", "1-9"}}},
		{"rig", "rig", false, []hop{{"R", "What you own"}, {"down", "› ● half-foot"}}},
		{"rig", "rig of one's own", true, []hop{{"R", "What you own"}}},
		{"rig", "rig, the fields", false, []hop{{"R", "What you own"}, {"tab down down", "› length"}}},
		{"rig", "rig, a choice", false, []hop{{"R", "What you own"}, {"tab down", "› shape"}}},
		{"rig", "rig, a word awaited", false, []hop{{"R", "What you own"}, {"pgdown pgdown pgdown pgdown pgdown pgdown tab end", "› elevation"}, {"up delete", "a-z 0-9 type it"}}},
		{"rig", "rig, something to undo", false, []hop{{"R", "What you own"}, {"tab down right", "trailer"}}},
		{"rig", "rig, something to redo", false, []hop{{"R", "What you own"}, {"tab down right", "trailer"}, {"u", "Undone: "}}},
		{"rig", "rig, what is not in use", false, []hop{{"R", "What you own"}, {"down down down down", "›   garden nozzle"}}},
		{"rig", "rig, unsaved", true, []hop{{"R", "What you own"}, {editor + " tab down right", "still here"}, {undone, "still here"}}},
		{"rig", "rig, asks whether to read anew", true, []hop{{"R", "What you own"}, {editor + " tab down right", "still here"}, {"A", "y yes"}}},
		{"rig", "rig, a name typed", false, []hop{{"R", "What you own"}, {"n", "vehicle 2"}}},
		{"rig", "rig, a number refused", false, []hop{{"R", "What you own"}, {"tab down 3", "letters act again"}}},
		{"rig", "rig, a text refused", false, []hop{{"R", "What you own"}, {"tab down down", "› length"}, {"9 9 enter", "Not taken"}}},
		{"rig", "rig, a word picked", false, []hop{{"R", "What you own"}, {"tab down enter", "1-9"}}},
		{"rig", "rig, asks whether to take out", true, []hop{{"R", "What you own"}, {"pgdown pgdown pgdown X", "y yes"}}},
		{"washday", "wash day", false, []hop{step}},
		{"washday", "wash day, asks whether to begin on another day", true, []hop{{"W", "Begin it now?"}}},
		{"washday", "wash day, the time runs", false, []hop{step, {"enter", "step 2 of"}, {"space", "the time runs"}}},
		{"washday", "wash day, asks whether to end", false, []hop{step, {"x", "End the wash here?"}}},
		{"washday", "wash day, a flow typed", false, []hop{step, {"enter", "step 2 of"}, {"f", "enter done"}}},
		{"washday", "wash day, a flow over the cap", false, []hop{step, {di, "step 31 of"}, {"f 5 g p m enter", "OVER THE CAP"}}},
		{"washday", "wash day, ways out", false, []hop{step, {"w", "none of them"}}},
		{"washday", "wash day, DI water", false, []hop{step, {di, "step 31 of"}}},
		{"washday", "wash day, asks whether it was flushed", false, []hop{step, {di, "step 31 of"}, {"r", "The pen shows:"}, {"1 enter", "y it was flushed"}}},
		{"washday", "wash day, the pen", false, []hop{step, {pen, "step 7 of"}}},
		{"washday", "wash day, within the limit", false, []hop{step, {pen, "step 7 of"}, {"r", "The pen shows:"}, {"4 enter", "GO: "}}},
		{"washday", "wash day, within the limit for now", true, []hop{{"W", "Begin it now?"}, {"y", "step 1 of"}, {pen, "step 7 of"}, {"r", "The pen shows:"}, {"7 enter", "Good water now"}}},
		{"washday", "wash day, a flow that is none", false, []hop{step, {"enter", "step 2 of"}, {"f x y enter", "Not taken"}}},
		{"washday", "wash day, a no-go", false, []hop{step, {pen, "step 7 of"}, {"r", "The pen shows:"}, {"1 4 enter", "none of them"}, {"esc", "NO-GO: "}}},
		{"washday", "wash day, a first cup", false, []hop{step, {"s s s s s s", "step 7 of"}, {"r", "The pen shows:"}, {"4 enter", "y it was flushed"}, {"n", "A FIRST CUP"}}},
		{"washday", "wash day, the flush left out", false, []hop{step, {"s s s s s s", "The flush was left out"}}},
		{"washday", "wash day, asks whether a reading takes the place", false, []hop{step, {pen, "step 7 of"}, {"r", "The pen shows:"}, {"4 enter", "GO: "}, {"r 5 enter", "y in its place"}}},
		{"washday", "wash day, asks about a reading over the feed", false, []hop{step, {di, "step 31 of"}, {"r", "The pen shows:"}, {"9 0 0 enter", "y it reads so"}}},
		{"washday", "wash day, over the limit", false, []hop{step, {di, "step 31 of"}, {"r", "The pen shows:"}, {"1 4 enter", "y it was flushed"}, {"y", "OVER THE LIMIT"}}},
		{"washday", "wash day, a reading refused", false, []hop{step, {"r 6", "keys act again"}}},
		{"washday", "wash day, begun before", true, []hop{{left, "goes on where it was"}}},
		{"washday", "wash day, left in a file that does not read", true, []hop{{torn, "k keeps the file"}}},
		{"washday", "wash day, over", false, []hop{step, {"x", "End the wash here?"}, {"y", "ended early"}}},
		{"reader", "plan in full", false, []hop{{"f", "The plan in full"}}},
		{"reader", "where from", false, []hop{{"y", "Where the numbers come from"}}},
		{"reader", "a search in a page", false, []hop{{"f", "The plan in full"}, {"/", "find these words"}}},
		{"reader", "the middle of a page", false, []hop{{"f", "The plan in full"}, {"space", "The plan in full"}, {"/", "find these words"}, {"D I enter", "lines 2"}}},
		{"guide reader", "keys", false, []hop{{"?", "Keys: Plan"}}},
		{"guide reader", "terms", false, []hop{{"?", "Keys: Plan"}, {"tab", "Terms of the trade"}}},
		{"guide reader", "trouble", false, []hop{{"?", "Keys: Plan"}, {"tab", "Terms of the trade"}, {"tab space", "When something goes wrong"}}},
	}
}

// sees is what tells the station from where the hand was before.
func (st station) sees() string {
	if len(st.way) == 0 {
		return "flow cap"
	}
	return st.way[len(st.way)-1].sees
}

// looksItsOwn tells that a station is laid out like no other: it is not there for the sake
// of a key alone.
func (st station) looksItsOwn() bool {
	for _, alike := range []string{"undo", "redo", "unsaved", "under the hand", "further down", "another", "older", "to lose", "begun before", "anew"} {
		if strings.Contains(st.name, alike) {
			return false
		}
	}
	return true
}

// open starts the program and goes to the station.
func (st station) open(t *testing.T, s setup) *screen {
	t.Helper()
	s.home = st.home(t)
	sc := start(t, s)
	switch {
	case st.resumes():
	case st.own: // what the log teaches is at hand
		sc.sees("flow cap", "The bed will not last")
	default:
		sc.sees("flow cap")
	}
	for _, h := range st.way {
		for _, key := range strings.Fields(h.keys) {
			if !edits(t, s.home, key) {
				sc.press(key)
			}
		}
		sc.sees(h.sees)
	}
	return sc
}

// resumes tells that a wash was left.
func (st station) resumes() bool {
	return len(st.way) > 0 && (st.way[0].keys == left || st.way[0].keys == torn)
}

// edits does what stands for a key, and tells whether it did.
func edits(t *testing.T, home, key string) bool {
	const mark = "# seen by an editor\n"
	if key == editor || key == undone {
		for _, pattern := range []string{"*.toml", "*/*.toml"} {
			paths, err := filepath.Glob(filepath.Join(home, "data", "washeve", pattern))
			require.NoError(t, err)
			for _, path := range paths {
				text, err := os.ReadFile(path)
				require.NoError(t, err)
				own := strings.ReplaceAll(string(text), mark, "")
				if key == editor {
					own += mark
				}
				require.NoError(t, os.WriteFile(path, []byte(own), 0o600))
			}
		}
	}
	return key == editor || key == undone || key == left || key == torn
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
	if !st.resumes() {
		return home
	}
	if st.way[0].keys == torn {
		require.NoError(t, os.WriteFile(filepath.Join(dir, "underway.toml"), []byte("format = 1\nid = \"x\"\n[[step]]\nkind = \"wo"), 0o600))
		return home
	}
	began := station{name: st.name, own: true, way: []hop{{"W", "Begin it now?"}, {"y", "step 1 of"}, {"enter", "step 2 of"}, {"space", "the time runs"}}}
	began.goes(t, home)
	return home
}

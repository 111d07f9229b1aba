package ui

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/talk"
)

// moving are the deeds of keys that move the hand about, and of those that open a page
// to be read. By words nothing has to be moved to: a line is named, and a page is told.
func moving() []keys.Action {
	return []keys.Action{
		"up", "down", "page up", "page down", "newest", "oldest", "first", "last", "next step", "step before", "other list", "other side",
		"next kind", "kind before", "to the plan", "way before", "next way", "words up", "words down", // the hand
		"overtype", "next choice", "choice before", // a value, which change states
		"find", "why", // list and words, why and a name
	}
}

// spoken is a page of the README's key table in words; false for one to be read, which
// a word tells.
func spoken(t *testing.T, script string) (App, talk.Page, bool) {
	a := wholePage()
	for _, key := range hands.Keys(script) {
		a, _ = given(a, key)
	}
	app, isApp := a.(App)
	require.True(t, isApp)
	s, ok := app.Top().(talk.Speaker)
	if !ok {
		return app, talk.Page{}, false
	}
	return app, s.Spoken(), true
}

// Every key of every page can be had in words, and every word is a key of its page.
func TestEveryKeyHasAWordAndEveryWordAKey(t *testing.T) {
	common := []keys.Action{"yes", "no", "undo", "redo", "units", "save again", "read anew", "back"}
	var toRead []string
	for _, page := range append(pages(), [2]string{"One thing of the rig", "R enter"}) {
		app, p, ok := spoken(t, page[1])
		if !ok {
			toRead = append(toRead, page[0])
			continue
		}
		if p.Asks != nil {
			assert.NotEmpty(t, p.Asks.Ask, page[0])
			continue
		}
		all := app.Top().Keys()
		for _, b := range all {
			worded := slices.ContainsFunc(p.Words, func(w talk.Word) bool {
				return w.Does == b.Does && (w.Key == "" || slices.Contains(b.Keys(), w.Key))
			})
			elsewhere := page[0] == "Rig and places" && b.Does == "take away" || page[0] == "One thing of the rig" && b.Does == "new"
			assert.True(t, worded || elsewhere || slices.Contains(common, b.Does) || slices.Contains(moving(), b.Does), "%s: %s has no word", page[0], b.Does)
		}
		for _, w := range p.Words {
			bound := slices.ContainsFunc(all, func(b keys.Binding) bool { return b.Does == w.Does })
			assert.True(t, bound || w.Lines != nil || w.Does == "" && w.Of != "", "%s: %s is no key", page[0], w.Say)
			assert.True(t, strings.HasPrefix(w.Like, w.Say) || w.Like == "", "%s: %s like %s", page[0], w.Say, w.Like)
			assert.True(t, w.Of == "" || p.Things != nil, "%s: %s is about nothing", page[0], w.Say)
		}
	}
	assert.Equal(t, []string{"A page to read", "The guide"}, toRead)
}

// Every number that a screen explains by its key can be asked for by its name.
func TestEveryPageWithNumbersExplainsThem(t *testing.T) {
	for _, page := range pages() {
		app, p, ok := spoken(t, page[1])
		explains := slices.ContainsFunc(app.Top().Keys(), func(b keys.Binding) bool { return b.Does == "why" && b.Blocked == "" })
		if !ok || !explains {
			continue
		}
		require.NotNil(t, p.Numbers, page[0])
		for _, n := range p.Numbers() {
			assert.NotEmpty(t, n.Name, page[0])
			assert.NotEmpty(t, strings.Join(n.Lines(80), ""), "%s: %s", page[0], n.Name)
		}
	}
}

// FuzzTalk says anything at all: the talk never panics, ends with its input, and sends
// no code to the terminal.
func FuzzTalk(f *testing.F) {
	for _, seed := range []string{
		"help\nlist\nwhy\nwalk vehicle\n\n-\n.\nquit", "bed\nreading\nabc\n3\nyes\nundo\nback", "bed\nwash\nwalk\n25\n-\n.\nwrite\nlist\nstrike 1\ny\nuse 1",
		"short\nin front\nout 2\ntake 99\ntake 6\nundo", "compare\nway 3\nmore 3\ntake 5\nyes", "rig\nnew place\x1b[2J\nlist\nshow 1\nface left\n.\ntake out 1",
		"day\nstart 7:30\nstart 99\nface left\nhours\nback", "bed\nresin\nnext\nchange bag 3\nnext\nnext", "change 1\nhelp\nback\nchange 4\nquit", "trip", "wash", "place\nnew place\n\x00\u202e", "tell\nterms\ntrouble\nunits\nredo",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, lines string) {
		var out strings.Builder
		root, ok := whole(true).(App)
		require.True(t, ok)
		_ = talk.Run(t.Context(), root, strings.NewReader(lines), &out) // what is not kept is told
		for _, r := range out.String() {
			if r < ' ' && r != '\n' {
				t.Fatalf("%q is sent to the terminal", r)
			}
		}
	})
}

// The keys of an entry that is stated stand under what it is.
func TestTheKeysOfAnEntryAreHeadedByWhatItIs(t *testing.T) {
	a, _ := press(wholePage(), "B w ?")
	assert.Regexp(t, `(?m)^ *A new entry: wash *$`, see(a))
	assert.NotContains(t, see(a), "Form")
}

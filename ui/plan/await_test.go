package plan

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/ui/internal/hands"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// A word on an empty line of a day, a heading or a zone is text from its first letter, though
// that letter is a key elsewhere.
func TestAWordBeginsOnALineThatAwaitsOne(t *testing.T) {
	for key, typed := range map[string]struct{ text, states string }{
		"date": {"tomorrow", "2026-11-29"}, "heading": {"north west", "north west"}, model.ZoneKey: {"denver", "America/Denver"},
	} {
		o := ours(t)
		o.Book.Clock = func() time.Time { return time.Date(2026, 11, 28, 21, 0, 0, 0, time.UTC) }
		p := play(t, o, "d")
		onKey(t, p, key)
		assert.True(t, p.M.Awaits(), key)
		assert.Contains(t, p.Says(), "; type it,", key)
		assert.Contains(t, p.Seen(), "a-z 0-9 type it   esc then a key", key)
		assert.Contains(t, p.Seen(), "ctrl+c quit", "q is a letter here")
		p.Keys("'" + typed.text + "'")
		assert.Equal(t, typed.text, p.M.edit.Text(), key)
		p.Keys("enter")
		onKey(t, p, key)
		_, f, _ := p.M.target()
		assert.Equal(t, typed.states, f.Text(), key)
		assert.False(t, p.M.Awaits(), "%s: what is stated there is changed by enter", key)
		assert.Nil(t, p.M.edit, key)
		p.Keys("z")
		assert.Contains(t, p.Says(), "z is no key here: enter, then type.", key)
	}
}

// A name that is not stated is begun by enter only, and by words no letter is text.
func TestWhatAwaitsNoWord(t *testing.T) {
	p := play(t, ours(t), "v")
	assert.False(t, p.M.Awaits(), "a name")
	o := ours(t)
	o.Theme = theme.New(theme.Options{Plain: true, Words: true})
	p = onDate(t, o)
	assert.False(t, p.M.Awaits(), "there are no keys by words")
}

// Esc makes one letter a key where letters are text, and the keys say all of it.
func TestALetterIsAKeyAfterEsc(t *testing.T) {
	p := onDate(t, ours(t))
	assert.Contains(t, p.Keys("esc").Seen(), "The next letter is a key.")
	_, read := p.Send(hands.Key("y")).(screen.Go)
	assert.True(t, read)
	assert.True(t, p.M.Awaits(), "that was one letter")
	p.Keys("esc z")
	assert.Contains(t, p.Seen(), "z is no key here")
	assert.True(t, p.M.Awaits())
	for _, b := range p.M.Keys() {
		if b.Help().Key == "y" {
			assert.Equal(t, "letters are text on this line; esc makes the next one a key", b.Blocked)
			assert.Empty(t, b.Keys())
		}
	}
}

// In an open list a word goes to the line that begins so, and is never taken for another one.
func TestAWordGoesToItsLineOfAList(t *testing.T) {
	o := ours(t)
	p := play(t, o, "d")
	onKey(t, p, "sky")
	p.Keys("enter")
	assert.True(t, p.M.Awaits(), "q is a letter, too")
	p.Keys("'overcast'")
	assert.Contains(t, p.Seen(), `sky  "overcast"`)
	assert.Equal(t, model.Sky("overcast"), p.Keys("enter").M.now.wash.Sky)
	p.Keys("enter 'square' enter")
	assert.Contains(t, p.Seen(), `Nothing in the list begins with "square".`)
	assert.NotNil(t, p.M.picker)
	saves := o.Keeper.(*book).saves
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "As it was.")
	assert.Equal(t, saves, o.Keeper.(*book).saves, "and nothing is written")
}

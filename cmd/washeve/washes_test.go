//go:build unix

package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
)

const vanWash = `format = 1
name = "Van wash"   # the little one
date = "2020-04-01"
vehicle = 'Marigold'
place   = "Juniper Flats" # as always
`

// withVan is a folder of one's own in which there is another wash, long ago.
func withVan(t *testing.T, dir string) (coach, van string) {
	t.Helper()
	coach, van = filepath.Join(dir, "washes", "example.toml"), filepath.Join(dir, "washes", "van.toml")
	require.NoError(t, os.WriteFile(van, []byte(vanWash), 0o600))
	long := time.Date(2020, 4, 1, 0, 0, 0, 0, time.UTC)
	require.NoError(t, os.Chtimes(van, long, long))
	return coach, van
}

// One wash is edited, another one opened and edited, and the first one again: each edit is
// in its own file, which keeps every other byte, and a kill takes none of them.
func TestTwoWashesInTurn(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	coach, van := withVan(t, dir)
	before := read(t, coach)
	require.Contains(t, before, "\nplace = \"Juniper Flats\"")
	atFernwater := strings.Replace(before, "\nplace = \"Juniper Flats\"", "\nplace = \"Fernwater\"", 1)

	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("p", "3")
	s.sees("Marigold at Fernwater")
	s.press("L")
	s.sees("Washes; 1 is in hand", "2 Van wash")
	s.press("2")
	s.sees("Van wash: Marigold at Juniper Flats", "In hand now, in its own file: Van wash")
	assert.Equal(t, atFernwater, read(t, coach))
	assert.Equal(t, vanWash, read(t, van), "to be opened changes nothing")
	s.press("p", "3")
	s.sees("Van wash: Marigold at Fernwater")
	assert.Equal(t, strings.Replace(vanWash, "Juniper Flats", "Fernwater", 1), read(t, van))
	s.press("u")
	s.sees("Undone: ")
	assert.Equal(t, vanWash, read(t, van))
	s.press("p", "3")
	s.sees("Van wash: Marigold at Fernwater")
	s.press("L", "2", "p", "1")
	s.sees("Saved.", "Marigold at Juniper Flats")
	s.kill()
	assert.Equal(t, before, read(t, coach))
	assert.Equal(t, strings.Replace(vanWash, "Juniper Flats", "Fernwater", 1), read(t, van))
}

// The next wash from today on is in hand at the start; where all are past, the one changed
// last. The commands take the same one.
func TestTheWashToGoOnWithIsInHand(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	coach, van := withVan(t, dir)
	far := strings.NewReplacer("2020-04-01", "2150-04-01", "Van wash", "Far wash").Replace(vanWash)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "washes", "far.toml"), []byte(far), 0o600))
	near := strings.NewReplacer("2020-04-01", "2150-03-01", "Van wash", "Near wash").Replace(vanWash)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "washes", "near.toml"), []byte(near), 0o600))
	past := regexp.MustCompile(`(?m)^date = "[^"]*"`).ReplaceAllString(read(t, coach), `date = "2021-01-01"`)
	require.NoError(t, os.WriteFile(coach, []byte(past), 0o600))
	s := start(t, setup{home: home})
	s.sees("Near wash: Marigold", "In hand: the next from today on, Near wash. L lists the 3 others.")
	s.press("q")
	require.Zero(t, s.ends())

	require.NoError(t, os.Remove(filepath.Join(dir, "washes", "near.toml")))
	require.NoError(t, os.Remove(filepath.Join(dir, "washes", "far.toml")))
	for file, hour := range map[string]int{coach: 1, van: 2} {
		at := time.Date(2026, 1, 1, hour, 0, 0, 0, time.UTC)
		require.NoError(t, os.Chtimes(file, at, at))
	}
	s = start(t, setup{home: home})
	s.sees("Van wash: Marigold", "In hand: the last one changed, Van wash. L lists the other one.")
	s.press("q")
	require.Zero(t, s.ends())
	var out, errs bytes.Buffer
	require.Zero(t, run([]string{"plan", "--dir", dir}, atTerminal(&out, &errs)), errs.String())
	assert.Contains(t, out.String(), "Van wash: Marigold")
}

// A new wash gets a file of its own, once it has a name, and the one it is like stays as
// it is.
func TestANewWashGetsItsOwnFile(t *testing.T) {
	home := t.TempDir()
	dir, _ := ownFiles(t, home)
	coach, van := withVan(t, dir)
	before := read(t, coach)
	s := start(t, setup{home: home})
	s.sees("Marigold at Juniper Flats")
	s.press("N")
	s.sees("esc leaves it out")
	s.press("ctrl+u", "Van wash", "enter")
	s.sees("is the name of another wash already")
	s.press("ctrl+u", "Toad day", "enter")
	s.sees("New, in its own file: Toad day")
	toad := filepath.Join(dir, "washes", "toad-day.toml")
	for _, key := range []string{"\ndate = ", "\nlow = ", "\nsky = "} {
		assert.Contains(t, before, key)
		assert.NotContains(t, read(t, toad), key, "it is of the other day")
	}
	s.press("p", "3")
	s.sees("Toad day: Marigold at Fernwater")
	assert.Contains(t, read(t, toad), "\nplace = \"Fernwater\"")
	assert.Equal(t, before, read(t, coach))
	assert.Equal(t, vanWash, read(t, van))
	s.press("q")
	require.Zero(t, s.ends())
}

// The names of washes in hand one after another are no new names of one: a trip goes on
// naming the wash that it named, and follows a name that is new.
func TestTripsKeepTheirWash(t *testing.T) {
	dir := mine(t)
	withVan(t, dir)
	trip := filepath.Join(dir, "trips", "van.toml")
	text := "format = 1\nname = \"Van trip\"\n\n[[wash]]\ndate = \"2020-04-02\"\nlike = \"Van wash\"\n"
	require.NoError(t, os.WriteFile(trip, []byte(text), 0o600))
	saidIn(t, dir, "washes 2", "change wind 3 mph", "washes 2", "change wind 4 mph", "new wash Toad day", "change place Fernwater")
	assert.Equal(t, text, read(t, trip))
	keyedIn(t, dir, "L", "3", "t", "enter", "ctrl+u", "=Small wash", "enter")
	assert.Equal(t, strings.Replace(text, "Van wash", "Small wash", 1), read(t, trip))
}

// What a trip's wash is like is the wash as it was saved last, in hand or put away.
func TestATripIsLikeAWashThatWasPutAway(t *testing.T) {
	dir := mine(t)
	withVan(t, dir)
	p := &program{streams: atTerminal(new(bytes.Buffer), new(bytes.Buffer)), dir: dir, opening: true}
	lib, wash, err := p.loadWash(nil)
	require.NoError(t, err)
	o := p.options(lib, wash, p.bookBeside())
	wash.Place = "Fernwater"
	require.NoError(t, o.Keeper.Save(o.Rig, o.Places, wash))
	assert.Equal(t, "example.toml", o.Shelf.TakeUp(o.Others[0]))
	like, found := o.Trips.Like("Saturday wash")
	assert.True(t, found)
	assert.Equal(t, "Fernwater", like.Place)
	o.Shelf.TakeUp(&stock.Kept{})
	require.NoError(t, o.Keeper.Save(o.Rig, o.Places, model.Wash{Name: "Toad day"}))
	assert.Contains(t, o.Trips.Names(), "Toad day")
}

// Who began from nothing has trips like all washes of their own, and like none of the example's.
func TestTripsOfWhoBeganFromNothing(t *testing.T) {
	p := &program{streams: atTerminal(new(bytes.Buffer), new(bytes.Buffer)), dir: t.TempDir(), opening: true}
	lib, wash, err := p.loadWash(nil)
	require.NoError(t, err)
	o := p.options(lib, wash, p.bookBeside())
	require.NoError(t, o.Keeper.Save(model.Rig{}, model.Places{}, model.Wash{Name: "my wash"}))
	assert.Equal(t, "my-wash.toml", o.Shelf.TakeUp(&stock.Kept{}))
	require.NoError(t, o.Keeper.Save(model.Rig{}, model.Places{}, model.Wash{Name: "Toad day"}))
	o.Trips.Trips(false)
	assert.Equal(t, []string{"my wash", "Toad day"}, o.Trips.Names())
}

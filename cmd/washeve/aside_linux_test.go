package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/model/store/disktest"
)

// unsaved is a keeper of the example's files with another wash, whose work was edited: the
// rig, the wash in hand and the other one.
func unsaved(t *testing.T) (k *keeper, work library, others []*stock.Kept) {
	t.Helper()
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	text, err := os.ReadFile(filepath.Join(dir, "washes", "example.toml"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "washes", "other.toml"), text, 0o600))
	s := store.Open(dir)
	lib, faults := s.Load()
	require.Empty(t, faults)
	require.Len(t, lib.Washes, 2)
	work = library{Library: lib, keep: s}
	p := &program{streams: streams{clock: stopped{noon}, env: func(string) string { return "" }}, dir: dir}
	k = p.options(work, lib.Washes[0].Wash, p.bookBeside()).Keeper.(*keeper)
	work.Rig.Vehicles = append([]model.Vehicle(nil), lib.Rig.Vehicles...)
	work.Rig.Vehicles[0].Length = quantity.Typed(quantity.Must[quantity.Length]("38 ft"), "38 ft")
	other := lib.Washes[1]
	other.Wash.Name = "another"
	return k, work, []*stock.Kept{{File: other.File, Wash: other.Wash}}
}

// What waits for a save that failed is kept aside as well, and where one copy cannot be
// made, the others are, and all is told.
func TestWhatCanBeKeptAsideIs(t *testing.T) {
	if !disktest.InChild(t) {
		return
	}
	k, work, others := unsaved(t)
	rig := filepath.Join(work.keep.Dir(), "rig.toml")
	text, err := os.ReadFile(rig)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(rig, append(text, "# mine\n"...), 0o600))
	require.ErrorIs(t, k.Save(work.Rig, work.Places, work.Washes[0].Wash), store.ErrChanged)
	k.NotSaved(others)

	var copies []string
	var lost error
	disktest.WithRoom(t, 4000, func() { copies, lost = k.aside() }) // the rig is larger, a wash is not
	require.ErrorContains(t, lost, "rig.toml.bak-1 was not saved: ")
	require.Equal(t, []string{"washes/other.toml.bak-1"}, copies)
	assert.Contains(t, read(t, filepath.Join(work.keep.Dir(), copies[0])), `name = "another"`)
	told := notAside(copies, lost).Error()
	assert.Contains(t, told, "since not all of it could be kept in copies: ")
	assert.Contains(t, notAside(nil, lost).Error(), "since no copy of it could be kept: ")
	assert.True(t, strings.HasSuffix(told, "; what could be kept is in washes/other.toml.bak-1"), told)

	copies, lost = k.aside()
	require.NoError(t, lost)
	assert.Equal(t, []string{"rig.toml.bak-1", "washes/other.toml.bak-1"}, copies)
	assert.Contains(t, read(t, rig+".bak-1"), `length = "38 ft"`)
}

// A wash that cannot be saved keeps no other one from it, and both are told.
func TestAWashThatCannotBeSavedKeepsNoOtherFromIt(t *testing.T) {
	k, work, others := unsaved(t)
	dir := work.keep.Dir()
	require.NoError(t, k.Save(work.Rig, work.Places, work.Washes[0].Wash))
	for _, name := range []string{"one", "two"} {
		gone := others[0].Wash
		gone.Name = name
		others = append([]*stock.Kept{{File: "../" + name + ".toml", Wash: gone}}, others...)
	}
	err := k.SaveOthers(others)
	require.ErrorContains(t, err, "one.toml")
	require.ErrorContains(t, err, "two.toml")
	assert.Contains(t, read(t, filepath.Join(dir, "washes", "other.toml")), `name = "another"`)
}

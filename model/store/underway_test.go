package store

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

func someUnderway() model.Underway {
	at := model.Instant{Wall: time.Date(2026, 6, 12, 8, 15, 0, 250e6, time.FixedZone("", -6*3600)), Boot: "5f1c", Up: 81234250 * time.Millisecond}
	return model.Underway{
		ID: "1k9mz3q7h4v8c2xd", Plan: model.WashDone{Plan: "Friday wash", Place: "“home”, 北", PlannedDI: quantity.Some(24.1 * quantity.Gallon)},
		Limit:   quantity.Some(quantity.PPM(10, quantity.ScaleNaCl)),
		Outlook: model.BedLeft{Mid: quantity.Some(132.123456789 * quantity.Gallon), Chance: quantity.Some(quantity.Fraction(0.93))},
		Steps: []model.DayStep{
			{Kind: model.SetUp, Stage: "set up"},
			{Kind: model.Work, Stage: "rinse", Face: model.Left, Water: model.Softened, Softener: model.Yes, Bed: model.No, Flow: quantity.Some(1.3 * quantity.GPM), Volume: quantity.Some(7.5 * quantity.Gallon), Duration: quantity.Some(361 * quantity.Second)},
		},
		Deeds: []model.Deed{{Does: model.WaterOn, At: at}, {Does: model.TakeRead, At: at, Reading: quantity.Some(quantity.PPM(3, quantity.Scale442))}},
	}
}

func TestAWashUnderWayIsReadAsItWasWritten(t *testing.T) {
	dir := t.TempDir()
	u := someUnderway()
	require.NoError(t, Open(dir).SaveUnderway(u))
	s := Open(dir)
	again, there, faults := s.Underway()
	require.Empty(t, faults)
	require.True(t, there)
	assert.True(t, holds(whole(underwaySchema(&u)), &again, underwaySchema))
	assert.True(t, u.Deeds[0].At.Wall.Equal(again.Deeds[0].At.Wall))
	assert.Equal(t, u.Deeds[0].At.Up, again.Deeds[0].At.Up)
	assert.InDelta(t, float64(u.Outlook.Mid.Or(0)), float64(again.Outlook.Mid.Or(0)), 1e-12)

	u.Deeds = append(u.Deeds, model.Deed{Does: model.Finish, At: u.Deeds[0].At})
	require.NoError(t, s.SaveUnderway(u))
	assert.Empty(t, Check(filepath.Join(dir, underwayFile)))
	require.NoError(t, s.CloseUnderway())
	_, there, faults = s.Underway()
	assert.False(t, there)
	assert.Empty(t, faults)
}

func TestTwoProgramsDoNotGoOnWithOneWash(t *testing.T) {
	dir := t.TempDir()
	a, b := Open(dir), Open(dir)
	require.NoError(t, a.SaveUnderway(someUnderway()))
	_, _, faults := b.Underway()
	require.Empty(t, faults)
	u := someUnderway()
	u.Deeds = nil
	require.NoError(t, b.SaveUnderway(u))
	assert.ErrorIs(t, a.SaveUnderway(someUnderway()), ErrChanged)
}

func TestAWashUnderWayThatDoesNotReadIsToldAndKept(t *testing.T) {
	for text, want := range map[string]string{
		"":                         "id",
		"format = 1\nid = \"x\"\n": "there is none, so nothing to go on with",
		"format = 9\n":             "newer washeve",
		"format = 1\nid = \"x\"\n[[step]]\nkind = \"dance\"\n":                                       "underway.toml:4: kind",
		"format = 1\nid = \"x\"\n[[step]]\nkind = \"work\"\n[[deed]]\ndoes = \"next\"\nat = \"8\"\n": "is no moment",
		"\x00\x01": "underway.toml",
	} {
		dir := t.TempDir()
		path := filepath.Join(dir, underwayFile)
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		s := Open(dir)
		_, there, faults := s.Underway()
		assert.True(t, there)
		require.NotEmpty(t, faults, "%q", text)
		told := ""
		for _, f := range faults {
			told += f.Error() + "\n"
		}
		assert.Contains(t, told, want)
		kept, err := s.SetUnderwayAside(time.Date(2026, 6, 12, 8, 0, 0, 0, time.UTC))
		require.NoError(t, err)
		assert.NotEmpty(t, Check(filepath.Join(dir, kept)))
		data, err := os.ReadFile(filepath.Join(dir, kept))
		require.NoError(t, err)
		assert.Equal(t, text, string(data))
		assert.NoFileExists(t, path)
	}
}

func FuzzUnderway(f *testing.F) {
	u := someUnderway()
	f.Add(whole(underwaySchema(&u)))
	f.Add([]byte("format = 1\n[[deed]]\nat = \"2026-06-12T08:15:00.250-06:00 up 1 ms boot a\"\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var u model.Underway
		d := parse(underwayFile, data)
		if len(d.underway(&u)) > 0 {
			return
		}
		assert.True(t, holds(whole(underwaySchema(&u)), &u, underwaySchema), "what reads well is written so that it reads the same")
	})
}

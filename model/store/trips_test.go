package store

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
)

func TestBadTrips(t *testing.T) {
	text := `format = 1
name = "June"
spare = 2
[[stop]]
date = "2026-06-31"
[[stop]]
place = "home"
tds_low = "200 ppm NaCl"
[[stop]]
date = 2026-06-10
tds_low = "400 ppm NaCl"
tds_high = "200 ppm NaCl"
water_from = "tank only"
[[wash]]
date = 2026-06-09
flow = "1 gpm"
[[wash]]
date = 2026-06-11
like = "Friday wash"
dirt = "awful"
[[wash.stage]]
name = "rinse"
water = "di"
[[change]]
price = "185"
`
	assert.Equal(t, []string{
		`not read: june.toml:3: spare: is no key at the top of this file, and is not read`,
		`june.toml:5: date: "2026-06-31" is no day of the calendar; write the date like 2026-06-12`,
		`june.toml:6: date: is missing; write for example date = "2026-06-12"`,
		`june.toml:7: place: "home" has a water of its own; leave out the place or the band of tds`,
		`june.toml:9: on_hand: is missing, and this stop has its tank only; write for example on_hand = "100 gal", or "380 L"`,
		`june.toml:12: tds_high: "200 ppm NaCl" is under tds_low, "400 ppm NaCl"; change them about`,
		`june.toml:15: date: 2026-06-09 is before the first stop, so its water is not known; add a [[stop]] by then`,
		`june.toml:16: flow: goes with di, which is missing; the flow of a wash is its sprayer's`,
		`june.toml:19: like: goes with no stages of its own: leave out one of the two`,
		`june.toml:20: dirt: "awful" is none of the choices; dirt: light, usual or heavy`,
		`june.toml:24: date: is missing; write for example date = "2026-06-20"`,
		`june.toml:25: price: "185" has no currency; write the price like "$185" or "185 EUR"`,
	}, told(place(t, "june.toml", text)))
}

func TestTripsLookUpTheirNames(t *testing.T) {
	s, lib := written(t)
	require.Len(t, lib.Trips, 1)
	path := filepath.Join(s.Dir(), "trips", "example.toml")
	assert.Empty(t, Check(path))
	data := strings.Replace(text(t, s, "trips/example.toml"), `like = "Saturday wash"`, `like = "Sunday wash"`, 1)
	data = strings.Replace(data, `place = "Fernwater"`, `place = "Ferrous"`, 1)
	require.NoError(t, os.WriteFile(path, []byte(data), 0o600))
	assert.Equal(t, []string{
		`example.toml:48: place: no place is called "Ferrous"; there is Juniper Flats, Saltbush Wells, Fernwater`,
		`example.toml:60: like: no wash is called "Sunday wash"; there is Saturday wash, example`,
	}, told(path))
	trip, faults := ReadTrip(path, lib)
	assert.Len(t, faults, 2)
	assert.Len(t, trip.Stops, 4)
	assert.Len(t, trip.Washes[4].Stages, 2)
}

func TestWashLike(t *testing.T) {
	lib := Example()
	for _, name := range []string{"saturday wash", "Example"} {
		wash, found := lib.WashLike(name)
		assert.True(t, found, name)
		assert.Equal(t, "Saturday wash", wash.Name)
	}
	for _, name := range []string{"", "none"} {
		_, found := lib.WashLike(name)
		assert.False(t, found, name)
	}
}

// Each wash is offered once, by a name that finds it.
func TestEachWashIsAChoiceOnce(t *testing.T) {
	lib := Library{Washes: []WashFile{
		{File: "my-wash.toml", Wash: model.Wash{Name: "my wash"}}, {File: "pickup.toml", Wash: model.Wash{Name: "pickup"}},
		{File: "pickup-2.toml", Wash: model.Wash{Name: "Pickup"}}, {File: "car.toml"},
	}}
	assert.Equal(t, []string{"my wash", "pickup", "pickup-2", "car"}, lib.WashChoices())
	for i, name := range lib.WashChoices() {
		w, ok := lib.WashLike(name)
		assert.True(t, ok && w.Name == lib.Washes[i].Wash.Name, name)
	}
}

// Whatever is changed in a trip, what is read back is what was meant, and the
// comments stay.
func TestRandomTrips(t *testing.T) {
	original := exampleBytes(t, "trips/example.toml")
	comments := strings.Count(string(original), "#")
	rapid.Check(t, func(t *rapid.T) {
		trip := decoded(original, tripSchema)
		for range rapid.IntRange(0, 6).Draw(t, "edits") {
			all := flat(tripSchema(&trip).items())
			it := all[rapid.IntRange(0, len(all)-1).Draw(t, "item")]
			f := it.fields[rapid.IntRange(0, len(it.fields)-1).Draw(t, "field")]
			word := rapid.SampledFrom(append([]string{"", f.Example}, f.Choices...)).Draw(t, "word")
			if f.Required && word == "" {
				continue
			}
			require.NoError(t, f.Set(word))
		}
		if rapid.Bool().Draw(t, "add") {
			trip.Changes = append(trip.Changes, model.ResinChange{})
			require.NoError(t, trip.Changes[0].Fields()[0].Set("2026-06-19"))
		}
		data, _, reason, err := edited("trips/example.toml", original, &trip, tripSchema, nil)
		require.NoError(t, err)
		if reason == "" { // one of two washes on the same day cannot be told from a new one
			require.GreaterOrEqual(t, strings.Count(string(data), "#"), comments-8)
		}
		require.True(t, holds(data, &trip, tripSchema))
	})
}

func TestNewTripFile(t *testing.T) {
	s, _ := written(t)
	assert.Equal(t, "june-on-the-road.toml", s.NewTripFile("June on the road!"))
	assert.Equal(t, "trip.toml", s.NewTripFile(""))
	require.NoError(t, s.SaveTrip("trip.toml", model.Trip{Name: "one"}))
	assert.Equal(t, "trip-2.toml", s.NewTripFile(""))
	assert.ErrorContains(t, s.SaveTrip("../x.toml", model.Trip{}), "june.toml")
	lib, faults := s.Load()
	assert.Empty(t, faults)
	require.Len(t, lib.Trips, 2)
	assert.Equal(t, []string{"example.toml", "trip.toml"}, []string{lib.Trips[0].File, lib.Trips[1].File})
}

// What was written here is taken away, unless somebody has changed it meanwhile.
func TestDropTrip(t *testing.T) {
	s, _ := written(t)
	require.NoError(t, s.DropTrip("never.toml"), "one that was never written is none")
	path := filepath.Join(s.Dir(), "trips", "new.toml")
	require.NoError(t, s.SaveTrip("new.toml", model.Trip{Name: "one"}))
	require.NoError(t, s.DropTrip("new.toml"))
	require.NoFileExists(t, path)
	require.NoError(t, s.SaveTrip("new.toml", model.Trip{Name: "two"}), "and can be written again")
	assert.Contains(t, text(t, s, "trips/new.toml"), `name = "two"`)

	mine := []byte("format = 1\nname = \"mine\"\n")
	require.NoError(t, os.WriteFile(path, mine, 0o600))
	require.ErrorIs(t, s.DropTrip("new.toml"), ErrChanged)
	got, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, mine, got)
	assert.ErrorContains(t, s.DropTrip("../rig.toml"), "june.toml")
}

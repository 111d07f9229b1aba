package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
)

func TestPositions(t *testing.T) {
	for text, want := range map[string]float64{
		"38.6 N": 38.6, "38.6n": 38.6, "12 S": -12, "38° 34' 23\" N": 38 + 34.0/60 + 23.0/3600, "38°34′23″N": 38 + 34.0/60 + 23.0/3600,
		"38 deg 30 min n": 38.5, "-38.6 deg": -38.6, "38.6": 38.6, "-38.6": -38.6, "+38": 38, "\u221238.6": -38.6, "38,6": 38.6, "38.6°": 38.6, "N 38° 34.5'": 38.575, "90 N": 90, "0 S": 0,
	} {
		got, err := ParseLatitude(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got.Degrees(), 1e-12, text)
	}
	west, err := ParseLongitude("109.5 W")
	require.NoError(t, err)
	assert.InDelta(t, -109.5, west.Degrees(), 1e-12)
	for _, text := range []string{"", "38.6.1", "- 38.6", "38,600", "N 38 S", "91", "91 N", "-1 N", "38 61 N", "N", "38 N S", "1 2 3 4 N", "NaN N", "1e1 N", "1e1", "0x1 N", "inf deg", "38.6 E", "38 ft"} {
		_, err := ParseLatitude(text)
		assert.ErrorContains(t, err, "38.6 N", text)
	}
	_, err = ParseLongitude("180.1 E")
	assert.EqualError(t, err, `"180.1 E" is past 180 degrees; write the longitude like 109.5 W or -109.5`)
	_, err = ParseLongitude("dock")
	assert.EqualError(t, err, `"dock" is no number of degrees, with a sign or with E or W; write the longitude like 109.5 W or -109.5`)
	_, err = ParseLatitude("33.45, -112.07")
	assert.EqualError(t, err, `"33.45, -112.07" is latitude and longitude in one; each has a line of its own; write the latitude like 38.6 N or 38.6`)
}

// What maps and phones copy is parted where it reads in one way only.
func TestAPositionIsParted(t *testing.T) {
	for text, want := range map[string][2]string{
		"33.45, -112.07":          {"33.45", "-112.07"},
		"33.45,-112.07":           {"33.45", "-112.07"},
		"33.45,112.07":            {"33.45", "112.07"},
		"33.45 -112.07":           {"33.45", "-112.07"},
		"33,45, -112,07":          {"33,45", "-112,07"},
		"33,45,-112,07":           {"33,45", "-112,07"},
		"33,45; -112,07":          {"33,45", "-112,07"},
		"33, -112":                {"33", "-112"},
		"33° 27' N, 112° 4' W":    {"33° 27' N", "112° 4' W"},
		"33°27′0″N 112°4′12″W":    {"33°27′0″N", "112°4′12″W"},
		"N 33.45 W 112.07":        {"N 33.45", "W 112.07"},
		"33.45° N, 112.07° W":     {"33.45° N", "112.07° W"},
		"\u22123.5, \u2212112.07": {"\u22123.5", "\u2212112.07"},
	} {
		north, east, ok := SplitPosition(text)
		require.True(t, ok, text)
		assert.Equal(t, want, [2]string{north, east}, text)
	}
	for _, text := range []string{"", "33.45", "33,45", "33,112", "33,112.07", "33 112", "33 27", "91.5, 10.5", "33.45, 181", "33.45, -112.07, 5", "33 N, 34 S", "-112.07, 33.45", "33.45,", "\xff,\xff"} {
		_, _, ok := SplitPosition(text)
		assert.False(t, ok, text)
	}
	assert.Equal(t, []string{"38.6 N", "38.6 S", "109.5 W", "109.5 E", "109,5 W", "38° 34' N"}, []string{
		WithSide("+38.6", "NS"), WithSide("-38.6", "NS"), WithSide("-109.5 deg", "EW"), WithSide("109.5", "EW"), WithSide("109,5 W", "EW"), WithSide("38° 34' N", "NS"),
	})
	assert.Equal(t, "for the west write 112.07 W", WestNote(" 112,07"))
	for _, said := range []string{"-112.07", "+112.07", "112.07 E", ""} {
		assert.Empty(t, WestNote(said), said)
	}
}

// Positions as pages, messages and maps hand them over: geo URIs like the examples of
// RFC 5870, and degrees, minutes and seconds as ISO 6709 shows them to people.
func TestPastedPositions(t *testing.T) {
	for text, want := range map[string][2]string{
		"geo:13.4125,103.8667":                   {"13.4125", "103.8667"},
		"geo:48.2010,16.3695,183":                {"48.2010", "16.3695"},
		"geo:48.198634,16.371648;crs=wgs84;u=40": {"48.198634", "16.371648"},
		"geo:90,-22.43;crs=WGS84":                {"90", "-22.43"},
		"geo:66,30;u=6.500;FOo=this%2dthat":      {"66", "30"},
		"GEO:45.1,-93.2":                         {"45.1", "-93.2"},
		"50°40′46″N 95°48′26″W":                  {"50°40′46″N", "95°48′26″W"},
		"(45.1, -93.2)":                          {"45.1", "-93.2"},
		" [ 45.1 N, 93.2 W ] ":                   {"45.1 N", "93.2 W"},
		"45.1° N, 93.2° W":                       {"45.1° N", "93.2° W"},
	} {
		north, east, ok := SplitPosition(text)
		require.True(t, ok, text)
		assert.Equal(t, want, [2]string{north, east}, text)
	}
	for _, text := range []string{"geo:", "geo:45.1", "geo:91,0", "geo:45.1,-93.2;crs=nad27", "geo:45,1,-93,2,5,6", "(45.1, -93.2", "()", "geo:45.1,-93.2,x"} {
		_, _, ok := SplitPosition(text)
		assert.False(t, ok, text)
	}
}

func FuzzSplitPosition(f *testing.F) {
	for _, seed := range []string{"33.45, -112.07", "33,45,-112,07", "33° 27' N 112° 4' W", "\xff;", "1;2;3", "geo:1.5,2;u=3", "(1.5, 2)"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		north, east, ok := SplitPosition(text)
		if !ok {
			return
		}
		for _, part := range []struct {
			text, sides string
			read        func(string) (quantity.Angle, error)
		}{{north, "NS", ParseLatitude}, {east, "EW", ParseLongitude}} {
			got, err := part.read(part.text)
			require.NoError(t, err)
			again, err := part.read(WithSide(part.text, part.sides))
			require.NoError(t, err, "a side that is written out means the same")
			require.Equal(t, got, again)
		}
	})
}

func FuzzParsePosition(f *testing.F) {
	for _, seed := range []string{"38.6 N", "38° 34' S", "-109 deg", "'", "°n", "1e400 N"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := ParseLatitude(text)
		if err != nil {
			return
		}
		require.True(t, got >= -90*quantity.Degree && got <= 90*quantity.Degree)
		again, err := ParseLatitude(quantity.Exact(got, quantity.US))
		require.NoError(t, err)
		require.Equal(t, got, again)
	})
}

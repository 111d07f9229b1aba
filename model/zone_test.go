package model

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The names of the zone data that are abbreviations without summer time are told as such.
func TestAZoneWithoutSummerTimeIsTold(t *testing.T) {
	for _, name := range []string{"EST", "MST", " HST "} {
		zone, err := ParseZone(name)
		require.NoError(t, err)
		_, winter := time.Date(2026, 1, 1, 0, 0, 0, 0, zone).Zone()
		_, summer := time.Date(2026, 7, 1, 0, 0, 0, 0, zone).Zone()
		assert.Equal(t, winter, summer, name)
		_, like, _ := strings.Cut(ZoneNote(name), "like ")
		better, err := ParseZone(like)
		require.NoError(t, err, like)
		_, standard := time.Date(2026, 1, 1, 0, 0, 0, 0, better).Zone()
		_, saving := time.Date(2026, 7, 1, 0, 0, 0, 0, better).Zone()
		assert.Equal(t, winter, standard, like)
		assert.Greater(t, saving, standard, like)
	}
	for _, name := range []string{"America/Phoenix", "MST7MDT", "UTC", ""} {
		assert.Empty(t, ZoneNote(name), name)
	}
}

func TestZones(t *testing.T) {
	for text, want := range map[string]string{
		"America/Denver": "America/Denver", " america/new york\t": "America/New_York", "UTC": "UTC", "Pacific/Apia": "Pacific/Apia",
		"africa/dar es salaam": "Africa/Dar_es_Salaam",
	} {
		got, err := ParseZone(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got.String())
	}
	for _, text := range []string{"", "Local", "local", "Flagstaff", "../etc/passwd", "/etc/localtime", "America", "a\x00b", "GMT+25"} {
		_, err := ParseZone(text)
		assert.ErrorContains(t, err, "America/Denver", text)
	}
}

// A city alone is the zone that is named after it, where there is one; where there are
// several, they are named.
func TestACityAloneIsItsZone(t *testing.T) {
	for text, want := range map[string]string{
		"Phoenix": "America/Phoenix", "los angeles": "America/Los_Angeles", " OSLO ": "Europe/Oslo", "port of spain": "America/Port_of_Spain",
		"port-au-prince": "America/Port-au-Prince", "Vincennes": "America/Indiana/Vincennes", "indianapolis": "America/Indianapolis",
		"Honolulu": "Pacific/Honolulu", "america/denver": "America/Denver",
	} {
		got, err := ParseZone(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got.String())
		assert.Equal(t, want, ZoneName(text))
	}
}

// Two names of the same time are one; letters that are of zones whose clocks differ are
// refused with their names.
func TestAZoneOfSeveralNamesIsTakenWhereTheyAreOne(t *testing.T) {
	for text, want := range map[string]string{"nicosia": "Asia/Nicosia", "Istanbul": "Asia/Istanbul", "kwajalein": "Kwajalein", "samoa": "Pacific/Samoa"} {
		assert.Equal(t, want, ZoneName(text))
	}
	_, err := ParseZone("CST")
	assert.EqualError(t, err, `"CST" fits US/Central and Canada/Saskatchewan; write the time zone like US/Central`)
	assert.Equal(t, "CST", ZoneName("CST"))
	for _, letters := range []string{"AST", "aest"} {
		_, err := ParseZone(letters)
		assert.ErrorContains(t, err, " fits ")
	}
}

// What the zones of a country are called is read as well, and so are letters that mean one.
func TestAZoneByItsNameInACountry(t *testing.T) {
	for text, want := range map[string]string{
		"Arizona": "US/Arizona", "hawaii": "US/Hawaii", "us/arizona": "US/Arizona", "Pacific": "US/Pacific", "eastern": "US/Eastern", "Central": "US/Central",
		"Mountain Time": "US/Mountain", "pacific time zone": "US/Pacific", "saskatchewan": "Canada/Saskatchewan", "newfoundland": "Canada/Newfoundland",
		"PST": "US/Pacific", "pdt": "US/Pacific", "EDT": "US/Eastern", "akst": "US/Alaska", "est": "EST", "mst": "MST", "cet": "CET", "CEST": "CET", "utc": "UTC", "gmt": "GMT", "bst": "Europe/London", "nzdt": "NZ",
	} {
		zone, err := ParseZone(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, zone.String(), text)
	}
	for _, text := range []string{"time", "zone", "time zone", "US", "Canada", "Utah"} {
		_, err := ParseZone(text)
		assert.Error(t, err, text)
	}
}

// Letters are those that the clocks of their zones show, in one half of the year.
func TestLettersOfAZoneAreThoseOfItsClock(t *testing.T) {
	for _, letters := range []string{"PST", "PDT", "MDT", "CDT", "EDT", "AKST", "AKDT", "CST", "AST", "ADT", "NST", "NDT", "CEST", "EEST", "BST", "AEST", "AEDT", "AWST", "NZST", "NZDT"} {
		names := zonesOfLetters(letters)
		require.NotEmpty(t, names, letters)
		for _, name := range names {
			zone, err := time.LoadLocation(name)
			require.NoError(t, err, name)
			winter, _ := time.Date(2026, 1, 15, 12, 0, 0, 0, zone).Zone()
			summer, _ := time.Date(2026, 7, 15, 12, 0, 0, 0, zone).Zone()
			assert.Contains(t, []string{winter, summer}, letters, name)
		}
	}
}

func FuzzParseZone(f *testing.F) {
	for _, seed := range []string{"America/Denver", "etc/gmt+5", "oslo", "pacific time", "cst", "..", "\x00", "/"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		zone, err := ParseZone(text)
		if err != nil {
			return
		}
		again, err := ParseZone(zone.String())
		require.NoError(t, err)
		require.Equal(t, zone.String(), again.String())
	})
}

// A city that no zone is named after is refused with words that work, and a place that is
// stated has the word of its own longitude for example.
func TestAZoneThatIsRefusedTellsWhatWorks(t *testing.T) {
	_, err := ParseZone("Spokane")
	require.Error(t, err)
	for _, word := range []string{"Pacific", "Mountain", "Central", "Eastern", "America/Denver", "Europe/Oslo"} {
		assert.Contains(t, err.Error(), word)
		_, err := ParseZone(word)
		assert.NoError(t, err, word)
	}
	// Near Spokane, Denver, Chicago, New York and Oslo, and nowhere.
	for position, want := range map[string]string{
		"47.66 N, 117.43 W": "Pacific", "39.74 N, 104.98 W": "Mountain", "41.85 N, 87.65 W": "Central", "40.71 N, 74.01 W": "Eastern",
		"59.92 N, 10.75 E": "America/Denver", "": "America/Denver",
	} {
		var p Place
		north, east, _ := SplitPosition(position)
		for _, f := range p.Fields() {
			switch f.Key {
			case LatitudeKey:
				require.NoError(t, f.Set(north))
			case LongitudeKey:
				require.NoError(t, f.Set(east))
			}
		}
		for _, f := range p.Fields() {
			if f.Key == ZoneKey {
				assert.Equal(t, want, f.Example, position)
			}
		}
	}
}

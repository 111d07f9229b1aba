package model

import (
	"slices"
	"strings"
	"sync/atomic"
	"time"
	_ "time/tzdata" // so that a zone is known on a machine that has no zone files

	"washeve/model/quantity"
)

// ZoneKey is the key of the time zone in a place.
const ZoneKey = "zone"

// ParseZone finds a time zone by its name in the zone data, such as America/Denver; by the
// city alone, where one zone is named after it; by what the United States or Canada call
// theirs, such as Arizona or Pacific time; or by letters such as PDT, where they mean one.
// Small letters and spaces do too. Errors are of type [*quantity.ParseError].
func ParseZone(text string) (*time.Location, error) {
	const example = "Pacific, Mountain, Central or Eastern, or like America/Denver or Europe/Oslo"
	zone, several := findZone(text)
	switch {
	case zone != nil:
		return zone, nil
	case len(several) > 0:
		return nil, &quantity.ParseError{What: "time zone", Text: text, Reason: "fits " + strings.Join(several, " and "), Example: several[0]}
	}
	return nil, &quantity.ParseError{What: "time zone", Text: text, Reason: "is no time zone, and none is named after it", Example: example}
}

// zoneExample is a zone for example at a place: in the United States that which most places
// of the longitude keep, and elsewhere, or where the place is not stated, any.
func (p *Place) zoneExample() string {
	north, northGiven := p.Latitude.Get()
	east, eastGiven := p.Longitude.Get()
	if !northGiven || !eastGiven || north < 24*quantity.Degree || north > 50*quantity.Degree || east < -125*quantity.Degree || east > -67*quantity.Degree {
		return "America/Denver"
	}
	for _, zone := range []struct {
		name string
		west quantity.Angle // of its eastern border, in the main
	}{{"Pacific", 114}, {"Mountain", 102}, {"Central", 87}} {
		if east < -zone.west*quantity.Degree {
			return zone.name
		}
	}
	return "Eastern"
}

// foundZone is what was found of a text.
type foundZone struct {
	text    string
	zone    *time.Location
	several []string
}

// lastZone is what was found last: a text that is typed is asked about several times at every
// key, and one that is no zone yet is looked for in every region.
var lastZone atomic.Pointer[foundZone]

// findZone is the zone that a text means, or else the names of several that it fits.
func findZone(text string) (zone *time.Location, several []string) {
	if last := lastZone.Load(); last != nil && last.text == text {
		return last.zone, last.several
	}
	zone, several = searchZone(text)
	lastZone.Store(&foundZone{text, zone, several})
	return zone, several
}

func searchZone(text string) (zone *time.Location, several []string) {
	name := strings.ReplaceAll(tidy(text), " ", "_")
	if zone := zoneNamed(name); zone != nil || name == "" || strings.Contains(name, "/") {
		return zone, nil
	}
	city := capitals(withoutTime(name))
	for _, regions := range zoneRegions() {
		var found []*time.Location
		for _, region := range regions {
			if zone, err := time.LoadLocation(region + "/" + city); err == nil {
				found = append(found, zone)
			}
		}
		if len(found) > 0 {
			return oneOf(found)
		}
	}
	var found []*time.Location
	for _, name := range zonesOfLetters(strings.ToUpper(name)) {
		found = append(found, zoneNamed(name))
	}
	return oneOf(found)
}

// withoutTime is what stands before "time" or "time zone" in a name.
func withoutTime(name string) string {
	for _, end := range []string{"_zone", "_time"} {
		if cut := len(name) - len(end); cut > 0 && strings.EqualFold(name[cut:], end) {
			name = name[:cut]
		}
	}
	return name
}

// zoneRegions are what the names of zones begin with before a city; those of the second list
// repeat cities of the first, as America/Indiana/Indianapolis does. The last ones are of
// countries that call their zones by other names: Arizona, Eastern.
func zoneRegions() [][]string {
	return [][]string{
		{"Africa", "America", "Antarctica", "Arctic", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific"},
		{"America/Argentina", "America/Indiana", "America/Kentucky", "America/North_Dakota"},
		{"US"},
		{"Canada"},
	}
}

// zonesOfLetters are the zones whose clocks are called by some letters that are no name of
// the zone data: those with summer time, and one without it where there are such, too.
func zonesOfLetters(letters string) []string {
	return map[string][]string{
		"PST": {"US/Pacific"}, "PDT": {"US/Pacific"}, "MDT": {"US/Mountain"}, "CDT": {"US/Central"}, "EDT": {"US/Eastern"},
		"AKST": {"US/Alaska"}, "AKDT": {"US/Alaska"}, "CST": {"US/Central", "Canada/Saskatchewan"},
		"AST": {"America/Halifax", "America/Puerto_Rico"}, "ADT": {"America/Halifax"}, "NST": {"Canada/Newfoundland"}, "NDT": {"Canada/Newfoundland"},
		"CEST": {"CET"}, "EEST": {"EET"}, "BST": {"Europe/London"},
		"AEST": {"Australia/Sydney", "Australia/Brisbane"}, "AEDT": {"Australia/Sydney"}, "AWST": {"Australia/Perth"}, "NZST": {"NZ"}, "NZDT": {"NZ"},
	}[letters]
}

// oneOf is the one zone that was found, or the first where all keep the same time; else the
// names of all.
func oneOf(found []*time.Location) (zone *time.Location, several []string) {
	if len(found) == 0 {
		return nil, nil
	}
	alike := true
	for _, other := range found {
		alike = alike && keepSameTime(found[0], other)
		several = append(several, other.String())
	}
	if alike {
		return found[0], nil
	}
	return nil, several
}

// keepSameTime tells that the clocks of two zones have shown the same since the year 2000, and
// are to for as long as the rules of today hold.
func keepSameTime(a, b *time.Location) bool {
	const week = 7 * 24 * time.Hour
	from, to := time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC), time.Date(2040, 1, 1, 0, 0, 0, 0, time.UTC)
	for at := from; at.Before(to); at = at.Add(week) {
		_, offA := at.In(a).Zone()
		if _, offB := at.In(b).Zone(); offA != offB {
			return false
		}
	}
	return true
}

// zoneNamed is the zone of that name, in whatever letters; nil where there is none. "Local"
// is this machine's zone, which is not always the place's.
func zoneNamed(name string) *time.Location {
	for _, spelling := range slices.Compact([]string{name, capitals(name), strings.ToUpper(name)}) {
		if zone, err := time.LoadLocation(spelling); err == nil && spelling != "" && !strings.EqualFold(spelling, "Local") {
			return zone
		}
	}
	return nil
}

// ZoneName is the name in the zone data of the zone that a text means; any other text is as
// it was.
func ZoneName(text string) string {
	if zone, _ := findZone(text); zone != nil {
		return zone.String()
	}
	return text
}

// ZoneNote says of a zone that is an abbreviation, and whose clocks never change, how one
// with summer time is written: MST is the time of Phoenix, and most who type it mean
// Denver. "" of any other text.
func ZoneNote(text string) string {
	like, known := map[string]string{"EST": "America/New_York", "MST": "America/Denver", "HST": "America/Adak"}[strings.ToUpper(tidy(text))]
	if !known {
		return ""
	}
	return "no summer time; where clocks change, write one like " + like
}

// capitals writes "america/new_york" as the zone data does, which keeps some words small:
// Africa/Dar_es_Salaam, America/Port_of_Spain, America/Port-au-Prince.
func capitals(name string) string {
	letters := []byte(strings.ToLower(name))
	for i := 0; i < len(letters); {
		end := i
		for end < len(letters) && strings.IndexByte("/_-", letters[end]) < 0 {
			end++
		}
		inside := i > 0 && letters[i-1] != '/'
		if small := inside && slices.Contains([]string{"es", "of", "au"}, string(letters[i:end])); !small && end > i && letters[i] >= 'a' && letters[i] <= 'z' {
			letters[i] -= 'a' - 'A'
		}
		i = end + 1
	}
	if country, rest, among := strings.Cut(string(letters), "/"); among && country == "Us" {
		return "US/" + rest
	}
	return string(letters)
}

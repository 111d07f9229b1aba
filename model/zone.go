package model

import (
	"slices"
	"strings"
	"time"
	_ "time/tzdata" // so that a zone is known on a machine that has no zone files

	"washeve/model/quantity"
)

// ZoneKey is the key of the time zone in a place.
const ZoneKey = "zone"

// ParseZone finds a time zone by its name in the zone data, such as America/Denver, or by
// the city alone, where one zone is named after it; small letters and spaces do too. Errors
// are of type [*quantity.ParseError].
func ParseZone(text string) (*time.Location, error) {
	const example = "America/Denver or Europe/Oslo"
	zone, cities := findZone(text)
	switch {
	case zone != nil:
		return zone, nil
	case len(cities) > 0:
		return nil, &quantity.ParseError{What: "time zone", Text: text, Reason: "fits " + strings.Join(cities, " and "), Example: cities[0]}
	}
	return nil, &quantity.ParseError{What: "time zone", Text: text, Reason: "is no zone of the time zone data, and no city of it", Example: example}
}

// findZone is the zone that a text means, or else the names of several that are named after
// the same city.
func findZone(text string) (zone *time.Location, cities []string) {
	name := strings.ReplaceAll(tidy(text), " ", "_")
	if zone := zoneNamed(name); zone != nil || name == "" || strings.Contains(name, "/") {
		return zone, nil
	}
	for _, regions := range zoneRegions() {
		for _, region := range regions {
			if found, err := time.LoadLocation(region + "/" + capitals(name)); err == nil {
				zone, cities = found, append(cities, found.String())
			}
		}
		if len(cities) > 0 {
			break
		}
	}
	if len(cities) > 1 {
		return nil, cities
	}
	return zone, nil
}

// zoneRegions are what the names of zones begin with before a city; those of the second list
// repeat cities of the first, as America/Indiana/Indianapolis does.
func zoneRegions() [2][]string {
	return [2][]string{
		{"Africa", "America", "Antarctica", "Arctic", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific"},
		{"America/Argentina", "America/Indiana", "America/Kentucky", "America/North_Dakota"},
	}
}

// zoneNamed is the zone of that name, in whatever letters; nil where there is none. "Local"
// is this machine's zone, which is not always the place's.
func zoneNamed(name string) *time.Location {
	for _, spelling := range []string{name, capitals(name)} {
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
	return string(letters)
}

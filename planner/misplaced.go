package planner

import (
	"fmt"
	"math"
	"time"

	"washeve/model"
	"washeve/model/quantity"
)

// Misplaced is the code of the warning that longitude and time zone cannot belong together.
const Misplaced = "longitude-and-zone"

// mostOffNoon is how many hours the clock of a zone, without summer time, may run ahead of
// the sun or behind it. PRACTICE: over the widest of a place where people live, 3.1 h at
// the western border of China, 73.5 E in Asia/Shanghai; of the principal places of the zone
// data (its file zone.tab, 2026) it is 2.3 h, in America/Dawson.
const mostOffNoon = 3.25

// tellMisplaced warns, before all else, of a longitude that cannot be in the place's zone:
// most often the west is meant, and its letter was left out.
func (p *Plan) tellMisplaced(l *ledger, c chosen) {
	longitude, zone := c.place.Longitude.Or(0), c.place.Zone.Or(nil)
	if p.Day == nil || zone == nil {
		return
	}
	offset := standardOffset(zone, c.wash.Date.Or(model.Date{}).Year)
	if offNoon(longitude, offset) <= mostOffNoon {
		return
	}
	meant := "One of the two is wrong."
	if offNoon(-longitude, offset) <= mostOffNoon {
		meant = "Is " + model.LongitudeWords(-longitude) + " meant?"
	}
	words := fmt.Sprintf("Longitude %s cannot be in the zone %s. %s The sun would be highest at %s: every hour of this day is wrong.",
		model.LongitudeWords(longitude), zone, meant, p.Day.Sun.Transit.Format("15:04"))
	l.warnings = append([]Note{wordsNote(Misplaced, words)}, l.warnings...)
}

// offNoon is by how many hours a clock differs from the mean sun: at most 12, since days
// are not told apart, and a zone may keep the date of the other side of the date line.
func offNoon(longitude quantity.Angle, offset time.Duration) float64 {
	const perHour = 15 // degrees
	return math.Abs(math.Remainder(offset.Hours()-longitude.Degrees()/perHour, 24))
}

// standardOffset is how far a zone is ahead of UTC outside its summer time.
func standardOffset(zone *time.Location, year int) time.Duration {
	least := math.MaxInt
	for _, month := range []time.Month{time.January, time.July} {
		_, offset := time.Date(year, month, 1, 12, 0, 0, 0, zone).Zone()
		least = min(least, offset)
	}
	return time.Duration(least) * time.Second
}

package trip

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/layout"
)

// A wash is asked for its stop on a day that has more than one, and only then.
func TestAWashPicksItsStopOfTheDay(t *testing.T) {
	o, k := ours()
	p := play(t, o, "down down enter")
	assert.NotContains(t, p.Seen(), "at the stop", "the sixth has one stop")
	p.Keys("enter '06-08' enter")
	assert.Contains(t, p.Seen(), "at the stop")
	p.Keys("esc")
	assert.Contains(t, p.Seen(), "at Saltbush Wells", "it has its choice, and the list says which")
	p.Keys("enter down down enter")
	for _, words := range []string{"Juniper Flats", "Saltbush Wells", "the last of that day"} {
		assert.Contains(t, p.Seen(), words)
	}
	assert.NotRegexp(t, `(?m)^. 4 `, p.Seen(), "no other is a stop of that day")
	p.Keys("1 esc")
	assert.Equal(t, "Juniper Flats", k.trips[0].Washes[0].Place)
	assert.Contains(t, p.Seen(), "at Juniper Flats")

	// On another day it is named still, that is told, and it can be taken away.
	p.Keys(".")
	assert.Contains(t, p.Seen(), "at Saltbush Wells, not Juniper Flats")
	assert.Contains(t, strings.Join(p.M.told(), " "), `"Juniper Flats" is no stop of 2026-06-09: the vehicle stands at Saltbush Wells then`)
	p.Keys("enter down down delete")
	assert.Empty(t, k.trips[0].Washes[0].Place)
	assert.NotContains(t, p.Seen(), "at the stop", "there is no choice any more")
	assert.Equal(t, "vehicle", p.M.sheet.key())
}

func TestTheStopThatIsAssumedIsSeenInTheList(t *testing.T) {
	o, k := ours()
	day := k.trips[0].Washes[0].Date
	k.trips[0].Stops[0].Date, k.trips[0].Stops[1].Date = day, day
	p := play(t, o, "")
	p.S = layout.Size{W: 140, H: 40}
	assert.Contains(t, p.Seen(), "at Saltbush Wells, assumed")
	assert.Contains(t, strings.Join(p.M.told(), " "), "It is taken to be at Saltbush Wells, the last of them; name its stop where it is another.")
}

// What a wash calls its stop follows it when that gets another name or another place.
func TestAWashFollowsTheNameOfItsStop(t *testing.T) {
	o, k := ours()
	k.trips[0].Stops[2].Date = k.trips[0].Stops[1].Date
	k.trips[0].Washes[1].Date, k.trips[0].Washes[1].Place = k.trips[0].Stops[1].Date, "Amber Mesa"
	p := play(t, o, "")
	p.M = p.M.onto(stopLine, 2)
	p.Keys("enter down enter ctrl+u 'red mesa' enter")
	assert.Equal(t, "red mesa", k.trips[0].Washes[1].Place)
	p.Keys("enter 3")
	assert.Equal(t, "Fernwater", k.trips[0].Washes[1].Place)
	p.Keys("u")
	assert.Equal(t, "red mesa", k.trips[0].Washes[1].Place)
}

// A band that is stated is told, and used, before there is a wash at the stop.
func TestAStopWithoutAWashTellsItsWater(t *testing.T) {
	o, k := ours()
	k.trips[0].Washes = k.trips[0].Washes[:1]
	k.trips[0].Stops[2].Limits = model.NoLimits
	p := play(t, o, "")
	assert.Regexp(t, `Amber Mesa +unknown, 100 to 450 ppm; no wash here`, p.Seen())
	assert.Regexp(t, `Saltbush Wells +410 ppm; no wash here`, p.Seen())
	assert.Regexp(t, `Juniper Flats +\d+ ppm *\n`, p.Seen()+"\n")
	k.trips[0].Stops[1].Date, k.trips[0].Stops[3].Place = quantity.Opt[model.Date]{}, "Ferrous"
	p = play(t, o, "")
	assert.Regexp(t, `no date +Saltbush Wells +not counted: it needs a date`, p.Seen())
	assert.Regexp(t, `Ferrous +water not known: no place is called Ferrous`, p.Seen())
}

// The verdict of a trip that the resin lasts is whole in the least window.
func TestALastingTripSaysSoWhole(t *testing.T) {
	o, k := ours()
	k.trips[0].Washes = k.trips[0].Washes[:1]
	assert.Regexp(t, `(?m)^The resin lasts this trip\. All on spec: \d+ %\.$`, play(t, o, "").Seen())
}

package plan

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/planner"
	"washeve/planner/tag"
)

const (
	firstFacts = "e '33 ft' enter '12 ft' enter '0.5 ft3' enter '210 ppm NaCl' "
	offered    = "Saved. The answer stands. Bed just filled? Type 0 gal, else what it has given."
)

// Where the first plan stands and nobody said how old the bed is, the hand is on that line,
// whichever key took the last fact. What is typed there ends the doubt.
func TestTheFirstPlanAsksForTheAgeOfTheBed(t *testing.T) {
	for _, takes := range []string{"enter", "down", "up", "tab"} {
		o := ours(t)
		o.Example, o.Make = true, planner.Make
		p := play(t, o, firstFacts+takes)
		for _, words := range []string{offered, "› gallons so far   (0 gal)", "has given; zero when freshly", "The bed lasts this wash, if just filled"} {
			assert.Contains(t, p.Seen(), words, takes)
		}
		p.Keys("'0 gal' enter")
		assert.Contains(t, p.Seen(), "The bed lasts this wash")
		assert.NotContains(t, p.Seen(), "if just filled")
		assert.NotContains(t, p.Seen(), offered)
		assert.Equal(t, "0 gal", o.Keeper.(*book).rig.Beds[0].SoFar.Words())
	}
}

// A shape that nobody chose is told as assumed.
func TestTheShapeOfAFirstVehicleIsAssumed(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, firstFacts+"enter v")
	assert.Contains(t, p.Seen(), "shape            (coach) PRACTICE")
	assert.Contains(t, p.M.plan.Assumptions, planner.Assumption{Name: "vehicle shape", Words: "coach", Source: tag.Source{Tag: tag.Practice, Text: "the vehicle this is made for"}})
	p.Keys("down down right")
	assert.Contains(t, p.Seen(), "shape            coach ", "the first word of the list is chosen")
	assert.Equal(t, model.Coach, o.Keeper.(*book).rig.Vehicles[0].Shape)
}

// A bare number as the last fact gets no scale that nobody said, and what it counts as is
// told with the offer.
func TestTheFirstTDSIsGivenNoScale(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, strings.Replace(firstFacts, "210 ppm NaCl", "280", 1))
	assert.Contains(t, p.Says(), "takes it as 280 ppm; no scale said: counted as NaCl")
	p.Keys("enter")
	assert.Contains(t, p.Says(), "no scale said: counted as NaCl. "+offered)
	assert.Equal(t, "280 ppm", p.M.now.places[0].TDS.Words())
	assert.Contains(t, p.M.plan.Assumptions, planner.Assumption{Name: "scale of the ppm shown", Words: "NaCl", Source: tag.Source{Tag: tag.Practice, Text: "most pens"}})
}

// It is an offer: any key acts as ever, and it is not made again.
func TestTheAgeOfTheBedIsOfferedOnce(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, firstFacts+"enter tab")
	assert.Contains(t, p.Seen(), "w WATER")
	assert.NotContains(t, p.Seen(), offered)
	p.Keys("v down down down '34 ft' enter")
	assert.Contains(t, p.Seen(), "v VEHICLE")
	assert.NotContains(t, p.Seen(), offered)
	assert.Contains(t, p.Seen(), "if just filled")

	o = ours(t)
	o.Make = planner.Make // a rig that has a plan: a tank is added, and states what it needs
	p = play(t, o, "b n 'spare' enter '0.7 ft3' enter")
	assert.Contains(t, p.Seen(), "if just filled")
	assert.NotContains(t, p.Seen(), "The answer stands.")

	o.Make = func(model.Rig, model.Places, model.Wash) (planner.Plan, error) {
		return planner.Plan{}, errors.New("the pump is too weak")
	}
	assert.False(t, New(o).begins, "what is mended in a rig that lacks nothing makes no first plan")
}

// What fails is told before what is offered, and an age that is stated is asked for by nobody.
func TestTheAgeOfTheBedIsNotAskedOverTrouble(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, "e b down down down '0 gal' enter v down down down '33 ft' enter '12 ft' enter '0.5 ft3' enter '210 ppm NaCl' enter")
	assert.Contains(t, p.Seen(), "The bed lasts this wash")
	assert.NotContains(t, p.Seen(), "The answer stands.")
	assert.Contains(t, p.Seen(), "› hardness", "the line behind what was needed last")

	o.Keeper.(*book).fail = errors.New("no space left on the disk")
	p = play(t, o, firstFacts+"enter")
	assert.Contains(t, p.Seen(), "no space left on the disk")
	assert.NotContains(t, p.Seen(), "The answer stands.")
}

// By words the same is offered by what states it.
func TestTheFirstPlanByWordsAsksForTheAgeOfTheBed(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	got := said(t, o, "fresh", "walk needed", "33 ft", "12 ft", "0.5 ft3", "210 ppm NaCl", "change bed gallons so far 0 gal", "quit")
	assert.Contains(t, got, "Saved. The answer stands. Bed just filled? Say: change bed gallons so far 0 gal; else what it has given.\n")
	assert.Contains(t, got, "The bed lasts this wash, if just filled")
	assert.Contains(t, got, "bed gallons so far: 0 gal.")
	assert.Contains(t, got, "The bed lasts this wash, chance")
}

package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/planner"
)

// Lines that stated nothing are filled one behind the other; where a value is changed, the
// hand stays and the answer is watched.
func TestEnterGoesOnWhereNothingWasStated(t *testing.T) {
	p := play(t, ours(t), "d")
	onKey(t, p, "low")
	p.Keys("'41'")
	assert.Contains(t, p.Seen(), "enter done, next line   tab add the unit, or next   esc as it was")
	p.Keys("enter '88 F' enter")
	assert.Equal(t, "41 F", p.M.now.wash.Low.Words(), "the high takes the place of nothing")
	assert.Equal(t, "88 F", p.M.now.wash.High.Words())
	assert.Contains(t, p.Seen(), "› dew point")

	p.Keys("up '90 F'")
	assert.Contains(t, p.Seen(), "enter done   tab add the unit, or next   esc as it was   down done, next line")
	p.Keys("enter '91 F' enter")
	assert.Contains(t, p.Seen(), "› high of the day  91 F")
	assert.Equal(t, "91 F", p.M.now.wash.High.Words())
}

// Where nothing is filled the hand stays, as it does at the end of the lines.
func TestEnterStaysWhereNothingIsFilled(t *testing.T) {
	p := play(t, ours(t), "d")
	onKey(t, p, "low")
	for script, line := range map[string]string{"enter enter": "low", "'4' backspace enter": "low", "'4 knots' enter": "low"} {
		assert.Contains(t, p.Keys(script).Seen(), "› "+line+" ", script)
		p.Keys("esc")
	}
	onKey(t, p, "elevation")
	assert.Contains(t, p.Keys("'4000 ft' enter").Seen(), "› elevation  ", "it is the last")
	assert.Equal(t, "4000 ft", p.M.now.places[0].Elevation.Words())
}

// A text that fills two lines is left for what is behind both.
func TestAPositionGoesOnBehindBothItsLines(t *testing.T) {
	p := play(t, ours(t), "d")
	onKey(t, p, model.LatitudeKey)
	p.Keys("'33.45, -112.07' enter enter 'America/Phoenix' enter")
	assert.Equal(t, "112.07 W", p.M.now.places[0].Longitude.Words())
	assert.Equal(t, "America/Phoenix", p.M.now.places[0].Zone.Words())
}

// What may be left out is filled line by line also where the plan lacks something else; from
// what it lacks the hand goes to what else it lacks.
func TestEnterGoesFromNeedToNeed(t *testing.T) {
	o := ours(t)
	o.Example, o.Make = true, planner.Make
	p := play(t, o, "e d")
	onKey(t, p, "low")
	p.Keys("'41 F' enter '88 F' enter")
	assert.Equal(t, "41 F", p.M.now.wash.Low.Words())
	assert.Equal(t, "88 F", p.M.now.wash.High.Words())
	p.Keys("b")
	onKey(t, p, "resin")
	assert.Contains(t, p.Keys("'0.5 ft3' enter").Seen(), "› length           needed")
}

package rig

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestLeavingTakesWhatIsBeingTyped(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "n 'Tin Box' enter '24 ft'")
	assert.NoError(t, p.M.Leave())
	assert.Equal(t, "24 ft", kept.kept.Rig.Vehicles[1].Length.Words())
	assert.NoError(t, play(t, o, "enter down").M.Leave(), "nothing was changed")
}

func TestLeavingLeavesOutWhatHasNoNameYet(t *testing.T) {
	for script, lost := range map[string]string{"n 'halfname'": `the new vehicle "halfname"`, "c 'halfname'": `the new vehicle "halfname"`, "n": ""} {
		o, kept := ours()
		err := play(t, o, script).M.Leave()
		if lost == "" {
			assert.NoError(t, err, script)
		} else {
			assert.ErrorContains(t, err, lost, "a name that was typed is asked about")
		}
		assert.Zero(t, kept.saves, script)
	}
}

// A bare reading is offered the pen's scale, and none where the pen states none.
func TestABareReadingGetsNoScaleThatNobodySaid(t *testing.T) {
	for _, pens := range []int{1, 0} {
		o, kept := ours()
		o.Stock.Rig.Pens = o.Stock.Rig.Pens[:pens]
		p := play(t, o, "")
		p.M.at, p.M.inForm = Spot{"place", 0}, true
		p.M = p.M.looked()
		for i, r := range p.M.looks.rows {
			if r.ref.Key == "tds" {
				p.M.hand = i
			}
		}
		p.Keys("'280' enter")
		if pens == 1 {
			assert.Equal(t, "280 ppm NaCl", (*kept.kept.Places)[0].TDS.Words())
			continue
		}
		assert.Contains(t, p.Says(), "no scale said: counted as NaCl.")
		assert.Equal(t, "280 ppm", (*kept.kept.Places)[0].TDS.Words())
	}
}

// What is typed is taken on leaving where it can be, else leaving says what would be lost.
func TestLeavingLosesNoTextUnasked(t *testing.T) {
	o, kept := ours()
	assert.NoError(t, play(t, o, "n 'Tin Box' enter '24'").M.Leave())
	assert.Equal(t, "24 ft", kept.kept.Rig.Vehicles[1].Length.Words())
	p := play(t, o, "n 'Bread Box' enter '24 yards'")
	assert.ErrorContains(t, p.M.Leave(), `length "24 yards" has the unit "yards"`)
	p.Keys("esc")
	assert.NoError(t, p.M.Leave(), "let go of on purpose")
}

// On a line of names the letters are keys: the foot says what is pressed before a name is typed.
func TestTheFootSaysHowANameIsTyped(t *testing.T) {
	o, _ := ours()
	p := play(t, o, "enter")
	assert.Contains(t, p.Seen(), "enter retype")
	was := p.M.now.Rig.Vehicles[0].Name
	p.Keys("'z'")
	assert.Contains(t, p.Says(), "z is no key here: enter, then type.")
	assert.Equal(t, was, p.M.now.Rig.Vehicles[0].Name)
	p.Keys("down down")
	assert.Contains(t, p.Seen(), "enter change")
}

package rig

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Lines that stated nothing are filled one behind the other; where a value is changed, the
// hand stays.
func TestEnterGoesOnWhereNothingWasStated(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown pgdown pgdown pgdown pgdown pgdown n 'Dry Fork' enter '300 ppm NaCl'")
	assert.Contains(t, p.Seen(), "enter done, next line   tab add the unit, or next   esc as it was")
	p.Keys("enter '12 gr/gal' enter '150' enter")
	place := (*kept.kept.Places)[p.M.at.Index]
	assert.Equal(t, "300 ppm NaCl", place.TDS.Words())
	assert.Equal(t, "12 gr/gal", place.Hardness.Words())
	assert.Equal(t, "150 mg/L as CaCO3", place.Alkalinity.Words())
	assert.Contains(t, p.Seen(), "› pH ")

	p.Keys("up up '13 gr/gal'")
	assert.Contains(t, p.Seen(), "enter done   tab add the unit, or next   esc as it was   down done, next line")
	p.Keys("enter '14 gr/gal' enter")
	assert.Contains(t, p.Seen(), "› hardness ")
	assert.Equal(t, "14 gr/gal", (*kept.kept.Places)[p.M.at.Index].Hardness.Words())
	assert.Contains(t, p.Keys("del enter enter").Seen(), "› hardness ", "nothing is filled")
}

// A text that fills two lines is left for what is behind both.
func TestAPositionGoesOnBehindBothItsLines(t *testing.T) {
	o, kept := ours()
	p := play(t, o, "pgdown pgdown pgdown pgdown pgdown pgdown n 'Dry Fork' enter '300 ppm NaCl' enter")
	for range p.M.looks.rows {
		if _, f, _ := p.M.target(); f.Key == "latitude" {
			break
		}
		p.Keys("down")
	}
	p.Keys("'33.45, -112.07' enter enter 'America/Phoenix' enter")
	place := (*kept.kept.Places)[p.M.at.Index]
	assert.Equal(t, "112.07 W", place.Longitude.Words())
	assert.Equal(t, "America/Phoenix", place.Zone.Words())
}

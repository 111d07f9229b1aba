package washday

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
)

func TestABedWithNothingLeftSaysSo(t *testing.T) {
	m := fresh(t, "").m
	assert.Contains(t, m.leftWords(), "8 in 10: ")
	m.u.Outlook.Low, m.u.Outlook.Mid, m.u.Outlook.High = quantity.Some(quantity.Volume(0)), quantity.Some(quantity.Volume(0)), quantity.Some(quantity.Volume(0))
	assert.Equal(t, "most likely nothing", m.leftWords())
	var p planner.Plan
	p.Bed.ChanceLasts = 0.05
	assert.Equal(t, "Left in the bed: most likely nothing; a wash like this again: chance 5 %.", Model{}.bedLeftWords(p))
	p.Bed.Remaining.P90 = 40 * quantity.Gallon
	assert.Equal(t, "Left in the bed: as likely as not nothing, one time in ten 40 gal or more; a wash like this again: chance 5 %.", Model{}.bedLeftWords(p))
}

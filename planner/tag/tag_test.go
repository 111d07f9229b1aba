package tag

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
)

func TestANoteSpeaksInTheUnitsAskedFor(t *testing.T) {
	n := Note{Code: "silica", Format: "%s at 10 %% of it", Values: []quantity.Value{quantity.ValueOf(20 * quantity.PSI)}}
	assert.Equal(t, "20 psi at 10 % of it", n.Text(quantity.US))
	assert.Equal(t, "1.38 bar at 10 % of it", n.Text(quantity.Metric))
}

func TestAnAssumptionIsAQuantityOrWords(t *testing.T) {
	source := FromPractice("usual")
	assert.Equal(t, Practice, source.Tag)
	assert.Equal(t, 1.4, Quantity("flow", 1.4*quantity.GPM, source).Value.SI/float64(quantity.GPM))
	assert.Equal(t, "NaCl", Text("scale", "NaCl", source).Words)
}

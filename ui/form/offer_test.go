package form

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

// fieldOf is a field of a vehicle by its key, in the units in which it is to be stated.
func fieldOf(v *model.Vehicle, key string, sys quantity.System) model.Field {
	for _, f := range v.Fields() {
		if f.Key == key {
			return f.Suited(v.Fields(), sys)
		}
	}
	return model.Field{}
}

// typedAs types a text into a field of a vehicle.
func typedAs(v model.Vehicle, key, text string, sys quantity.System) Edit {
	f := fieldOf(&v, key, sys)
	return Of(f, "").With(text, func(text string) error {
		v := v
		return fieldOf(&v, key, sys).Set(text)
	})
}

// A bare number is offered a unit of those that are shown; with US ones shown, one of those
// in which the line itself was stated before, or the nearest of its kind.
func TestABareNumberIsOfferedTheUnitsShown(t *testing.T) {
	stated := func(key, text string) (v model.Vehicle) {
		assert.NoError(t, fieldOf(&v, key, quantity.US).Set(text))
		return v
	}
	for _, c := range []struct {
		about string
		of    model.Vehicle
		sys   quantity.System
		want  string
	}{
		{"US units shown", model.Vehicle{}, quantity.US, "3,8 ft"},
		{"metric units shown", model.Vehicle{}, quantity.Metric, "3,8 m"},
		{"a metric length beside it", stated("length", "12,2 m"), quantity.US, "3,8 m"},
		{"a metric width beside it", stated("width", "255 cm"), quantity.US, "3,8 m"},
		{"a US length beside it", stated("length", "40 ft"), quantity.US, "3,8 ft"},
		{"a US length beside it, which may be the example's", stated("length", "40 ft"), quantity.Metric, "3,8 m"},
		{"itself metric before", stated("height", "3.9 m"), quantity.US, "3,8 m"},
	} {
		assert.Equal(t, c.want, typedAs(c.of, "height", "3,8", c.sys).Offer, c.about)
	}
	v := stated("length", "12 m")
	assert.NoError(t, fieldOf(&v, "width", quantity.US).Set("8 ft 6 in"))
	assert.Equal(t, "3,8 m", typedAs(v, "height", "3,8", quantity.US).Offer, "the one above, where two are as near")
	assert.Equal(t, "30 cm", typedAs(model.Vehicle{}, "clearance", "30", quantity.Metric).Offer)
}

// What is refused is told in the units that are shown.
func TestARefusalIsInTheUnitsShown(t *testing.T) {
	e := typedAs(model.Vehicle{}, "height", "38 m", quantity.Metric)
	assert.Equal(t, "is outside 91.5 cm to 4.26 m; write it like 3.89 m", e.Says())
	e = typedAs(model.Vehicle{}, "height", "38", quantity.Metric)
	assert.Equal(t, "is outside 91.5 cm to 4.26 m; write it like 3.89 m", e.Says(), "whatever its unit")
	e = typedAs(model.Vehicle{}, "height", "38 m", quantity.US)
	assert.Equal(t, "is outside 3 ft to 14 ft; write it like 12 ft 9 in", e.Says())
}

// What a bare number was read as is told once it is taken.
func TestABareNumberIsToldAsItWasRead(t *testing.T) {
	try := func(string) error { return nil }
	e := typedAs(model.Vehicle{}, "height", "3,8", quantity.Metric)
	assert.Empty(t, e.Told(), "not taken yet")
	bare, whole := e.Offered(try), typedAs(model.Vehicle{}, "height", "3,8 m", quantity.Metric).Offered(try)
	assert.Equal(t, "Read as 3.8 m", bare.Told())
	assert.Empty(t, whole.Told(), "it says so itself")
}

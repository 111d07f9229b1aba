package form

import (
	"washeve/model"
	"washeve/model/quantity"
)

// Suited is a field of an item, nil where it is of none, with its example in the units in
// which it is to be stated; see [model.Field.Suited].
func Suited(f model.Field, of model.Item, sys quantity.System) model.Field {
	if of == nil {
		return f.In(sys)
	}
	return f.Suited(of.Fields(), sys)
}

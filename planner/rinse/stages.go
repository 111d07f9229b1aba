package rinse

import (
	"strings"

	"washeve/model"
)

// ByHand tells that a stage takes no water through a sprayer.
func ByHand(s model.Stage) bool { return strings.EqualFold(s.Sprayer, model.ByHand) }

// DIForAll gives DI water to every stage that is sprayed. The list is changed in
// place.
func DIForAll(stages []model.Stage) {
	for i := range stages {
		if !ByHand(stages[i]) {
			stages[i].Water = model.DI
		}
	}
}

// DIForLast leaves DI water to the last rinse only, and gives the other stages that
// had it the softened water, or the raw one where there is no softener.
func DIForLast(stages []model.Stage, softener bool) {
	last, other := LastRinse(stages), model.Raw
	if softener {
		other = model.Softened
	}
	for i := range stages {
		switch {
		case i == last:
			stages[i].Water = model.DI
		case stages[i].Water == model.DI:
			stages[i].Water = other
		}
	}
}

// LastRinse is the index of the stage that dries: the last final one, else the last
// with DI water, else the last; -1 where there is none.
func LastRinse(stages []model.Stage) int {
	last := -1
	for i, s := range stages {
		if s.Final || s.Water == model.DI && (last < 0 || !stages[last].Final) {
			last = i
		}
	}
	if last < 0 {
		return len(stages) - 1
	}
	return last
}

// Unsoftened gives the raw water to the stages that had the softened.
func Unsoftened(stages []model.Stage) {
	for i := range stages {
		if stages[i].Water == model.Softened {
			stages[i].Water = model.Raw
		}
	}
}

// SprayedBy gives the stages with DI water another sprayer.
func SprayedBy(stages []model.Stage, sprayer string) {
	for i := range stages {
		if stages[i].Water == model.DI {
			stages[i].Sprayer = sprayer
		}
	}
}

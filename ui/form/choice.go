package form

import (
	"slices"

	"washeve/model"
)

// TurnedChoice is the word so many places after the one that a field holds, in the
// list of words it takes, round the ends. There must be such a list.
func TurnedChoice(f model.Field, by int) string {
	at, n := slices.Index(f.Choices, f.Text()), len(f.Choices)
	if at < 0 && by < 0 {
		at = 0 // from nothing stated, the word before is the last
	}
	return f.Choices[(at+by+n)%n]
}

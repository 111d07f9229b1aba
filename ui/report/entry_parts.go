package report

import (
	"fmt"

	"washeve/model"
)

// StagesGo says which stages are struck out with a wash: ", with its 24 stages"; "" where it
// has none.
func StagesGo(p model.Parts) string {
	return ofCount(p.Stages, ", with its stage", ", with its %d stages")
}

// ReadingsStay says that the readings of a wash outlive it: "; its 3 readings stay"; "" where
// it has none.
func ReadingsStay(p model.Parts) string {
	return ofCount(p.Readings, "; its reading stays", "; its %d readings stay")
}

// ReadingsToo says that the readings of a wash go with it: "its 3 readings too"; "" where it
// has none.
func ReadingsToo(p model.Parts) string {
	return ofCount(p.Readings, "its reading too", "its %d readings too")
}

// WithStages says how many stages are told in the line of a wash: ", 24 stages"; "" for none.
func WithStages(n int) string {
	return ofCount(n, ", 1 stage", ", %d stages")
}

// ofCount is what is said of so many: "" of none, and many holds the number.
func ofCount(n int, one, many string) string {
	switch n {
	case 0:
		return ""
	case 1:
		return one
	}
	return fmt.Sprintf(many, n)
}

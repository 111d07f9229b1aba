package report

import (
	"fmt"

	"washeve/model"
)

// StagesGo says which stages are struck out with a wash: ", with its 24 stages"; "" where it
// has none.
func StagesGo(p model.Parts) string {
	switch p.Stages {
	case 0:
		return ""
	case 1:
		return ", with its stage"
	}
	return fmt.Sprintf(", with its %d stages", p.Stages)
}

// ReadingsStay says that the readings of a wash outlive it: "; its 3 readings stay"; "" where
// it has none.
func ReadingsStay(p model.Parts) string {
	switch p.Readings {
	case 0:
		return ""
	case 1:
		return "; its reading stays"
	}
	return fmt.Sprintf("; its %d readings stay", p.Readings)
}

// ReadingsToo says that the readings of a wash go with it: "its 3 readings too"; "" where it
// has none.
func ReadingsToo(p model.Parts) string {
	switch p.Readings {
	case 0:
		return ""
	case 1:
		return "its reading too"
	}
	return fmt.Sprintf("its %d readings too", p.Readings)
}

// WithStages says how many stages are told in the line of a wash: ", 24 stages"; "" for none.
func WithStages(n int) string {
	switch n {
	case 0:
		return ""
	case 1:
		return ", 1 stage"
	}
	return fmt.Sprintf(", %d stages", n)
}

package packing

import (
	"strings"

	"washeve/model/quantity"
	"washeve/planner/tag"
)

// say is a note: one %s for each value.
func say(format string, values ...quantity.Value) tag.Note {
	return tag.Note{Format: format, Values: values}
}

// name is what somebody called a thing, made safe for a note's format; usual
// where it has no name.
func name(called, usual string) string {
	if strings.TrimSpace(called) == "" {
		return usual
	}
	return strings.ReplaceAll(called, "%", "%%")
}

// either picks the words for a condition.
func either(holds bool, yes, no string) string {
	if holds {
		return yes
	}
	return no
}

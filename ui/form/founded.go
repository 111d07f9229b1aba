package form

import (
	"washeve/planner"
	"washeve/planner/tag"
)

// ByLog is what stands in the place of a tag where the log says what a line leaves out.
const ByLog = "LOG"

// Founded is how well that is founded which is taken for a line where nothing is stated: its
// tag, or [ByLog]; "" where it follows from what is stated on other lines.
func Founded(s tag.Source) string {
	switch {
	case planner.FromLog(s):
		return ByLog
	case s.Tag == tag.Yours:
		return ""
	}
	return string(s.Tag)
}

// AssumedHelp tells what is taken for a line, behind what the line is; "" where nothing need
// be said of it.
func AssumedHelp(value, founded string) string {
	switch founded {
	case "":
		return ""
	case ByLog:
		return "; " + value + " by the log"
	}
	return "; assumed: " + value + " (" + founded + ")"
}

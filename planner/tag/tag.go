// Package tag says where a number of the planner comes from, and carries words
// with quantities in them up to the plan.
package tag

import (
	"fmt"

	"washeve/model/quantity"
)

// Tag is how well a number is founded.
type Tag string

// The tags.
const (
	Published Tag = "PUBLISHED" // the source is named
	Practice  Tag = "PRACTICE"  // common in the trade, no source
	Memory    Tag = "MEMORY"    // recalled from a named publication, not opened
	Yours     Tag = "YOURS"     // the user's own
)

// Source is where a number comes from, in words.
type Source struct {
	Tag  Tag
	Text string
}

// Assumption is a number that the planner uses, for the list that a user can
// open.
type Assumption struct {
	Name   string
	Value  quantity.Value
	Words  string // where the value is not a quantity
	Source Source
}

// FromPractice is the source of what the trade does without one.
func FromPractice(text string) Source { return Source{Tag: Practice, Text: text} }

// Note is something to tell: a code for programs, words for people, and the
// quantities inside the words.
type Note struct {
	Code   string
	Format string // one %s for each value
	Values []quantity.Value

	Metric *Note // what is said in its place in metric units, where another measure is at hand there; nil for the same words
}

// Text is the note in words, with its quantities in the units of sys.
func (n Note) Text(sys quantity.System) string {
	if sys == quantity.Metric && n.Metric != nil {
		return n.Metric.Text(sys)
	}
	shown := make([]any, len(n.Values))
	for i, v := range n.Values {
		shown[i] = v.Show(sys)
	}
	return fmt.Sprintf(n.Format, shown...)
}

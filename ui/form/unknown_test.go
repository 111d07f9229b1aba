package form_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/ui/form"
)

// Whoever types that a value is not known hears that the line is left empty, and what is
// taken then.
func TestAWordForWhatNobodyKnowsIsAnswered(t *testing.T) {
	var v model.Vehicle
	f := v.Fields()[2] // the length
	f.Required = false
	start := form.Start("", f.Example).Unknown(f, "; assumed: 30 ft (PRACTICE)")
	for _, text := range []string{"?", "??", "unknown", "Don't know", "don’t  know", "not known.", "N/A"} {
		e := start.With(text, length)
		assert.Equal(t, "leave it empty where it is not known; assumed: 30 ft (PRACTICE)", e.Says(), text)
		assert.Contains(t, e.NotTaken("length"), `": leave it empty where it is not known; assumed: 30 ft (PRACTICE).`, text)
		assert.False(t, e.Replaced)
	}
	for _, text := range []string{"", "know", "unknow", "30"} {
		assert.NotContains(t, look(start.With(text, length)).Says(), "leave it empty", text)
	}
	f.Required = true
	e := form.Start("", f.Example).Unknown(f, "").With("?", length)
	assert.Equal(t, "nothing is planned without it; write it like 40 ft 6 in", e.Says())

	said := start.With("unknown", func(string) error { return nil })
	assert.Equal(t, "unknown", said.Good, "where the line has such a word it is taken")
}

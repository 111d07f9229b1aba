package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/quantity"
)

func TestBriefRoundsWhatNobodyTyped(t *testing.T) {
	var at quantity.Opt[quantity.Area]
	f := measure("area", "area", "", "1 ft2", "0 ft2", "20000 ft2", &at)
	for text, want := range map[string]string{
		"":                       "",
		"322.99999999999994 ft2": "323 ft2",
		"1114.1234567891 ft2":    "1114.12 ft2",
		"1114.125 ft2":           "1114.125 ft2",
		"1114,12 ft2":            "1114,12 ft2",
	} {
		require.NoError(t, f.Set(text))
		assert.Equal(t, want, f.Brief())
		assert.Equal(t, text, f.Text(), "the log keeps every digit")
	}
	at = quantity.Some(quantity.Area(30.0/7) * quantity.Must[quantity.Area]("1 ft2"))
	assert.Equal(t, "4.28571 ft2", f.Brief())
	var words string
	note := name("note", "note", "", "", &words)
	require.NoError(t, note.Set("322.99999999999994 ft2"))
	assert.Equal(t, words, note.Brief(), "a person's words stay")
}

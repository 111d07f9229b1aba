package store

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// TestValuesKeepTheirWayOfWriting: a bare number stays bare, an array an
// array, true and false stay what they are.
func TestValuesKeepTheirWayOfWriting(t *testing.T) {
	const before = "# Mine.\n\n[[stage]]\nname = 442\nwater = 'di'\nfaces = [ \"left\",\n  \"roof\" ] # two\npasses = 1\nfinal = true\n" +
		"[[stage]]\nname = 2026-01-01\nwater = \"di\"\nfaces = \"left\"\npasses = \"1\"\nfinal = false\n"
	wash := decoded([]byte(before), washSchema)
	setField(t, wash.Fields(), "date", "2026-06-12")
	for i, values := range []map[string]string{
		{"name": "rinse", "faces": "front, rear", "passes": "2.5", "final": ""},
		{"name": "2026-02-02", "faces": "front, rear", "passes": "2.5", "final": "yes"},
	} {
		for key, value := range values {
			setField(t, wash.Stages[i].Fields(), key, value)
		}
	}
	data, _, reason, err := edited("", []byte(before), &wash, washSchema, nil)
	require.NoError(t, err)
	require.Empty(t, reason)
	assert.Equal(t, "# Mine.\ndate = \"2026-06-12\"\n\n[[stage]]\nname = \"rinse\"\nwater = 'di'\nfaces = [\"front\", \"rear\"] # two\npasses = 2.5\n"+
		"[[stage]]\nname = 2026-02-02\nwater = \"di\"\nfaces = \"front, rear\"\npasses = \"2.5\"\nfinal = true\n", string(data))
}

// TestTopKeys: a key at the top goes behind those that are there, else behind
// the comment that opens the file, but never behind one that is a section's.
func TestTopKeys(t *testing.T) {
	for before, want := range map[string]string{
		"":                             "name = \"n\"\n",
		"format = 1 # f\n":             "format = 1 # f\nname = \"n\"\n",
		"# a\n# b":                     "# a\n# b\nname = \"n\"\n",
		"# of the stage\n[[stage]]\n":  "name = \"n\"\n# of the stage\n[[stage]]\n",
		"\xef\xbb\xbf[[stage]]\r\n":    "\xef\xbb\xbfname = \"n\"\r\n[[stage]]\r\n",
		"date = 2026-06-12\n\n# end\n": "date = 2026-06-12\nname = \"n\"\n\n# end\n",
	} {
		wash := decoded([]byte(before), washSchema)
		wash.Name = "n"
		data, _, reason, err := edited("", []byte(before), &wash, washSchema, nil)
		require.NoError(t, err)
		require.Empty(t, reason)
		assert.Equal(t, want, string(data), "%q", before)
	}
}

// TestDefaultsAppearWhereTheyAreMissing: a section that stands once is added
// like any other, and never an empty one.
func TestDefaultsAppearWhereTheyAreMissing(t *testing.T) {
	before := "format = 1\n[[pen]]\nname = \"p\"\nscale = \"442\"\n"
	rig := decoded([]byte(before), rigSchema)
	data, _, _, err := edited("", []byte(before), &rig, rigSchema, nil)
	require.NoError(t, err)
	assert.Equal(t, before, string(data))
	rig.Defaults.Units = model.UnitsMetric
	data, _, _, err = edited("", []byte(before), &rig, rigSchema, nil)
	require.NoError(t, err)
	assert.Equal(t, before+"\n[defaults]\nunits = \"metric\"\n", string(data))
}

func TestQuote(t *testing.T) {
	for text, want := range map[string]string{
		"40 ft":      `"40 ft"`,
		`40' 6"`:     `"40' 6\""`,
		`the "b"`:    `'the "b"'`,
		`back\slash`: `"back\\slash"`,
		"a\x1bb":     `"a\U0000001bb"`,
	} {
		assert.Equal(t, want, quote(text))
		assert.Equal(t, text, parse("", []byte("k = "+want)).tables[0].entries[0].text)
	}
}

package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestTheReaderReadsAsTheFieldsDo(t *testing.T) {
	reader := NewEntryReader()
	rapid.Check(t, func(t *rapid.T) {
		e := drawEntry(t)
		require.NoError(t, reader.Start(string(e.Kind())))
		for _, f := range e.Fields() {
			if text := f.Text(); text != "" {
				require.NoError(t, reader.Set(f.Key, text))
				assert.ErrorIs(t, reader.Set(f.Key, text), ErrTwice)
			}
		}
		assert.Empty(t, reader.Faults())
		got := reader.Entry()
		assert.Equal(t, e.Content(), got.Content())
		assert.ErrorIs(t, reader.Set("colour", "red"), ErrUnknownKey)
		require.NoError(t, reader.Start("resin"))
		assert.Equal(t, e.Content(), got.Content(), "an entry shares nothing with the reader")
		assert.Len(t, reader.Faults(), 3, "at, bed, id")
		assert.ErrorContains(t, reader.Set("resin", "12"), "has no unit")
	})
	assert.ErrorContains(t, reader.Start("rain"), "is no kind of entry")
}

func TestFieldsOfEveryKindOfEntry(t *testing.T) {
	for _, kind := range Kinds() {
		e := Entry{Body: NewBody(kind)}
		for _, f := range e.Fields() {
			what := string(kind) + "." + f.Key
			require.NotEmpty(t, f.Label, what)
			require.NotEmpty(t, f.Help, what)
			assert.False(t, f.Given(), what)
			require.NoError(t, f.Set(f.Example), what)
			assert.Equal(t, f.Example, f.Text(), what)
			require.Error(t, f.Set("\x1b[31m"), what)
			assert.Equal(t, f.Example, f.Text(), what)
			copied := e.Clone()
			require.NoError(t, f.Set(" "), what)
			assert.False(t, f.Given(), what)
			assert.NotEqual(t, e.Content(), copied.Content(), "%s: a copy shares nothing", what)
		}
	}
}

package fault

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestFaultSaysWhere(t *testing.T) {
	for want, f := range map[string]Fault{
		"rig.toml: is not there":             {File: "rig.toml", Problem: "is not there"},
		"rig.toml:3: flow: is missing":       {File: "rig.toml", Line: 3, Key: "flow", Problem: "is missing"},
		`"a\x1b[2J.csv":1: cannot be read`:   {File: "a\x1b[2J.csv", Line: 1, Problem: "cannot be read"},
		"washes/friday.toml: name: is taken": {File: "washes/friday.toml", Key: "name", Problem: "is taken"},
	} {
		assert.Equal(t, want, f.Error())
	}
}

func TestSeverities(t *testing.T) {
	faults := []Fault{{Severity: Notice}, {Severity: Lack}}
	assert.False(t, HasErrors(faults))
	assert.True(t, HasLacks(faults))
	assert.True(t, HasErrors(append(faults, Fault{})))
	assert.False(t, HasLacks(faults[:1]))
	assert.False(t, HasUnread(faults))
	assert.True(t, HasUnread(append(faults, Fault{Severity: Unread})))
	assert.Equal(t, "note, not read, missing, error", Notice.String()+", "+Unread.String()+", "+Lack.String()+", "+Error.String())
	assert.Equal(t, []bool{false, false, true, true}, []bool{Error.Stands(), Lack.Stands(), Unread.Stands(), Notice.Stands()})
}

func TestMeant(t *testing.T) {
	known := []string{"length", "width", "vehicle.face"}
	for _, c := range []struct {
		word string
		off  int
		want string
	}{
		{"lngthh", 2, "; did you mean length?"},
		{"lngthh", 1, ""},
		{"WIDTH", 0, "; did you mean width?"},
		{"Face", 1, "; did you mean vehicle.face?"},
		{"colour", 2, ""},
		{strings.Repeat("length", 20), 200, ""},
	} {
		assert.Equal(t, c.want, Meant(c.word, known, c.off), c.word)
	}
}

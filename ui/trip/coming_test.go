package trip

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
)

// A wash that is planned with the bed before the trip is told on the screen, by words and
// in full: the trip does not count it.
func TestAWashBeforeTheTripIsSeen(t *testing.T) {
	o, k := ours()
	w := o.Wash
	w.Name, w.Date = "my wash", quantity.Some(model.Date{Year: 2026, Month: 5, Day: 2})
	p := play(t, o, "")
	assert.NotContains(t, p.Seen(), "Not counted:")
	k.washes = []model.Wash{w}
	p = play(t, o, "")
	assert.Regexp(t, `Not counted: my wash, 2026-05-02, [0-9.]+ gal`, p.Seen())
	assert.Regexp(t, `Not counted: my wash.*log that wash once it is done`, strings.Join(p.M.Spoken().Tell(), "\n"))
}

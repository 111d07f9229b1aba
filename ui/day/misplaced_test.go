package day

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/internal/sample"
)

// A longitude of the other side of the world is told before the hours that it spoils.
func TestAMisplacedPlaceIsToldBeforeItsHours(t *testing.T) {
	o := ours()
	sample.Set(&o.Places[0], map[string]string{"latitude": "33.45", "longitude": "112.07", "zone": "America/Phoenix"})
	p := play(t, o, "")
	assert.Regexp(t, `(?s)◐ Longitude 112\.07 E cannot be in the zone .*America/Phoenix\. Is 112\.07 W meant\?.*\n *› \d\d:\d\d to `, p.Seen())
	assert.Regexp(t, `^Longitude 112\.07 E cannot be in the zone`, p.M.startTold()[0])
	sample.Set(&o.Places[0], map[string]string{"longitude": "112.07 W"})
	assert.NotContains(t, play(t, o, "").Seen(), "Longitude")
}

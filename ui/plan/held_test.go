package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// Where the plan holds the DI water to less than the sprayer draws and the cap allows, the
// jug's time is that of what it is held to: by the cap's time the sprayer would run as ever.
func TestTheJugGoesByWhatTheWaterIsHeldTo(t *testing.T) {
	o := ours(t)
	o.Make = planner.Make
	p := play(t, o, "")
	assert.Contains(t, p.Seen(), "bound by contact time")
	assert.Regexp(t, `jug +24 s +or longer for a gallon`, p.Seen())
	o.Wash.DIFlow = quantity.Some(0.4 * quantity.GPM)
	p = play(t, o, "")
	assert.Regexp(t, `flow cap +2\.49 gpm +DI held to 0\.4 gpm`, p.Seen())
	assert.Regexp(t, `jug +150 s +or longer for a gallon`, p.Seen())
	assert.Contains(t, report.SprayerNote(p.M.plan), "held to that by a valve, until the jug takes its time")
	o.Wash.DIFlow = quantity.Some(2 * quantity.GPM)
	assert.Regexp(t, `jug +24 s`, play(t, o, "").Seen(), "it draws less by itself")
}

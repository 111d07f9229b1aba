package plan

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/planner"
	"washeve/ui/layout"
)

// A start that falls into the hours of another wash of the day is told, and no longer once
// it does not.
func TestAnotherWashAtTheSameHours(t *testing.T) {
	lib := store.Example()
	o := ours(t)
	o.Rig, o.Places, o.Wash, o.Make = lib.Rig, lib.Places, lib.Washes[0].Wash, planner.Make
	o.Book.Clock = func() time.Time { return time.Date(2026, 5, 2, 12, 0, 0, 0, time.UTC) }
	o.Wash.Date = quantity.Some(model.Date{Year: 2026, Month: 5, Day: 9})
	o.Wash.Start = quantity.Some(model.TimeOfDay{Hour: 8})
	other := &stock.Kept{File: "van.toml", Wash: o.Wash}
	other.Wash.Name, other.Wash.Start = "the van", quantity.Some(model.TimeOfDay{Hour: 10})
	o.Others = []*stock.Kept{other}
	p := play(t, o, "")
	p.S = layout.Size{W: 160, H: 60}
	assert.Regexp(t, `At the same hours as this wash, 08:00 to 11:..: the van, 10:00 to`, p.Seen())
	p.M.now.wash.Start = quantity.Some(model.TimeOfDay{Hour: 15})
	p.M = p.M.replan(p.M.now)
	assert.NotContains(t, p.Seen(), "At the same hours")
	assert.Contains(t, p.Seen(), "Not counted in the chance: the van")
}

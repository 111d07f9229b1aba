package plan

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
)

// oneEvening is three washes of one evening on a bed that has given much: the one of the
// tightest limit is planned last.
func oneEvening(t *testing.T) Options {
	lib := store.Example()
	o, _ := shelved(t)
	o.Rig, o.Places, o.Wash, o.Make = lib.Rig, lib.Places, lib.Washes[0].Wash, planner.Make
	o.Rig.Beds[0].SoFar = quantity.Some(120 * quantity.Gallon)
	o.Book.Clock = func() time.Time { return time.Date(2026, 5, 2, 12, 0, 0, 0, time.UTC) }
	at := func(name, limit, start string) model.Wash {
		w := lib.Washes[0].Wash
		set(t, &w, map[string]string{"name": name, "date": "2026-05-09", "limit": limit, "start": start})
		return w
	}
	o.Wash = at("Coach", "40 ppm NaCl", "08:00")
	o.Others = []*stock.Kept{{File: "van.toml", Wash: at("Van", "40 ppm NaCl", "12:00")}, {File: "coupe.toml", Wash: at("Coupe", "2 ppm NaCl", "16:00")}}
	return o
}

// The page of one fill says whether it does all washes that wait for it, and the order; the
// chance of the first is about that of its own plan.
func TestOneFillOfSeveralWashes(t *testing.T) {
	p := play(t, oneEvening(t), "")
	p.S = layout.Size{W: 120, H: 50}
	assert.Regexp(t, `O tells\s+whether the fill does them all, and in which order\.`, p.Seen())
	opened, is := p.Send(hands.Key("O")).(screen.Go)
	require.True(t, is)
	assert.Equal(t, "One fill, several washes", opened.To.Title())
	text := strings.Join(p.M.oneFillLines(100), "\n")
	for _, words := range []string{"Washes that wait for half-foot tank", "Best order: Coupe, then ", "As they stand", "In the best order", "Jackson's rule"} {
		assert.Contains(t, text, words)
	}
	plan, err := p.M.beside.Plan()
	require.NoError(t, err)
	assert.InDelta(t, float64(p.M.plan.Bed.ChanceLasts), float64(plan.Washes[0].Chance), 0.03)
	assert.Equal(t, p.M.plan.Through(), plan.Washes[0].DI.P50+plan.Washes[0].Flush)
	for _, line := range p.M.oneFillTold() {
		assert.NotContains(t, line, "─")
	}
	p.Keys("L")
	assert.Contains(t, p.Says(), "esc, then O tells whether the fill does all 3 washes on this bed.")
}

// The page of one fill tells the hours of each wash, and which of them run at one time; one that
// states no start as it is recommended.
func TestOneFillTellsTheHours(t *testing.T) {
	o := oneEvening(t)
	page := func() string {
		p := play(t, o, "")
		return strings.Join(strings.Fields(strings.Join(p.M.oneFillLines(100), " ")), " ")
	}
	assert.Regexp(t, `The hours.* Coach, 2026-05-09, 08:00 to \d\d:\d\d; Van, 2026-05-09, 12:00 to \d\d:\d\d; Coupe, 2026-05-09, 16:00 to \d\d:\d\d\.`, page())
	assert.NotContains(t, page(), "At the same hours")
	set(t, &o.Others[0].Wash, map[string]string{"start": "08:30"})
	o.Others[1].Wash.Start = quantity.Opt[model.TimeOfDay]{}
	assert.Contains(t, page(), "At the same hours: Coach and Van")
	assert.Regexp(t, `Coupe, 2026-05-09, \d\d:\d\d to \d\d:\d\d as recommended`, page())
}

// What one of them lacks is told in the place of the answer.
func TestOneFillTellsWhatIsLacking(t *testing.T) {
	o := oneEvening(t)
	o.Others[0].Wash.Vehicle = "nobody's"
	p := play(t, o, "")
	assert.Contains(t, strings.Join(p.M.oneFillLines(100), " "), `This cannot be told yet: no vehicle is called "nobody's"`)
}

// Without another wash that waits for the bed, or a day, the key says so.
func TestOneFillNeedsAnotherWash(t *testing.T) {
	o := oneEvening(t)
	others := o.Others
	o.Others = nil
	p := play(t, o, "O")
	assert.Contains(t, p.Says(), "no other wash of the days to come waits for this bed")
	o.Others, o.Wash.Date = others, quantity.Opt[model.Date]{}
	p = play(t, o, "O")
	assert.Contains(t, p.Says(), "this wash has no day yet")
}

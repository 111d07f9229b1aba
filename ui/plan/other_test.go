package plan

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// The water that is not DI is told with what it is, in words that need no other line.
func TestWhatIsNotDI(t *testing.T) {
	for _, c := range []struct {
		soft, raw float64
		room      int
		want      report.Row
	}{
		{50.5, 34.1, 22, report.Row{Label: "not DI", Note: "50.5 gal softened, 34.1 gal raw"}},
		{50.5, 34.1, 40, report.Row{Label: "not DI", Value: "84.6 gal", Note: "50.5 gal softened, 34.1 gal raw"}},
		{111, 0, 22, report.Row{Label: "not DI", Value: "111 gal", Note: "softened water"}},
		{0, 111, 22, report.Row{Label: "not DI", Value: "111 gal", Note: "raw water"}},
	} {
		m := Model{}
		m.plan.Soft.Volume, m.plan.Untreated.Volume = quantity.Volume(c.soft)*quantity.Gallon, quantity.Volume(c.raw)*quantity.Gallon
		assert.Equal(t, c.want, m.otherRow(c.room))
	}
}

// The price of the wash stands behind its DI water, where a fill has a price.
func TestTheWashHasItsPriceBesideItsWater(t *testing.T) {
	m := Model{}
	m.plan.DI = planner.Use{Volume: 39 * quantity.Gallon, Duration: 28 * quantity.Minute}
	assert.Equal(t, report.Row{Label: "DI water", Value: "39 gal", Note: "28 min"}, m.diRow(22))
	m.plan.Cost = planner.Cost{Known: true, Currency: "$", Wash: 21.42}
	assert.Equal(t, "28 min, $21.42", m.diRow(22).Note)
	assert.Equal(t, "28 min, $21.42 of resin", m.diRow(23).Note)
}

// So it stands on the smallest screen, whole.
func TestWhatIsNotDIOnTheSmallestScreen(t *testing.T) {
	assert.Contains(t, play(t, ours(t), "").Seen(), "not DI     120 gal softened, 30 gal raw")
}

// How the slide-outs stand is no length in inches.
func TestSlideOutsStandInOrOut(t *testing.T) {
	o := ours(t)
	o.Wash.Slides = model.SlidesIn
	assert.Regexp(t, `slide-outs pushed +in `, play(t, o, strings.Repeat("down ", 11)).Seen())
}

// Where nobody stated a sprayer, the line names the one that the plan took.
func TestASprayerThatIsAssumedIsNamed(t *testing.T) {
	o := ours(t)
	o.Rig.Sprayers, o.Rig.Defaults.Sprayer, o.Wash.Sprayer = nil, "", ""
	assert.Regexp(t, `sprayer +\(small pressure washer\)`, play(t, o, "g"+strings.Repeat(" down", 9)).Seen())
}

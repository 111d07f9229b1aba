package report_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/trip"
	"washeve/ui/report"
)

// serving is a plan of washes of one day, and the order of the fill in the tank.
func serving(o trip.Order, names ...string) trip.Plan {
	p := trip.Plan{Bed: "tank", FirstAtRisk: -1, Stops: []trip.StopPlan{{Name: "home"}}}
	for k, name := range names {
		p.Washes = append(p.Washes, trip.WashPlan{Name: name, Date: model.Date{Year: 2026, Month: 6, Day: 5 + k/2}})
		o.Free = append(o.Free, k)
	}
	p.Orders = []trip.Order{o}
	return p
}

// turns have these chances, of the washes of these numbers.
func turns(washes []int, chances ...float64) []trip.Turn {
	var out []trip.Turn
	for i, w := range washes {
		out = append(out, trip.Turn{Wash: w, SoFar: quantity.Fraction(chances[i])})
	}
	return out
}

var stands, other = []int{0, 1, 2}, []int{2, 1, 0}

func TestWhatOneFillDoesInWords(t *testing.T) {
	cases := map[string]struct {
		order trip.Order
		want  []string
	}{
		"all, in any order": {
			trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 0.999, 0.99, 0.96), Best: turns(other, 0.999, 0.99, 0.965), Worst: 0.916},
			[]string{"The fill in the tank does all 3 washes: very likely (96 %).", "Any order will do: from the worst to the best it is 4 points. The last carries the risk: let that be the one on which spots show least."},
		},
		"all for certain": {
			trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 1, 1, 1), Best: turns(other, 1, 1, 1), Worst: 1},
			[]string{"The fill in the tank does all 3 washes: almost certain (over 99 %).", "Any order will do: from the worst to the best it is under one point."},
		},
		"perhaps, and more in another order": {
			trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 0.95, 0.8, 0.55), Best: turns(other, 0.97, 0.9, 0.82), Worst: 0.5},
			[]string{
				"The fill in the tank may do all 3 washes: about 6 in 10 (55 %). As they stand the first is safe; van is the first at risk.",
				"Best order: coupe, then van, then coach. All of them then: 82 %, and 55 % as they stand; the worst of all 6 orders has 50 %.",
				"That is advice: days stay as they are stated. Take it where those washes can change places.",
			},
		},
		"perhaps, in an order that is good": {
			trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 0.97, 0.92, 0.8), Best: turns(other, 0.97, 0.9, 0.82), Worst: 0.5},
			[]string{
				"The fill in the tank may do all 3 washes: about 8 in 10 (80 %). As they stand the first 2 are safe; coupe is the first at risk.",
				"Keep their order: no other is notably better; the worst of all 6 orders has 50 %.",
			},
		},
		"not all, and more of them in another order": {
			trip.Order{Tried: 6, Stated: turns(stands, 0.45, 0.2, 0.02), Best: turns(other, 0.9, 0.6, 0.02), Worst: 0.02, Least: 0.67},
			[]string{
				"The fill in the tank does not do all 3 washes: very unlikely (2 %). As they stand it most likely does none; coach is the first that it most likely does not.",
				"Most are done in the order coupe, then van, then coach: 1.5 of 3 on average before the first that is over its limit, and 0.7 as they stand.",
				"That is advice: days stay as they are stated. Take it where those washes can change places.",
			},
		},
		"not all, whatever the order": {
			trip.Order{Tried: 6, Stated: turns(stands, 0.9, 0.6, 0.3), Best: turns(other, 0.9, 0.65, 0.3), Least: 1.7, Worst: 0.3},
			[]string{
				"The fill in the tank will likely not do all 3 washes: about 3 in 10 (30 %). As they stand it most likely does the first 2; coupe is the first that it most likely does not.",
				"Any order will do: from the worst to the best it is 0.2 of a wash on average. The last carries the risk: let that be the one on which spots show least.",
			},
		},
		"alone at their stops": {
			trip.Order{Whole: true, Stated: turns(stands, 0.999, 0.99, 0.96)},
			[]string{"The fill in the tank does all 3 washes: very likely (96 %)."},
		},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			p := serving(c.order, "coach", "van", "coupe")
			assert.Equal(t, c.want, report.OneFill(p, p.Orders[0]))
		})
	}
}

// Two washes of one name are told apart by their days, and a fill that is changed to by its.
func TestWashesOfOneNameAreToldByTheirDays(t *testing.T) {
	o := trip.Order{Fill: 1, Tried: 4, ByRule: true, Whole: true, Stated: turns(stands, 0.95, 0.8, 0.55), Best: turns(other, 0.97, 0.9, 0.82), Worst: 0.5}
	p := serving(o, "coach", "van", "van")
	on := func(day int) model.Date { return model.Date{Year: 2026, Month: 6, Day: day} }
	p.Changes = []trip.ChangePlan{{Advised: true, Date: on(1)}, {Date: on(3)}, {Date: on(4)}, {Date: on(9), Before: 3}}
	lines := report.OneFills(p)
	assert.Contains(t, lines[0], "The fill of 2026-06-04 may do all 3 washes")
	assert.Contains(t, lines[0], "van of 2026-06-05 is the first at risk.")
	assert.Contains(t, lines[1], "Best order: van of 2026-06-06, then van of 2026-06-05, then coach.")
	assert.Contains(t, lines[1], "the worst of those that were tried has 50 %")
	assert.Contains(t, lines[2], "not every order is tried")
}

// Unasked it is said where an order is worth the change, or several are of one day.
func TestWhatIsSaidUnasked(t *testing.T) {
	o := trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 0.999, 0.99, 0.96), Best: turns(other, 0.999, 0.99, 0.965), Worst: 0.95}
	p := serving(o, "coach", "van", "coupe")
	assert.Contains(t, report.OneFillBrief(p), "does all 3 washes: very likely (96 %). Any order will do")
	for k := range p.Washes {
		p.Washes[k].Date.Day = 5 + k
	}
	assert.Empty(t, report.OneFillBrief(p))
	p.Orders[0].Stated[2].SoFar = 0.7
	assert.Contains(t, report.OneFillBrief(p), "Best order: coupe, then van, then coach.")
}

func TestOrdersAsJSON(t *testing.T) {
	o := trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 0.95, 0.8, 0.55), Best: turns(other, 0.97, 0.9, 0.82), Worst: 0.5, Least: 2.3}
	p := serving(o, "coach", "van", "coupe")
	p.Orders = append(p.Orders, trip.Order{Fill: 1, Stated: turns(stands, 1, 1, 1)})
	data, err := report.TripJSON(p)
	require.NoError(t, err)
	var doc struct {
		Orders []map[string]any `json:"orders"`
	}
	require.NoError(t, json.Unmarshal(data, &doc))
	require.Len(t, doc.Orders, 2)
	one := doc.Orders[0]
	for key, want := range map[string]any{
		"chance_all": 0.55, "chance_all_best": 0.82, "chance_all_worst": 0.5, "washes_safe": 1.0, "washes_likely": 3.0, "orders_tried": 6.0,
		"washes_done_stated": 2.3, "washes_done_best": 2.69, "washes_done_least": 2.3, "advised": true, "any_order": false,
	} {
		assert.Equal(t, want, one[key], key)
	}
	best := one["best"].([]any)
	assert.Equal(t, map[string]any{"wash": "coupe", "date": "2026-06-06", "chance_so_far": 0.97}, best[0])
	assert.Contains(t, one["text"], "Best order: coupe")
	assert.Nil(t, doc.Orders[1]["best"], "nothing was tried")
	assert.Nil(t, doc.Orders[1]["chance_all_best"])
}

// The page of the plan holds the answer, both orders and how it is worked out, within its width;
// read out, each figure says what it is.
func TestThePageOfWashesThatWait(t *testing.T) {
	o := trip.Order{Tried: 6, Whole: true, Stated: turns(stands, 0.95, 0.8, 0.55), Best: turns(other, 0.97, 0.9, 0.82), Worst: 0.5}
	p := serving(o, "coach", "van with a very long name", "coupe")
	text := report.BesideText(p, quantity.US, true, 60)
	for _, line := range strings.Split(text, "\n") {
		assert.LessOrEqual(t, len(line), 60, line)
	}
	for _, words := range []string{"Washes that wait for tank", "As they stand", "In the best order", "Jackson's rule"} {
		assert.Contains(t, text, words)
	}
	assert.Less(t, strings.Index(text, "Best order:"), strings.Index(text, "As they stand\n"))
	assert.Contains(t, report.BesideTold(p, quantity.US, 200), "wash van with a very long name, at home, DI 0 gal, all so far 80 %")
}

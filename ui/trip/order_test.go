package trip

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/layout"
	"washeve/ui/report"
)

// evening is a trip of three washes of one evening, the last with the tightest limit; their
// bed has given much.
func evening() Options {
	o, k := ours()
	t := &k.trips[0]
	day := t.Stops[0].Date
	t.Stops, t.Washes, t.Changes = t.Stops[:1], nil, nil
	for _, name := range []string{"coach", "van", "coupe"} {
		t.Washes = append(t.Washes, model.TripWash{Date: day, Name: name, Like: name})
	}
	k.like = map[string]model.Wash{}
	for name, ppm := range map[string]float64{"coach": 40, "van": 40, "coupe": 2} {
		w := o.Wash
		w.Name, w.Limit = name, quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl))
		k.like[name] = w
	}
	return o
}

// The order is said unasked where it is worth the change, ahead of other notes, and in full
// with its numbers; where it comes from can be asked.
func TestTheOrderOfOneEveningIsSeen(t *testing.T) {
	p := play(t, evening(), "")
	assert.Contains(t, p.Seen(), "Best order: coupe, then ")
	p.S = layout.Size{W: 160, H: 50}
	assert.Contains(t, p.Seen(), "as they stand; the worst of all 6 orders has")
	full := report.TripText(p.M.plan, quantity.US, true, 200)
	assert.Contains(t, full, "One fill, several washes")
	assert.Contains(t, full, "The fill in the tank may do all 3 washes")
	assert.Contains(t, strings.Join(p.M.whyLines(200), " "), "Jackson's rule")
	told := strings.Join(p.M.Spoken().Tell(), "\n")
	assert.Contains(t, told, "Best order: coupe, then ")
	var numbers []string
	for _, n := range p.M.Spoken().Numbers() {
		numbers = append(numbers, n.Name)
	}
	assert.Contains(t, numbers, "one fill, several washes")
	p.Keys("G , ")
	assert.NotContains(t, p.Seen(), "Best order: ", "the coupe is before the trip now")
}

package trip

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
)

// codes are those of the notes of a plan.
func codes(p Plan) []string {
	var all []string
	for _, n := range p.Notes {
		all = append(all, n.Code)
	}
	return all
}

// A wash that names the stop that is left on its day has the plan of one that day before,
// and comes before those at the stop that is come to.
func TestAWashIsPlannedAtTheStopThatItNames(t *testing.T) {
	in := example()
	in.Trip.Washes = []model.TripWash{{Date: day(7), Like: "Saturday wash", Name: "there"}, {Date: day(7), Like: "Saturday wash", Place: "juniper flats", Name: "here"}}
	p := mustMake(t, in)
	assert.NotContains(t, codes(p), "stop-assumed", "one stop begins on that day")
	assert.Equal(t, []string{"here", "there"}, []string{p.Washes[0].Name, p.Washes[1].Name})
	assert.Equal(t, "Juniper Flats", p.Stops[p.Washes[0].Stop].Name)
	assert.Equal(t, "Saltbush Wells", p.Stops[p.Washes[1].Stop].Name)
	assert.Equal(t, []int{1, 1}, []int{p.Stops[0].Washes, p.Stops[1].Washes})

	before := example()
	before.Trip.Washes = []model.TripWash{{Date: day(6), Like: "Saturday wash"}, {Date: day(7), Like: "Saturday wash"}}
	want := mustMake(t, before)
	for k := range want.Washes {
		assert.Equal(t, want.Washes[k].Chance, p.Washes[k].Chance, k)
		assert.Equal(t, want.Washes[k].DI, p.Washes[k].DI, k)
	}
}

func TestTheStopThatIsTakenIsTold(t *testing.T) {
	in := example()
	in.Trip.Stops[1].Date = in.Trip.Stops[0].Date
	p := mustMake(t, in)
	assert.NotContains(t, codes(p), "stop-assumed", "no wash is on that day")
	in.Trip.Washes[0].Date = in.Trip.Stops[0].Date
	p = mustMake(t, in)
	assert.Contains(t, codes(p), "stop-assumed")
	assert.True(t, p.Washes[0].Assumed)
	assert.Equal(t, "Saltbush Wells", p.Stops[p.Washes[0].Stop].Name)
	in.Trip.Washes[0].Place = "Juniper Flats"
	p = mustMake(t, in)
	assert.NotContains(t, codes(p), "stop-assumed")
	in.Trip.Washes[0].Place = "100 % elsewhere"
	p = mustMake(t, in)
	assert.Contains(t, codes(p), "stop-elsewhere")
	assert.Equal(t, "Saltbush Wells", p.Stops[p.Washes[0].Stop].Name)
	for _, n := range p.Notes {
		if n.Code == "stop-elsewhere" {
			assert.Contains(t, n.Text(0), `2026-06-01, Saturday: "100 % elsewhere" is no stop of 2026-06-01: the vehicle stands at Juniper Flats and Saltbush Wells then`)
		}
	}
}

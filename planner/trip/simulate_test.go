package trip

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/bed"
)

// truth is one way in which everything about a trip may be, drawn by itself: it
// shares with the code under test the column, the demand of a single wash and the
// statement of what is believed, and nothing else.
type truth struct {
	rand  *rand.Rand
	own   float64 // ln of the user's own median
	f, e  float64
	loads map[string]float64
	bands map[int]float64
}

// The prior as it is stated in planner/learning: ln f normal with 0.35 in all, 0.15
// of it from fill to fill; e = 0.3 + 0.7 B, B of the beta distribution (4, 1); the
// gallons of the past off by 10 %.
func (s *truth) draw() {
	s.own = math.Sqrt(0.35*0.35-0.15*0.15) * s.rand.NormFloat64()
	s.fill()
	s.loads, s.bands = map[string]float64{}, map[int]float64{}
}

func (s *truth) fill() {
	s.f = math.Exp(s.own + 0.15*s.rand.NormFloat64())
	s.e = 0.3 + 0.7*math.Pow(s.rand.Float64(), 0.25)
}

// exactly is what the washes ask at so many waters of each band.
const exactly = 33

// simulated counts on how many of n trips each wash ended on spec, and all up to
// it. past is what the fill in the tank has given, at the usual flow of the season.
func simulated(t testing.TB, in Input, n int, past []pastUse, seed uint64) (each, soFar []float64) {
	stops := stopsByDate(&in.Trip)
	legs := in.legs(stops)
	var m Memory
	base := model.Wash{Bed: in.Trip.Bed, Softener: in.Trip.Softener, Feed: in.Trip.Feed, Limit: in.Trip.Limit}
	require.NoError(t, m.begin(&in, base))
	for k := range legs {
		legs[k].demands = exactDemands(t, &in, &m, &legs[k], &in.Trip.Stops[stops[legs[k].stop]])
	}
	each, soFar = make([]float64, len(legs)), make([]float64, len(legs))
	s := &truth{rand: rand.New(rand.NewPCG(seed, 7))}
	done := 0.0
	for done < float64(n) {
		s.draw()
		weight, column := s.before(past)
		if weight == 0 {
			continue
		}
		done++
		s.travel(&in, stops, legs, column, each, soFar)
	}
	for k := range each {
		each[k], soFar[k] = each[k]/done, soFar[k]/done
	}
	return each, soFar
}

// pastUse is what the fill gave before, and what a pen showed after it.
type pastUse struct {
	units, capacities float64
	read, feed        float64 // no reading where feed is 0
}

// before runs the past; a truth under which the readings are unlikely is dropped in
// proportion.
func (s *truth) before(past []pastUse) (weight float64, c bed.Column) {
	gallons := math.Exp(0.10 * s.rand.NormFloat64())
	for _, u := range past {
		c = c.Feed(s.e*u.units, gallons*u.capacities/s.f)
		if u.feed > 0 {
			z := (math.Log(u.read+5) - math.Log(u.feed*c.Outlet(s.e*u.units)+5)) / 0.25
			if s.rand.Float64() > math.Exp(-z*z/2) {
				return 0, c
			}
		}
	}
	return 1, c
}

func (s *truth) travel(in *Input, stops []int, legs []leg, c bed.Column, each, soFar []float64) {
	all, change := true, 0
	for k := range legs {
		l := &legs[k]
		for change < len(in.Trip.Changes) && in.Trip.Changes[change].Date.Or(model.Date{}).Compare(l.day) <= 0 {
			s.fill()
			c = bed.Column{}
			change++
		}
		d := s.demandAt(l)
		name := fmt.Sprint(in.Trip.Stops[stops[l.stop]].Called())
		load, known := s.loads[name]
		if !known {
			load = math.Exp(d.LoadSpread * s.rand.NormFloat64())
			s.loads[name] = load
		}
		held := true
		for _, u := range d.Uses {
			c = c.Feed(s.e*u.Units, load*u.Capacities/s.f)
			held = held && d.Feed*c.Outlet(s.e*u.Units) <= d.Limit
		}
		all = all && held
		if held {
			each[k]++
		}
		if all {
			soFar[k]++
		}
	}
}

func (s *truth) demandAt(l *leg) *planner.Demand {
	if len(l.demands) == 1 {
		return &l.demands[0]
	}
	u, known := s.bands[l.stop]
	if !known {
		u = s.rand.Float64()
		s.bands[l.stop] = u
	}
	return &l.demands[int(u*exactly)]
}

// exactDemands works a band out at many waters, not at three.
func exactDemands(t testing.TB, in *Input, m *Memory, l *leg, s *model.Stop) []planner.Demand {
	places := in.placesAt(s)
	if len(places) == 3 {
		low, high := places[0], places[2]
		places = make([]model.Place, exactly)
		for k := range places {
			u := (float64(k) + 0.5) / exactly
			p := low
			reading := low.TDS.Or(quantity.Reading{})
			reading.Number += u * (high.TDS.Or(quantity.Reading{}).Number - reading.Number)
			soft, hard := low.Hardness.Or(0), high.Hardness.Or(0)
			p.TDS, p.Hardness = quantity.Some(reading), quantity.Some(soft+quantity.Hardness(u)*(hard-soft))
			places[k] = p
		}
	}
	var out []planner.Demand
	w := &in.Trip.Washes[l.index]
	for _, p := range places {
		wash := l.wash
		wash.Place = p.Name
		d, err := m.demand(in, asked{wash: wash, place: p, di: w.DI, flow: w.Flow})
		require.NoError(t, err)
		out = append(out, d)
	}
	return out
}

// Chances agree with 100 000 trips that are simulated directly within 1 %.
func TestChancesAgreeWithSimulation(t *testing.T) {
	n, most := 100000, 0.01
	if testing.Short() {
		n, most = 5000, 0.03 // the simulation itself errs by that much
	}
	for _, c := range cases() {
		t.Run(c.name, func(t *testing.T) {
			in := c.input(t)
			p, err := Make(in)
			require.NoError(t, err)
			each, soFar := simulated(t, in, n, c.past(t, in), 11)
			worst := 0.0
			for k := range p.Washes {
				worst = math.Max(worst, math.Abs(each[k]-float64(p.Washes[k].Chance)))
				worst = math.Max(worst, math.Abs(soFar[k]-float64(p.Washes[k].SoFar)))
			}
			t.Logf("%d washes, worst %.4f, chances %.3f to %.3f", len(each), worst, each[0], each[len(each)-1])
			assert.Less(t, worst, most)
		})
	}
}

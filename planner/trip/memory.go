package trip

import (
	"reflect"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Memory is what one plan of a trip leaves for the next: how the bed stands, and
// what each wash asks, so that a change works out again only what it touches. The
// zero value is ready. It is not for two goroutines at once.
type Memory struct {
	rig    model.Rig
	places model.Places
	past   *planner.Past
	base   model.Wash
	set    planner.Setting
	as     *Plan

	season planner.Season
	full   bool
	asked  []asked
	loads  loadTable
}

// asked is a demand as it was worked out.
type asked struct {
	wash   model.Wash
	place  model.Place
	di     quantity.Opt[quantity.Volume]
	flow   quantity.Opt[quantity.Flow]
	demand planner.Demand
}

// begin makes the memory fit the input: what no longer holds is forgotten.
func (m *Memory) begin(in *Input, base model.Wash) error {
	same := m.full && m.past == in.Past && m.set == in.Setting && m.as == in.As && reflect.DeepEqual(m.base, base) &&
		reflect.DeepEqual(m.rig, in.Rig) && reflect.DeepEqual(m.places, in.Places)
	if same {
		return nil
	}
	places := in.Places
	if len(places) == 0 && len(in.Trip.Stops) > 0 {
		places = in.placesAt(&in.Trip.Stops[0])
	}
	var as *planner.Season
	if in.As != nil {
		as = &in.As.season
	}
	season, err := planner.SeasonedIn(in.Setting, as, in.Rig, places, base, in.Past)
	if err != nil {
		m.full = false
		return err
	}
	*m = Memory{
		rig: kept(in.Rig), places: append(model.Places(nil), in.Places...), past: in.Past, base: base, set: in.Setting, as: in.As,
		season: season, full: true, loads: loadTable{},
	}
	return nil
}

// kept is a copy that later edits of the lists do not reach.
func kept(r model.Rig) model.Rig {
	r.Vehicles, r.Beds, r.Softeners = append([]model.Vehicle(nil), r.Vehicles...), append([]model.Bed(nil), r.Beds...), append([]model.Softener(nil), r.Softeners...)
	for i := range r.Vehicles {
		r.Vehicles[i].Faces = append([]model.Face(nil), r.Vehicles[i].Faces...)
	}
	r.Sprayers, r.Hoses, r.Pens = append([]model.Sprayer(nil), r.Sprayers...), append([]model.Hose(nil), r.Hoses...), append([]model.Pen(nil), r.Pens...)
	return r
}

// demand is what a wash at a place asks.
func (m *Memory) demand(in *Input, ask asked) (planner.Demand, error) {
	for i := range m.asked {
		if known := &m.asked[i]; known.same(&ask) {
			return known.demand, nil
		}
	}
	var err error
	places := model.Places{ask.place}
	if volume, other := ask.di.Get(); other {
		ask.demand, err = m.season.Draw(in.Rig, places, ask.wash, volume, ask.flow)
	} else {
		ask.demand, err = m.season.Demand(in.Rig, places, ask.wash)
	}
	if err != nil {
		return planner.Demand{}, err
	}
	m.asked = append(m.asked, ask)
	return ask.demand, nil
}

// same tells whether two ask the same; what differs most often is compared first.
func (a *asked) same(b *asked) bool {
	return a.place.Name == b.place.Name && a.place.TDS == b.place.TDS && a.di == b.di && a.flow == b.flow &&
		reflect.DeepEqual(a.place, b.place) && reflect.DeepEqual(a.wash, b.wash)
}

// mostAsked bounds the memory of a long evening of typing.
const mostAsked = 1000

// ask works out what all washes ask.
func (m *Memory) ask(in *Input, legs []leg, stops []int) error {
	if len(m.asked) > mostAsked || len(m.loads) > mostAsked {
		m.asked, m.loads = nil, loadTable{}
	}
	for i := range legs {
		l := &legs[i]
		w := &in.Trip.Washes[l.index]
		for _, place := range in.placesAt(&in.Trip.Stops[stops[l.stop]]) {
			wash := l.wash
			wash.Name, wash.Place = "", place.Name
			d, err := m.demand(in, asked{wash: wash, place: place, di: w.DI, flow: w.Flow})
			if err != nil {
				return err
			}
			l.demands = append(l.demands, d)
		}
	}
	return nil
}

package trip

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// softener takes each wash from the softener, and regenerates it before one that
// it would not last. Of an unknown water the hard end counts.
func (t *tripping) softener() {
	taken, begun := quantity.Capacity(0), false
	var salt meter
	for k := range t.legs {
		l := &t.legs[k]
		d := l.worst().Softener
		if l.barred || d == nil {
			continue
		}
		if !begun {
			taken, begun = l.at().Softener.Before, true
			salt.price = d.Price
		}
		s := &SoftenerPlan{}
		if middle := l.at().Softener; middle.Takes > 0 {
			s.Cost = s.Cost.add(salt.share(float64(middle.Takes / middle.Capacity)))
			t.plan.Salt = t.plan.Salt.plus(s.Cost)
		}
		if taken+d.Takes > d.Capacity && taken > 0 && d.Takes > 0 {
			s.Regenerate, s.Salt, taken = true, d.Salt, 0
			t.plan.Carry.Regens++
			t.plan.Carry.Salt += d.Salt
		}
		taken += d.Takes
		s.Left = max(d.Capacity-taken, 0)
		t.plan.Washes[k].Softener = s
	}
}

// cost shares the price of each fill out over the washes that use it, by what they
// take of what it is believed to give on their water, and sums up what is bought.
func (t *tripping) cost() {
	p := &t.plan
	fill, renewed := meter{price: t.season.Price}, false
	for k := range t.legs {
		for i := range p.Changes {
			if c := &p.Changes[i]; c.Before == k {
				fill, renewed = meter{price: c.Price}, true
			}
		}
		l := &t.legs[k]
		if l.barred {
			continue
		}
		w := &p.Washes[k]
		part := l.at().Part
		if renewed {
			part = l.at().NextPart
		}
		w.Cost = Sum{}.add(fill.share(part))
		p.Used = p.Used.plus(w.Cost)
	}
	for i := range p.Changes {
		p.Buy = p.Buy.add(p.Changes[i].Price)
	}
	if t.bought() {
		p.Buy = p.Buy.add(t.season.Bed.Price)
	}
}

// bought tells that a tank is filled for the trip: one that is still to be filled, a second
// one behind the first, or another one than the bed that the trip had.
func (t *tripping) bought() bool {
	return t.plan.ToFill || t.in.Setting.Behind || t.in.As != nil && !strings.EqualFold(t.in.As.Bed, t.season.Bed.Name)
}

// carry works out what to take along, and the day to order by: resin must be there
// by the first change, or by the first wash at risk where no change is to be; and
// before that by the first day, where it is carried from the start. Who buys no resin for
// a trip at risk takes a spare fill; behind a fill that is bought, for a change or for
// another tank, the risk that stays is told and no second one is counted, so that ways
// with new resin compare.
func (t *tripping) carry() {
	p, trip := &t.plan, &t.in.Trip
	c := &p.Carry
	c.Fills = len(p.Changes)
	var needed quantity.Opt[model.Date]
	soonest := func(d model.Date) {
		if at, given := needed.Get(); !given || d.Compare(at) < 0 {
			needed = quantity.Some(d)
		}
	}
	for i := range p.Changes {
		soonest(p.Changes[i].Date)
	}
	if t.bought() {
		soonest(p.First)
	}
	if p.FirstAtRisk >= 0 && !p.Over {
		if c.Fills == 0 && !t.bought() {
			c.Fills, c.Spare = 1, true
			p.Buy = p.Buy.add(t.season.Bed.Price)
		}
		if c.Spare {
			soonest(p.Washes[p.FirstAtRisk].Date)
		}
	}
	bags := planner.BagsFor(t.season.Resin, planner.UsualBag)
	fills := quantity.Mass(c.Fills)
	c.Resin, c.Low, c.High = quantity.Volume(c.Fills)*t.season.Resin, fills*bags.FillLow, fills*bags.FillHigh
	if !needed.Given() || p.Over {
		return
	}
	if trip.Carry != model.No {
		soonest(p.First)
	}
	p.NeededBy = needed
	order := planner.OrderBy(needed.Or(model.Date{}), p.Lead)
	p.OrderBy = quantity.Some(order)
	p.Late = t.in.Today != model.Date{} && order.Compare(t.in.Today) < 0
}

// tell writes down what to heed.
func (t *tripping) tell() {
	p := &t.plan
	p.Assumptions = t.assumptions()
	note := func(code, format string, values ...quantity.Value) {
		p.Notes = append(p.Notes, tag.Note{Code: code, Format: format, Values: values})
	}
	if target, given := t.in.Trip.Target.Get(); given && t.idleTarget() {
		note(IdleTarget, "The target of "+plain(target.String())+" changes no gallons: going over each face once with DI water does better than that already.")
	}
	for i := range p.Stops {
		s := &p.Stops[i]
		name := plain(s.Name)
		if onHand, limited := s.OnHand.Get(); limited && s.Needs > onHand {
			note("tank-runs-dry", name+": the washes take up to %s in all, and %s is on hand.", quantity.ValueOf(s.Needs), quantity.ValueOf(onHand))
		}
		if stop := &t.in.Trip.Stops[s.Index]; s.Unknown && s.Washes > 0 {
			bandNote(stop, name, note)
		}
	}
	for k := range p.Washes {
		w := &p.Washes[k]
		name := plain(w.Name)
		if elsewhere := t.in.Trip.Elsewhere(&t.in.Trip.Washes[w.Index]); elsewhere != "" {
			note("stop-elsewhere", plain(w.Date.String()+", "+w.Name+": "+elsewhere+"."))
		}
		if w.Assumed {
			note("stop-assumed", w.Date.String()+", "+name+": more than one stop begins on that day, and this wash names none. It is taken to be at "+plain(p.Stops[w.Stop].Name)+", the last of them; name its stop where it is another.")
		}
		switch {
		case w.Barred:
			note("not-allowed", w.Date.String()+", "+name+": washing is not allowed at this stop. It is not counted; move it to another day.")
		case w.Rinse:
			note("rinse-only", w.Date.String()+", "+name+": this stop allows a rinse only, so soap and contact wash are left out.")
		}
	}
	for i := range p.Changes {
		if c := &p.Changes[i]; c.Before >= len(p.Washes) {
			note("change-unused", "The change of "+c.Date.String()+" comes after the last wash: nothing of this trip uses that resin.")
		}
	}
	switch {
	case p.ToFill && p.Over:
		note("to-fill", plain(p.Bed)+" is still to be filled: the log holds no fill of it.")
	case p.ToFill:
		note("to-fill", plain(p.Bed)+" is still to be filled: its resin is ordered for this trip, until the log holds a fill of it.")
	}
	if otherwise := t.in.Trip.Otherwise(); len(otherwise) > 0 {
		note("otherwise", "All washes of this trip, whatever they say themselves: "+plain(strings.Join(otherwise, ", "))+".")
	}
	if lost := len(t.in.Trip.Washes) - len(t.legs); lost > 0 {
		note("not-placed", "Some washes have no date yet, or are before the first stop: they are not counted.")
	}
}

// IdleTarget is the code of the note that the target of a trip sets no gallons.
const IdleTarget = "target-idle"

// idleTarget tells that the target sets the gallons of no wash that takes DI water,
// whatever the water of its stop is. It is false where none takes any.
func (t *tripping) idleTarget() bool {
	rinsed := false
	for k := range t.legs {
		l := &t.legs[k]
		if l.barred || l.other {
			continue
		}
		for i := range l.demands {
			d := &l.demands[i]
			if d.DI.Volume <= 0 {
				continue
			}
			if !d.Ample {
				return false
			}
			rinsed = true
		}
	}
	return rinsed
}

// bandNote tells what is taken of a water that is not stated at both ends.
func bandNote(stop *model.Stop, name string, note func(code, format string, values ...quantity.Value)) {
	low, high := tdsBand(stop)
	band := fmt.Sprintf("It is taken as anything from %.3g to %.4g %s", low.Number, high.Number, unitOf(low))
	switch {
	case stop.LowTDS.Given() && stop.HighTDS.Given():
	case stop.LowTDS.Given():
		note("water-unknown", name+": the most that its water may show is not stated. "+band+"; state tds_high where you know better.")
	case stop.HighTDS.Given():
		note("water-unknown", name+": the least that its water may show is not stated. "+band+"; state tds_low where you know better.")
	default:
		note("water-unknown", name+": nothing is known of its water. "+band+"; state tds_low and tds_high where you know better.")
	}
}

// unitOf is what stands behind the number of a reading.
func unitOf(r quantity.Reading) string {
	_, unit, _ := strings.Cut(r.String(), " ")
	return unit
}

// plain keeps a name from being read as a format.
func plain(name string) string {
	out := make([]rune, 0, len(name))
	for _, r := range name {
		if out = append(out, r); r == '%' {
			out = append(out, r)
		}
	}
	return string(out)
}

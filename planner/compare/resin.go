package compare

import (
	"washeve/model"
	"washeve/model/quantity"
)

// resinWays are those of a trip that change resin on the way, or have it carried
// otherwise. A wash has none.
func resinWays(base Case, f Figures) []Way {
	if base.Trip == nil {
		return nil
	}
	return []Way{once(f), advised(f), carried(base, f)}
}

// tripOver is why no way with new resin is tried.
const tripOver = "the trip is over"

// changing plans a change of resin on a day.
func changing(days ...model.Date) func(*Case) {
	return func(c *Case) {
		for _, d := range days {
			c.Trip.Changes = append(c.Trip.Changes, model.ResinChange{Date: quantity.Typed(d, d.String())})
		}
	}
}

// once is one change of resin more than is planned, where it does most.
func once(f Figures) Way {
	w := Way{Key: "change-once", Name: "change once", Changes: "One change of resin on the way more than is planned."}
	day, found := f.Trip.Once.Get()
	switch {
	case f.Trip.Over:
		w.same = tripOver
		return w
	case !found:
		w.same = "no wash of the trip is at risk"
		return w
	}
	w.Changes = "One change of resin more than is planned, on " + day.String() + ", where it brings most for what it throws out."
	w.change = changing(day)
	return w
}

// advised are all changes of resin that the plan advises.
func advised(f Figures) Way {
	var days []model.Date
	list := ""
	for _, c := range f.Trip.Changes {
		if c.Advised {
			days = append(days, c.Date)
			list += ", " + c.Date.String()
		}
	}
	w := Way{Key: "change-advised", Name: "change as advised", Changes: "The changes of resin that the plan advises, planned" + list + "."}
	if w.change = changing(days...); f.Trip.Over {
		w.same = tripOver
	} else if len(days) == 0 {
		w.same = "no change of resin is advised"
	} else if day, found := f.Trip.Once.Get(); found && len(days) == 1 && days[0] == day {
		w.same = "one change is advised: that is to change once"
	}
	return w
}

// carried is the resin that comes along the way, where it is carried from the start,
// and the other way about.
func carried(base Case, f Figures) Way {
	w := Way{
		Key: "along", Name: "resin comes on the way", Changes: "The resin is not carried from the start: it is sent to where it is needed.",
		change: func(c *Case) { c.Trip.Carry = model.No },
	}
	if base.Trip.Carry == model.No {
		w = Way{
			Key: "carried", Name: "resin carried", Changes: "The resin is at hand when you leave, and carried from the start.",
			change: func(c *Case) { c.Trip.Carry = model.Yes },
		}
	}
	switch {
	case f.Trip.Over:
		w.same = tripOver
	case f.Trip.Carry.Fills == 0:
		w.same = "the trip needs no new resin"
	}
	return w
}

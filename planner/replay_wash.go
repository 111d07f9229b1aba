package planner

import (
	"washeve/model"
	"washeve/model/quantity"
)

// sameWash is how long after a reading the wash that it was taken in may be
// written down. PRACTICE.
const sameWash = 12 * quantity.Hour

// within are the readings since the last wash that told what the fill had given, of the
// wash that is to be written down.
type within struct {
	readings int
	ahead    quantity.Volume // that they counted before it is
	last     model.Moment
}

// with is one reading more, which counted so much. Readings of long before it are of no
// wash that is to come.
func (w within) with(at model.Moment, ahead quantity.Volume) within {
	if w.past(at) {
		w = within{}
	}
	return within{readings: w.readings + 1, ahead: w.ahead + ahead, last: at}
}

// of are those that were taken in a wash: none where they tell of more than it has run, but
// for rounding, since that was given before it.
func (w within) of(at model.Moment, volume quantity.Volume) within {
	const rounding = 0.05 * quantity.Gallon
	if w.past(at) || w.ahead > volume+rounding {
		return within{}
	}
	return w
}

func (w within) past(at model.Moment) bool {
	return quantity.Duration(at.Time().Sub(w.last.Time()).Seconds()) > sameWash
}

// use adds the DI water of a wash to the fill.
func (r *replay) use(e event) bool {
	w := e.wash.Wash
	volume := w.DI.Or(0)
	if volume <= 0 {
		return false
	}
	softened := w.Feed != model.No && softenerOf(w, r.rig) != ""
	feed, known := r.feedOf(w.Place, softened, w.Temperature)
	if !known {
		feed, known = r.feed, r.known
	}
	if !known {
		if feed, known = r.feedOf("", softened, w.Temperature); !known {
			return false
		}
	}
	r.feed, r.known, r.flow = feed, true, w.Flow.Or(UsualFlow)
	f := r.present()
	r.start(f)
	f.Washes++
	r.draws = append(r.draws, Draw{e.at, volume, w.Vehicle})
	own := r.within.of(e.at, volume)
	r.within = within{}
	f.metered -= own.readings // their gallons are the program's count, and no meter's
	if volume -= own.ahead; volume > 0 {
		f.add(r.with(feed).use(volume, r.flow), volume)
	}
	f.Last = e.at
	return true
}

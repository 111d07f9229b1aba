package planner

import (
	"washeve/model"
	"washeve/model/quantity"
)

// sameWash is how long after a reading the wash that it was taken in may be
// written down. PRACTICE.
const sameWash = 12 * quantity.Hour

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
	r.feed, r.known, r.flow = feed, true, w.Flow.Or(usualFlow)
	f := r.present()
	r.start(f)
	f.Washes++
	r.draws = append(r.draws, Draw{e.at, volume})
	f.metered -= r.ownCount(e.at, volume)
	if volume -= r.counted(e.at); volume > 0 {
		f.add(r.with(feed).use(volume, r.flow), volume)
	}
	f.Last = e.at
	return true
}

// counted is what a reading in the middle of this wash has counted already.
func (r *replay) counted(at model.Moment) quantity.Volume {
	ahead := r.ahead
	r.ahead = 0
	if quantity.Duration(at.Time().Sub(r.aheadAt.Time()).Seconds()) > sameWash {
		return 0
	}
	return ahead
}

// ownCount is how many of the readings since the wash before were taken in this wash and
// say no more than what its own water comes to: their gallons are the program's count,
// and no meter's.
func (r *replay) ownCount(at model.Moment, volume quantity.Volume) int {
	told := r.told
	r.told = 0
	if r.ahead > volume || quantity.Duration(at.Time().Sub(r.toldAt.Time()).Seconds()) > sameWash {
		return 0
	}
	return told
}

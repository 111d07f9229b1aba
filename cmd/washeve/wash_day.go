package main

import (
	"errors"
	"fmt"
	"time"

	"washeve/model"
	"washeve/model/store"
	"washeve/ui/washday"
)

// betweenLooks is the time between two looks at the clock on a wash day.
const betweenLooks = 250 * time.Millisecond

// washDay is what a wash day is done with.
func (p *program) washDay(keep *store.Store, b *book, bell model.Answer) washday.Means {
	means := washday.Means{
		Instant: p.instant, Tick: betweenLooks,
		Under: func() (model.Underway, bool, error) { return p.underway(keep) },
		Keep:  keep.SaveUnderway, Close: keep.CloseUnderway,
		Rest: b.rest, Ways: b.ways, Make: b.plan,
	}
	if bell != model.No {
		means.Bell = func() { fmt.Fprint(p.out, "\a") }
	}
	return means
}

// worst is the first error, else the first fault.
func worst(faults []store.Fault) store.Fault {
	for _, f := range faults {
		if f.Severity == store.Error {
			return f
		}
	}
	return faults[0]
}

// underway reads the wash that was left. One that does not read is set aside, and
// that is told.
func (p *program) underway(keep *store.Store) (model.Underway, bool, error) {
	u, there, faults := keep.Underway()
	if !there || !store.HasErrors(faults) && !store.HasLacks(faults) {
		return u, there, nil
	}
	kept, err := keep.SetUnderwayAside(p.clock())
	told := fmt.Errorf("a wash was under way, but its file does not read: %w", worst(faults))
	if err != nil {
		return u, false, errors.Join(told, err)
	}
	return u, false, fmt.Errorf("%w (kept as %s; the log has what was done)", told, kept)
}

package model

import (
	"fmt"
	"slices"
)

// Standing is what became of an entry.
type Standing string

// The standings.
const (
	Counts    Standing = "counts"
	Corrected Standing = "corrected" // counts, with fields stated anew
	Struck    Standing = "struck"
	Doubled   Standing = "doubled" // another entry has its identifier, and counts
)

// Row is an entry and what became of it: both can be seen.
type Row struct {
	Entry    Entry // as it was written
	Now      Entry // as it counts
	Standing Standing
	By       []string // identifiers of the corrections that did it, in order
	With     string   // of a part of a wash that is struck, unless the part is itself: that wash's identifier
}

// EntryFault is something wrong between entries.
type EntryFault struct {
	ID      string // of the entry that it is about
	Problem string
}

func (f EntryFault) Error() string { return "entry " + f.ID + ": " + f.Problem }

// Rows gives every entry with what became of it, in order. It does not matter
// in which order corrections were written or merged:
//
//   - An entry that any standing correction strikes is struck.
//   - Else its corrections hold in the order of moment and identifier, and of two
//     that state the same field the later holds.
//   - A correction may itself be struck by a later one; it then does nothing.
//   - The stages of a wash that is struck are struck with it. Its readings stay, since they
//     were read, but for the gallons so far that they counted with its water.
func (l Log) Rows() []Row {
	r := l.resolve()
	return r.rows
}

// Effective gives the entries that count, corrected, in order and without the
// corrections.
func (l Log) Effective() Log {
	if l.plain() {
		return l
	}
	var log Log
	for _, row := range l.Rows() {
		if (row.Standing == Counts || row.Standing == Corrected) && row.Entry.Kind() != CorrectionKind {
			log = append(log, row.Now)
		}
	}
	slices.SortStableFunc(log, byMoment)
	return log
}

// Faults finds what is wrong between entries: identifiers used twice,
// corrections of what is not there or does not go with them.
func (l Log) Faults() []EntryFault {
	if l.plain() {
		return nil
	}
	return l.resolve().faults
}

// plain tells that nothing is corrected or doubled: most logs, most days.
func (l Log) plain() bool {
	seen := make(map[string]struct{}, len(l))
	for i := range l {
		if _, corrects := l[i].Body.(*Correction); corrects {
			return false
		}
		seen[l[i].ID] = struct{}{}
	}
	return len(seen) == len(l)
}

type resolution struct {
	rows   []Row          // by rank, and in the log's order when all is done
	at     map[string]int // row by rank of the entry that counts, by identifier
	faults []EntryFault
}

func (l Log) resolve() *resolution {
	r := &resolution{rows: make([]Row, len(l)), at: make(map[string]int, len(l))}
	ranked := l.ranked()
	for i, at := range ranked {
		e := l[at]
		r.rows[i] = Row{Entry: e, Now: e, Standing: Counts}
		if _, taken := r.at[e.ID]; taken {
			r.rows[i].Standing = Doubled
			r.fault(e.ID, "two entries have this identifier and say different things; the first in order counts, the other is kept beside it")
			continue
		}
		r.at[e.ID] = i
	}
	r.strikeCorrections()
	r.correct()
	r.strikeParts()
	rows := make([]Row, len(l))
	for i, at := range ranked {
		rows[at] = r.rows[i]
	}
	r.rows = rows
	return r
}

// ranked are the places of the entries in the log, as [order] ranks the entries.
func (l Log) ranked() []int {
	places := make([]int, len(l))
	for i := range places {
		places[i] = i
	}
	slices.SortStableFunc(places, func(a, b int) int { return order(l[a], l[b]) })
	return places
}

func (r *resolution) fault(id, problem string) {
	r.faults = append(r.faults, EntryFault{id, problem})
}

// correction is the correction in row i, where it stands.
func (r *resolution) correction(i int) (*Correction, bool) {
	c, ok := r.rows[i].Entry.Body.(*Correction)
	return c, ok && r.rows[i].Standing == Counts
}

// strikeCorrections goes from the latest back, so that whether a correction
// stands hangs on later ones alone, and never goes in a circle.
func (r *resolution) strikeCorrections() {
	for i := len(r.rows) - 1; i >= 0; i-- {
		c, ok := r.correction(i)
		if !ok {
			continue
		}
		id := r.rows[i].Entry.ID
		target, there := r.at[c.Of]
		if !there {
			r.fault(id, fmt.Sprintf("corrects the entry %s, which is not in this log; the log that holds it may not be merged yet", c.Of))
			continue
		}
		if r.rows[target].Entry.Kind() != CorrectionKind {
			continue
		}
		switch {
		case c.Strike != Yes:
			r.fault(id, "corrects a correction; correct the entry itself once more, or strike the correction")
		case target >= i:
			r.fault(id, "strikes a correction that is later than itself; it does nothing")
		default:
			r.rows[target].Standing = Struck
			r.rows[target].By = append([]string{id}, r.rows[target].By...)
		}
	}
}

// correct puts the standing corrections on the entries, the earliest first.
func (r *resolution) correct() {
	for i := range r.rows {
		c, ok := r.correction(i)
		if !ok {
			continue
		}
		target, there := r.at[c.Of]
		if !there || r.rows[target].Entry.Kind() == CorrectionKind {
			continue
		}
		row, id := &r.rows[target], r.rows[i].Entry.ID
		row.By = append(row.By, id)
		if c.Strike == Yes {
			row.Now, row.Standing = row.Entry, Struck
		}
		if row.Standing == Struck {
			continue
		}
		now, problems := c.apply(row.Now)
		for _, p := range problems {
			r.fault(id, p)
		}
		row.Now, row.Standing = now, Corrected
	}
}

// After is a moment for a correction of an entry: now, or just past the entry and
// all that corrects it, should a clock have been wrong. So the latest correction
// is the one made last.
func (l Log) After(id string, now Moment) Moment {
	related := map[string]bool{id: true}
	for i := range l {
		if c, ok := l[i].Body.(*Correction); ok && related[c.Of] {
			related[l[i].ID] = true
		}
	}
	for i := range l {
		if related[l[i].ID] && l[i].At.Compare(now) >= 0 {
			now.unix = l[i].At.unix + 1
		}
	}
	return now
}

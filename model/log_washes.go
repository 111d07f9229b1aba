package model

import (
	"cmp"
	"sort"

	"washeve/model/quantity"
)

// WashRecord is a wash with its stages.
type WashRecord struct {
	ID     string
	At     Moment
	Wash   WashDone // what it does not say is filled from the stages
	Stages []StageDone
	Broken bool // the stages were written, the wash never was
	Index  int  // in the log, of its entry; of the first stage where it is broken
}

// Washes gathers the washes of an effective log with their stages, in order of
// moment and then of the log. A stage that names no wash, or one that was never written since the
// lid was closed on it, makes a record too: its water was used all the same.
func (l Log) Washes() []WashRecord {
	var records []WashRecord
	at := map[string]int{}
	for i := range l {
		if w, ok := l[i].Body.(*WashDone); ok {
			at[l[i].ID] = len(records)
			records = append(records, WashRecord{ID: l[i].ID, At: l[i].At, Wash: *w, Index: i})
		}
	}
	for i := range l {
		s, ok := l[i].Body.(*StageDone)
		if !ok {
			continue
		}
		id := s.Wash
		if id == "" {
			id = l[i].ID
		}
		if _, known := at[id]; !known {
			at[id] = len(records)
			records = append(records, WashRecord{ID: id, At: l[i].At, Broken: true, Index: i})
		}
		record := &records[at[id]]
		record.Stages = append(record.Stages, *s)
	}
	for i := range records {
		records[i].fill()
	}
	return inOrder(records)
}

// fill states what the stages tell and the wash does not. Their time is the wash's only
// where each has one.
func (r *WashRecord) fill() {
	w := &r.Wash
	sums := map[Water]quantity.Volume{}
	total, timed := quantity.Duration(0), len(r.Stages) > 0
	for _, s := range r.Stages {
		sums[s.Water] += s.Used.Or(0)
		total += s.Duration.Or(0)
		timed = timed && s.Duration.Given()
		word(&w.Place, s.Place)
		word(&w.Vehicle, s.Vehicle)
		if s.Water == DI {
			word(&w.Bed, s.Bed)
			word(&w.Sprayer, s.Sprayer)
			if !w.Flow.Given() {
				w.Flow = s.Flow
			}
		}
	}
	volume(&w.DI, sums, DI)
	volume(&w.Softened, sums, Softened)
	volume(&w.Raw, sums, Raw)
	if timed && !w.Duration.Given() {
		w.Duration = quantity.Some(total)
	}
}

func word(at *string, other string) {
	if *at == "" {
		*at = other
	}
}

func volume(at *quantity.Opt[quantity.Volume], sums map[Water]quantity.Volume, water Water) {
	if sum, used := sums[water]; used && !at.Given() {
		*at = quantity.Some(sum)
	}
}

func inOrder(records []WashRecord) []WashRecord {
	sort.Slice(records, func(i, j int) bool {
		a, b := &records[i], &records[j]
		return cmp.Or(a.At.Compare(b.At), cmp.Compare(a.Index, b.Index)) < 0
	})
	return records
}

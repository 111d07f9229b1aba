package model

import "washeve/model/quantity"

// partOf is the wash that an entry is a part of, by its identifier; "" where it is of none.
func partOf(body Body) string {
	switch b := body.(type) {
	case *StageDone:
		return b.Wash
	case *Sample:
		return b.Wash
	}
	return ""
}

// strikeParts takes the parts of each struck wash with it.
func (r *resolution) strikeParts() {
	for i := range r.rows {
		row := &r.rows[i]
		at, there := r.at[partOf(row.Now.Body)]
		if !there || row.Standing == Doubled {
			continue
		}
		if wash := &r.rows[at]; wash.Entry.Kind() == WashKind && wash.Standing == Struck {
			row.goWith(wash)
		}
	}
}

// goWith is what becomes of a part of a struck wash. One that is struck on its own stays so,
// whatever becomes of the wash.
func (r *Row) goWith(wash *Row) {
	if r.Standing == Struck {
		return
	}
	r.With = wash.Entry.ID
	if s, reads := r.Now.Body.(*Sample); reads {
		kept := *s
		kept.SoFar = quantity.Opt[quantity.Volume]{}
		r.Now.Body = &kept
		return
	}
	r.Standing, r.Now = Struck, r.Entry
	r.By = append(r.By, wash.By...)
}

// Parts are what the log holds of a wash besides its own entry.
type Parts struct{ Stages, Readings int }

// PartsOf counts the stages of a wash that count, or do so but for its being struck, and
// the readings that were taken in it.
func PartsOf(rows []Row, wash string) Parts {
	var p Parts
	for i := range rows {
		switch row := &rows[i]; {
		case partOf(row.Now.Body) != wash || !row.stands():
		case row.Entry.Kind() == StageKind:
			p.Stages++
		default:
			p.Readings++
		}
	}
	return p
}

// ReadingsOf are the identifiers of the readings that were taken in a wash and count.
func ReadingsOf(rows []Row, wash string) []string {
	var ids []string
	for i := range rows {
		if row := &rows[i]; row.Entry.Kind() == ReadingKind && partOf(row.Now.Body) == wash && row.stands() {
			ids = append(ids, row.Entry.ID)
		}
	}
	return ids
}

// stands tells that a part counts, or does so but for its wash being struck.
func (r *Row) stands() bool {
	return r.Standing != Doubled && (r.Standing != Struck || r.With != "")
}

// Folded leaves out the stages of the washes that are listed, and what strikes or corrects
// such a stage; those of the wash with the identifier open stay, "" for none. It gives the
// places of the rows that are kept, and how many stages each wash has.
func Folded(rows []Row, open string) (kept []int, stages map[string]int) {
	stages, apart := map[string]int{}, map[string]bool{}
	for i := range rows {
		if rows[i].Entry.Kind() == WashKind {
			stages[rows[i].Entry.ID] = 0
		}
	}
	for i := range rows {
		row := &rows[i]
		stage, is := row.Now.Body.(*StageDone)
		if !is {
			continue
		}
		if _, listed := stages[stage.Wash]; listed {
			apart[row.Entry.ID] = stage.Wash != open
			if row.stands() {
				stages[stage.Wash]++
			}
		}
	}
	for i := range rows {
		id := rows[i].Entry.ID
		if c, corrects := rows[i].Entry.Body.(*Correction); corrects {
			id = c.Of
		}
		if !apart[id] {
			kept = append(kept, i)
		}
	}
	return kept, stages
}

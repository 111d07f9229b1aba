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

// goWith is what becomes of a part of a struck wash.
func (r *Row) goWith(wash *Row) {
	r.With = wash.Entry.ID
	if s, reads := r.Now.Body.(*Sample); reads {
		kept := *s
		kept.SoFar = quantity.Opt[quantity.Volume]{}
		r.Now.Body = &kept
		return
	}
	if r.Standing != Struck {
		r.Standing, r.Now = Struck, r.Entry
	}
	r.By = append(r.By, wash.By...)
}

// Parts are what the log holds of a wash besides its own entry.
type Parts struct{ Stages, Readings int }

// PartsOf counts the stages of a wash that count, or do so but for its being struck, and
// the readings that were taken in it.
func PartsOf(rows []Row, wash string) Parts {
	var p Parts
	for i := range rows {
		row := &rows[i]
		if row.Standing == Doubled || row.Now.Body == nil || partOf(row.Now.Body) != wash {
			continue
		}
		switch alone := row.Standing == Struck && row.With == ""; {
		case alone:
		case row.Entry.Kind() == StageKind:
			p.Stages++
		default:
			p.Readings++
		}
	}
	return p
}

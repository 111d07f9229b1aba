package washday

import "washeve/model"

// forgotten are the deeds that no longer count: each reading that was taken back, and what
// was said of it between; nil where there is none. What it is taken back by takes back the
// last reading that still stands.
func forgotten(deeds []model.Deed) map[int]bool {
	var gone map[int]bool
	var standing []int
	for n := range deeds {
		switch last := len(standing) - 1; {
		case deeds[n].Does == model.TakeRead:
			standing = append(standing, n)
		case deeds[n].Does == model.TakeBack && last >= 0:
			if gone == nil {
				gone = map[int]bool{}
			}
			for i := standing[last]; i < n; i++ {
				gone[i] = gone[i] || speaksOfReading(deeds[i].Does)
			}
			standing = standing[:last]
		}
	}
	return gone
}

// speaksOfReading tells whether a deed is a reading, or is said of the last one: it is good
// enough, or lived with on a way out.
func speaksOfReading(does model.DeedKind) bool {
	return does == model.TakeRead || does == model.Accept || does == model.TakeWay
}

// LastReading is the last reading of a wash that was not taken back; nil where there is
// none.
func LastReading(u *model.Underway) *model.Deed {
	gone := forgotten(u.Deeds)
	for n := len(u.Deeds) - 1; n >= 0; n-- {
		if d := &u.Deeds[n]; d.Does == model.TakeRead && !gone[n] {
			return d
		}
	}
	return nil
}

// SameWater tells that no DI water has run, as far as is known, since the last reading that
// stands, and the bed has not stood for long: what the pen shows now is what it showed then.
func (s State) SameWater() bool { return s.rest.read }

package entry

// Deeds are what was written in the log since the program began, deed by deed: the
// identifiers of the entries of each. All screens of a run share one.
type Deeds struct{ done [][]string }

// Note adds a deed.
func (d *Deeds) Note(ids []string) {
	if d != nil {
		d.done = append(d.done, ids)
	}
}

// Count is how many there are.
func (d *Deeds) Count() int {
	if d == nil {
		return 0
	}
	return len(d.done)
}

// Last are the identifiers of the last deed, in the order in which they were written; nil
// where there is none.
func (d *Deeds) Last() []string {
	if d.Count() == 0 {
		return nil
	}
	return d.done[len(d.done)-1]
}

// Drop forgets the last deeds, as many as n.
func (d *Deeds) Drop(n int) { d.done = d.done[:max(d.Count()-n, 0)] }

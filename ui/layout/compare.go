package layout

// CompareRects are the parts of the Compare screen.
type CompareRects struct {
	Title  Rect // what is compared
	Table  Rect // ways across, figures down
	Foot   Rect // which ways are out of sight
	Words  Rect // about the way under the hand
	Status Rect // what just happened
	Hint   Rect // the keys
}

// Compare divides the Compare screen: the table, which takes so many lines, and
// below it the words.
func Compare(size Size, table int) CompareRects {
	var c CompareRects
	gap := 0
	if size.H >= 30 {
		gap = 1
	}
	rest := Whole(size)
	c.Title, rest = rest.Top(1)
	c.Hint, rest = rest.Bottom(1)
	c.Status, rest = rest.Bottom(1)
	_, rest = rest.Top(gap)
	c.Table, rest = rest.Top(table)
	c.Foot, c.Words = rest.Top(1)
	return c
}

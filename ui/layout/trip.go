package layout

// TripRects are the parts of the Trip screen.
type TripRects struct {
	Title  Rect
	Words  Rect // the answer in words
	Season Rect // the line along the season
	Legend Rect // its signs
	List   Rect // stops, washes and changes, or a form in their place
	Status Rect
	Hint   Rect
}

// Trip divides the Trip screen: the answer above, the season, and the list below, with so
// many lines of status under it. In words the season has a line less.
func Trip(size Size, inWords bool, status int) TripRects {
	var t TripRects
	rest := Whole(size)
	t.Title, rest = rest.Top(1)
	t.Hint, rest = rest.Bottom(1)
	t.Status, rest = rest.Bottom(status)
	t.Words, rest = rest.Top(4)
	if inWords {
		t.Season, t.List = rest.Top(3)
		return t
	}
	t.Season, rest = rest.Top(min(7+max(size.H-24, 0)/2, 16))
	t.Legend, t.List = rest.Top(1)
	return t
}

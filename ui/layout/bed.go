package layout

// BedRects are the parts of the Bed screen. A part for which there is no room
// is empty.
type BedRects struct {
	Title   Rect
	Verdict Rect // does it last, and how sure
	Numbers Rect // what is left, when it ends, when to order, what it cost
	Curve   Rect // outlet over gallons
	Tank    Rect
	Legend  Rect // of curve and tank
	Notes   Rect // what the readings say
	List    Rect // the log
	Work    Rect // a form or a reading, over notes and list
	Status  Rect
	Hint    Rect
}

// BedNow is how the Bed screen stands, as far as its parts go by it.
type BedNow struct {
	InWords bool // the pictures are a few lines
	InLog   bool // the hand walks through the log
	Says    int  // lines of the status, one at least: those beyond it are the notes'
}

// fewEntries are so few lines of the log that the notes make room for more, while the hand
// walks through it.
const fewEntries = 10

// Bed divides the Bed screen: the answer above, the log below, or at the right
// where the screen is wide.
func Bed(size Size, now BedNow) BedRects {
	var b BedRects
	rest := Whole(size)
	b.Title, rest = rest.Top(1)
	b.Hint, rest = rest.Bottom(1)
	b.Status, rest = rest.Bottom(max(now.Says, 1))
	wide := size.W >= 130
	if wide {
		b.List, rest = rest.right(size.W * 2 / 5)
		_, b.List = b.List.Left(2)
	}
	b.Verdict, rest = rest.Top(1)
	b.Numbers, rest = rest.Top(4)
	rest = b.pictures(rest, size, now.InWords)
	b.Work = rest
	if wide {
		b.Notes = rest
		return b
	}
	notes := max(3+max(size.H-24, 0)/5-(b.Status.H-1), 0)
	if now.InLog && rest.H-notes < fewEntries {
		notes = 0
	}
	b.Notes, b.List = rest.Top(notes)
	return b
}

// pictures divides the curve, the tank and their legend, and gives what is left.
func (b *BedRects) pictures(rest Rect, size Size, inWords bool) Rect {
	if inWords {
		b.Curve, rest = rest.Top(1)
		b.Tank, rest = rest.Top(2)
		return rest
	}
	var row Rect
	row, rest = rest.Top(min(8+max(size.H-24, 0)/2, 18))
	b.Tank, b.Curve = row.right(15)
	_, b.Tank = b.Tank.Left(1)
	b.Legend, rest = rest.Top(1)
	return rest
}

// right cuts the last n cells of each line off: the part cut, and the rest.
func (r Rect) right(n int) (Rect, Rect) {
	rest, cut := r.Left(r.W - n)
	return cut, rest
}

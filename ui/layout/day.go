package layout

// DayRects are the parts of the Day screen. An empty one is not drawn.
type DayRects struct {
	Title   Rect // what wash this is, and the sun's hours
	Weather Rect // what is stated of the day
	Strip   Rect // hours across, faces down
	Legend  Rect // its signs
	Answer  Rect // what a start brings
	Compass Rect
	Status  Rect // what just happened
	Hint    Rect // the keys
}

// Day divides the Day screen: the strip above, which takes so many lines, and
// below it the answer at the left and the compass at the right. Without a strip
// the answer has it all.
func Day(size Size, strip int) DayRects {
	var d DayRects
	gap := 0
	if size.H >= 30 {
		gap = 1
	}
	rest := Whole(size)
	d.Title, rest = rest.Top(1)
	d.Hint, rest = rest.Bottom(1)
	d.Status, rest = rest.Bottom(1)
	d.Weather, rest = rest.Top(1)
	if strip == 0 {
		_, d.Answer = rest.Top(1)
		return d
	}
	_, rest = rest.Top(gap)
	d.Strip, rest = rest.Top(strip)
	_, rest = rest.Top(gap)
	d.Legend, rest = rest.Top(1)
	_, rest = rest.Top(gap)
	d.Answer, d.Compass = rest.Left(size.W - compassWidth(rest))
	d.Answer.W--
	return d
}

// compassWidth keeps the compass as high as there is room, and as wide as that.
func compassWidth(r Rect) int { return min(2*r.H+1, r.W/3) }

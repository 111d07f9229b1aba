package layout

// ShortRects are the parts of the Short screen.
type ShortRects struct {
	Title   Rect
	Verdict Rect // does the bed last, and what it gives
	Says    Rect // who gets DI, and what that spares
	Faces   Rect // one line each, under a heading
	Ways    Rect // under a heading
	Detail  Rect // of the line under the hand
	Status  Rect
	Hint    Rect
}

// Short divides the Short screen for so many faces and ways. Where it is high
// enough, each way has a second line.
func Short(size Size, faces, ways int) (r ShortRects, perWay int) {
	rest := Whole(size)
	r.Title, rest = rest.Top(1)
	r.Hint, rest = rest.Bottom(1)
	r.Status, rest = rest.Bottom(1)
	r.Verdict, rest = rest.Top(2)
	r.Says, rest = rest.Top(1)
	gap, detail := 0, 2
	perWay = 1
	if rest.H >= faces+1+ways+1+5 {
		gap, detail = 1, 3
	}
	if rest.H >= faces+1+2*ways+1+2+4 {
		perWay, detail = 2, 4
	}
	detail = max(detail, min(rest.H-(faces+1)-(perWay*ways+1)-2*gap, 4))
	r.Detail, rest = rest.Bottom(detail)
	_, rest = rest.Top(gap)
	r.Faces, rest = rest.Top(faces + 1)
	_, rest = rest.Top(gap)
	r.Ways, _ = rest.Top(perWay*ways + 1)
	return r, perWay
}

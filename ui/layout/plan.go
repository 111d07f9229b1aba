package layout

// PlanRects are the parts of the Plan screen. A part for which there is no room
// is empty.
type PlanRects struct {
	Title  Rect // what wash this is
	Walk   Rect // the steps and their forms
	Help   Rect // about the field under the hand
	Status Rect // what just happened
	Hint   Rect // the keys

	Verdict Rect // will the bed last
	Numbers Rect // gallons and flow
	Caps    Rect // the flows as bars
	Side    Rect // the coach from the side
	Above   Rect // and from above
	Faces   Rect // what is strewn and filled in on it, in words
	Tank    Rect
	Legend  Rect // the tank's layers in words, where the tank is narrow
	Stages  Rect // the table of steps
	Curve   Rect // outlet over gallons
	Notes   Rect // warnings and cautions
}

// PlanNeeds is how many lines the variable parts would like. A status has one at least.
type PlanNeeds struct{ Bars, Stages, Status int }

// Plan divides the Plan screen: the walk at the left, the answer at the right.
func Plan(size Size, need PlanNeeds) PlanRects {
	var p PlanRects
	rest := Whole(size)
	p.Title, rest = rest.Top(1)
	p.Hint, rest = rest.Bottom(1)
	p.Status, rest = rest.Bottom(max(need.Status, 1))
	p.Walk, rest = rest.Left(walkWidth(size.W))
	p.Help, p.Walk = p.Walk.Bottom(4)
	_, rest = rest.Left(1)
	switch {
	case rest.W >= 84 && rest.H >= 32:
		p.wide(rest, need)
	case rest.H >= 26:
		p.tall(rest, need)
	default:
		p.small(rest)
	}
	return p
}

// numberRows is the lines of the answer in numbers.
const numberRows = 7

func walkWidth(w int) int { return min(max(w*9/20, 34), 44) }

// small is 80x24: two bars, and the coach beside a narrow tank.
func (p *PlanRects) small(r Rect) {
	p.Verdict, r = r.Top(2)
	p.Numbers, r = r.Top(numberRows)
	p.Caps, r = r.Top(2)
	r = p.pictures(r, 6, 14)
	p.Notes = r
}

// tall adds the other limits and the coach from above.
func (p *PlanRects) tall(r Rect, need PlanNeeds) {
	p.Verdict, r = r.Top(2)
	p.Numbers, r = r.Top(numberRows)
	p.Caps, r = r.Top(min(need.Bars, 7))
	_, r = r.Top(1)
	if r.H >= 16 {
		p.Above, r = r.Top(4)
	}
	r = p.pictures(r, 6, 14)
	if r.H >= 18 && r.W >= 40 {
		p.Curve, r = r.Bottom(9)
		_, r = r.Bottom(1)
	}
	p.Notes = r
}

// pictures puts the coach beside the tank, and the legend below.
func (p *PlanRects) pictures(r Rect, high, tank int) Rect {
	var row Rect
	row, r = r.Top(high)
	p.Side, p.Tank = row.Left(row.W - tank)
	p.Side.W--
	p.Legend, r = r.Top(1)
	return r
}

// wide shows everything: pictures side by side, the steps, the curve.
func (p *PlanRects) wide(r Rect, need PlanNeeds) {
	p.Verdict, r = r.Top(2)
	_, r = r.Top(1)
	bars := min(max(need.Bars, 3), 7)
	row, r := r.Top(numberRows + 1 + bars)
	left, right := row.Left(row.W * 13 / 25)
	p.Numbers, left = left.Top(numberRows)
	_, left = left.Top(1)
	p.Caps = left
	_, right = right.Left(2)
	p.Side, right = right.Top(right.H - 7)
	_, right = right.Top(1)
	p.Above, p.Faces = right.Top(5)
	_, r = r.Top(1)
	p.Stages, r = r.Top(min(need.Stages+1, 8))
	_, r = r.Top(1)
	row, r = r.Top(9)
	p.Curve, p.Tank = row.Left(row.W - 38)
	p.Curve.W -= 2
	_, p.Notes = r.Top(1)
}

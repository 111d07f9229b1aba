package layout

// RigRects are the parts of the Rig screen.
type RigRects struct {
	Title  Rect
	List   Rect // what is owned, by kind
	Head   Rect // what is chosen in it, and what names that
	Form   Rect // its fields
	Help   Rect // about the field under the hand
	Status Rect
	Hint   Rect
}

// Rig divides the Rig screen: the list at the left, the chosen one at the right.
// Status is how many lines the status takes.
func Rig(size Size, status int) RigRects {
	var p RigRects
	rest := Whole(size)
	p.Title, rest = rest.Top(1)
	p.Hint, rest = rest.Bottom(1)
	p.Status, rest = rest.Bottom(max(status, 1))
	p.List, rest = rest.Left(min(max(size.W*3/8, 30), 48))
	_, rest = rest.Left(1)
	p.Head, rest = rest.Top(2)
	p.Help, p.Form = rest.Bottom(4)
	return p
}

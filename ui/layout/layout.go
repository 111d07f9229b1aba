// Package layout divides a screen into rectangles. Its functions depend on
// nothing but their arguments.
package layout

// Size is a number of cells across and lines down.
type Size struct{ W, H int }

// Rect is a part of a screen. Its left upper corner is at X, Y.
type Rect struct{ X, Y, W, H int }

// Size is the rectangle's size.
func (r Rect) Size() Size { return Size{r.W, r.H} }

// Empty tells that nothing can be drawn in it.
func (r Rect) Empty() bool { return r.W <= 0 || r.H <= 0 }

// Holds tells whether a cell lies in the rectangle.
func (r Rect) Holds(x, y int) bool {
	return x >= r.X && x < r.X+r.W && y >= r.Y && y < r.Y+r.H
}

// Top cuts the first n lines off: the part cut, and the rest.
func (r Rect) Top(n int) (Rect, Rect) {
	n = min(max(n, 0), max(r.H, 0))
	return Rect{r.X, r.Y, r.W, n}, Rect{r.X, r.Y + n, r.W, r.H - n}
}

// Bottom cuts the last n lines off: the part cut, and the rest.
func (r Rect) Bottom(n int) (Rect, Rect) {
	n = min(max(n, 0), max(r.H, 0))
	return Rect{r.X, r.Y + r.H - n, r.W, n}, Rect{r.X, r.Y, r.W, r.H - n}
}

// Left cuts the first n cells of each line off: the part cut, and the rest.
func (r Rect) Left(n int) (Rect, Rect) {
	n = min(max(n, 0), max(r.W, 0))
	return Rect{r.X, r.Y, n, r.H}, Rect{r.X + n, r.Y, r.W - n, r.H}
}

// Whole is the rectangle of a whole screen.
func Whole(s Size) Rect { return Rect{0, 0, s.W, s.H} }

// Least is the smallest screen that the program works on.
func Least() Size { return Size{80, 24} }

// Fits tells whether a screen is large enough.
func Fits(s Size) bool { return s.W >= Least().W && s.H >= Least().H }

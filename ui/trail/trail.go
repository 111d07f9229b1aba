// Package trail is what undo and redo go along.
package trail

// deepest is how many steps are kept at the least.
const deepest = 500

// Trail is the values before the one of now, and those that were undone. The
// zero Trail is empty. Its methods give a new Trail and leave the old one as it
// was.
type Trail[T any] struct{ behind, ahead *step[T] }

// A step shares all that lies before it with other trails.
type step[T any] struct {
	value  T
	before *step[T]
	length int
}

// CanUndo tells whether anything lies behind.
func (t Trail[T]) CanUndo() bool { return t.behind != nil }

// CanRedo tells whether anything was undone.
func (t Trail[T]) CanRedo() bool { return t.ahead != nil }

// Leaving puts the value of now behind, as another takes its place; what was
// undone is forgotten.
func (t Trail[T]) Leaving(now T) Trail[T] { return Trail[T]{behind: t.behind.with(now)} }

// Undo swaps the value of now for the one before it. There must be one.
func (t Trail[T]) Undo(now T) (T, Trail[T]) {
	return t.behind.value, Trail[T]{behind: t.behind.before, ahead: t.ahead.with(now)}
}

// Redo swaps the value of now for the one that was undone last. There must be
// one.
func (t Trail[T]) Redo(now T) (T, Trail[T]) {
	return t.ahead.value, Trail[T]{behind: t.behind.with(now), ahead: t.ahead.before}
}

func (s *step[T]) with(value T) *step[T] {
	next := &step[T]{value: value, before: s, length: 1}
	if s != nil {
		next.length += s.length
	}
	if next.length > 2*deepest {
		return next.cut(deepest)
	}
	return next
}

// cut copies the newest steps and lets go of the rest.
func (s *step[T]) cut(length int) *step[T] {
	newest := &step[T]{value: s.value, length: length}
	for to, from := newest, s.before; to.length > 1; to, from = to.before, from.before {
		to.before = &step[T]{value: from.value, length: to.length - 1}
	}
	return newest
}

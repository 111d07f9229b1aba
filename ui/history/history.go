// Package history remembers what a screen held before each edit, so that edits are
// undone and done again.
package history

// deepest is how many edits can be undone at the least.
const deepest = 500

// Of is a history of values that nobody changes any more. The zero value is empty.
// Like a screen it is a value: what changes it gives the history after.
type Of[T any] struct{ past, future *step[T] }

// A step shares all the steps before it with other histories.
type step[T any] struct {
	value  T
	before *step[T]
	length int // of all of them
}

// Edited is the history after an edit of what was.
func (h Of[T]) Edited(was T) Of[T] { return Of[T]{past: h.past.with(was)} }

// Undone gives what was before the last edit that led to now. There must be one;
// see [Of.NoUndo].
func (h Of[T]) Undone(now T) (T, Of[T]) {
	return h.past.value, Of[T]{past: h.past.before, future: h.future.with(now)}
}

// Redone gives what was before the last edit was undone. There must be one; see
// [Of.NoRedo].
func (h Of[T]) Redone(now T) (T, Of[T]) {
	return h.future.value, Of[T]{past: h.past.with(now), future: h.future.before}
}

// NoUndo says why nothing can be undone; "" where something can.
func (h Of[T]) NoUndo() string { return h.past.none("undo") }

// NoRedo says why nothing can be done again; "" where something can.
func (h Of[T]) NoRedo() string { return h.future.none("redo") }

// Map is the history of the same edits, with every value that is remembered as change
// makes it.
func Map[T, U any](h Of[T], change func(T) U) Of[U] {
	return Of[U]{past: mapped(h.past, change), future: mapped(h.future, change)}
}

func mapped[T, U any](s *step[T], change func(T) U) *step[U] {
	if s == nil {
		return nil
	}
	return &step[U]{value: change(s.value), before: mapped(s.before, change), length: s.length}
}

func (s *step[T]) none(what string) string {
	if s == nil {
		return "there is nothing to " + what
	}
	return ""
}

// with adds a value. From time to time the oldest are let go.
func (s *step[T]) with(value T) *step[T] {
	next := &step[T]{value: value, before: s, length: 1}
	if s != nil {
		next.length += s.length
	}
	if next.length > 2*deepest {
		return next.newest(deepest)
	}
	return next
}

// newest is a copy of the newest steps, at most so many.
func (s *step[T]) newest(most int) *step[T] {
	if s == nil || most == 0 {
		return nil
	}
	return &step[T]{value: s.value, before: s.before.newest(most - 1), length: min(s.length, most)}
}

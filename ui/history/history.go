// Package history remembers what a screen held before each edit, so that edits are
// undone and done again.
package history

// deepest is how many edits can be undone.
const deepest = 500

// Of is a history of values that nobody changes any more. The zero value is empty.
// Like a screen it is a value: what changes it gives the history after.
type Of[T any] struct{ past, future []T }

// Edited is the history after an edit of what was.
func (h Of[T]) Edited(was T) Of[T] {
	past := with(h.past, was)
	if len(past) > deepest {
		past = past[1:]
	}
	return Of[T]{past: past}
}

// Undone gives what was before the last edit that led to now. There must be one;
// see [Of.NoUndo].
func (h Of[T]) Undone(now T) (T, Of[T]) {
	last := len(h.past) - 1
	return h.past[last], Of[T]{past: h.past[:last], future: with(h.future, now)}
}

// Redone gives what was before the last edit was undone. There must be one; see
// [Of.NoRedo].
func (h Of[T]) Redone(now T) (T, Of[T]) {
	last := len(h.future) - 1
	return h.future[last], Of[T]{past: with(h.past, now), future: h.future[:last]}
}

// with leaves the values alone, which an older history may hold too.
func with[T any](values []T, v T) []T { return append(values[:len(values):len(values)], v) }

// NoUndo says why nothing can be undone; "" where something can.
func (h Of[T]) NoUndo() string { return none(h.past, "undo") }

// NoRedo says why nothing can be done again; "" where something can.
func (h Of[T]) NoRedo() string { return none(h.future, "redo") }

func none[T any](values []T, what string) string {
	if len(values) == 0 {
		return "there is nothing to " + what
	}
	return ""
}

// Map changes every value that is remembered.
func (h Of[T]) Map(change func(T) T) Of[T] {
	return Of[T]{past: mapped(h.past, change), future: mapped(h.future, change)}
}

func mapped[T any](values []T, change func(T) T) []T {
	out := make([]T, len(values))
	for i, v := range values {
		out[i] = change(v)
	}
	return out
}

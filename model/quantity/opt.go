package quantity

// Opt is a value that a person may leave out, with the text it was typed as.
// The zero value is "not given".
type Opt[T any] struct {
	value T
	given bool
	typed string
}

// Some is a given value that nobody typed.
func Some[T any](v T) Opt[T] { return Opt[T]{value: v, given: true} }

// Typed is a given value and the words it came in, which are kept so that a
// person finds again what was written.
func Typed[T any](v T, text string) Opt[T] { return Opt[T]{value: v, given: true, typed: text} }

// Given tells whether there is a value.
func (o Opt[T]) Given() bool { return o.given }

// Get returns the value and whether it was given.
func (o Opt[T]) Get() (T, bool) { return o.value, o.given }

// Or returns the value, or the fallback where none was given.
func (o Opt[T]) Or(fallback T) T {
	if o.given {
		return o.value
	}
	return fallback
}

// Words returns the text the value was typed as, or "" where it was not typed.
func (o Opt[T]) Words() string { return o.typed }

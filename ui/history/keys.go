package history

import "washeve/ui/keys"

// What the keys of a history do.
const (
	Undo keys.Action = "undo"
	Redo keys.Action = "redo"
)

// UndoKey takes the last edit back, under a heading of the screen's.
func (h Of[T]) UndoKey(group string) keys.Binding {
	return keys.New(group, Undo, "u", "undo", "u", "ctrl+z").Explained("undo the last change").Unless(h.NoUndo())
}

// RedoKey makes the edit again that was undone last.
func (h Of[T]) RedoKey(group string) keys.Binding {
	return keys.New(group, Redo, "r", "redo", "r", "ctrl+y").Explained("redo the change that was undone last").Unless(h.NoRedo())
}

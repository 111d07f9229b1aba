// Package keys makes a key binding a value: the keys, what they do, the help
// that is shown for them, and why they cannot act just now.
package keys

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"
)

// Action names what a binding does.
type Action string

// Binding is one or more keys that do one thing.
type Binding struct {
	key.Binding
	Does    Action
	Long    string // what the help page says; "" for the short help
	Group   string // heading in the help
	Blocked string // why it cannot act now; "" where it can
}

// New binds keys to an action. Shown is how the help writes the keys.
func New(group string, does Action, shown, help string, on ...string) Binding {
	return Binding{
		Binding: key.NewBinding(key.WithKeys(on...), key.WithHelp(shown, help)),
		Does:    does, Group: group,
	}
}

// NotNow is what is said where the binding cannot act.
func (b Binding) NotNow() string { return "Not now: " + b.Blocked + "." }

// Explained gives the binding more words for the help page.
func (b Binding) Explained(words string) Binding {
	b.Long = words
	return b
}

// Unless blocks the binding where why is not empty.
func (b Binding) Unless(why string) Binding {
	b.Blocked = why
	return b
}

// Units is what the key does that turns all screens to US or to metric units.
const Units Action = "units"

// UnitsKey is that key, the same on every screen.
func UnitsKey() Binding {
	return New("See", Units, "m", "units", "m").Explained("US or metric units, on all screens from now on")
}

// Find gives the binding that a key press means.
func Find(all []Binding, msg tea.KeyMsg) (Binding, bool) {
	for _, b := range all {
		if key.Matches(msg, b.Binding) {
			return b, true
		}
	}
	return Binding{}, false
}

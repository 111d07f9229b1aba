// Package screen is the contract between the program's root and its screens.
// The root knows the size, the keys that work everywhere, the way from screen
// to screen, and errors; a screen knows the rest.
package screen

import (
	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/quantity"
	"washeve/ui/keys"
	"washeve/ui/layout"
)

// Screen is one page of the program.
type Screen interface {
	// Title is what the page is called.
	Title() string
	// Init starts the page.
	Init() tea.Cmd
	// Update takes a message and gives the page after it.
	Update(msg tea.Msg) (Screen, tea.Cmd)
	// View draws the page. No line is wider than the size, and there are no more
	// lines than the size has.
	View(size layout.Size) string
	// Keys lists every key that does something on the page as it now stands.
	Keys() []keys.Binding
	// Typing tells that letters are text just now, so that the root's letter
	// keys must not act.
	Typing() bool
	// Leave saves what is unsaved. An error means that leaving would lose work;
	// the root then asks.
	Leave() error
}

// Awaiting is a screen on which a letter may be text, or a key.
type Awaiting interface {
	Screen
	// Awaits tells that a letter is text just now, and that ? is no part of one: it begins a
	// line, or goes to a line of an open list.
	Awaits() bool
}

// Unseen is a screen on which something goes on whether or not it can be drawn, and must
// be stopped when a person wants it to: water that runs.
type Unseen interface {
	Screen
	// UnseenWords say in a line what goes on; "" where nothing does.
	UnseenWords() string
	// UnseenKeys are those that act in a window which is too small to draw the screen.
	// The root hands them on as [Blindly].
	UnseenKeys() []keys.Binding
}

// Blindly tells an [Unseen] which of its keys was pressed while it could not be drawn.
type Blindly struct{ Does keys.Action }

// Go asks the root to show another screen. Back is for returning.
type Go struct {
	To    Screen
	Knows int // how many lessons of the log it was made by; the root counts them
}

// Everyone asks the root to hand a message to every screen, seen or not.
type Everyone struct{ Msg tea.Msg }

// InUnits tells a screen in which units all of them show from now on. The one that keeps the
// rig has the rig state them.
type InUnits struct{ Units quantity.System }

// ShowIn asks the root to have every screen show in the units that the one on which the key
// was pressed shows in already.
func ShowIn(sys quantity.System) tea.Cmd {
	return func() tea.Msg { return Everyone{InUnits{sys}} }
}

// Back asks the root to return to the screen before, and to hand it a message
// where there is one.
type Back struct{ With tea.Msg }

// Anew asks the root to read all files again, and to go on with what they hold now. Where
// that would lose work the root hands the screen an [Unsaved] instead, unless the work is
// to be kept aside.
type Anew struct{ Aside bool }

// Unsaved tells a screen that asked for [Anew] why work would be lost by it.
type Unsaved struct{ Why error }

// Said is what the root has to say on a screen.
type Said struct {
	Text   string
	Alarm  bool // it tells of trouble
	Behind bool // what the screen has to say of its own stays, and goes first
}

// Changed tells of files that another program has changed since they were read; what a
// screen has to say of its own goes first.
type Changed struct{ Files string }

// Again tells a screen that it is seen again, after another one was shown over it
// or the program was stopped meanwhile.
type Again struct{}

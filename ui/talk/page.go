// Package talk does every job of the screens one line at a time, for screen readers
// and for terminals that cannot draw. It plays the screens' own keys on the screens
// themselves, so there is no second set of rules: a screen tells in [Page] what it
// says and what its keys are called, and this package reads the lines.
package talk

import (
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/screen"
)

// Speaker is a screen that can be had in words.
type Speaker interface {
	screen.Screen
	// Spoken is the screen as it now stands, in words.
	Spoken() Page
}

// Page is what a screen is in words. All of it is text: no colour, no drawing, and
// no meaning in where a word stands. What a page has not is left out.
type Page struct {
	Title   string          // a change of it is told as another page
	Prompt  string          // what is asked for; "" for any word
	Like    string          // a word for example
	Tell    func() []string // all that the page says
	After   func() []string // what may have changed with a word
	Said    string          // what became of the last word
	Words   []Word
	Things  func() []Thing  // what a word can be about
	Asks    *Question       // a value that has to be answered first
	Numbers func() []Number // what can be asked where it comes from
	Alarm   *Alarm          // what happens while no word is said
}

// Alarm is a message to the screen after a time without a word.
type Alarm struct {
	After time.Duration
	Sends tea.Msg
}

// Word is what can be typed on a page, and the key of the screen that it stands for.
type Word struct {
	Say   string
	Does  keys.Action          // of the screen's binding
	Key   string               // which of the bindings, where some do alike; "" for the first
	Of    string               // what it is about, such as "LINE": a thing of the page is named behind it; "" for nothing
	Among string               // the group that the thing has to be of; "" for any
	Takes string               // an example of the value behind it; "" where there is none
	Like  string               // the whole line for example; "" for the word itself
	Help  string               // "" for the words of the binding
	On    func() screen.Screen // the screen with its hand where the word is meant
	Lines func() []string      // what is read out instead of doing anything
	Walk  string               // the part of the page that is asked for line by line

	// With is the screen that the key leads to, the value behind the word told to it: where
	// it asks something else before the value. nil where it does not.
	With func(value string) (screen.Screen, error)
}

// Thing is something that a word can be about: a line to state, an entry, a face.
type Thing struct {
	Name  string
	Whose string   // tells it from others of its name: "vehicle" of a length
	Text  string   // what it says
	Group string   // what it belongs to, such as a step of the plan
	Like  string   // an example of a value; "" where none is typed
	From  []string // what it is picked from; nil where it is typed
	Must  bool     // the plan cannot do without it
	On    func() screen.Screen
}

// called tells whether a text begins with the name of the thing, or with the first word
// of it, and what is behind that.
func (th *Thing) called(text string) (rest string, letters int) {
	first, _, _ := strings.Cut(th.Name, " ")
	for _, name := range []string{th.Name, first} {
		for _, of := range []string{th.Whose, th.Group, ""} {
			whole := strings.TrimSpace(of + " " + name)
			if rest, ok := behind(text, whole); ok {
				return rest, len(whole)
			}
		}
	}
	return "", 0
}

// whole is the thing with all of its name.
func (th *Thing) whole() string { return strings.TrimSpace(th.Whose + " " + th.Name) }

// Question is a value that a page waits for: one that is typed, or one of a list.
type Question struct {
	Ask  string
	Like string
	Edit *form.Edit   // where it is typed
	List *form.Picker // where it is picked
	More []string     // what else there is to say of it
}

// Number is a number of the page, and the lines that say where it comes from.
type Number struct {
	Name, Value string
	Group       string // "" for the answer's own numbers; others are listed when they are asked for
	Lines       func(width int) []string
}

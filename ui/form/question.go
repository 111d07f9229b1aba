package form

import (
	"cmp"
	"slices"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
)

// Question waits for a yes, on a screen M.
type Question[M any] struct {
	Text string
	Why  string // it is asked, shown apart where there is room for it; "" where the text says so
	Yes  func(M) M
	No   string // what is said of a no, where more is to be said than that all is as it was

	// All answers that it is to be done with all that belongs to it; nil where there is no such answer.
	All func(M) M
	Of  string // what All takes along: "its 3 readings too"

	Sends tea.Msg // to the root with a yes; nil for nothing
}

// Answered is a screen that has asked, after the answer, and what it sends. Told says a
// no on it.
func (q *Question[M]) Answered(m M, does keys.Action, told func(M, string) M) (M, tea.Cmd) {
	switch {
	case does != Yes:
		return told(m, q.Declined()), nil
	case q.Sends == nil:
		return q.Yes(m), nil
	}
	sends := q.Sends
	return m, func() tea.Msg { return sends }
}

// What the keys of a question say.
const (
	Yes keys.Action = "yes"
	All keys.Action = "all of it"
	No  keys.Action = "no"
)

// AnswerKeys are the keys of a question.
func AnswerKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Answer", Yes, "y", "yes", "y", "Y").Explained("do what is asked"),
		keys.New("Answer", No, "n", "no", "n", "N", "esc").Explained("leave all as it is"),
	}
}

// Keys are the keys of this question.
func (q *Question[M]) Keys() []keys.Binding {
	answers := AnswerKeys()
	if q.All == nil {
		return answers
	}
	return slices.Insert(answers, 1, keys.New("Answer", All, "a", "all: "+q.Of, "a", "A").Explained("do what is asked, with all that belongs to it"))
}

// Declined is what is said of a no.
func (q Question[M]) Declined() string { return cmp.Or(q.No, "Left as it was.") }

// Spoken is the question where there is one line for all of it.
func (q Question[M]) Spoken() string {
	if q.Why == "" {
		return q.Text
	}
	return strings.TrimSuffix(q.Why, ".") + ". " + q.Text
}

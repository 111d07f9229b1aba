package form

import (
	"cmp"
	"strings"

	"washeve/ui/keys"
)

// Question waits for a yes, on a screen M.
type Question[M any] struct {
	Text string
	Why  string // it is asked, shown apart where there is room for it; "" where the text says so
	Yes  func(M) M
	No   string // what is said of a no, where more is to be said than that all is as it was
}

// What the keys of a question say.
const (
	Yes keys.Action = "yes"
	No  keys.Action = "no"
)

// AnswerKeys are the keys of a question.
func AnswerKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Answer", Yes, "y", "yes", "y", "Y").Explained("do what is asked"),
		keys.New("Answer", No, "n", "no", "n", "N", "esc").Explained("leave all as it is"),
	}
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

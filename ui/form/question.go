package form

import (
	"strings"

	"washeve/ui/keys"
)

// Question waits for a yes, on a screen M.
type Question[M any] struct {
	Text string
	Why  string // it is asked, shown apart where there is room for it; "" where the text says so
	Yes  func(M) M
}

// What the keys of a question say.
const (
	Yes keys.Action = "yes"
	No  keys.Action = "no"
)

// AnswerKeys are the keys of a question.
func AnswerKeys() []keys.Binding {
	return []keys.Binding{
		keys.New("Answer", Yes, "y", "yes", "y", "Y"),
		keys.New("Answer", No, "n", "no", "n", "N", "esc"),
	}
}

// Spoken is the question where there is one line for all of it.
func (q Question[M]) Spoken() string {
	if q.Why == "" {
		return q.Text
	}
	return strings.TrimSuffix(q.Why, ".") + ". " + q.Text
}

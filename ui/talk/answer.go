package talk

import (
	"fmt"
	"strconv"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/form"
)

const (
	nothing = "-" // takes a value away
	ends    = "." // ends a walk
)

// answers gives what the screen asks, until it asks no more: with a text that is
// there already, and then with what the person says. An empty line leaves all as it
// was. What stands behind a word is a value wherever it can be one; to a question a
// word is a word, unless it stands in quotes.
func (t *talk) answers(text string) {
	isBehind := text != ""
	for told := ""; ; {
		q := t.page().Asks
		if q == nil {
			return
		}
		if text == "" {
			if told != q.Ask {
				t.say(q.listed()...)
			}
			told = q.Ask
			line, _ := t.ask(q.prompt())
			if text = line; text == "" {
				t.press("esc")
				return
			}
		}
		value, isQuoted := unquoted(text)
		done, left := false, false
		if !isQuoted && !(isBehind && t.fits(q, text)) {
			done, left = t.instead(q, text)
		}
		if left {
			return
		}
		if !done {
			t.give(q, value)
		}
		if p := t.page(); p.Asks != nil {
			t.say(p.Said)
		}
		isBehind, text = false, ""
	}
}

// give answers a question with a value.
func (t *talk) give(q *Question, value string) {
	if q.List == nil {
		t.typed(value)
		return
	}
	t.picked(q, value)
}

// picked takes one of a list.
func (t *talk) picked(q *Question, text string) {
	at := q.chosen(text)
	if at < 0 {
		t.say(fmt.Sprintf("Not taken: %s is not in the list; write %s.", quoted(text), q.expected()))
		return
	}
	for n := len(q.List.Options); at != q.List.At; at = (at + n - 1) % n {
		t.press("down")
	}
	t.press("enter")
}

// typed puts a text on the line that is typed, and takes it where it is right.
func (t *talk) typed(text string) bool {
	if text == nothing {
		text = ""
	}
	t.writes(text)
	q := t.page().Asks
	if q == nil || q.Edit == nil {
		return true
	}
	switch says := q.Edit.Says(); {
	case q.Edit.Offer != "":
		t.say("Read as " + q.Edit.Offer + ".")
		t.writes(q.Edit.Offer) // which the screen need not say again
	case q.Edit.Problem != nil:
		t.say(q.Edit.NotTaken(q.Ask))
		return false
	case says != "":
		t.press("enter")
		if !strings.HasPrefix(t.page().Said, says) { // the screen says it itself
			t.say(says + ".")
		}
		return true
	}
	t.press("enter")
	return true
}

// writes puts a text on the line in place of what stands there.
func (t *talk) writes(text string) {
	t.press("ctrl+u")
	if text != "" {
		t.tell(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(text), Paste: true})
	}
}

// chosen is the option that a text means: by its number, its name or the beginning of
// that; -1 for none.
func (q *Question) chosen(text string) int {
	options := q.List.Options
	if n, err := strconv.Atoi(text); err == nil && n >= 1 && n <= len(options) {
		return n - 1
	}
	begins := -1
	for i, o := range options {
		switch {
		case strings.EqualFold(o.Text, text), text == nothing && o.Pick == "" && !o.New:
			return i
		case strings.HasPrefix(strings.ToLower(o.Text), strings.ToLower(text)) && begins < 0:
			begins = i
		}
	}
	return begins
}

// listed are the options, a line each, and what else there is to say.
func (q *Question) listed() []string {
	if q.List == nil {
		return q.More
	}
	var lines []string
	for i, o := range q.List.Options {
		lines = append(lines, fmt.Sprintf("%d %s", i+1, withNote(o)))
	}
	return append(lines, q.More...)
}

func withNote(o form.Option) string {
	if o.Note == "" {
		return o.Text
	}
	return o.Text + ": " + o.Note
}

// expected says what an answer looks like.
func (q *Question) expected() string {
	if q.List != nil && len(q.List.Options) > 0 {
		return fmt.Sprintf("a number from 1 to %d or a name, like %s", len(q.List.Options), q.List.Options[0].Text)
	}
	return "a value like " + q.Like
}

func (q *Question) prompt() string {
	words := q.Ask
	if q.Edit != nil && strings.TrimSpace(q.Edit.Before()) != "" {
		words += ", now " + q.Edit.Before()
	}
	return words + "; " + q.expected()
}

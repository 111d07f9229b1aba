package talk

import (
	"fmt"
	"strings"

	"washeve/model/quantity"
)

// change is the word by which a page lets one of its lines be stated.
const change = "change"

// needed is the part of a page that has the lines that are needed and not stated.
const needed = "needed"

// walk asks for the lines of a page, or of a part of it, one after the other.
func (t *talk) walk(group string) {
	word, ok := t.changes()
	if !ok {
		t.say("There is nothing to walk through here.")
		return
	}
	group, ok = t.group(group)
	if !ok {
		return
	}
	t.say("An empty line keeps a value, " + nothing + " takes it away, " + ends + " ends.")
	title := t.title
	for i := 0; !t.over && t.page().Title == title; i++ {
		things := t.page().Things()
		for i < len(things) && !things[i].among(group) {
			i++
		}
		if i >= len(things) || !t.asksFor(word, i) {
			break
		}
	}
	t.settle()
}

// among tells whether a line belongs to a part of the page; "" for all of it.
func (th *Thing) among(group string) bool {
	switch {
	case th.On == nil:
		return false
	case group == needed:
		return th.Must && th.Text == ""
	}
	return group == "" || th.Group == group
}

// changes finds the word that states a line.
func (t *talk) changes() (Word, bool) {
	for _, w := range t.page().Words {
		if w.Say == change {
			return w, true
		}
	}
	return Word{}, false
}

// group finds the part of the page that a text names; "" for all of it.
func (t *talk) group(text string) (string, bool) {
	if strings.EqualFold(text, needed) {
		return needed, true
	}
	var groups []string
	for _, th := range t.page().Things() {
		if strings.EqualFold(th.Group, text) { // without a text: a line of no part
			return th.Group, true
		}
		if n := len(groups); th.Group != "" && (n == 0 || groups[n-1] != th.Group) {
			groups = append(groups, th.Group)
		}
	}
	switch {
	case len(groups) == 0 && text == "":
		return "", true
	case text == "":
		t.say(fmt.Sprintf("Say walk and a part: %s; like walk %s.", quantity.OneOf(groups), groups[0]))
	case len(groups) == 0:
		t.say("Read: walk, and " + quoted(text) + " behind it; write it like walk.")
	default:
		t.say(fmt.Sprintf("Read: walk, and %s behind it. The parts are %s; write it like walk %s.", quoted(text), strings.Join(groups, ", "), groups[0]))
	}
	return "", false
}

// asksFor asks for a line until the answer is right, and gives false where the walk
// ends: at its end, or with a word that is said instead of a value.
func (t *talk) asksFor(w Word, i int) bool {
	for {
		th := t.page().Things()[i]
		line, more := t.ask(th.question())
		switch {
		case !more || line == ends:
			return false
		case line == "":
			return true
		}
		switch t.states(w, th, line) {
		case taken:
			return true
		case leftFor:
			return false
		}
	}
}

// outcome is what became of a line in a walk.
type outcome int

const (
	notTaken outcome = iota // the line is asked for again
	taken                   // the next is asked for
	leftFor                 // something else was said, and the walk ends
)

// states puts a value on a line of the page.
func (t *talk) states(w Word, th Thing, text string) outcome {
	t.put(th.On())
	b, bound := bindingOf(t.root.Top().Keys(), w)
	if !bound || b.Blocked != "" {
		t.say(b.NotNow())
		return taken
	}
	t.press(b.Keys()[0])
	q := t.page().Asks
	if q == nil {
		return taken
	}
	value, isQuoted := unquoted(text)
	if !isQuoted {
		if done, left := t.instead(q, text); left {
			return leftFor
		} else if done {
			t.press("esc")
			return notTaken
		}
	}
	if q.List == nil {
		if t.typed(value) {
			return taken
		}
		t.press("esc")
		return notTaken
	}
	t.picked(q, value)
	t.answersNew()
	if t.page().Asks != nil {
		t.press("esc")
		return notTaken
	}
	return taken
}

// answersNew asks for the name of what is new, where one of a list was.
func (t *talk) answersNew() {
	if q := t.page().Asks; q != nil && q.Edit != nil {
		t.answers("")
	}
}

// question names a line, what is in force, and what can be answered.
func (th Thing) question() string {
	words := th.whole()
	if len(th.From) > 0 {
		words += " (" + quantity.OneOf(th.From) + ")"
	}
	switch {
	case th.Text != "":
		return words + " [" + th.Text + "]"
	case th.Must:
		words += ", needed"
	}
	return words + ", like " + th.Like
}

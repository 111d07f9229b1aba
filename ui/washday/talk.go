package washday

import (
	"fmt"
	"strconv"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/planner/washday"
	"washeve/ui/keys"
	"washeve/ui/screen"
)

// Talk does the wash one line at a time, for screen readers and for terminals that
// cannot draw. Ask puts a question and gives false where the input has ended; say
// writes lines. It ends with the wash, or when it is left for later.
func Talk(s screen.Screen, ask func(string) (string, bool), say func(...string)) error {
	m, ok := s.(Model)
	if !ok {
		return nil
	}
	t := talk{Model: m.look(), ask: ask, say: say}
	if t.err != nil {
		return fmt.Errorf("there is no wash to do yet: %w", t.err)
	}
	if t.broken != nil {
		say("A wash is under way, but its file cannot be gone on with, and is left as it is: " + t.broken.Error())
		if answer, _ := ask("k keeps the file under another name and starts a new wash; anything else leaves it"); answer != "k" {
			return nil
		}
		t.Model = t.aside()
		say(t.status)
	}
	if t.offered && !t.offer() {
		return t.Leave()
	}
	t.tell()
	for !t.state.Over && t.turnOf() {
		continue
	}
	if t.state.Over {
		say(t.summaryWords()...)
	}
	return t.Leave()
}

// talk is the wash as it is talked through.
type talk struct {
	Model
	ask func(string) (string, bool)
	say func(...string)
}

// offer asks what to do with a wash that was left, and gives false where it is left
// again.
func (t *talk) offer() bool {
	t.say(t.offerWords()...)
	answer, more := t.ask("g go on, o go on but the water was off, x end it, l later")
	switch {
	case !more || answer == "l":
		return false
	case answer == "x":
		t.Model = t.look().answer(sayYes)
		return true
	case answer == "o":
		t.does(wasOff)
		return true
	}
	t.does(resume)
	return true
}

// tell says the step at hand.
func (t *talk) tell() {
	t.Model = t.look()
	if t.kept != nil {
		t.say("NOT WRITTEN, tried again with the next answer: " + t.kept.Error())
	}
	s := t.step()
	if s == nil {
		return
	}
	head := fmt.Sprintf("Step %d of %d: %s", t.state.At+1, len(t.state.Steps), s.Stage)
	if s.Face != "" {
		head += ", " + string(s.Face)
	}
	if clock := t.clock(); clock != "" {
		head += ", " + clock + map[bool]string{true: ", the time runs", false: ""}[t.state.Running]
	}
	t.say(head + ".")
	t.say(t.factWords()...)
}

// turnOf asks for one thing and does it. It gives false where the talk ends.
func (t *talk) turnOf() bool {
	answer, more := t.ask("o water on or off, n next, b back, s skip, r reading, f flow, w ways out, a all the same, t tell, x end, l later")
	if !more || answer == "l" {
		return false
	}
	t.Model = t.look().say("")
	does, known := map[string]keys.Action{"o": run, "n": next, "b": before, "s": skip, "r": read, "f": check, "w": ways, "a": anyway, "x": end, "m": units}[answer]
	switch {
	case answer == "t" || answer == "":
	case !known:
		t.say("There is no " + answer + " here.")
		return true
	default:
		t.does(does)
	}
	if t.status != "" {
		t.say(t.status)
	}
	t.tell()
	return true
}

func (t *talk) does(what keys.Action) {
	b, bound := t.bound(what)
	switch {
	case !bound:
		t.say("Not now.")
		return
	case b.Blocked != "":
		t.say("Not now: " + b.Blocked + ".")
		return
	}
	t.after(t.act(what, tea.KeyMsg{}))
	switch {
	case t.ending:
		answer, _ := t.ask("End the wash here? y or n")
		t.Model = t.answer(map[bool]keys.Action{true: sayYes, false: sayNo}[answer == "y"])
	case t.edit != nil:
		t.types()
	}
	if t.picker != nil {
		t.chooses()
	}
}

func (t *talk) bound(what keys.Action) (keys.Binding, bool) {
	for _, b := range t.Keys() {
		if b.Does == what {
			return b, true
		}
	}
	return keys.Binding{}, false
}

// after takes the screen that follows; a page that would be opened is left out.
func (t *talk) after(s screen.Screen, _ tea.Cmd) {
	if m, ok := s.(Model); ok {
		t.Model = m
	}
}

// types asks until the answer can be read, or is empty.
func (t *talk) types() {
	what := map[asking]string{aReading: "The pen shows", aFlow: "A gallon takes, or the flow is"}[t.asks]
	for {
		text, more := t.ask(what)
		if !more || strings.TrimSpace(text) == "" {
			t.edit = nil
			return
		}
		e := t.edit.With(text, t.check)
		t.edit = &e
		t.Model = t.finishEdit(accept)
		if t.edit == nil {
			return
		}
		t.say(t.status)
	}
}

func (t *talk) chooses() {
	t.say(t.picker.Title)
	for i, o := range t.picker.Options {
		t.say(fmt.Sprintf("%d %s: %s", i+1, o.Text, o.Note))
	}
	answer, _ := t.ask("its number, or nothing for none of them")
	n, err := strconv.Atoi(answer)
	if err != nil || n < 1 || n > len(t.picker.Options) {
		t.picker = nil
		return
	}
	t.after(t.takeWay(t.picker.Options[n-1].Pick))
	if t.state.Gate(&t.u) == washday.AskPen {
		t.say("Read the pen again: r.")
	}
}

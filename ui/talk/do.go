package talk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"washeve/ui/keys"
)

// do does a word: the hand goes where the word is meant, then the key is pressed, and
// what stands behind the word answers what the screen asks.
func (t *talk) do(w Word, rest string) {
	var thing Thing
	if w.Of != "" {
		var ok bool
		if thing, rest, ok = t.choose(w, rest); !ok {
			return
		}
		w.On = thing.On
	}
	if w.Takes == "" && rest != "" {
		t.say(fmt.Sprintf("Read: %s, and %s behind it; write it like %s.", w.Say, quoted(rest), w.whole()))
		return
	}
	if w.Lines != nil {
		t.say(w.Lines()...)
		return
	}
	if w.On != nil {
		t.put(w.On())
	}
	switch {
	case w.Walk != "":
		t.walk(w.Walk)
	case w.Does == "":
		t.after = nil // the page says of itself what the hand is on now
	default:
		t.act(w, rest)
		t.confirm(w, thing)
	}
}

// confirm says how a line that was stated stands now.
func (t *talk) confirm(w Word, was Thing) {
	p := t.page()
	if w.Of == "" || w.Takes == "" || p.Things == nil || p.Title != t.title {
		return
	}
	for _, th := range p.Things() {
		if th.whole() == was.whole() && th.Text != was.Text {
			t.say(th.whole() + ": " + th.Text + ".")
			return
		}
	}
}

func (t *talk) act(w Word, rest string) {
	b, bound := bindingOf(t.root.Top().Keys(), w)
	switch {
	case !bound:
		t.say("Not now.")
		return
	case b.Blocked != "":
		t.say(b.NotNow())
		return
	case w.With != nil && rest != "":
		t.with(w, rest)
		return
	}
	if w.Key == "" {
		w.Key = b.Keys()[0]
	}
	t.press(w.Key)
	t.answers(rest)
}

// with does a word with its value told ahead of what the screen asks first.
func (t *talk) with(w Word, value string) {
	value, _ = unquoted(value)
	s, err := w.With(value)
	if err != nil {
		t.say(fmt.Sprintf("Read: %s, and %s behind it. Not taken: %s.", w.Say, quoted(value), strings.TrimSuffix(err.Error(), ".")))
		return
	}
	t.put(s)
	t.acted = true
}

// whole is a line for example.
func (w Word) whole() string {
	if w.Like != "" {
		return w.Like
	}
	return w.Say
}

// choose finds the thing that a word is about; what is behind it is the value. Without
// one it asks.
func (t *talk) choose(w Word, rest string) (Thing, string, bool) {
	page := t.page()
	var things []Thing
	if page.Things != nil {
		things = page.Things()
	}
	if len(things) == 0 {
		t.say("There is nothing here that " + w.Say + " could be about.")
		return Thing{}, "", false
	}
	if rest == "" {
		if rest = t.which(things); rest == "" {
			return Thing{}, "", false
		}
	}
	thing, after, why := pick(things, rest)
	if why == "" && w.Among != "" && thing.Group != w.Among {
		why = thing.whole() + " is none of the " + strings.ToLower(w.Among) + "; list tells them."
	}
	if why != "" {
		t.say("Read: " + w.Say + ", and " + quoted(rest) + " behind it. " + why + " Write it like " + w.whole() + ".")
		return Thing{}, "", false
	}
	return thing, after, true
}

// which asks what a word is about, until the answer begins with one of the things; "" for
// none. A word of the page is done instead.
func (t *talk) which(things []Thing) string {
	t.list("")
	for {
		line, _ := t.ask("Which? Its number or its name, like " + things[0].Name + "; an empty line for none")
		if line == "" {
			return ""
		}
		_, _, why := pick(things, line)
		if why == "" {
			return line
		}
		if t.isWordHere(line) {
			t.heed(line)
			return ""
		}
		t.say("Read: " + quoted(line) + ". " + why)
	}
}

// isWordHere tells that a line begins with a word of the page as it stands.
func (t *talk) isWordHere(line string) bool {
	_, _, own := t.find(line)
	return own || slices.ContainsFunc(fixed(), func(w fixedWord) bool {
		_, begins := behind(line, w.Say)
		return begins
	})
}

// pick finds the thing that a text begins with, by number or by name, and what stands
// behind it.
func pick(things []Thing, text string) (Thing, string, string) {
	head, after, _ := strings.Cut(text, " ")
	if n, err := strconv.Atoi(head); err == nil {
		if n < 1 || n > len(things) {
			return Thing{}, "", fmt.Sprintf("The numbers go from 1 to %d; list tells them.", len(things))
		}
		return things[n-1], valueOf(after), ""
	}
	var found []string
	var one Thing
	longest := 0
	for i := range things {
		value, letters := things[i].called(text)
		if letters == 0 || letters < longest {
			continue
		}
		if letters > longest {
			found = nil
		}
		one, longest, after = things[i], letters, value
		found = append(found, fmt.Sprintf("%d %s", i+1, one.whole()))
	}
	switch len(found) {
	case 0:
		return Thing{}, "", "No line here is called so; list tells them."
	case 1:
		return one, valueOf(after), ""
	}
	return Thing{}, "", "Several are called so: say the number, or more of the name, of " + strings.Join(found, ", ") + "."
}

// valueOf passes over a "to" before a value: "rename wand to lance".
func valueOf(text string) string {
	if value, ok := behind(text, "to"); ok && value != "" {
		return value
	}
	return text
}

// about is what help says of a word.
func (w Word) about(all []keys.Binding) string {
	text := w.Help
	if b, bound := bindingOf(all, w); bound {
		if text == "" {
			text = b.Long
		}
		if text == "" {
			text = b.Help().Desc
		}
		if b.Blocked != "" && w.Of == "" && w.On == nil {
			text += " (not now: " + b.Blocked + ")"
		}
	}
	return text
}

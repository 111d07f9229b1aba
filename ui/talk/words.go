package talk

import (
	"slices"
	"strings"

	"washeve/ui/keys"
)

// common are the words of every page whose screen has such a key.
func common() []Word {
	return []Word{
		{Say: "yes", Does: "yes"}, {Say: "no", Does: "no"},
		{Say: "undo", Does: "undo"}, {Say: "redo", Does: "redo"},
		{Say: "units", Does: "units"}, {Say: "save", Does: "save again"}, {Say: "reload", Does: "read anew"}, {Say: "back", Does: "back"},
	}
}

// words lists what can be said now: the page's own words, and the common ones that
// its screen has a key for.
func (t *talk) words() []Word {
	return wordsOf(t.page().Words, t.root.Top().Keys())
}

// wordsOf are the words of a page, and the common ones that its keys have.
func wordsOf(own []Word, all []keys.Binding) []Word {
	for _, w := range common() {
		_, bound := bindingOf(all, w)
		if bound && !slices.ContainsFunc(own, func(o Word) bool { return o.Say == w.Say }) {
			own = append(own, w)
		}
	}
	return own
}

// bindingOf finds the key that a word stands for.
func bindingOf(all []keys.Binding, w Word) (keys.Binding, bool) {
	for _, b := range all {
		if b.Does == w.Does && w.Does != "" && (w.Key == "" || slices.Contains(b.Keys(), w.Key)) {
			return b, true
		}
	}
	return keys.Binding{}, false
}

// heed does what a line says.
func (t *talk) heed(line string) {
	if line == "" {
		t.standing()
		return
	}
	if own, rest, ok := t.find(line); ok {
		t.do(own, rest)
		t.settle()
		return
	}
	if t.everywhere(line) {
		return
	}
	t.say(t.unknown(line))
}

// standing says how things stand, to an empty line.
func (t *talk) standing() {
	switch p := t.page(); {
	case p.After != nil:
		t.say(p.After()...)
		return
	case p.Tell != nil:
		t.say(p.Tell()...)
		return
	}
	t.say("An empty line says nothing here; help lists the words.")
}

// find is the longest word that a line begins with; or the word for a key, where the
// line is the name of one.
func (t *talk) find(line string) (w Word, rest string, ok bool) {
	all := t.words()
	if w, rest, ok = longestOf(all, line); ok {
		return w, rest, true
	}
	key, rest, _ := strings.Cut(line, " ")
	b, bound := keys.Find(t.root.Top().Keys(), keys.Press(keyName(key)))
	for _, c := range all {
		if bound && c.Does == b.Does && (c.Key == "" || c.Key == key) {
			return c, rest, true
		}
	}
	return Word{}, "", false
}

// longestOf is the longest of some words that a line begins with, and what is behind it.
func longestOf(all []Word, line string) (w Word, rest string, ok bool) {
	for _, c := range all {
		if after, begins := behind(line, c.Say); begins && len(c.Say) > len(w.Say) {
			w, rest, ok = c, after, true
		}
	}
	return w, rest, ok
}

func keyName(text string) string {
	if text == "space" {
		return " "
	}
	return text
}

// behind is what stands behind a word at the start of a line.
func behind(line, word string) (string, bool) {
	if len(line) < len(word) || !strings.EqualFold(line[:len(word)], word) {
		return "", false
	}
	rest := line[len(word):]
	if rest != "" && rest[0] != ' ' {
		return "", false
	}
	return strings.TrimSpace(rest), true
}

// everywhere does the words that every page has.
func (t *talk) everywhere(line string) bool {
	for _, w := range fixed() {
		if rest, ok := behind(line, w.Say); ok {
			if w.Takes == "" && rest != "" {
				t.say(tooMuch(w, rest))
				return true
			}
			w.does(t, rest)
			return true
		}
	}
	return false
}

// unknown says what was read, and what would be right.
func (t *talk) unknown(line string) string {
	var near []string
	first, _, _ := strings.Cut(strings.ToLower(line), " ")
	for _, w := range t.words() {
		if slices.Contains(strings.Fields(w.Say), first) || len(first) > 1 && strings.HasPrefix(w.Say, first) {
			near = append(near, w.Say)
		}
	}
	text := "Read: " + quoted(line) + ". There is no such word here"
	if len(near) > 0 {
		return text + "; near it are: " + strings.Join(near, ", ") + ". help tells what each does."
	}
	return text + "; write one like " + t.like() + ". help lists them."
}

// like is a word for example.
func (t *talk) like() string {
	words := t.words()
	for _, w := range words {
		if w.Does == "yes" || w.Say == "yes" {
			return "yes"
		}
	}
	return t.page().Like
}

func tooMuch(w fixedWord, rest string) string {
	return "Read: " + w.Say + ", and " + quoted(rest) + " behind it. Nothing belongs there; say " + w.Say + " alone."
}

func quoted(text string) string { return `"` + text + `"` }

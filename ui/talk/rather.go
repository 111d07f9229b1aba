package talk

import (
	"slices"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
	"washeve/ui/screen"
)

// instead does what a line says that is no answer to the question but a word; done tells
// that it was one, and left that the question was left for it.
func (t *talk) instead(q *Question, text string) (done, left bool) {
	switch {
	case strings.EqualFold(text, "help"):
		t.say("Write " + q.expected() + ". " + nothing + " takes the value away; an empty line or back leaves it as it was." + t.inQuotes(q, text))
		return true, false
	case strings.EqualFold(text, "back"), text == "esc":
		t.press("esc")
	case strings.EqualFold(text, "quit"):
		t.press("esc")
		t.quit()
	case t.rather(q, text):
		hint := t.inQuotes(q, text)
		t.press("esc")
		t.say(strings.TrimSpace(hint))
		t.heed(text)
	default:
		return false, false
	}
	return true, true
}

// inQuotes says how a word is given as a value, where it can be one.
func (t *talk) inQuotes(q *Question, text string) string {
	if !t.fits(q, text) {
		return ""
	}
	return " Heard as a word and not as the value; in quotes, " + quoted(text) + " is the value."
}

// unquoted is a value that stands in quotes, which keep it from being heard as a word.
// Quotes around parts of a text are the text's own.
func unquoted(text string) (value string, was bool) {
	const quote = `"`
	if n := len(text); n > 2 && text[:1] == quote && text[n-1:] == quote && strings.Count(text, quote) == 2 {
		return text[1 : n-1], true
	}
	return text, false
}

// fits tells that a text can be what is asked for.
func (t *talk) fits(q *Question, text string) bool { return fits(t.root.Top(), q, text) }

// fits tells it of the question of a screen. The screens that it is tried on are let go.
func fits(s screen.Screen, q *Question, text string) bool {
	if q.List != nil {
		return q.chosen(text) >= 0
	}
	if q.Edit == nil {
		return false
	}
	after, ok := tried(s, keys.Press("ctrl+u"), tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(text), Paste: true}).(Speaker)
	if !ok {
		return false
	}
	asks := after.Spoken().Asks
	return asks != nil && asks.Edit != nil && (asks.Edit.Problem == nil || asks.Edit.Offer != "")
}

// rather tells that a text is meant for the page and not for the question: a whole line of
// words, also where it could be a value; or what begins with a word and can be no value.
func (t *talk) rather(q *Question, text string) bool {
	if q.List != nil && q.named(text) {
		return false
	}
	s, ok := tried(t.root.Top(), keys.Press("esc")).(Speaker)
	if !ok {
		return false
	}
	return isLine(s, text) || !t.fits(q, text) && beginsWithWord(s, text)
}

// named tells that one of a list is called so.
func (q *Question) named(text string) bool {
	at := q.chosen(text)
	return at >= 0 && strings.EqualFold(q.List.Options[at].Text, text)
}

// beginsWithWord tells that a line begins with a word of a page.
func beginsWithWord(s Speaker, text string) bool {
	says := func(w Word) bool {
		_, begins := behind(text, w.Say)
		return begins
	}
	return slices.ContainsFunc(wordsOf(s.Spoken().Words, s.Keys()), says) ||
		slices.ContainsFunc(fixed(), func(w fixedWord) bool { return says(Word{Say: w.Say}) })
}

// isLine tells that a text is a whole line of a page: a word alone, or one with what
// belongs behind it.
func isLine(s Speaker, text string) bool {
	page := s.Spoken()
	if w, rest, ok := longestOf(wordsOf(page.Words, s.Keys()), text); ok {
		return rest == "" || suits(s, page, w, rest)
	}
	if word, ok := behind(text, "help"); ok && word != "" {
		return isLine(s, word)
	}
	return slices.ContainsFunc(fixed(), func(w fixedWord) bool {
		rest, begins := behind(text, w.Say)
		return begins && (rest == "" || w.suits(&page, rest))
	})
}

// suits tells that what stands behind a word belongs there.
func suits(s Speaker, page Page, w Word, rest string) bool {
	if w.Of != "" {
		_, _, why := pick(page.Things(), rest)
		return why == ""
	}
	b, bound := bindingOf(s.Keys(), w)
	if w.Takes == "" || !bound || b.Blocked != "" {
		return false
	}
	if w.With != nil {
		_, err := w.With(rest)
		return err == nil
	}
	var on screen.Screen = s
	if w.On != nil {
		on = w.On()
	}
	asking, ok := tried(on, keys.Press(b.Keys()[0])).(Speaker)
	if !ok {
		return false
	}
	q := asking.Spoken().Asks
	return q != nil && fits(asking, q, rest)
}

// tried is a screen as some keys would leave it.
func tried(s screen.Screen, typed ...tea.KeyMsg) screen.Screen {
	for _, key := range typed {
		s, _ = s.Update(key)
	}
	return s
}

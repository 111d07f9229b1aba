package talk

import (
	"slices"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
	"washeve/ui/screen"
)

// rather tells that a text is a word of the page and not the value that is asked for:
// what can be a value is one. The screens that this is tried on are let go.
func (t *talk) rather(q *Question, text string) bool {
	if q.List != nil {
		return q.chosen(text) < 0 && t.isWord(text)
	}
	if q.Edit == nil || !t.isWord(text) {
		return false
	}
	s, ok := tried(t.root.Top(), keys.Press("ctrl+u"), tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(text), Paste: true}).(Speaker)
	if !ok {
		return false
	}
	asks := s.Spoken().Asks
	return asks != nil && asks.Edit != nil && asks.Edit.Problem != nil && asks.Edit.Offer == ""
}

// isWord tells that a line begins with a word that the page has when it asks no more.
func (t *talk) isWord(text string) bool {
	s, ok := tried(t.root.Top(), keys.Press("esc")).(Speaker)
	if !ok {
		return false
	}
	says := func(w Word) bool {
		_, begins := behind(text, w.Say)
		return begins
	}
	return slices.ContainsFunc(wordsOf(s.Spoken().Words, s.Keys()), says) ||
		slices.ContainsFunc(fixed(), func(w fixedWord) bool { return says(Word{Say: w.Say}) })
}

// tried is a screen as some keys would leave it.
func tried(s screen.Screen, typed ...tea.KeyMsg) screen.Screen {
	for _, key := range typed {
		s, _ = s.Update(key)
	}
	return s
}

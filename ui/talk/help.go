package talk

import (
	"fmt"
	"slices"
	"strings"

	"washeve/ui/glossary"
	"washeve/ui/theme"
)

// fixedWord is a word of every page.
type fixedWord struct {
	Say, Takes, Help string
	does             func(*talk, string)
}

func fixed() []fixedWord {
	page := func(lines func(theme.Theme, int) []string) func(*talk, string) {
		return func(t *talk, _ string) { t.say(lines(theme.New(theme.Options{Plain: true}), Unwrapped)...) }
	}
	return []fixedWord{
		{"tell", "", "say again what this page says", (*talk).again},
		{"list", "WORDS", "the lines that a word can be about, each with its number; words behind it pick those that hold them, all tells every one", (*talk).list},
		{"walk", "PART", "ask for every line in turn, or for those of one part; walk needed asks for those that are lacking", (*talk).walk},
		{"why", "NAME", "where a number comes from: formula, inputs, source; alone it lists the numbers", (*talk).why},
		{"terms", "", "the terms of the trade", page(glossary.TermLines)},
		{"trouble", "", "what to do when something goes wrong", page(glossary.TroubleLines)},
		{"help", "WORD", "all words of this page; a word behind it tells of that one", (*talk).help},
		{"quit", "", "leave; the work is kept", func(t *talk, _ string) { t.quit() }},
	}
}

// usable tells whether a fixed word has something to be about on a page.
func (w fixedWord) usable(p *Page) bool {
	switch w.Say {
	case "list":
		return p.Things != nil
	case "walk":
		for _, own := range p.Words {
			if own.Say == change {
				return true
			}
		}
		return false
	case "why":
		return p.Numbers != nil
	}
	return true
}

// suits tells that what stands behind a fixed word belongs there, on a page.
func (w fixedWord) suits(p *Page, behind string) bool {
	if !w.usable(p) {
		return false
	}
	switch w.Say {
	case "list":
		for i, th := range p.Things() {
			if th.holds(i, behind) {
				return true
			}
		}
		return strings.EqualFold(behind, "all")
	case "walk":
		return strings.EqualFold(behind, needed) || slices.ContainsFunc(p.Things(), func(th Thing) bool { return strings.EqualFold(th.Group, behind) })
	case "why":
		return len(matching(p.Numbers(), behind)) > 0
	}
	return false
}

// help lists the words of the page, or tells of one.
func (t *talk) help(of string) {
	p, found := t.page(), false
	tell := func(say, takes, about, like string) {
		if of != "" && !strings.EqualFold(of, say) {
			return
		}
		found = true
		line := strings.TrimRight(say+" "+takes, " ") + ": " + about + "."
		if like != "" {
			line += " Like: " + like
		}
		t.say(line)
	}
	for _, w := range t.words() {
		takes := w.Of
		if w.Takes != "" {
			takes = strings.TrimSpace(takes + " VALUE")
		}
		tell(w.Say, takes, w.about(t.root.Top().Keys()), w.Like)
	}
	for _, w := range fixed() {
		if w.usable(&p) {
			tell(w.Say, w.Takes, w.Help, "")
		}
	}
	switch {
	case !found:
		t.say("Read: help, and " + quoted(of) + " behind it. There is no such word here; help lists them.")
	case of == "":
		t.say("The keys of the screens can be typed as well, by their names.")
	}
}

// again tells the whole page anew.
func (t *talk) again(string) {
	if p := t.page(); p.Tell != nil {
		t.say(sentence(p.Title))
		t.say(p.Tell()...)
	}
}

// most is how many lines are listed at once, if not all are asked for.
const most = 40

// list tells the things of the page: all, those that hold some words, or the first.
func (t *talk) list(holding string) {
	p := t.page()
	if p.Things == nil {
		t.say("There is nothing to list here; tell says what the page says.")
		return
	}
	limit, shown, group := most, 0, ""
	if strings.EqualFold(holding, "all") {
		limit, holding = 1<<30, ""
	}
	things := p.Things()
	for i, th := range things {
		if !th.holds(i, holding) {
			continue
		}
		if shown++; shown > limit {
			t.say(fmt.Sprintf("And more, %d in all: list all tells them, or list and words that they hold.", len(things)))
			return
		}
		if th.Group != group {
			group = th.Group
			t.say(group + ":")
		}
		t.say(th.listed(i))
	}
	switch {
	case len(things) == 0:
		t.say("There is no line here yet.")
	case shown == 0:
		t.say("Read: list, and " + quoted(holding) + " behind it. No line here holds that.")
	}
}

// listed is the line that the list has of a thing.
func (th Thing) listed(i int) string {
	line := fmt.Sprintf("%d %s", i+1, th.whole())
	if th.Text != "" {
		line += ": " + th.Text
	}
	return line
}

// holds tells that some words are on the line of a thing, or in the name of its part.
func (th Thing) holds(i int, words string) bool {
	return strings.Contains(strings.ToLower(th.Group+" "+th.listed(i)), strings.ToLower(words))
}

// quit ends the program; where work would be lost it asks.
func (t *talk) quit() {
	t.press("ctrl+c")
	why := t.root.Losing()
	if t.over || why == nil {
		return
	}
	t.say("This would be lost: " + why.Error() + ".")
	answer, more := t.ask("Quit all the same? yes or no")
	if !more {
		t.press("n")
		return
	}
	if strings.EqualFold(answer, "yes") || strings.EqualFold(answer, "y") {
		t.press("y")
		return
	}
	t.press("n")
}

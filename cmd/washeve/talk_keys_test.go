package main

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pagesByWords are the ways to each page that is talked on, and to what it asks.
func pagesByWords() [][]string {
	return [][]string{
		nil, {"change TDS"}, {"new place Dock"}, {"washes"}, {"new wash"}, {"new wash Toad day"}, {"day"}, {"day", "start"}, {"short"}, {"short", "out 1"}, {"compare"}, {"compare", "way 6"}, {"compare", "take twice the tank"}, {"compare", "take new resin first"}, {"compare", "take softener salted"},
		{"rig"}, {"rig", "new place"}, {"rig", "copy 1"}, {"rig", "show Marigold"}, {"rig", "show Marigold", "face left"}, {"rig", "take out Juniper Flats"},
		{"bed"}, {"bed", "reading"}, {"bed", "reading 4 ppm NaCl", "no"}, {"bed", "reading", "-"}, {"bed", "reading 4 ppm NaCl", "ran 1 gal"}, {"bed", "wash"}, {"bed", "wash", "change DI water 30", "write"}, {"bed", "new reading"},
		{"bed", "resin"}, {"bed", "resin", "next"}, {"bed", "resin", "next", "next", "next", "next", "next", "next", "next", "next"},
		{"bed", "resin", "next", "next", "next", "next", "next", "next", "next", "next", "write", "next"},
		{"bed", "resin", "next", "next", "next", "next", "next", "next", "next", "next", "write", "next", "next", "next", "reading 300 ppm NaCl", "yes"},
		{"trip"}, {"trip", "begin"}, {"trip", "show 2"}, {"trip", "take advice"}, {"trip", "compare"}, {"trip", "compare", "take twice the tank"},
		{"wash"}, {"wash", "next", "on"}, {"wash", "next", "skip"}, {"wash", "skip", "skip", "skip", "skip", "skip", "skip", "skip", "skip"}, {"wash", "next", "back", "wash"},
	}
}

var aWord = regexp.MustCompile(`(?m)^([a-z ]+)( [A-Z ]+)?: `)

// wordsHelped are the words that help lists last, each with something behind it where
// one belongs there.
func wordsHelped(said string) []string {
	_, list, _ := strings.Cut(said[:strings.LastIndex(said, "help WORD:")], "or help: ")
	fixed := []string{"tell", "list", "walk", "why", "terms", "trouble", "help", "quit", "full"} // heard once, in the first test
	var words []string
	for _, found := range aWord.FindAllStringSubmatch(list[strings.LastIndex(list, "or help: ")+1:], -1) {
		word := found[1]
		if slices.Contains(fixed, word) {
			continue
		}
		if strings.Contains(found[2], "LINE") || found[2] != "" && !strings.Contains(found[2], "VALUE") {
			word += " 1"
		}
		words = append(words, word)
	}
	return words
}

// keysNamed are the keys that a text names, with what stands about each: by words they
// mean nothing. A letter behind a number is a unit.
func keysNamed(said string) []string {
	names := []string{"esc", "enter", "tab", "del", "delete", "pgup", "pgdn", "ctrl+c", "Down"}
	verbs := []string{"makes", "goes", "adds", "takes", "brings", "lists", "gives", "starts", "begins"}
	var found []string
	for _, line := range strings.Split(said, "\n") {
		words := strings.Fields(line)
		for i, w := range words {
			bare := strings.Trim(w, ".,;:()?!")
			before := " " + strings.TrimRight(strings.Join(words[max(i-1, 0):i], ""), ",")
			next := strings.Join(words[min(i+1, len(words)):min(i+2, len(words))], "")
			letter := len(bare) == 1 && unicode.IsLetter(rune(bare[0])) && strings.ToLower(bare) != "a" && !strings.ContainsAny(before[len(before)-1:], "0123456789") && before != " heading:"
			if letter || slices.Contains(names, bare) || bare == "a" && slices.Contains(verbs, next) || bare == "Up" && next != "to" {
				found = append(found, strings.Join(words[max(i-3, 0):min(i+4, len(words))], " "))
			}
		}
	}
	return found
}

func TestKeysNamedAreFound(t *testing.T) {
	assert.Len(t, keysNamed("Taken away; u brings it back.\nNew here. a makes it yours, esc leaves it."), 3)
	assert.Empty(t, keysNamed("Taken away; undo brings it back. It takes 5 L in 3 h, a wash goes on."))
}

// No answer names a key, whatever is said on whatever page: who talks has none to see.
func TestNoAnswerNamesAKey(t *testing.T) {
	for _, way := range pagesByWords() {
		t.Run(strings.Join(way, ", "), func(t *testing.T) {
			t.Parallel()
			helped := saidIn(t, mine(t), append(slices.Clone(way), "help", "list all", "tell", "back", "back")...)
			assert.Empty(t, keysNamed(helped))
			if !strings.Contains(helped, "help WORD:") {
				return
			}
			words := wordsHelped(helped)
			require.NotEmpty(t, words)
			var lines []string
			for _, word := range words {
				lines = append(append(lines, way...), word, "undo", "", "back", "back", "back", "back", "back")
			}
			assert.Empty(t, keysNamed(saidIn(t, mine(t), lines...)))
		})
	}
}

// helpSaid are the lines of help, what a word is said to do by the word.
var helpSaid = regexp.MustCompile(`(?m)^([a-z ]+?)(?: [A-Z ]+)?: (.*)$`)

// afterPrompt is the end of what was asked before an answer.
var afterPrompt = regexp.MustCompile(`^(or help|yes or no): `)

// Help tells what each word does, and not only the word again.
func TestHelpTellsMoreThanTheWord(t *testing.T) {
	pages := 0
	for _, way := range pagesByWords() {
		said := saidIn(t, mine(t), append(slices.Clone(way), "help", "back", "back")...)
		if !strings.Contains(said, "help WORD:") {
			continue // a value is asked for
		}
		pages++
		list := said[:strings.LastIndex(said, "help WORD:")]
		list = list[strings.LastIndex(list, " or help: ")+1:]
		list = afterPrompt.ReplaceAllString(list[strings.LastIndex(list, " yes or no: ")+1:], "")
		lines := helpSaid.FindAllStringSubmatch(list, -1)
		require.NotEmpty(t, lines, way)
		for _, line := range lines {
			assert.NotEmpty(t, toldBeyond(line[1], line[2]), "%v: %s", way, line[0])
		}
	}
	assert.Greater(t, pages, len(pagesByWords())/2, "most pages have words")
}

// toldBeyond is what is said of a word beyond itself.
func toldBeyond(word, about string) []string {
	about, _, _ = strings.Cut(about, " (not now")
	return slices.DeleteFunc(strings.Fields(strings.Trim(about, ".")), func(w string) bool {
		return slices.Contains(append(strings.Fields(word), "again", "the", "a", "it"), strings.Trim(w, ".,:;"))
	})
}

func TestAWordAgainIsNoHelp(t *testing.T) {
	assert.Empty(t, toldBeyond("undo", "undo (not now: there is nothing to undo)."))
	assert.Empty(t, toldBeyond("save", "save again."))
	assert.NotEmpty(t, toldBeyond("back", "back to the plan."))
}

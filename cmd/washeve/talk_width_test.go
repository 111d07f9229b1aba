//go:build unix

package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/cells"
)

// On a terminal no word is cut at the edge, also when the window has changed since.
func TestTheTalkKeepsToTheWidthOfTheWindow(t *testing.T) {
	s := start(t, setup{width: 50, height: 40, args: []string{"--plain"}})
	s.sees("help:")
	for _, line := range strings.Split(s.output(), "\r\n") {
		assert.LessOrEqual(t, cells.Width(line), 50, line)
	}
	assert.Contains(t, s.output(), "takes 24 s\r\nor longer to fill.")
	s.resize(90, 40)
	s.press("tell\n")
	s.sees("Cap 2.49 gpm (contact time): a gallon takes 24 s or longer to fill.")
	s.press("quit\n")
	assert.Equal(t, done, s.ends())
}

// A person who is asked for a name and says undo is heard.
func TestAWordAtAQuestionIsHeardAtATerminal(t *testing.T) {
	s := start(t, setup{width: 80, height: 40, args: []string{"--plain"}})
	s.sees("help:")
	s.press("new place\n")
	s.sees("a value like home:")
	s.press("undo\n")
	s.sees(`in quotes, "undo" is the value.`)
	s.sees("Not now:")
	s.press("quit\n")
	assert.Equal(t, done, s.ends())
}

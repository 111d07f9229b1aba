// Package hands presses keys on a screen by their names. Only tests import it.
package hands

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/ui/keys"
)

// Key is the message of one key, by the name that a binding gives it.
func Key(name string) tea.KeyMsg { return keys.Press(name) }

// Keys reads "down down enter": names apart by blanks. What stands in single
// quotes is typed letter by letter.
func Keys(script string) []tea.KeyMsg {
	var out []tea.KeyMsg
	for i, part := range strings.Split(script, "'") {
		if i%2 == 1 {
			for _, r := range part {
				out = append(out, Key(string(r)))
			}
			continue
		}
		for _, name := range strings.Fields(part) {
			out = append(out, Key(name))
		}
	}
	return out
}

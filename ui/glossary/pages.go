package glossary

import (
	"strings"

	"washeve/ui/reader"
	"washeve/ui/theme"
)

// TermLines writes the terms for a width of cells.
func TermLines(th theme.Theme, width int) []string {
	var lines []string
	for i, t := range Terms() {
		if i > 0 {
			lines = append(lines, "")
		}
		lines = append(lines, th.Strong.On(t.Word))
		lines = append(lines, reader.Hanging(th, "  ", t.Text, width)...)
	}
	return lines
}

// TroubleLines writes what to do when something goes wrong.
func TroubleLines(th theme.Theme, width int) []string {
	var lines []string
	for i, t := range Troubles() {
		if i > 0 {
			lines = append(lines, "")
		}
		lines = append(lines, th.Strong.On(t.Asks))
		for _, c := range t.Causes {
			lines = append(lines, reader.Hanging(th, "  - ", c.What, width)...)
			lines = append(lines, reader.Hanging(th, "      to tell: ", c.Tell, width)...)
			lines = append(lines, reader.Hanging(th, "      to do:   ", c.Do, width)...)
		}
	}
	return lines
}

// Text joins a page's lines for a printer or a pipe, without colour.
func Text(page func(theme.Theme, int) []string, width int) string {
	return strings.Join(page(theme.New(theme.Options{Plain: true}), width), "\n")
}

package sheet

import (
	"fmt"
	"strings"

	"washeve/ui/cells"
)

// density is how small the print must be for one page: a class of the
// stylesheet. It goes by about how many lines of half a page everything takes.
func density(s Sheet) string {
	switch n := halfLines(s); {
	case n <= 95:
		return "roomy"
	case n <= 118:
		return "close"
	case n <= 132:
		return "closer"
	case n <= 146:
		return "closest"
	}
	return "bare"
}

// halfLines is about how many lines all takes in a column half a page wide.
func halfLines(s Sheet) int {
	const (
		letters  = 50 // in a line of half a page
		headings = 34 // with the pictures and what is written in
	)
	quarters := 4 * headings
	add := func(parts int, text string) { quarters += parts * len(cells.Wrap(text, letters)) }
	for _, texts := range [][]string{s.Heed, s.Day.Notes, s.Flow, s.After} {
		for _, t := range texts {
			add(4, t)
		}
	}
	for _, text := range []string{strings.Join(s.Gate.NoGo, "; "), strings.Join(s.Caution, " "), s.Day.Start + s.Day.How, s.Usual, s.Gate.Flush} {
		add(4, text)
	}
	for _, b := range s.Tonight {
		if b.Todo {
			add(4, b.What+" "+b.Why)
		} else {
			add(2, b.What+" "+b.What)
		}
	}
	for _, t := range s.Day.Turns {
		add(4, t.Face+t.From+t.To+t.DI+t.Outlook+t.Section+t.Dries+t.Why+"box ,  to  DI ; at a time, dries in ; ; ")
	}
	for _, st := range s.Steps {
		add(4, fmt.Sprint("box 1. ", st.Name, st.Water, " water ", st.amounts(), " at ; ", st.differing()))
		quarters += 5
	}
	add(2, strings.Join(s.Assumed, "; "))
	return quarters / 4
}

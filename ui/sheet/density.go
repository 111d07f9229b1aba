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
	case n <= 96:
		return "roomy"
	case n <= 130:
		return "close"
	case n <= 146:
		return "closer"
	case n <= 162:
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
	add := func(parts int, text string) { quarters += parts * len(cells.Wrap(broad.Replace(text), letters)) }
	for _, texts := range [][]string{s.Heed, s.Day.Notes, s.Flow, s.After} {
		for _, t := range texts {
			add(4, t)
		}
	}
	for _, text := range []string{strings.Join(s.Gate.NoGo, "; "), strings.Join(s.Caution, " "), s.Day.Start + s.Day.How, s.Usual, s.Gate.Flush} {
		add(4, text)
	}
	quarters += 4 * packedLines(s.Tonight, letters)
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

// broad makes two letters of each that is as broad as two.
var broad = strings.NewReplacer("W", "WW", "w", "ww", "M", "MM", "m", "mm", "@", "@@")

// packedLines is about how many lines the evening's list takes: what is to do
// stands alone and has its reason, what is packed stands two in a line.
func packedLines(all []Box, letters int) int {
	lines, beside := 0, 0
	for _, b := range all {
		if b.Todo {
			lines, beside = lines+len(cells.Wrap(broad.Replace(b.What+" "+b.Why), letters)), 0
			continue
		}
		tall := len(cells.Wrap(broad.Replace(b.What), letters*2/5))
		if beside > 0 {
			lines, beside = lines+max(tall-beside, 0), 0
			continue
		}
		lines, beside = lines+tall, tall
	}
	return lines
}

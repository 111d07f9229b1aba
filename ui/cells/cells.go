// Package cells measures and cuts text as a terminal shows it: in cells, not in
// bytes or letters.
package cells

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"
)

// Safe makes text that was typed or read from a file harmless: what a terminal
// would obey, or what turns the order of the letters about, is written out.
// Line breaks and tabs become blanks.
func Safe(text string) string {
	if harmless(text) {
		return text
	}
	var b strings.Builder
	for i, r := range text {
		switch {
		case r == '\n' || r == '\t' || r == '\r':
			b.WriteByte(' ')
		case r == utf8.RuneError:
			if _, n := utf8.DecodeRuneInString(text[i:]); n > 1 {
				b.WriteRune(r)
			} else {
				fmt.Fprintf(&b, `\x%02x`, text[i])
			}
		case obeyed(r):
			b.WriteString(strings.Trim(fmt.Sprintf("%+q", r), "'"))
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

func harmless(text string) bool {
	for i := range len(text) {
		if c := text[i]; c < ' ' || c >= 0x7f {
			return !strings.ContainsFunc(text, suspect)
		}
	}
	return true
}

func suspect(r rune) bool { return r == utf8.RuneError || obeyed(r) }

// obeyed tells control and format characters. The two joiners are part of
// ordinary writing.
func obeyed(r rune) bool {
	const nonJoiner, joiner = '\u200c', '\u200d'
	if r == nonJoiner || r == joiner {
		return false
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}

// Width is how many cells text takes. Colour takes none.
func Width(text string) int {
	width := 0
	for i := 0; i < len(text); width++ {
		letter, n := utf8.DecodeRuneInString(text[i:])
		switch {
		case letter == '\x1b':
			n = colour(text[i:])
			width--
		case !narrow(letter):
			n = 0
		}
		if n == 0 {
			return ansi.StringWidth(text)
		}
		i += n
	}
	return width
}

// colour is the length of a colour's code at the start of text; 0 where another
// code stands there.
func colour(text string) int {
	for i := len(CSI); strings.HasPrefix(text, CSI) && i < len(text); i++ {
		switch c := text[i]; {
		case c == 'm':
			return i + 1
		case c != ';' && (c < '0' || c > '9'):
			return 0
		}
	}
	return 0
}

// CSI begins a code that a terminal obeys.
const CSI = "\x1b["

// narrow tells the commonest letters that take one cell and join no other: those of
// ASCII, what is drawn with, and three marks. It is quick.
func narrow(r rune) bool {
	return r >= ' ' && r < 0x7f || r >= '\u2500' && r < '\u25a0' || r >= '\u2800' && r < '\u2900' || r == '…' || r == '·' || r == '›'
}

// Clip cuts text to at most width cells, ending in tail where it was cut.
func Clip(text string, width int, tail string) string {
	if width <= 0 {
		return ""
	}
	if Width(text) <= width {
		return text
	}
	if Width(tail) > width {
		tail = ""
	}
	return ansi.Truncate(text, width, tail)
}

// Fit cuts or pads text to exactly width cells.
func Fit(text string, width int) string {
	text = Clip(text, width, "")
	return text + Blank(width-Width(text))
}

// Right puts text at the right end of width cells.
func Right(text string, width int) string {
	text = Clip(text, width, "")
	text = Blank(width-Width(text)) + text
	for Width(text) < width { // a first letter that joins the blank before it
		text = " " + text
	}
	return text
}

// Blank is n blanks, none where n is below zero.
func Blank(n int) string { return strings.Repeat(" ", max(n, 0)) }

// Repeat is n times a mark, none where n is below zero.
func Repeat(mark string, n int) string { return strings.Repeat(mark, max(n, 0)) }

// Wrap breaks plain text into lines of at most width cells, at blanks where
// there are any. A number and its unit stay together, and so does what has a dash in it.
func Wrap(text string, width int) []string {
	if width <= 0 {
		return nil
	}
	var lines []string
	for line := range strings.SplitSeq(ansi.Wrap(bound(text), width, ""), "\n") {
		if line = unbound.Replace(line); Width(line) > width { // blanks before a long word
			lines = append(lines, strings.Split(ansi.Hardwrap(line, width, true), "\n")...)
			continue
		}
		lines = append(lines, line)
	}
	return lines
}

// The blank and the dash that no line is broken at.
const (
	noBreak = "\u00a0"
	dash    = "\u2011"
)

var unbound = strings.NewReplacer(noBreak, " ", dash, "-")

// bound puts a blank that does not break behind every number. Nor does a dash break: a date
// stays whole, and the library's lines grow too wide where they end at one.
func bound(text string) string {
	var b strings.Builder
	digit := func(i int) bool { return i >= 0 && i < len(text) && text[i] >= '0' && text[i] <= '9' }
	for i := range len(text) {
		switch {
		case text[i] == ' ' && digit(i-1) && i+1 < len(text) && text[i+1] > '9':
			b.WriteString(noBreak)
		case text[i] == '-':
			b.WriteString(dash)
		default:
			b.WriteByte(text[i])
		}
	}
	return b.String()
}

// WrapMost is [Wrap] with at most so many lines; the last one ends in tail
// where more is left.
func WrapMost(text string, width, most int, tail string) []string {
	lines := Wrap(text, width)
	if len(lines) <= most {
		return lines
	}
	if most <= 0 {
		return nil
	}
	lines = lines[:most]
	last := strings.TrimRight(lines[most-1], " ")
	lines[most-1] = Clip(Clip(last, width-Width(tail), "")+tail, width, "")
	return lines
}

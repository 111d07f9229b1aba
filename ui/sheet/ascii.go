package sheet

import (
	"strings"
	"unicode"
)

// spelt writes out what does not come apart into a letter and its marks.
var spelt = strings.NewReplacer(
	"ß", "ss", "æ", "ae", "Æ", "AE", "œ", "oe", "Œ", "OE", "ø", "o", "Ø", "O", "đ", "d", "Đ", "D", "ł", "l", "Ł", "L", "ı", "i", "þ", "th", "Þ", "Th",
	"“", `"`, "”", `"`, "„", `"`, "«", `"`, "»", `"`, "‘", "'", "’", "'", "–", "-", "—", "-", "×", "x", "·", "-", "•", "-", "€", "EUR", "£", "GBP",
	"…", "...", "¼", "1/4", "½", "1/2", "¾", "3/4", "ŉ", "'n",
)

// fullWidth is from a character to the one that is as wide as a Chinese one.
const fullWidth = 0xFEE0

// ascii writes text in the characters that every printer has: letters lose
// their accents, and what has no such letter becomes a question mark.
func ascii(text string) string {
	for i := range len(text) {
		if text[i] < ' ' || text[i] > '~' {
			return folded(text)
		}
	}
	return text
}

func folded(text string) string {
	var b strings.Builder
	for _, r := range spelt.Replace(text) {
		if r >= fullWidth+' ' && r <= fullWidth+'~' {
			r -= fullWidth
		}
		becomes, comesApart := plain()[r]
		switch {
		case r >= ' ' && r <= '~':
			b.WriteRune(r)
		case comesApart:
			b.WriteString(becomes)
		case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		case unicode.IsSpace(r):
			b.WriteByte(' ')
		default:
			b.WriteByte('?')
		}
	}
	return b.String()
}

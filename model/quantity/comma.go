package quantity

import "strings"

// The reasons of a [ParseError] for a comma that does not read.
const (
	twoWays  = "has a comma that could part thousands or decimals"
	noNumber = "has a comma that parts no decimals; use a point or one comma for decimals and nothing for thousands"
)

// Pointed gives text with its decimal commas written as points, and whether
// there was any: "1,4 gpm" is 1.4 gpm. A comma is one of decimals where it stands
// alone in its number, between digits, and could not part thousands. Text with a
// comma that reads in two ways or in none is given back as it is.
func Pointed(text string) (string, bool) {
	pointed, reason := points(text)
	return pointed, reason == "" && pointed != text
}

// points writes decimal commas as points, or gives the reason why it cannot.
func points(text string) (pointed, reason string) {
	if strings.IndexByte(text, ',') < 0 {
		return text, ""
	}
	var b strings.Builder
	for rest := text; rest != ""; {
		n := numeral(rest)
		if n == 0 {
			b.WriteByte(rest[0])
			rest = rest[1:]
			continue
		}
		number := rest[:n]
		if reason := misread(number); reason != "" {
			return text, reason
		}
		b.WriteString(strings.Replace(number, ",", ".", 1))
		rest = rest[n:]
	}
	return b.String(), ""
}

// numeral is how many bytes at the start of text are digits, points and commas,
// where there is a digit among them.
func numeral(text string) int {
	n := strings.IndexFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789.,", r) })
	if n < 0 {
		n = len(text)
	}
	if !strings.ContainsAny(text[:n], "0123456789") {
		return 0
	}
	return n
}

// misread is why the comma in a number does not read; "" where it does, or where
// there is none.
func misread(number string) string {
	whole, decimals, found := strings.Cut(number, ",")
	switch {
	case !found:
		return ""
	case whole == "" || decimals == "" || strings.ContainsAny(whole+decimals, ",."):
		return noNumber
	case len(decimals) == 3 && len(whole) <= 3 && whole[0] != '0':
		return twoWays + "; write " + whole + decimals + " or " + whole + "." + decimals
	}
	return ""
}

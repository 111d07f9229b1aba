package talk

import (
	"regexp"
	"slices"
	"strings"

	"washeve/ui/keys"
)

// named is a key that a message of a screen names as what does something, with what
// stands before it.
var named = regexp.MustCompile(`(^|[.;:,(] )(esc|enter|tab|Right|Left|[A-Za-z])( (?:adds|asks|begins|brings|changes|ends|gives|goes|leaves|lists|makes|opens|plans|sets|shows|starts|takes|tells|tries|undoes|writes)\b)`)

// worded is a message of a screen with the words of the page in the place of the keys
// that it names. A key that the page has no word for stays: it can be typed as well.
func (t *talk) worded(text string) string {
	return named.ReplaceAllStringFunc(text, func(found string) string {
		part := named.FindStringSubmatch(found)
		if say := t.wordFor(part[2]); say != "" {
			return part[1] + say + part[3]
		}
		return found
	})
}

// wordFor is the word of the page that a key stands for; "" where there is none.
func (t *talk) wordFor(key string) string {
	if len(key) > 1 {
		key = strings.ToLower(key)
	}
	b, bound := keys.Find(t.root.Top().Keys(), keys.Press(key))
	words := t.words()
	at := slices.IndexFunc(words, func(w Word) bool { return bound && w.Does == b.Does && (w.Key == "" || w.Key == key) })
	if at < 0 {
		return ""
	}
	return words[at].Say
}

package form

import (
	"slices"
	"unicode"
	"unicode/utf8"

	"washeve/model"
	"washeve/ui/keys"
)

// What keys do on a line that [Awaits] words.
const (
	Spell   keys.Action = "spell"
	LetActs keys.Action = "let a letter act"
)

// Awaits tells that a letter begins the text of a field: nothing is stated there, and what
// it takes is a word of the calendar, the compass, the map or another few. A name is begun
// by enter only, since a letter may be a key that was meant; so are the faces of a stage, since
// that line is empty most of the time.
func Awaits(f model.Field) bool {
	return TakesWords(f) && !f.List && !f.Free() && !f.Given()
}

// AwaitKeys are the keys of a screen where the line under the hand [Awaits] words: letters
// belong to the text, and what only a letter does says so.
func AwaitKeys(group, way string, all []keys.Binding) []keys.Binding {
	const isText = "letters are text on this line; "
	out := make([]keys.Binding, len(all), len(all)+1)
	for i, b := range all {
		others := slices.DeleteFunc(slices.Clone(b.Keys()), isLetter)
		if len(others) == 0 && b.Blocked == "" {
			b.Blocked = isText + way
		}
		b.SetKeys(others...)
		out[i] = b
	}
	return append(out, keys.New(group, Spell, "a-z", "type it", lettersBut()...).
		Explained("where a line of a day, a heading, a time zone or other such words states nothing, a letter begins its text"))
}

// isLetter tells that the name of a key is a letter.
func isLetter(key string) bool {
	r, size := utf8.DecodeRuneInString(key)
	return size == len(key) && unicode.IsLetter(r)
}

// lettersBut are the keys of the alphabet, small and large, without some.
func lettersBut(some ...string) []string {
	var all []string
	for r := 'a'; r <= 'z'; r++ {
		all = append(all, string(r), string(unicode.ToUpper(r)))
	}
	return slices.DeleteFunc(all, func(key string) bool { return slices.Contains(some, key) })
}

package journal

import (
	"fmt"
	"strings"
	"unicode"

	"washeve/model"
)

// header begins a new log.
const header = `# What was done, in the order in which it was written: washes, readings,
# changes of resin, salt. The program only ever adds to the end of this file. To
# put an entry right let the program write a correction, or edit it here.

format = 1
`

const (
	blockStart = "[[entry]]"
	kindKey    = "kind"
	idKey      = "id" // the last key of a block: a block without it was cut off
)

// encode writes an entry in the one form in which the program writes.
func encode(e model.Entry) string {
	var b strings.Builder
	b.WriteString(blockStart + "\n" + kindKey + " = \"" + string(e.Kind()) + "\"\n")
	for _, f := range e.Fields() {
		text := f.Text()
		switch {
		case text == "":
		case f.Scalar:
			b.WriteString(f.Key + " = " + text + "\n")
		default:
			b.WriteString(f.Key + " = " + quote(text) + "\n")
		}
	}
	return b.String()
}

// encodeAll writes entries to be appended. An entry that could not be read back
// as it is, is refused: better told now than lost later.
func encodeAll(entries []model.Entry) ([]string, error) {
	blocks := make([]string, len(entries))
	for i := range entries {
		if problem := entries[i].Usable(); problem != nil {
			return nil, fmt.Errorf("the %s entry of %s is not complete: %w", entries[i].Kind(), entries[i].At, problem)
		}
		blocks[i] = encode(entries[i])
	}
	back := newScanner("as written", strings.Join(blocks, ""))
	back.entries()
	for i := range entries {
		if i >= len(back.found) || back.found[i].Content() != entries[i].Content() {
			return nil, fmt.Errorf("the %s entry of %s would not be read back as it is: %v", entries[i].Kind(), entries[i].At, back.all)
		}
	}
	return blocks, nil
}

// quote writes text as a TOML string.
func quote(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range text {
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case unicode.IsControl(r):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String() + `"`
}

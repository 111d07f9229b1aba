// Package tty is what comes from a terminal: keys, and answers to what it was asked
// when the program began. The two come on one line, and over a slow one in pieces and
// late; the program's runtime must see whole keys and no answers.
package tty

import (
	"bytes"
	"regexp"
	"time"
	"unicode/utf8"
)

// answers are a terminal's answers to what the runtime asks: its background, and where
// its cursor is.
var answers = regexp.MustCompile(`\x1b\]1[01];[^\x07\x1b]*(?:\x07|\x1b\\)|\x1b\[\d+;\d+R`)

// keys takes the answers out of what came.
func keys(came []byte) []byte { return answers.ReplaceAll(came, nil) }

// unfinished is how long to wait for the rest of a key or an answer that has come in
// part; 0 where what came is whole. An escape alone is a key, or the start of one.
func unfinished(came []byte) time.Duration {
	const alone, rest = 50 * time.Millisecond, 500 * time.Millisecond
	const answer = "\x1b]11;"
	if i := bytes.LastIndex(came, []byte(answer)); i >= 0 && !answers.Match(came[i:]) {
		return rest
	}
	i := bytes.LastIndexByte(came, '\x1b')
	if i < 0 {
		return letter(came, rest)
	}
	switch tail := came[i:]; {
	case len(tail) == 1:
		return alone
	case tail[1] == 'O' && len(tail) == 2, bytes.HasPrefix([]byte(answer), tail):
		return rest
	case tail[1] == '[' && !bytes.ContainsFunc(tail[2:], func(r rune) bool { return r >= '@' && r <= '~' }):
		return rest
	}
	return letter(came, rest)
}

// letter waits for the rest of a letter.
func letter(came []byte, wait time.Duration) time.Duration {
	for n := 1; n < utf8.UTFMax && n <= len(came); n++ {
		if last := came[len(came)-n:]; utf8.RuneStart(last[0]) {
			if utf8.FullRune(last) {
				return 0
			}
			return wait
		}
	}
	return 0
}

// Package tty is what comes from a terminal: keys, and answers to what it was asked
// when the program began. The two come on one line, and over a slow one in pieces and
// late; the program's runtime must see whole keys and no answers.
package tty

import (
	"bytes"
	"time"
	"unicode/utf8"

	"washeve/model/pattern"
)

// answers are a terminal's answers to what the runtime asks: its background, and where
// its cursor is. One that was broken off is one, too.
var answers = pattern.Of(`\x1b\]1[01];` + colour + `(?:\x07|\x1b\\)?|\x1b\[\d+;\d+R`)

// colour is what a colour is told in.
const colour = `[rgba:/\da-fA-F]{0,24}`

// begun is an answer, or a key of many bytes, that has come in part at the end. No hand
// types it so far.
var begun = pattern.Of(`\x1b(?:\](?:1(?:[01](?:;` + colour + `\x1b?)?)?)?|\[[<\d][\d;]*)$`)

// held is an Escape that is held down: what has come of it is one.
var held = pattern.Of(`\x1b{2,}$`)

// cut is what follows an escape that has come alone, was taken for the key and was the
// start of an answer, or of a key of many bytes.
var cut = pattern.Of(`^(?:\]1|\[[<\d])`)

// keys takes the answers out of what came, and what was begun and has not been ended
// though it was waited for: it would act as letters.
func keys(came []byte) []byte {
	came = begun().ReplaceAll(answers().ReplaceAll(came, nil), nil)
	return held().ReplaceAll(came, []byte{escape})
}

const escape = '\x1b'

// unfinished is how long to wait for the rest of a key or an answer that has come in
// part; 0 where what came is whole. An escape alone is a key, or the start of one.
func unfinished(came []byte) time.Duration {
	const alone, rest, answer = 50 * time.Millisecond, 500 * time.Millisecond, 5 * time.Second
	if begun().Match(came) {
		return answer
	}
	i := bytes.LastIndexByte(came, escape)
	if i < 0 {
		return letter(came, rest)
	}
	switch tail := came[i:]; {
	case len(tail) == 1:
		return alone
	case len(tail) == 2 && (tail[1] == 'O' || tail[1] == '['):
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

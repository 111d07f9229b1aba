package tty

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestAnswersAreNoKeys(t *testing.T) {
	for came, rest := range map[string]string{
		"q": "q", "a\x1b]11;rgb:ffff/ffff/ffff\x1b\\\x1b[1;1Rb": "ab", "\x1b]11;rgb:0000/0000/0000\x07": "", "\x1b[12;40R": "",
		"\x1b[A\x1b[<64;10;10M": "\x1b[A\x1b[<64;10;10M",
		// Broken off, and never ended.
		"\x1b]11;rgb:ffq": "q", "\x1b]11;rgb:ff": "", "a\x1b]1": "a", "\x1b[1;": "", "\x1b[<64;1": "", "\x1b[": "\x1b[", "\x1b]1x": "\x1b]1x",
		// An Escape that is held down.
		"\x1b": "\x1b", "\x1b\x1b": "\x1b", "q\x1b\x1b\x1b": "q\x1b", "\x1b\x1b[A": "\x1b\x1b[A",
	} {
		assert.Equal(t, rest, string(keys([]byte(came))), "%q", came)
	}
}

func TestWhatHasComeInPart(t *testing.T) {
	for _, part := range []string{"\x1b", "q\x1b", "\x1b[", "\x1b[1;2", "\x1b[<64;10;", "\x1bO", "\x1b]", "\x1b]11;rgb:ffff/ff", "\x1b]11;rgb:ffff/ffff/ffff\x1b", "\xe6\xb0", "\xf0\x9f\x9a"} {
		assert.Positive(t, unfinished([]byte(part)), "%q", part)
	}
	for _, all := range []string{"", "q", "\x1b[A", "\x1bOP", "\x1b[<64;10;10M", "\x1b]11;rgb:ffff/ffff/ffff\x1b\\", "\x1bx", "水", "\x1b[200~text", "\xff"} {
		assert.Zero(t, unfinished([]byte(all)), "%q", all)
	}
}

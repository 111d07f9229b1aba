package sheet

import (
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"golang.org/x/text/unicode/norm"
)

// Letters come apart as Unicode has it (compatibility decomposition, UAX 15), by the
// library for that.
func TestLettersComeApartAsUnicodeHasIt(t *testing.T) {
	for _, block := range [][2]rune{{0xA0, 0x24F}, {0x1E00, 0x1EFF}, {0xFB00, 0xFB06}, {0xFF01, 0xFF5E}} {
		for r := block[0]; r <= block[1]; r++ {
			want := ""
			for _, part := range norm.NFKD.String(string(r)) {
				if !unicode.Is(unicode.Mn, part) {
					want += string(part)
				}
			}
			if spelt.Replace(string(r)) == string(r) && strings.IndexFunc(want, func(r rune) bool { return r <= ' ' || r > '~' }) < 0 {
				assert.Equal(t, want, ascii(string(r)), "%U", r)
			}
		}
	}
	assert.Equal(t, "Zoe, Ake & 1/2 'n ?", ascii("Zoe\u0308, Åke & ½ ŉ \u4e16"))
}

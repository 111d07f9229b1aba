package thrift

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestALineSendsLessAndLooksTheSame(t *testing.T) {
	for _, c := range []struct{ in, out string }{
		{"plain", "plain"},
		{"\x1b[38;5;80ma\x1b[m \x1b[38;5;80mb\x1b[m", "\x1b[38;5;80ma b\x1b[m"},
		{"\x1b[38;5;80ma\x1b[m\x1b[38;5;90mb\x1b[m c", "\x1b[38;5;80ma\x1b[38;5;90mb \x1b[mc"},
		{"\x1b[1ma\x1b[m\x1b[38;5;90mb\x1b[m", "\x1b[1ma\x1b[0;38;5;90mb\x1b[m"},
		{"\x1b[38;5;80ma\x1b[m\x1b[1mb\x1b[m", "\x1b[38;5;80ma\x1b[0;1mb\x1b[m"},
		{"x\x1b[7m \x1b[m y", "x\x1b[7m \x1b[m y"},
		{"\x1b[38;5;80m  \x1b[m", "  "},
	} {
		assert.Equal(t, c.out, Line(c.in))
	}
}

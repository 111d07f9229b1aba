package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A reading that fits no bed is explained in words; the codes are for programs.
func TestBedSaysInWordsWhatMayBeBehindAReading(t *testing.T) {
	dir := mine(t)
	for _, reading := range []string{"310 ppm NaCl", "2 ppm NaCl"} {
		_, errs, code := ran(t, "log", "reading", reading, "--flushed", "yes", "--point", "after bed", "--dir", dir)
		require.Zero(t, code, errs)
	}
	out, _, _ := ran(t, "bed", "--dir", dir)
	assert.Contains(t, out, "fits no bed\n    What may be behind it, the likeliest first:\n    1. ")
	assert.Regexp(t, `    1\. \S+ \S+ \S+`, out)
	assert.NotContains(t, out, "pen-scale")
	for _, line := range strings.Split(out, "\n") {
		if strings.HasPrefix(line, "    ") {
			assert.LessOrEqual(t, len(line), pageColumns)
		}
	}
	out, _, _ = ran(t, "bed", "--json", "--dir", dir)
	assert.Regexp(t, `"causes": \[\s+"[a-z-]+"`, out)
}

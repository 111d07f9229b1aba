package manual_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/manual"
)

func TestAPage(t *testing.T) {
	p := manual.New("washeve", 1, "2026-06-12", "washeve 1.0")
	p.Section("Options")
	p.Term("--dir FOLDER", "where the\nfiles are")
	p.Said("like", "~/wash")
	p.Text("One.\n\n.Two 5 % of it's \\n.")
	p.Lines(".hidden", "  two  blanks")
	assert.Equal(t, `.TH "WASHEVE" 1 "2026\-06\-12" "washeve 1.0"
.nh
.ad l
.SH "OPTIONS"
.TP
\fB\-\-dir FOLDER\fR
where the files are
.br
\fIlike\fR \(ti/wash
.PP
One.
.PP
\&.Two 5 % of it\(aqs \en.
.PP
.RS 4
.nf
\&.hidden
  two  blanks
.fi
.RE
`, p.String())
}

// No text becomes a macro: only the page itself starts lines with a point.
func TestNoTextIsTakenForAMacro(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune(".'\\-\"\n a%"))).Draw(t, "text")
		p := manual.New("x", 1, "", "")
		p.Text(text)
		p.Lines(strings.Split(text, "\n")...)
		for line := range strings.SplitSeq(p.String(), "\n") {
			if line == "" || line[0] != '.' {
				assert.False(t, strings.HasPrefix(line, "'"), line)
				continue
			}
			assert.Regexp(t, `^\.(TH .*|nh|ad l|PP|RS 4|nf|fi|RE)$`, line)
		}
	})
}

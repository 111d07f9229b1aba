//go:build unix

package main

import (
	"regexp"
	"strings"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"

	"washeve/ui/theme"
)

// Codes that colour: by one of 16, by one of 256, by any.
var (
	anyStyle = regexp.MustCompile(`\x1b\[[0-9;]*m`)
	sixteen  = regexp.MustCompile(`\x1b\[(?:[0-9]+;)*(?:3[0-7]|4[0-7]|9[0-7]|10[0-7])m`)
	many     = regexp.MustCompile(`\x1b\[[0-9;]*[34]8;5;[0-9]+`)
	anyRGB   = regexp.MustCompile(`\x1b\[[0-9;]*[34]8;2;`)
)

// What is sent fits what the terminal is said to be, on every kind of page.
func TestTheColoursOfEachTerminal(t *testing.T) {
	ink := func(ground theme.Ground, profile termenv.Profile) string {
		open, _, _ := strings.Cut(theme.New(theme.Options{Ground: ground, Profile: profile}).DI.On("x"), "x")
		return open
	}
	for _, c := range []struct {
		name        string
		setup       setup
		sends, none []*regexp.Regexp
		ink         string
	}{
		{"dark", setup{}, []*regexp.Regexp{many}, []*regexp.Regexp{anyRGB}, ink(theme.Dark, termenv.ANSI256)},
		{"light", setup{light: true}, []*regexp.Regexp{many}, []*regexp.Regexp{anyRGB}, ink(theme.Light, termenv.ANSI256)},
		{"256 colours", setup{env: []string{"COLORTERM="}}, []*regexp.Regexp{many}, []*regexp.Regexp{anyRGB}, ink(theme.Dark, termenv.ANSI256)},
		{"16 colours", setup{env: []string{"TERM=xterm", "COLORTERM="}}, []*regexp.Regexp{sixteen}, []*regexp.Regexp{many, anyRGB}, ink(theme.Dark, termenv.ANSI)},
		{"16 colours, light", setup{light: true, env: []string{"TERM=xterm", "COLORTERM="}}, []*regexp.Regexp{sixteen}, []*regexp.Regexp{many, anyRGB}, ink(theme.Light, termenv.ANSI)},
		{"NO_COLOR", setup{env: []string{"NO_COLOR=1"}}, nil, []*regexp.Regexp{sixteen, many, anyRGB}, ""},
		{"the Linux console", setup{env: []string{"TERM=linux", "COLORTERM="}}, []*regexp.Regexp{sixteen}, []*regexp.Regexp{many, anyRGB}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := start(t, c.setup)
			s.sees("flow cap")
			for _, h := range []hop{{"D", "easy: no face hurries"}, {"esc", "flow cap"}, {"B", "r reading"}, {"esc", "flow cap"}, {"?", "Keys: Plan"}, {"esc", "flow cap"}, {"W", "step 1 of"}} {
				s.press(h.keys)
				s.sees(h.sees)
			}
			sent := s.output()
			for _, re := range c.sends {
				assert.Regexp(t, re, sent)
			}
			for _, re := range c.none {
				assert.NotRegexp(t, re, sent)
			}
			assert.Contains(t, sent, c.ink, "DI water has the ink of this ground")
		})
	}
	assert.NotEqual(t, ink(theme.Dark, termenv.ANSI256), ink(theme.Light, termenv.ANSI256), "the two grounds can be told apart")
}

// A terminal that cannot draw, and one that is asked not to, get words and nothing else.
func TestPlainTerminalsGetNoCodes(t *testing.T) {
	for name, s := range map[string]setup{
		"TERM=dumb": {env: []string{"TERM=dumb"}}, "--plain": {args: []string{"--plain"}}, "plan --plain": {args: []string{"plan", "--plain"}},
		"bed --plain": {args: []string{"bed", "--plain"}}, "compare, TERM=dumb": {args: []string{"compare"}, env: []string{"TERM=dumb"}},
		"plan, TERM=dumb": {args: []string{"plan"}, env: []string{"TERM=dumb"}},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			run := start(t, s)
			if len(s.args) < 2 && (len(s.args) == 0 || s.args[0] == "--plain") {
				run.sees("or help:")
				run.press("quit\n")
			}
			assert.Equal(t, done, run.ends())
			run.isAsFound(name)
			sent := run.output()
			if strings.Contains(name, "--plain") { // the runtime asks a terminal before anything else, but not a dumb one
				sent = strings.NewReplacer("\x1b]11;?\x1b\\", "", "\x1b[6n", "").Replace(sent)
			}
			assert.NotContains(t, sent, "\x1b")
			assert.NotRegexp(t, anyStyle, sent)
			assert.NotRegexp(t, "[\u2500-\u25ff\u2800-\u28ff]", sent, "what is drawn")
		})
	}
}

//go:build unix

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// An evil name clears the screen, renames the window, moves the cursor, asks the
// terminal to type back, and hides text: by escape codes of both kinds, by bells
// and backspaces, and by letters that turn the direction.
const evil = `\u001b[2J\u001b]0;owned\u0007\u001b[6n\u009b31mx\u0008\u0000\u202ey\u2028\u007f`

// obeyed is what must never come out: the codes that the program never sends of
// its own, and the letters that steer.
func obeyed(t *testing.T, what, text string) {
	t.Helper()
	for _, code := range []string{"\x1b]0;owned", "\x1b[2J\x1b]", "\u009b", "\u202e", "\u2028", "\x08", "\x00", "\x7f"} {
		assert.NotContains(t, text, code, "%s lets %q through", what, code)
	}
}

func evilFiles(t *testing.T) string {
	return files(t, map[string]string{
		"rig.toml": fmt.Sprintf(`format = 1
[[vehicle]]
name = "coach %[1]s"
length = "40 ft"
height = "12 ft"
[[bed]]
name = "tank %[1]s"
resin = "0.5 ft3"
[[sprayer]]
name = "gun %[1]s"
flow = "1.3 gpm"
[[pen]]
name = "pen %[1]s"
scale = "NaCl"
`, evil),
		"places.toml":     fmt.Sprintf("format = 1\n[[place]]\nname = \"home %s\"\ntds = \"250 ppm NaCl\"\n", evil),
		"washes/w.toml":   fmt.Sprintf("format = 1\nname = \"wash %s\"\n", evil),
		"bad/rig.toml":    fmt.Sprintf("format = 1\n[[bed]]\nname = \"tank\"\nresin = \"%[1]s\"\n\"key %[1]s\" = 1\n[\"section %[1]s\"]\nx = 1\n", evil),
		"bad/broken.toml": "[[bed]]\nname = \x1b[2J\x1b]0;owned\a\x9b\n",
		"bad/log.toml":    fmt.Sprintf("format = 1\n[[entry]]\nkind = \"%[1]s\"\nat = 2026-06-12T08:00:00-06:00\nid = \"%[1]s\"\n", evil),
		"bad/log.csv":     "kind,at,\x1b[2J\x1b]0;owned\a\nsalt,\x1b]0;owned\a,x\n",
	})
}

func TestEscapeCodesInFilesAreTextInPrint(t *testing.T) {
	dir := evilFiles(t)
	bad := func(name string) string { return filepath.Join(dir, "bad", name) }
	for _, args := range [][]string{
		{"plan", "--dir", dir}, {"plan", "--json", "--dir", dir}, {"plan", "--plain", "--dir", dir}, {"bed", "--dir", dir}, {"bed", "--json", "--dir", dir},
		{"check", filepath.Join(dir, "rig.toml")}, {"check", "--json", bad("rig.toml")}, {"check", bad("rig.toml")}, {"check", bad("broken.toml")},
		{"check", bad("log.toml")}, {"plan", "--dir", filepath.Join(dir, "bad")}, {"log", "import", bad("log.csv"), "--dir", dir},
		{"log", "wash", "--bed", "\x1b]0;owned\a\u202e", "--dir", dir}, {"\x1b]0;owned\a\u202e"}, {"plan", "--\x1b]0;owned\a"},
		{"plan", dir + "/\x1b]0;owned\a.toml"}, {"plan", "--dir", dir + "/\x1b]0;owned\a\u202e"}, {"plan", "--units", "\x1b]0;owned\a"},
		{"log", "wash", "--di", "30 gal", "--note", "note \x1b]0;owned\a\u202e", "--dir", dir}, {"log", "list", "--dir", dir}, {"log", "list", "--json", "--dir", dir},
		{"log", "export", "--dir", dir}, {"log", "reading", "\x1b]0;owned\a", "--dir", dir}, {"log", "strike", "\x1b]0;owned\a", "--dir", dir},
	} {
		out, errs, _ := ran(t, args...)
		what := strings.ReplaceAll(fmt.Sprintf("%q", args), dir, "")
		obeyed(t, what, out)
		obeyed(t, what, errs)
		for _, r := range out + errs {
			if r != '\n' && r != '\t' && unicode.IsControl(r) {
				t.Errorf("%s lets %q through", what, r)
				break
			}
		}
	}
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	for _, f := range left {
		assert.NotContains(t, f.Name(), "\x1b")
	}
}

func TestEscapeCodesInFilesAreToldAtTheScreen(t *testing.T) {
	s := start(t, setup{env: []string{"WASHEVE_DIR=" + evilFiles(t)}})
	s.await(func(string) bool { return strings.Contains(s.raw.String(), "nothing was changed") }, "the names are refused")
	assert.Equal(t, wrongUse, s.ends())
	obeyed(t, "the screen", s.output())
}

// What is pasted is text, whatever it holds: a name that cannot be shown is not
// taken, and none of it is sent back to the terminal.
func TestEscapeCodesThatArePastedAreText(t *testing.T) {
	home := t.TempDir()
	s := start(t, setup{home: home})
	s.sees("The bed lasts this wash")
	for _, keys := range []string{"b", "down", "enter", "\x1b[200~\x1b]0;owned\a\u009b31m\u202ex\u2028\x1b[201~", "enter", "B", "r", "esc", "n", "?", "esc", "esc", "esc"} {
		s.press(keys)
		s.settles()
	}
	s.press("ctrl+c")
	s.settles()
	obeyed(t, "the screen", s.output())
}

package cells_test

import (
	"strings"
	"testing"
	"unicode"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"washeve/ui/cells"
)

func TestSafe(t *testing.T) {
	for _, c := range []struct{ in, out string }{
		{"our coach", "our coach"},
		{"a\x1b[31mb", `a\x1b[31mb`},
		{"two\nlines\tand", "two lines and"},
		{"bell\a", `bell\a`},
		{"turned \u202eabout", `turned \u202eabout`},
		{"c1 \u009b31m", `c1 \u009b31m`},
		{"broken \xff", `broken \xff`},
		{"Grüße, 東京", "Grüße, 東京"},
	} {
		assert.Equal(t, c.out, cells.Safe(c.in))
	}
}

func TestSafeLeavesNothingToObey(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := string(rapid.SliceOf(rapid.Byte()).Draw(t, "bytes"))
		for _, r := range cells.Safe(text) {
			if unicode.In(r, unicode.Cc, unicode.Zl, unicode.Zp) {
				t.Fatalf("%q keeps %q", text, r)
			}
		}
	})
}

func TestFitIsExactlySoWide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := cells.Safe(rapid.String().Draw(t, "text"))
		width := rapid.IntRange(0, 60).Draw(t, "width")
		for _, got := range []string{cells.Fit(text, width), cells.Right(text, width)} {
			if cells.Width(got) != width {
				t.Fatalf("%q takes %d cells, not %d", got, cells.Width(got), width)
			}
		}
		if got := cells.Clip(text, width, "…"); cells.Width(got) > width {
			t.Fatalf("%q is wider than %d", got, width)
		}
	})
}

func TestWrapMost(t *testing.T) {
	assert.Equal(t, []string{"one two", "three..."}, cells.WrapMost("one two three four five", 8, 2, "..."))
	assert.Equal(t, []string{"one two"}, cells.WrapMost("one two", 8, 2, "..."))
	assert.Empty(t, cells.WrapMost("one two three", 4, 0, "..."))
	assert.Empty(t, cells.Wrap("words", 0))
}

func TestWrapKeepsNumberAndUnitTogether(t *testing.T) {
	assert.Equal(t, []string{"it takes", "24 s or so"}, cells.Wrap("it takes 24 s or so", 11))
	assert.Equal(t, []string{"home by", "2026-06-12"}, cells.Wrap("home by 2026-06-12", 14))
	assert.Equal(t, []string{"a", "half-foot", "tank"}, cells.Wrap("a half-foot tank", 9))
}

func TestWrapIsNeverTooWide(t *testing.T) {
	pieces := []string{"bed", " ", " ", "-", ",", "7", "half-foot", "水", "é", "."}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOf(rapid.SampledFrom(pieces)).Draw(t, "pieces"), "")
		width := rapid.IntRange(2, 12).Draw(t, "width")
		for _, line := range cells.Wrap(text, width) {
			assert.LessOrEqual(t, cells.Width(line), width, "%q in %q", line, text)
		}
	})
}

func TestRight(t *testing.T) {
	assert.Equal(t, "  ab", cells.Right("ab", 4))
	assert.Equal(t, strings.Repeat("x", 3), cells.Repeat("x", 3))
	assert.Empty(t, cells.Repeat("x", -1))
}

// The quick way to measure says what the library says.
func TestWidthIsThatOfTheLibrary(t *testing.T) {
	pieces := []string{"bed", "─", "╭", "░", "●", "◐", "⣿", "…", "·", "›", "é", "e\u0301", "水", "👩‍🔧", "🚐", "▪\ufe0f", "\x1b[m", "\x1b[38;5;80m", "\x1b[K", "\x1b]0;x\x07", "\x1b", "[", "\x7f", "\u00ad", "\xff", "■", "◆"}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOf(rapid.SampledFrom(pieces)).Draw(t, "pieces"), "")
		assert.Equal(t, ansi.StringWidth(text), cells.Width(text), "%q", text)
	})
}

func FuzzWidth(f *testing.F) {
	f.Add("\x1b[38;5;80m─\x1b[m bed ●")
	f.Fuzz(func(t *testing.T, text string) {
		if got, want := cells.Width(text), ansi.StringWidth(text); got != want {
			t.Fatalf("%q: %d, not %d", text, got, want)
		}
	})
}

func TestPartsAreLeftOutWhole(t *testing.T) {
	text := "3 ppm NaCl, flushed 4 gal, at 1.4 gpm, home"
	assert.Equal(t, text, cells.WholeParts(text, 43, "…"))
	assert.Equal(t, "3 ppm NaCl, flushed 4 gal, at 1.4 gpm, …", cells.WholeParts(text, 42, "…"))
	assert.Equal(t, "3 ppm NaCl, …", cells.WholeParts(text, 27, "…"))
	assert.Equal(t, "3 ppm…", cells.WholeParts(text, 6, "…"))
	assert.Equal(t, "", cells.WholeParts(text, 0, "…"))
}

func TestClausesEndWhole(t *testing.T) {
	text := "The hose pushes 9 gpm, over the cap (2 gpm, by contact time): never rinse with it."
	assert.Equal(t, []string{text}, cells.Clauses(text, 90, 1, "…"))
	assert.Equal(t, []string{"The hose pushes 9 gpm, over the cap (2 gpm, by contact time)."}, cells.Clauses(text, 70, 1, "…"))
	assert.Equal(t, []string{"The hose pushes 9 gpm."}, cells.Clauses(text, 40, 1, "…"), "not within brackets")
	assert.Equal(t, []string{"The hose pushes…"}, cells.Clauses(text, 18, 1, "…"), "too little would be left")
	assert.Equal(t, []string{"a b…"}, cells.Clauses("a b c d", 4, 1, "…"))
	assert.Empty(t, cells.Clauses(text, 40, 0, "…"))
}

func TestAClauseThatAsksForTheRestEndsNothing(t *testing.T) {
	assert.Equal(t, []string{"time zone, where the coach stands."}, cells.Clauses("time zone, where the coach stands; enter, then type it", 41, 1, "…"))
}

package sheet

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// luminance is the relative luminance of WCAG 2.2 of a colour written #rrggbb.
func luminance(t *testing.T, colour string) float64 {
	t.Helper()
	require.Regexp(t, `^#[0-9a-f]{6}$`, colour)
	part := func(hex string) float64 {
		n, err := strconv.ParseUint(hex, 16, 8)
		require.NoError(t, err)
		v := float64(n) / 255
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	return 0.2126*part(colour[1:3]) + 0.7152*part(colour[3:5]) + 0.0722*part(colour[5:7])
}

// contrast is the contrast ratio of WCAG 2.2.
func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, y := luminance(t, a), luminance(t, b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

// The two ends of WCAG's scale, and the grey that its guides name as the
// lightest on white: #767676 has 4.54.
func TestContrastIsThatOfTheGuidelines(t *testing.T) {
	assert.InDelta(t, 21, contrast(t, "#000000", "#ffffff"), 1e-9)
	assert.InDelta(t, 1, contrast(t, "#123456", "#123456"), 1e-9)
	assert.InDelta(t, 4.54, contrast(t, "#767676", "#ffffff"), 0.005)
}

// Every colour is written on paper and on panels; paper's colour is written on
// the verdicts and on ink.
func TestEveryPairOfColoursHasContrast(t *testing.T) {
	for ground, c := range map[string]colours{"light": onLight(), "dark": onDark(), "print": onPrint()} {
		for _, n := range c.named() {
			if n[0] == "paper" || n[0] == "panel" {
				continue
			}
			assert.GreaterOrEqual(t, contrast(t, n[1], c.Paper), 4.5, "%s: %s on paper", ground, n[0])
			assert.GreaterOrEqual(t, contrast(t, n[1], c.Panel), 4.5, "%s: %s on a panel", ground, n[0])
		}
	}
}

// The stylesheet names no colour but those of the palette, so that the test
// above sees them all, and fetches nothing.
func TestTheStylesheetHasNoColoursOfItsOwn(t *testing.T) {
	assert.NotRegexp(t, `#[0-9a-fA-F]{3,8}\b|rgb|hsl|url\(|@import|opacity`, stylesheet)
	known := map[string]bool{}
	for _, n := range onLight().named() {
		known[n[0]] = true
	}
	for _, use := range regexp.MustCompile(`var\(--([a-z]+)\)`).FindAllStringSubmatch(stylesheet, -1) {
		assert.True(t, known[use[1]], use[1])
	}
	for _, rule := range regexp.MustCompile(`(?:color|background|fill|stroke): ([^;]+);`).FindAllStringSubmatch(stylesheet, -1) {
		assert.True(t, strings.HasPrefix(rule[1], "var(--") || rule[1] == "none", rule[0])
	}
}

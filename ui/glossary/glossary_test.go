package glossary_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"

	"washeve/ui/cells"
	"washeve/ui/glossary"
	"washeve/ui/theme"
)

func TestTermsAreInOrderAndShort(t *testing.T) {
	var words []string
	for _, term := range glossary.Terms() {
		words = append(words, strings.ToLower(term.Word))
		sentences := strings.Count(term.Text, ". ") + 1
		assert.True(t, strings.HasSuffix(term.Text, "."), term.Word)
		assert.LessOrEqual(t, sentences, 4, term.Word)
	}
	assert.True(t, slices.IsSorted(words), words)
	assert.Equal(t, len(words), len(slices.Compact(slices.Clone(words))))
	for _, needed := range []string{"bed", "grains", "bypass", "contact time", "breakthrough", "flush", "tds scale", "conductivity", "softener", "regeneration", "film", "drip", "cap", "transfer units", "leakage", "working layer", "limit", "target", "tight", "band", "section", "first cup", "fill", "in series"} {
		assert.Contains(t, words, needed)
	}
}

func TestEveryTroubleSaysHowToTellAndWhatToDo(t *testing.T) {
	for _, trouble := range glossary.Troubles() {
		assert.NotEmpty(t, trouble.Causes, trouble.Asks)
		for _, c := range trouble.Causes {
			for _, words := range []string{c.What, c.Tell, c.Do} {
				assert.True(t, strings.HasSuffix(words, "."), "%s: %q", trouble.Asks, words)
			}
		}
	}
}

func TestPagesFitAndNeedNoColour(t *testing.T) {
	for _, page := range []func(theme.Theme, int) []string{glossary.TermLines, glossary.TroubleLines} {
		for _, width := range []int{60, 78, 140} {
			for _, line := range page(theme.New(theme.Options{Profile: termenv.ANSI256}), width) {
				assert.LessOrEqual(t, cells.Width(line), width)
			}
		}
		plain := glossary.Text(page, 78)
		assert.Equal(t, plain, ansi.Strip(plain))
		for _, r := range plain {
			assert.Less(t, r, rune(0x7f))
		}
	}
}

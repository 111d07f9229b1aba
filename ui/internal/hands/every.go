package hands

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/keys"
	"washeve/ui/screen"
)

// EveryKey checks in every state, which is a name and the keys that lead there, that
// each key the screen lists does something or says why it does not. A key that still
// tells may leave all as it is; still may be nil.
func EveryKey[M screen.Screen](t *testing.T, states map[string]string, play func(script string) *Player[M], still func(b keys.Binding, state string) bool) {
	t.Helper()
	for state, script := range states {
		for _, b := range play(script).M.Keys() {
			for i, k := range b.Binding.Keys() {
				if testing.Short() && i > 0 {
					break // its other keys do the same
				}
				p := play(script)
				before := p.Seen()
				msg := p.Send(Key(k))
				after := p.Seen()
				if b.Blocked != "" {
					assert.Contains(t, after, "Not now: "+b.Blocked[:min(len(b.Blocked), 40)], "%s: %s", state, k)
				} else if msg == nil && (still == nil || !still(b, state)) {
					assert.NotEqual(t, before, after, "%s: %s (%s) changes nothing", state, k, b.Help().Desc)
				}
			}
		}
	}
}

// KeysOnce checks that in no state a key does two things or is without words.
func KeysOnce[M screen.Screen](t *testing.T, states map[string]string, play func(script string) *Player[M]) {
	t.Helper()
	for state, script := range states {
		seen := map[string]string{}
		for _, b := range play(script).M.Keys() {
			assert.NotEmpty(t, b.Help().Desc, state)
			assert.NotEmpty(t, b.Help().Key, state)
			for _, k := range b.Binding.Keys() {
				assert.Empty(t, seen[k], "%s: %s does two things", state, k)
				seen[k] = b.Help().Desc
			}
		}
	}
}

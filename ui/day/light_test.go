package day

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/ui/internal/sample"
	"washeve/ui/layout"
)

// Where the recommended wash ends after sunset, its first line says so, and by words and in
// a larger window the whole of it.
func TestAWashThatEndsAfterSunsetSaysSo(t *testing.T) {
	o := ours()
	assert.NotRegexp(t, "ends in|after sunset", play(t, o, "").Seen())
	sample.Set(&o.Wash, map[string]string{"date": "2026-06-12", "heading": "north", "low": "30 F", "high": "80 F", "dew_point": "15 F", "wind": "12 mph"})
	p := play(t, o, "")
	assert.Regexp(t, `17:30 to 21:06, ends in twilight  recommended`, p.Seen())
	const whole = "The wash as recommended ends at 21:06, after sunset at 20:40, in twilight."
	assert.Contains(t, strings.Join(p.M.told(), " "), whole)
	p.S = layout.Size{W: 140, H: 40}
	assert.Contains(t, p.Seen(), whole)
	p.Keys("s '19:30' enter")
	assert.Contains(t, strings.Join(p.M.told(), " "), "The wash begun at 19:30 ends at ")
	assert.Contains(t, p.Seen(), "ends in the dark  chosen")
}

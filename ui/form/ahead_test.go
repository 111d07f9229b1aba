package form_test

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/assert"

	"washeve/ui/form"
	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

// pressed is a list of skies after some keys, what was picked and what was told.
func pressed(script string) (p form.Picker, picked *form.Option, problem string) {
	var options []form.Option
	for _, text := range []string{"clear", "cloudy in part", "overcast", "kind of grey", "place 1", "place 2", "not stated"} {
		options = append(options, form.Option{Text: text, Pick: text})
	}
	options[6].Pick = ""
	p = form.Open("sky", options, "")
	for _, key := range hands.Keys(script) {
		b, _ := keys.Find(form.PickKeys(""), key)
		next, taken, told := p.Press(b.Does, key.String())
		if picked, problem = taken, told; next == nil {
			return p, picked, problem
		}
		p = *next
	}
	return p, picked, problem
}

func TestLettersGoToWhatBeginsSo(t *testing.T) {
	for script, on := range map[string]string{
		"": "not stated", "o": "overcast", "'overcast'": "overcast", "'Overcast'": "overcast", "'cl'": "clear", "'clo'": "cloudy in part",
		"c c": "cloudy in part", "c c c": "clear", "c down": "cloudy in part", "c down o": "overcast",
		"j": "clear", "k": "kind of grey", "'cloudy' space 'in'": "cloudy in part", "'place' space '2'": "place 2",
		"'overcast' space": "overcast", "o x": "not stated", "'ovx' down o": "overcast", "x up n": "not stated", "ü n": "not stated",
	} {
		p, picked, problem := pressed(script)
		assert.Equal(t, on, p.Options[p.At].Text, script)
		assert.Nil(t, picked, script)
		assert.Empty(t, problem, script)
	}
}

func TestEnterTakesNothingElseThanWasTyped(t *testing.T) {
	_, picked, _ := pressed("'overcast' enter")
	assert.Equal(t, "overcast", picked.Pick)
	_, picked, _ = pressed("2")
	assert.Equal(t, "cloudy in part", picked.Pick, "a number by itself is that of a line")
	for _, script := range []string{"'sunny' enter", "'overcast' space 'sky' enter"} {
		p, picked, problem := pressed(script)
		assert.Nil(t, picked, script)
		assert.Contains(t, problem, "Nothing in the list begins with ", script)
		_, picked, _ = p.Press(form.Accept, "enter")
		assert.Equal(t, p.Options[p.At].Pick, picked.Pick, "what was typed is let go by then")
	}
}

func TestWhatIsTypedAheadIsSeen(t *testing.T) {
	seen := func(script string) string {
		p, _, _ := pressed(script)
		return strings.TrimSpace(ansi.Strip(p.Lines(theme.New(theme.Options{Plain: true}), 60, 9)[0]))
	}
	assert.Equal(t, "sky", seen("down"))
	assert.Equal(t, `sky  "ov"`, seen("'ov'"))
	assert.Equal(t, `sky  nothing begins with "ox"`, seen("'ox'"))
}

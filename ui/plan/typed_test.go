package plan

import (
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/ui/internal/hands"
)

// A text meant for a field, typed where no text goes, is no string of commands.
func TestTextOnALineOfWordsDoesNothing(t *testing.T) {
	o := ours(t)
	p := play(t, o, "w")
	before := p.M.now
	assert.Nil(t, p.Send(hands.Key("3")))
	assert.Contains(t, p.Says(), "Not now: this line takes a word from a list; enter lists them.")
	assert.True(t, p.M.Typing(), "q and ? are letters of it, too")
	for _, key := range hands.Keys("'20 ppm NaCl' space enter") {
		assert.Nil(t, p.Send(key), "no page is opened by %s", key)
	}
	assert.Equal(t, before, p.M.now)
	assert.NotNil(t, p.M.picker, "the enter behind it opens the list, and takes nothing")
	assert.False(t, p.M.Typing())
	p.Keys("esc 3 n down n")
	assert.NotNil(t, p.M.edit, "an arrow ends it as well")
}

// A number begins no name: its digits are let go by, and enter begins the text.
func TestANumberBeginsNoName(t *testing.T) {
	o := ours(t)
	p := play(t, o, "v down '18'")
	assert.Contains(t, p.Says(), "Not now: no digit begins this line; enter, then type.")
	assert.Nil(t, p.M.edit)
	p.Keys("enter")
	assert.Equal(t, "Old Goose", p.M.edit.Text())
	p.Keys("'18' enter")
	assert.Equal(t, "18", p.M.now.rig.Vehicles[0].Name, "a vehicle may be called so")
	p = play(t, o, "v down 1 esc")
	assert.Nil(t, p.M.edit)
	assert.Equal(t, "Old Goose", p.M.now.rig.Vehicles[0].Name)
	assert.Zero(t, o.Keeper.(*book).saves-1, "only the name that was typed was kept")
}

// A minus begins a text as a digit does, so that nothing else is taken in its place.
func TestANumberBelowZeroIsRefusedAndSaid(t *testing.T) {
	p := play(t, ours(t), "down down down")
	was := p.M.now.rig.Vehicles[0].Length
	p.Keys("'-5'")
	assert.Contains(t, p.Says(), "is below zero; write it like")
	p.Keys("enter")
	assert.Contains(t, p.Says(), `Not taken: length "-5" is below zero`)
	assert.Equal(t, was, p.M.now.rig.Vehicles[0].Length)
}

// The numbers of what is there whatever is owned do not change with what is.
func TestWithoutOneIsAlwaysTheFirstOfAList(t *testing.T) {
	for section, first := range map[string]string{"softener": model.NoSoftener, "sprayer": model.ByHand} {
		options := play(t, ours(t), "").M.referred(section)
		assert.Equal(t, first, options[0].Pick, section)
		assert.True(t, options[len(options)-1].New, section)
	}
}

// A letter by itself begins no text, since those behind it may be keys: one that is no key
// says how it is typed, and changes nothing.
func TestALetterThatIsNoKeyBeginsNoText(t *testing.T) {
	const typed = "o is no key here: enter, then type."
	for line, script := range map[string]string{"a name": "down 'o'", "numbers": "down down down 'o'", "a list": "'o'", "an open list": "enter 'o'"} {
		p := play(t, ours(t), script)
		assert.Nil(t, p.M.edit, line)
		assert.Equal(t, "Old Goose", p.M.now.rig.Vehicles[0].Name, line)
		switch line {
		case "a list":
			assert.Contains(t, p.Says(), "o is no key here.", line)
		case "an open list":
			assert.NotContains(t, p.Says(), "is no key here", line)
		default:
			assert.Contains(t, p.Says(), typed, line)
		}
		assert.NotContains(t, p.Keys("esc down").Says(), "is no key here", "the next key ends it")
	}
	p := play(t, ours(t), "down")
	p.Send(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("oak wagon"), Paste: true})
	assert.Equal(t, "oak wagon", p.Keys("enter").M.now.rig.Vehicles[0].Name, "a paste is a text as a whole")
}

// What is typed on a line that has its text takes its place, and arrows change it.
func TestATextIsTypedOver(t *testing.T) {
	p := play(t, ours(t), "down enter")
	assert.Contains(t, p.Says(), "type a new one, like our coach;")
	p.Keys("'Blue Heron' enter")
	assert.Equal(t, "Blue Heron", p.M.now.rig.Vehicles[0].Name)
	p.Keys("enter backspace backspace 'x' enter")
	assert.Equal(t, "Blue Herx", p.M.now.rig.Vehicles[0].Name)
	p.Keys("u u")
	assert.Equal(t, "Old Goose", p.M.now.rig.Vehicles[0].Name)
}

// The value that is said to stay is the one that esc brings back.
func TestWhatIsSaidToStayComesBack(t *testing.T) {
	p := play(t, ours(t), "down down down enter ctrl+u '33' ' ' 'ft' ' ' '2' ' ' 'ix'")
	assert.Contains(t, p.Seen(), "40 ft 6 in stays")
	assert.Regexp(t, `length +40 ft 6 in`, p.Keys("esc").Seen())
}

// On a line of names or of a stated day the letters are keys, so the foot says what is pressed before a name is
// typed; on a line of numbers or words of a list it does not.
func TestTheFootSaysHowANameIsTyped(t *testing.T) {
	for script, foot := range map[string]string{"v down": "enter retype", "t": "enter retype", "v": "enter change", "v down down": "enter change", "v down down down": "enter change", "d": "enter retype", "d down": "enter change"} {
		o := ours(t)
		set(t, &o.Wash, map[string]string{"date": "2026-06-12"})
		p := play(t, o, script)
		assert.Contains(t, p.Seen(), foot, script)
		assert.Contains(t, p.Seen(), "W wash day", "all that was at the foot is there still")
	}
	p := play(t, ours(t), "v down enter 'Big coach' enter")
	assert.Contains(t, p.Seen(), "Big coach")
}

// After a text that was refused a new one takes its place, or it is left; it is told of each
// time, and nothing but what was right can be undone.
func TestARefusedTextIsNoTrap(t *testing.T) {
	p := play(t, ours(t), "down down down '33 yards' enter")
	was := p.M.now.rig.Vehicles[0].Length
	assert.Contains(t, p.Says(), `Not taken: length "33 yards"`)
	assert.Contains(t, p.Seen(), "0-9 type another   esc as it was   down leave it, next line   up line before")
	assert.False(t, p.M.Typing(), "q and ? are keys")
	assert.Contains(t, p.Keys("D").Says(), `"D" begins no number`)
	assert.Contains(t, p.Keys("'34'").Says(), `In place of "33 yards", which was not taken.`)
	p.Keys("enter")
	assert.Equal(t, "34 ft", p.M.now.rig.Vehicles[0].Length.Words())
	p.Keys("u")
	assert.Equal(t, was, p.M.now.rig.Vehicles[0].Length)

	hand := p.M.hand
	p.Keys("'35 yards' enter down")
	assert.Nil(t, p.M.edit)
	assert.Equal(t, hand+1, p.M.hand)
	assert.Contains(t, p.Says(), `Not taken: length "35 yards"`)
	p.Keys("up '35 yards' enter up")
	assert.Equal(t, hand-1, p.M.hand)
	assert.Equal(t, was, p.M.now.rig.Vehicles[0].Length)
	p.Keys("up r")
	assert.Equal(t, "34 ft", p.M.now.rig.Vehicles[0].Length.Words(), "the undo is still there to be done again")
}

// The name of something new is no line to leave: what is new would get a name that was not
// chosen.
func TestARefusedNameOfSomethingNewIsNotLeft(t *testing.T) {
	p := play(t, ours(t), "v n 'Old Goose' enter down tab")
	assert.NotNil(t, p.M.edit)
	p.Keys("'Tin Box' enter")
	assert.Equal(t, []string{"Old Goose", "Tin Box"}, p.M.now.names("vehicle"))
}

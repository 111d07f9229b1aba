// Package theme holds the colours and marks of the screens, each named by what
// it means. A theme is made once and handed in.
//
// The waters have the colours of what is in them: raw water that of scale on a
// tap, softened water that of the sea salt it was made with, DI water that of
// clear deep water. No colour carries a meaning alone: a letter, a mark or a word
// stands beside it.
package theme

import (
	"io"
	"os"

	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"washeve/ui/cells"
)

// Ground is what the terminal writes on.
type Ground uint8

// The two grounds.
const (
	Dark Ground = iota
	Light
)

// Ink writes text in a colour. The zero value writes plain text.
type Ink struct{ open, shut string }

// On writes text in this ink. The text is made harmless first.
func (i Ink) On(text string) string {
	text = cells.Safe(text)
	if i.open == "" || text == "" {
		return text
	}
	return i.open + text + i.shut
}

// Theme is the inks by meaning, and the marks.
type Theme struct {
	Raw, Softened, DI Ink // the three waters
	Sun               Ink
	Good, Doubt, Bad  Ink // verdicts and outlooks
	Muted             Ink // what is assumed, and help
	Accent            Ink // where the hand is
	Edge              Ink // rules and outlines
	Text, Strong      Ink
	Caret             Ink // the letter under the cursor
	Marks             Marks
	Plain             bool // no drawing characters
	Words             bool // messages name words instead of keys
}

// Options says what a theme is made for.
type Options struct {
	Ground  Ground
	Profile termenv.Profile // how many colours; termenv.Ascii for none
	Plain   bool            // no colour and no drawing characters
	Words   bool            // for a talk by words, where there are no keys to name
}

// Detect asks the terminal and the environment. NO_COLOR is honoured.
func Detect(out io.Writer, plain bool) Theme {
	renderer := lipgloss.DefaultRenderer()
	if out != os.Stdout {
		renderer = lipgloss.NewRenderer(out)
	}
	opt := Options{Profile: renderer.ColorProfile(), Plain: plain}
	if !plain && opt.Profile != termenv.Ascii && !renderer.HasDarkBackground() {
		opt.Ground = Light
	}
	return New(opt)
}

// New makes a theme.
func New(opt Options) Theme {
	if opt.Plain {
		opt.Profile = termenv.Ascii
	}
	colours := Palette(opt.Ground)
	ink := func(meaning string) Ink { return coloured(opt.Profile, colours[meaning]) }
	t := Theme{
		Raw: ink("raw"), Softened: ink("softened"), DI: ink("di"), Sun: ink("sun"),
		Good: ink("good"), Doubt: ink("doubt"), Bad: ink("bad"),
		Muted: ink("muted"), Accent: ink("accent"), Edge: ink("edge"),
		Strong: styled(opt.Profile, termenv.BoldSeq), Caret: styled(opt.Profile, termenv.ReverseSeq),
		Marks: drawn(), Plain: opt.Plain, Words: opt.Words,
	}
	if opt.Plain {
		t.Marks = ascii()
	}
	return t
}

// Key is what a message calls a key: by its name on the screens, and by words the word
// that stands for it.
func (t Theme) Key(name, word string) string {
	if t.Words {
		return word
	}
	return name
}

// YesOrNo is how a question says what it takes for an answer.
func (t Theme) YesOrNo() string { return t.Key("y or n", "yes or no") }

// coloured limits itself to the 256 colours whose contrast is known; it also
// keeps what is sent per key small.
func coloured(profile termenv.Profile, number string) Ink {
	if profile == termenv.TrueColor {
		profile = termenv.ANSI256
	}
	colour := profile.Color(number)
	if profile == termenv.Ascii || colour == nil {
		return Ink{}
	}
	return styled(profile, colour.Sequence(false))
}

func styled(profile termenv.Profile, sequence string) Ink {
	if profile == termenv.Ascii || sequence == "" {
		return Ink{}
	}
	return Ink{open: termenv.CSI + sequence + "m", shut: termenv.CSI + "m"}
}

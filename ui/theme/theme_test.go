package theme_test

import (
	"bytes"
	"fmt"
	"math"
	"reflect"
	"strconv"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/theme"
)

// grounds are the backgrounds that each palette must be read on.
var grounds = map[theme.Ground][][3]float64{
	theme.Dark:  {{0, 0, 0}, {30, 30, 30}, {0, 43, 54}},
	theme.Light: {{255, 255, 255}, {250, 244, 230}},
}

// Text needs 4.5:1, lines 3:1 (PUBLISHED: W3C, Web Content Accessibility
// Guidelines 2.1, success criteria 1.4.3 and 1.4.11).
func TestContrast(t *testing.T) {
	for ground, backs := range grounds {
		for meaning, number := range theme.Palette(ground) {
			least := 4.5
			if meaning == "edge" {
				least = 3
			}
			for _, back := range backs {
				got := contrast(rgb(t, number), back)
				assert.GreaterOrEqual(t, got, least, "%s (%s) on %v", meaning, number, back)
			}
		}
	}
}

// Colours that stand beside each other must stay apart for common forms of
// colour blindness: 17 in CIE Lab is some seven times what is just seen. The
// nearest are bad and di on a light ground at 17.4; no other red of the 256 has
// the contrast and is as far.
func TestApartForEveryEye(t *testing.T) {
	for ground := range grounds {
		p := theme.Palette(ground)
		for _, group := range [][]string{
			{"raw", "softened", "di"}, // on a face, in a tank
			{"good", "doubt", "bad"},  // before a verdict
			{"di", "bad"},             // the outlet curve and its limit
			{"sun", "muted"},          // on the day strip
			{"bad", "accent"},         // a log entry that does not fit, and the hand
		} {
			for i, a := range group {
				for _, b := range group[:i] {
					for eye, matrix := range eyes {
						d := distance(lab(rgb(t, p[a]), matrix), lab(rgb(t, p[b]), matrix))
						assert.Greater(t, d, 17.0, "%s and %s, %s, ground %d", a, b, eye, ground)
					}
				}
			}
		}
	}
}

// PUBLISHED: Machado, Oliveira and Fernandes, IEEE Trans. Visualization and
// Computer Graphics 15 (2009) 1291, severity 1, on linear RGB; and Viénot, Brettel
// and Mollon, Color Research and Application 24 (1999) 243. MEMORY.
var eyes = map[string][3][3]float64{
	"all cones":            {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
	"protanopia":           {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}},
	"deuteranopia":         {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}},
	"protanopia, Viénot":   {{0.11238, 0.88762, 0}, {0.11238, 0.88762, 0}, {0.00401, -0.00401, 1}},
	"deuteranopia, Viénot": {{0.29275, 0.70725, 0}, {0.29275, 0.70725, 0}, {-0.02234, 0.02234, 1}},
	"tritanopia":           {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}},
}

// rgb is a colour of the 256: a cube of six levels, and greys.
func rgb(t *testing.T, number string) [3]float64 {
	n, err := strconv.Atoi(number)
	require.NoError(t, err)
	require.GreaterOrEqual(t, n, 16, "the first 16 look different on every terminal")
	if n >= 232 {
		v := float64(8 + 10*(n-232))
		return [3]float64{v, v, v}
	}
	levels := []float64{0, 95, 135, 175, 215, 255}
	n -= 16
	return [3]float64{levels[n/36], levels[n/6%6], levels[n%6]}
}

func linear(c [3]float64) [3]float64 {
	for i, v := range c {
		if v /= 255; v <= 0.04045 {
			c[i] = v / 12.92
		} else {
			c[i] = math.Pow((v+0.055)/1.055, 2.4)
		}
	}
	return c
}

func contrast(a, b [3]float64) float64 {
	luminance := func(c [3]float64) float64 {
		l := linear(c)
		return 0.2126*l[0] + 0.7152*l[1] + 0.0722*l[2] + 0.05
	}
	x, y := luminance(a), luminance(b)
	return math.Max(x, y) / math.Min(x, y)
}

func times(m [3][3]float64, v [3]float64) [3]float64 {
	var out [3]float64
	for i := range m {
		out[i] = math.Min(math.Max(m[i][0]*v[0]+m[i][1]*v[1]+m[i][2]*v[2], 0), 1)
	}
	return out
}

func lab(c [3]float64, eye [3][3]float64) [3]float64 {
	l := times(eye, linear(c))
	x := (0.4124*l[0] + 0.3576*l[1] + 0.1805*l[2]) / 0.95047
	y := 0.2126*l[0] + 0.7152*l[1] + 0.0722*l[2]
	z := (0.0193*l[0] + 0.1192*l[1] + 0.9505*l[2]) / 1.08883
	f := func(v float64) float64 {
		if v > 0.008856 {
			return math.Cbrt(v)
		}
		return 7.787*v + 16.0/116
	}
	return [3]float64{116*f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))}
}

func distance(a, b [3]float64) float64 {
	return math.Sqrt(math.Pow(a[0]-b[0], 2) + math.Pow(a[1]-b[1], 2) + math.Pow(a[2]-b[2], 2))
}

// PUBLISHED: black on white is 21:1 and the grey 767676 the darkest that just
// passes (W3C, Understanding 1.4.3); red of sRGB in CIE Lab under D65 is 53.24,
// 80.09, 67.20 (MEMORY).
func TestTheMeasuresAreRight(t *testing.T) {
	assert.InDelta(t, 21, contrast([3]float64{}, [3]float64{255, 255, 255}), 1e-9)
	assert.InDelta(t, 4.54, contrast([3]float64{0x76, 0x76, 0x76}, [3]float64{255, 255, 255}), 0.005)
	red := lab([3]float64{255, 0, 0}, eyes["all cones"])
	for i, want := range []float64{53.24, 80.09, 67.20} {
		assert.InDelta(t, want, red[i], 0.05)
	}
	for eye, m := range eyes {
		for _, row := range m {
			assert.InDelta(t, 1, row[0]+row[1]+row[2], 2e-5, "white stays white: %s", eye)
		}
	}
}

func TestNoColourSendsNoCodes(t *testing.T) {
	for _, o := range []theme.Options{{Profile: termenv.Ascii}, {Profile: termenv.TrueColor, Plain: true}} {
		th := theme.New(o)
		for _, ink := range []theme.Ink{th.Raw, th.Bad, th.Strong, th.Caret, th.Edge} {
			assert.Equal(t, "words", ink.On("words"))
		}
	}
}

func TestPlainMarksAreASCII(t *testing.T) {
	marks := reflect.ValueOf(theme.New(theme.Options{Plain: true}).Marks)
	for i := range marks.NumField() {
		for _, r := range marks.Field(i).String() {
			assert.Less(t, r, rune(0x7f), marks.Type().Field(i).Name)
		}
	}
}

func TestInkMakesHarmless(t *testing.T) {
	th := theme.New(theme.Options{Profile: termenv.ANSI256})
	assert.Equal(t, "\x1b[38;5;210m"+`\x1b[2J`+"\x1b[m", th.Bad.On("\x1b[2J"))
	assert.Equal(t, `\x1b`, th.Text.On("\x1b"))
}

func TestDetectOnAFileIsWithoutColour(t *testing.T) {
	th := theme.Detect(&bytes.Buffer{}, false)
	assert.Equal(t, "x", th.Bad.On("x"))
	assert.False(t, th.Plain)
	assert.True(t, theme.Detect(&bytes.Buffer{}, true).Plain)
}

func TestTwoThemesDoNotMeet(t *testing.T) {
	dark := theme.New(theme.Options{Profile: termenv.ANSI256})
	light := theme.New(theme.Options{Profile: termenv.TrueColor, Ground: theme.Light})
	assert.NotEqual(t, fmt.Sprint(dark.DI), fmt.Sprint(light.DI))
}

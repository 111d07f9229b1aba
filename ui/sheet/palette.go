package sheet

import (
	"fmt"
	"strings"
)

// colours are those of one ground, by what they mean. The waters keep the
// colours that the screens give them: scale on a tap, sea salt, clear deep water.
type colours struct {
	Paper, Panel       string // what is written on
	Ink, Muted         string // text, and small text
	Line               string // rules, and the edges of boxes
	Raw, Softened, DI  string
	Good, Doubt, Wrong string // verdicts: under text of the paper's colour, and on paper
}

func onLight() colours {
	return colours{
		Paper: "#fdfcf7", Panel: "#f0eee4", Ink: "#18211f", Muted: "#48534e", Line: "#5e6963",
		Raw: "#7d5500", Softened: "#5f00af", DI: "#005a80", Good: "#0a5a3a", Doubt: "#754c00", Wrong: "#a3003c",
	}
}

func onDark() colours {
	return colours{
		Paper: "#11181a", Panel: "#1e282b", Ink: "#f0f4f1", Muted: "#b8c4be", Line: "#93a09a",
		Raw: "#ffb866", Softened: "#d9a8ff", DI: "#62dada", Good: "#80dfb0", Doubt: "#ffd75f", Wrong: "#ff9d9d",
	}
}

// onPrint is for paper, whatever the screen was.
func onPrint() colours {
	return colours{
		Paper: "#ffffff", Panel: "#ffffff", Ink: "#000000", Muted: "#2b2b2b", Line: "#4a4a4a",
		Raw: "#6b4900", Softened: "#4b0089", DI: "#004a69", Good: "#00472c", Doubt: "#5c3c00", Wrong: "#85002f",
	}
}

// named lists the colours by the names that the stylesheet uses.
func (c colours) named() [][2]string {
	return [][2]string{
		{"paper", c.Paper}, {"panel", c.Panel}, {"ink", c.Ink}, {"muted", c.Muted}, {"line", c.Line},
		{"raw", c.Raw}, {"softened", c.Softened}, {"di", c.DI}, {"good", c.Good}, {"doubt", c.Doubt}, {"wrong", c.Wrong},
	}
}

// css writes the colours for :root.
func (c colours) css() string {
	var b strings.Builder
	b.WriteString(":root {")
	for _, n := range c.named() {
		fmt.Fprintf(&b, " --%s: %s;", n[0], n[1])
	}
	b.WriteString(" }\n")
	return b.String()
}

// palette is the head of the stylesheet.
func palette() string {
	return onLight().css() +
		"@media (prefers-color-scheme: dark) { " + onDark().css() + "}\n" +
		"@media print { " + onPrint().css() + "}\n"
}

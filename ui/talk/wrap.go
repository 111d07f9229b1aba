package talk

import (
	"io"
	"strings"

	"washeve/ui/cells"
)

// Wrapped is a terminal on which long lines are broken at words. Width is that of the
// terminal as it is now, in cells; 0 where it is not known, and then lines stay whole.
func Wrapped(out io.Writer, width func() int) io.Writer { return wrapped{out, width} }

type wrapped struct {
	out   io.Writer
	width func() int
}

func (w wrapped) Write(p []byte) (int, error) {
	width, lines := w.width(), strings.Split(string(p), "\n")
	for i, line := range lines {
		if width > 0 && cells.Width(line) > width {
			lines[i] = broken(line, width)
		}
	}
	if _, err := io.WriteString(w.out, strings.Join(lines, "\n")); err != nil {
		return 0, err
	}
	return len(p), nil
}

// broken is a line as several, each as far in as the first. The blank behind a question
// stays.
func broken(line string, width int) string {
	const least = 20 // the room that words need beside what they are in by
	text := strings.TrimLeft(line, " ")
	in := line[:len(line)-len(text)]
	if width-len(in) < least {
		in = ""
	}
	bare := strings.TrimRight(text, " ")
	whole := strings.ReplaceAll(bare, " %", "\u00a0%")
	return in + strings.Join(cells.Wrap(whole, width-len(in)), "\n"+in) + text[len(bare):]
}

package talk

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"time"

	"washeve/ui/cells"
)

// longest is how many bytes a line may have.
const longest = 64 << 10

// line is what was typed, or its beginning where it is longer than any line may be.
type line struct {
	text    string
	tooLong bool
}

// linesOf reads lines beside the talk, so that an alarm can be heard meanwhile. It ends
// with the input, or when done is closed.
func linesOf(in io.Reader, done <-chan struct{}) <-chan line {
	lines := make(chan line)
	go func() {
		defer close(lines)
		for r := bufio.NewReaderSize(in, longest); ; {
			l, err := nextLine(r)
			if err != nil {
				return
			}
			select {
			case lines <- l:
			case <-done:
				return
			}
		}
	}()
	return lines
}

// nextLine reads a line to its end, however long.
func nextLine(r *bufio.Reader) (line, error) {
	text, goesOn, err := r.ReadLine()
	l := line{text: string(text), tooLong: goesOn}
	for goesOn && err == nil {
		_, goesOn, err = r.ReadLine()
	}
	return l, err
}

func (t *talk) say(lines ...string) {
	for _, line := range lines {
		if t.err == nil && strings.TrimSpace(line) != "" {
			_, t.err = fmt.Fprintln(t.out, strings.TrimRight(cells.Safe(line), " "))
		}
	}
}

// ask puts a question, and gives false where the input or the program has ended.
func (t *talk) ask(question string) (string, bool) {
	for t.err == nil {
		if _, t.err = fmt.Fprint(t.out, cells.Safe(question)+": "); t.err != nil {
			break
		}
		alarm, sounds := t.alarm()
		select {
		case <-t.stop:
			_, _ = fmt.Fprintln(t.out) // the terminal may be gone, and the work is to be kept all the same
			return "", false
		case line, more := <-t.lines:
			if line.tooLong {
				t.say("", fmt.Sprintf("That line is not read: it has more than %d letters. Say it shorter.", longest))
				continue
			}
			return strings.Join(strings.Fields(line.text), " "), more
		case <-sounds:
			_, t.err = fmt.Fprintln(t.out)
			t.tell(alarm.Sends)
			t.say(t.page().Said)
		}
	}
	return "", false
}

// alarm is the page's own, and when it sounds: never, where it has none.
func (t *talk) alarm() (*Alarm, <-chan time.Time) {
	a := t.page().Alarm
	if a == nil {
		return nil, nil
	}
	return a, time.After(a.After)
}

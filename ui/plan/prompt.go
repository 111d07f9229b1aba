package plan

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/quantity"
	"washeve/ui/cells"
	"washeve/ui/keys"
	"washeve/ui/report"
	"washeve/ui/washday"
)

// Prompt walks through the wash one line at a time, for screen readers and for
// terminals that cannot draw: every question is a line, and so is every answer.
// It ends with the input, or with q.
func Prompt(o Options, in io.Reader, out io.Writer) error {
	p := &prompt{m: New(o), lines: bufio.NewScanner(in), out: out}
	p.say(p.m.status)
	p.answer()
	for p.err == nil {
		line, more := p.ask("v vehicle, b bed, w water, g gear, t stages, d day, p place, f plan, W do the wash, y why, u undo, a adopt, e empty, q quit")
		if !more || line == "q" {
			break
		}
		p.choose(line)
	}
	if err := p.m.Leave(); err != nil {
		return fmt.Errorf("not all is kept: %w", err)
	}
	return p.err
}

// prompt is the walk as it stands.
type prompt struct {
	m     Model
	lines *bufio.Scanner
	out   io.Writer
	err   error // of writing
}

func (p *prompt) say(lines ...string) {
	for _, line := range lines {
		if line == "" || p.err != nil {
			continue
		}
		_, p.err = fmt.Fprintln(p.out, cells.Safe(line))
	}
}

// ask puts a question, and gives false where the input has ended.
func (p *prompt) ask(question string) (string, bool) {
	if p.err == nil {
		_, p.err = fmt.Fprint(p.out, cells.Safe(question)+": ")
	}
	if p.err != nil || !p.lines.Scan() {
		return "", false
	}
	return strings.TrimSpace(p.lines.Text()), true
}

func (p *prompt) choose(line string) {
	p.m.status = ""
	switch line {
	case "p":
		p.field(ref{section: "wash", key: "place"})
	case "f":
		p.say(p.m.fullLines(80)...)
		return
	case "y":
		p.say(p.m.whyLines(80)...)
		return
	case "W":
		p.doWash()
		return
	case "u":
		if p.m.history.NoUndo() == "" {
			p.m = p.m.undone()
		}
	case "a":
		p.m = p.m.adopt()
	case "e":
		p.m = p.m.startFresh()
	default:
		if !p.step(line) {
			p.say("There is no " + line + " here.")
			return
		}
	}
	p.say(p.m.status)
	p.answer()
}

// doWash does the wash, or goes on with one that was left.
func (p *prompt) doWash() {
	b, bound := keys.Find(p.m.seeKeys(), tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("W")})
	if !bound || b.Blocked != "" {
		p.say("Not now: " + b.Blocked + ".")
		return
	}
	if err := washday.Talk(washday.Open(p.m.washDay()), p.ask, p.say); err != nil {
		p.say(err.Error())
	}
	p.m = p.m.replan(p.m.now)
	p.answer()
}

// step asks for the fields of a step, one after the other.
func (p *prompt) step(letter string) bool {
	for i, s := range steps() {
		if s.letter != letter {
			continue
		}
		p.m = p.m.opened(i)
		p.say(s.name + ". Enter keeps a value, - takes it away, . ends the step.")
		for _, row := range p.m.rows() {
			if !row.isField() {
				p.say(row.heading)
			} else if !p.field(row.at) {
				return true
			}
		}
		return true
	}
	return false
}

// field asks until the answer is right, and gives false where the step ends.
func (p *prompt) field(r ref) bool {
	for {
		if _, ok := p.m.now.field(r); !ok {
			return true
		}
		line, more := p.ask(p.question(r))
		switch {
		case !more || line == ".":
			return false
		case line == "":
			return true
		case line == "-":
			line = ""
		}
		w, err := p.m.with(r, line)
		if err == nil {
			p.m = p.m.commit(w)
			return true
		}
		p.say(err.Error())
	}
}

// question names a field, what is in force, and what can be answered.
func (p *prompt) question(r ref) string {
	f, _ := p.m.now.field(r)
	value := f.Text()
	if value == "" {
		value, _ = p.m.assumed(r, f)
	}
	words := f.Label
	switch {
	case len(f.Choices) > 0:
		words += " (" + strings.Join(f.Choices, ", ") + ")"
	case f.Refers != "":
		words += " (" + strings.Join(p.m.now.names(f.Refers), ", ") + ")"
	}
	if value == "" && f.Required {
		return words + ", needed, like " + f.Example
	}
	return words + " [" + value + "]"
}

// answer says the plan in a few lines.
func (p *prompt) answer() {
	if !p.m.planned {
		words := make([]string, len(p.m.lacks))
		for i, r := range p.m.lacks {
			f, _ := p.m.now.field(r)
			words[i] = r.section + " " + f.Label
		}
		p.say("No plan yet. It needs: " + strings.Join(words, ", ") + ".")
		return
	}
	plan := p.m.plan
	p.say(report.Heading(plan), report.Verdict(plan.Verdict)+", chance "+report.Chance(plan.Bed.ChanceLasts)+".",
		"DI water "+quantity.Show(plan.DI.Volume, p.m.sys)+" in "+report.Time(plan.DI.Duration)+".",
		"Flow cap "+quantity.Show(plan.Cap.Flow, p.m.sys)+", bound by "+report.Bound(plan.Cap.BoundBy)+"; "+report.Jug(plan, p.m.sys)+".")
	if plan.Day != nil {
		p.say(report.DayStart(plan.Day) + ".")
	}
}

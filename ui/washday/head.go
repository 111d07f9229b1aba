package washday

import (
	"fmt"
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
	"washeve/ui/cells"
	"washeve/ui/layout"
	"washeve/ui/picture"
	"washeve/ui/theme"
)

// headLines are what is read from two steps away: what to do, which face, and the
// time. What does not fit large is written plainly.
func (m Model) headLines(at layout.Rect) []string {
	what, face, clock := m.headWords()
	ink := m.inkOf(m.step().Water)
	share := at.H / 2
	var lines []string
	if large, ok := picture.Letters(m.th, what, ink, at.W-2, share); ok {
		lines = append(append(lines, large...), "")
	} else {
		lines = append(lines, ink.On(strings.ToUpper(cells.Clip(cells.Safe(what), at.W, m.th.Marks.More))), "")
	}
	timeInk := m.timeInk()
	height := at.H - len(lines)
	left, leftOK := picture.Letters(m.th, face, m.th.Strong, at.W/2-2, height)
	right, rightOK := picture.Letters(m.th, clock, timeInk, at.W/2-2, height)
	if !leftOK || !rightOK {
		if right, rightOK = picture.Letters(m.th, clock, timeInk, at.W-2, height-1); rightOK {
			return append(append(lines, m.th.Strong.On(strings.ToUpper(cells.Safe(face)))), right...)
		}
		return append(lines, strings.TrimSpace(m.th.Strong.On(strings.ToUpper(cells.Safe(face)))+"  "+timeInk.On(clock)))
	}
	for i := range max(len(left), len(right)) {
		line := ""
		if i < len(left) {
			line = left[i]
		}
		if i < len(right) {
			line += cells.Blank(at.W/2-cells.Width(line)) + right[i]
		}
		lines = append(lines, line)
	}
	return lines
}

// headWords are the words of the head.
func (m Model) headWords() (what, face, clock string) {
	s := m.step()
	what, face, clock = s.Stage, string(s.Face), m.clock()
	if _, over := m.overCap(); over {
		what = "over cap"
	}
	if s.Kind == model.Read {
		switch m.state.Gate(&m.u) {
		case washday.Go, washday.GoAlong:
			if what = "go"; m.short() {
				what = "bed short"
			}
		case washday.NoGo:
			what = "no-go"
		case washday.Cup:
			what = "first cup"
		}
		if r, read := m.state.Reading.Get(); read {
			face = quantity.Round(r.Number)
		}
	}
	if face == "" {
		face = map[bool]string{true: "on", false: "off"}[m.state.Running]
		if !s.Timed() {
			face = ""
		}
	}
	return what, face, clock
}

// clock counts down to the planned time of a step, and up beyond it.
func (m Model) clock() string {
	s := m.step()
	if !s.Timed() {
		if m.done().Spent == 0 {
			return ""
		}
		return minutes(washday.Seconds(m.done().Spent))
	}
	left := washday.Seconds(s.Duration.Or(0)) - washday.Seconds(m.done().Spent)
	if left < 0 {
		return "+" + minutes(-left)
	}
	return minutes(left)
}

func minutes(d time.Duration) string {
	total := int(d.Seconds())
	if total >= 3600 {
		return fmt.Sprintf("%d:%02d:%02d", total/3600, total/60%60, total%60)
	}
	return fmt.Sprintf("%d:%02d", total/60, total%60)
}

func (m Model) timeInk() theme.Ink {
	s := m.step()
	switch {
	case s.Timed() && m.done().Spent >= s.Duration.Or(0):
		return m.th.Doubt
	case m.state.Running:
		return m.th.Accent
	}
	return m.th.Muted
}

func (m Model) inkOf(w model.Water) theme.Ink {
	switch w {
	case model.DI:
		return m.th.DI
	case model.Softened:
		return m.th.Softened
	case model.Raw:
		return m.th.Raw
	}
	return m.th.Strong
}

package day

import (
	"fmt"
	"strings"

	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/ui/layout"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// Spoken is the screen in words.
func (m Model) Spoken() talk.Page {
	p := talk.Page{Title: m.Title(), Like: "start 7:30, later or face left", Said: m.status, Tell: m.told, After: m.startTold, Things: m.things, Numbers: m.numbers}
	if m.edit != nil {
		f := fieldOf(&m.now, m.editAt)
		p.Asks = &talk.Question{Ask: f.Label, Like: f.Example, Edit: m.edit}
		return p
	}
	p.Words = []talk.Word{
		{Say: "start", Does: typeStart, Takes: "7:30", Like: "start 7:30", Help: "the hour to begin at"},
		{Say: "earlier", Does: earlier},
		{Say: "later", Does: later},
		{Say: "hour earlier", Does: hourBefore, Help: "begin an hour earlier"},
		{Say: "hour later", Does: hourAfter, Help: "begin an hour later"},
		{Say: "recommended", Does: recommend, Help: "take the recommended start"},
		{Say: "open", Does: open},
		{Say: "heading", Does: typeNose, Takes: "north-east", Like: "heading north-east", Help: "where the nose points, as a word or in degrees"},
		{Say: "turn left", Does: turnLeft},
		{Say: "turn right", Does: turnRight},
		{Say: "hours", Help: "hour by hour, how long each face stays wet, and where the sun is", Lines: m.hours},
	}
	if d := m.day(); d != nil {
		for i, f := range d.Start.Turns {
			p.Words = append(p.Words, talk.Word{
				Say: "face " + string(f.Side), Help: "how the " + string(f.Side) + " dries, now and hour by hour",
				Lines: func() []string { return append([]string{m.turnTold(i)}, m.faceHours(f)...) },
			})
		}
	}
	return p
}

// told is the day as the screen shows it.
func (m Model) told() []string {
	d := m.day()
	if d == nil {
		return m.lackLines(layout.Rect{W: talk.Unwrapped, H: talk.Unwrapped})
	}
	lines := []string{report.Heading(m.plan) + "; " + report.SunHours(d.Sun) + ".", m.weatherLine(talk.Unwrapped)}
	lines = append(lines, m.startTold()...)
	if words := report.DayWindows(d); words != "" {
		lines = append(lines, "Easy hours: "+words+".")
	}
	return append(lines, mindText(d, m.sys))
}

// startTold is what the start brings: when it ends, what spoils it, and each face.
func (m Model) startTold() []string {
	d := m.day()
	if d == nil {
		return nil
	}
	lines := talk.Unmarked(m.th, append(m.misplacedLines(talk.Unwrapped), m.headLines(d, talk.Unwrapped)...))
	for _, n := range m.plan.Warnings {
		if n.Code == endsWithoutSun {
			lines = append(lines, n.Text(m.sys))
		}
	}
	for i := range d.Start.Turns {
		lines = append(lines, m.turnTold(i))
	}
	if m.planErr != nil {
		lines = append(lines, "The answer is the last one that could be planned: "+m.planErr.Error())
	}
	return lines
}

// turnTold is one face in a sentence.
func (m Model) turnTold(i int) string {
	s := m.day().Start
	t := s.Turns[i]
	words := fmt.Sprintf("%d. %s, from %s: ", i+1, t.Side, report.ClockAfter(t.From, s.At))
	if lasts, given := t.Dries.Get(); given {
		words += report.DriesIn(lasts)
	} else {
		words += "how fast it dries is not known"
	}
	if area, given := t.Section.Get(); given {
		words += ", sections up to " + quantity.Show(area, m.sys)
	}
	if t.Hurries {
		words += ", it hurries"
	}
	if drip := m.drip(t); drip != "-" {
		words += ", drip " + drip
	}
	return words + "; " + t.Why + "."
}

// things are the faces, in the order of their turns.
func (m Model) things() []talk.Thing {
	d := m.day()
	if d == nil {
		return nil
	}
	all := make([]talk.Thing, len(d.Start.Turns))
	for i, t := range d.Start.Turns {
		_, text, _ := strings.Cut(m.turnTold(i), ", ")
		all[i] = talk.Thing{Name: string(t.Side), Text: text, On: func() screen.Screen { return m }}
	}
	return all
}

// hours tells all faces at every full hour with light.
func (m Model) hours() []string {
	return m.eachHour(func(s drying.Moment) string {
		words := make([]string, len(s.Faces))
		for i, f := range s.Faces {
			words[i] = string(f.Side) + " " + faceWords(f)
		}
		return strings.Join(words, ", ")
	})
}

// faceHours tells one face at every full hour with light.
func (m Model) faceHours(t drying.Turn) []string {
	return m.eachHour(func(s drying.Moment) string {
		for _, f := range s.Faces {
			if f.Side == t.Side {
				return faceWords(f)
			}
		}
		return "not known"
	})
}

func (m Model) eachHour(says func(drying.Moment) string) []string {
	d := m.day()
	if d == nil {
		return m.told()
	}
	var lines []string
	for _, s := range d.Steps {
		if s.FullHour && s.Light {
			lines = append(lines, s.Label+": "+says(s)+".")
		}
	}
	return lines
}

// faceWords is a face at one moment.
func faceWords(f drying.FaceMoment) string {
	light := "in shade"
	switch {
	case !f.Known:
		light = "sun or shade not known"
	case f.Sunlit:
		light = "in the sun"
	}
	lasts, given := f.Dries.Get()
	if !given {
		return light
	}
	words := report.DriesIn(lasts) + " " + light
	if f.Hurries {
		words += ", hurries"
	}
	return words
}

func (m Model) numbers() []talk.Number { return talk.Reasons(m.th, m.sys, m.plan.Reasons) }

var _ talk.Speaker = Model{}

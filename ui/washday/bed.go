package washday

import (
	"fmt"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/report"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

// lookAtBed asks the planner what the bed still gives, by the log as it stands and
// the flow of the DI water to come, and keeps the answer.
func (m Model) lookAtBed() Model {
	if m.err != nil || m.state.Over {
		return m
	}
	tally := m.state.Tally()
	ran := quantity.Volume(0)
	if m.o.Rehearsal {
		ran = tally.DI
	} else if s := m.step(); s != nil && s.Water == model.DI {
		ran = m.done().Used // of the step at hand, which is not in the log yet
	}
	plan, err := m.o.Rest(m.o.Rig, m.o.Places, m.o.Wash, ran, m.state.ToRun(), m.flowToCome())
	if err != nil {
		return m.warn("The bed could not be looked at: " + err.Error())
	}
	before := m.u.Outlook.SoFar
	m.u.Outlook = outlookOf(plan, tally.DI)
	m.u.Outlook.SoFar = before
	m.odd = m.overLimit() && plan.Bed.OutletNow.P90 <= plan.Limit.Number
	return m.catchUp()
}

// overLimit tells whether the last reading at this step is over the limit.
func (m Model) overLimit() bool {
	s := m.state
	s.Accepted = false
	return s.Gate(&m.u) == washday.NoGo
}

// flowToCome is the flow of the DI water that is still to run.
func (m Model) flowToCome() quantity.Flow {
	for i := m.state.At; i < len(m.state.Steps); i++ {
		if s := &m.state.Steps[i]; s.Water == model.DI && s.Flow.Given() {
			return s.Flow.Or(0)
		}
	}
	return m.u.Plan.PlannedFlow.Or(0)
}

// listWays works the ways out of a no-go out, and offers them.
func (m Model) listWays() Model {
	short, err := m.o.Ways(m.o.Rig, m.o.Places, m.o.Wash)
	if err != nil {
		return m.warn("NO-GO. The ways out could not be worked out: " + err.Error())
	}
	m.ways, m.noWays = nil, nil
	var options []form.Option
	for _, w := range short.Ways {
		switch {
		case w.Code == planner.WayBuy:
			continue
		case w.Not.Code != "":
			m.noWays = append(m.noWays, w.Name+": "+w.Not.Text(m.sys))
			continue
		case w.Code == planner.WayResin:
			w.Name = "change the resin now"
			w.Does.Format = strings.Replace(w.Does.Format, "before the wash", "now, step by step, then flush and read again", 1)
		}
		m.ways = append(m.ways, w)
		options = append(options, form.Option{Text: w.Name, Note: m.wayNote(w), Pick: w.Code})
	}
	if w, err := m.softened(); err == nil {
		m.ways = append(m.ways, w)
		options = append(options, form.Option{Text: w.Name, Note: m.wayNote(w), Pick: w.Code})
	}
	title := "Ways out, with the chance that the bed lasts:"
	if m.state.Exceeds(&m.u) {
		title = "NO-GO: the pen is over the limit. " + title
	}
	p := form.Open(title, options, "")
	m.picker = &p
	return m
}

// wayLines lists the ways, what the one under the hand is, and what is none and why.
func (m Model) wayLines(width, height int) []string {
	lines := append(m.picker.Lines(m.th, width, min(len(m.ways)+1, height)), "")
	add := func(ink theme.Ink, text string) { lines = append(lines, m.wrapped(ink, text, width)...) }
	if w := m.wayOf(m.picker.At); w != nil {
		add(m.th.Text, m.wayWords(w))
	}
	if len(m.noWays) > 0 {
		lines = append(lines, "")
		add(m.th.Muted, "No way out here:")
	}
	for _, why := range m.noWays {
		add(m.th.Muted, m.th.Marks.Dot+" "+why)
	}
	return lines
}

func (m Model) wayOf(i int) *planner.WayOut {
	if i < 0 || i >= len(m.ways) {
		return nil
	}
	return &m.ways[i]
}

// wayWords is a way with what it takes.
func (m Model) wayWords(w *planner.WayOut) string {
	words := w.Name
	if does := w.Does.Text(m.sys); does != "" {
		words += ": " + does
	}
	if lost := w.Lost.Text(m.sys); lost != "" {
		words += ". It costs " + lost
	}
	words += fmt.Sprintf(". DI water %s in %s, other water %s", m.gallons(w.DI.Volume), report.Time(w.DI.Duration), m.gallons(w.Softened.Volume))
	if w.Towels > 0 {
		words += fmt.Sprintf(", %s to dry by towel in about %s", quantity.Show(w.Towels, m.sys), report.Time(w.Towel))
	}
	return words + "."
}

func (m Model) wayNote(w planner.WayOut) string {
	note := fmt.Sprintf("DI %s, %s, chance %s", quantity.Show(w.DI.Volume, m.sys), report.Time(w.DI.Duration), report.Percent(w.Chance))
	if w.DI.Volume <= 0 {
		note = "no DI water"
	}
	if w.Towels > 0 {
		note += ", towels " + report.Time(w.Towel)
	}
	return note
}

// softened is the way without any DI water.
func (m Model) softened() (planner.WayOut, error) {
	wash := m.o.Wash
	wash.DIFaces, wash.TowelFaces = nil, model.Sides()
	p, err := m.o.Make(m.o.Rig, m.o.Places, wash)
	if err != nil {
		return planner.WayOut{}, err
	}
	area := quantity.Area(0)
	for _, f := range p.Faces {
		if f.Spots == planner.Towel {
			area += f.Area
		}
	}
	name := "softened water and a towel"
	if m.u.Plan.Softener == "" {
		name = "the water as it is and a towel"
	}
	return planner.WayOut{
		Code: washday.WaySoftened, Name: name, Wash: &wash,
		Does: planner.Note{Code: washday.WaySoftened, Format: "the bed is bypassed from here on, and each face is dried by hand before it spots"}, DI: p.DI, Softened: p.Soft,
		Chance: 1, Verdict: p.Verdict, Towels: area, Towel: quantity.Duration(area / quantity.Area(planner.TowelRate)),
	}, nil
}

func (m Model) pick(does keys.Action, msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	p := *m.picker
	switch does {
	case up:
		p = p.Move(-1)
	case down:
		p = p.Move(1)
	case abandon:
		m.picker = nil
		return m, nil
	case accept:
		if o, ok := p.Chosen(); ok {
			return m.takeWay(o.Pick)
		}
	case number:
		if o, ok := p.Numbered(msg.String()); ok {
			return m.takeWay(o.Pick)
		}
		return m.warn(fmt.Sprintf("There are %d ways.", len(m.ways))), nil
	}
	m.picker = &p
	return m, nil
}

// takeWay puts a way out in force: the steps that follow become those of its plan.
func (m Model) takeWay(code string) (screen.Screen, tea.Cmd) {
	m.picker = nil
	for _, w := range m.ways {
		if w.Code != code {
			continue
		}
		if w.Wash != nil {
			m.o.Wash = *w.Wash
		}
		plan, err := m.o.Make(m.o.Rig, m.o.Places, m.o.Wash)
		if err != nil {
			return m.warn(err.Error()), nil
		}
		m.u = washday.Replaced(m.u, m.state, plan, code)
		m = m.do(model.Deed{Does: model.TakeWay, Way: code}).lookAtBed().say("Taken: " + w.Name + ".")
		if washday.ChangesResin(code) {
			return m.changeResin()
		}
		return m, nil
	}
	return m, nil
}

// changeResin opens the guided change; the wash waits where it is.
func (m Model) changeResin() (screen.Screen, tea.Cmd) {
	if m.o.Refill == nil || m.o.Rehearsal {
		return m.say("Change the resin now, flush, and read again."), nil
	}
	page := m.o.Refill(m.o.Desk)
	return m, func() tea.Msg { return screen.Go{To: page} }
}

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

// wayOut is one way out of a short bed, for what is left of the wash.
type wayOut struct {
	code, name string
	does, lost planner.Note
	wash       model.Wash
	plan       planner.Plan
	left       washday.Tally // that it still runs
	minutes    quantity.Duration
	chance     quantity.Fraction // that the bed lasts to the end
	towels     quantity.Area
}

// listWays works the ways out of a short bed out, and offers them.
func (m Model) listWays() Model {
	short, err := m.o.Ways(m.o.Rig, m.o.Places, m.washNow())
	if err != nil {
		return m.warn("The ways out could not be worked out: " + err.Error())
	}
	m.ways, m.noWays = nil, nil
	for _, w := range short.Ways {
		switch {
		case w.Code == planner.WayBuy, w.Code == planner.WayTwoFills:
		case w.Not.Code != "":
			m.noWays = append(m.noWays, w.Name+": "+w.Not.Text(m.sys))
		default:
			m = m.offerWay(w)
		}
	}
	towels := m.washNow()
	towels.DIFaces, towels.TowelFaces = nil, model.Sides()
	name := "softened water and a towel"
	if !m.softens() {
		name = "the water as it is and a towel"
	}
	m = m.offerWay(planner.WayOut{Code: washday.WaySoftened, Name: name, Wash: &towels, Does: planner.Note{
		Code: washday.WaySoftened, Format: "the bed is bypassed from here on, and each face is dried by hand before it spots",
	}})
	m = m.offerReading()
	var options []form.Option
	for i := range m.ways {
		options = append(options, form.Option{Text: m.ways[i].name, Note: m.wayNote(&m.ways[i]), Pick: m.ways[i].code})
	}
	title := "Ways out for what is left, and the chance that the bed lasts:"
	if m.state.Exceeds(&m.u) {
		title = "NO-GO. " + title
	}
	p := form.Open(title, options, "")
	m.picker = &p
	return m
}

// washNow is the wash with the DI water at the flow that was measured, where that is
// less than planned.
func (m Model) washNow() model.Wash {
	w := m.o.Wash
	if f := m.flowToCome(); f > 0 && f < m.u.Plan.PlannedFlow.Or(0) {
		w.DIFlow = washday.Loggable(f)
	}
	return w
}

// offerWay adds a way that can be taken.
func (m Model) offerWay(w planner.WayOut) Model {
	way := wayOut{code: w.Code, name: w.Name, does: w.Does, lost: w.Lost, wash: m.washNow(), chance: w.Chance}
	if w.Wash != nil {
		way.wash = *w.Wash
	}
	planned := m.o.Make
	if washday.ChangesResin(way.code) {
		planned = m.o.Fresh
	}
	var err error
	if way.plan, err = planned(m.o.Rig, m.o.Places, way.wash); err != nil {
		return m
	}
	then := m.taking(&way)
	way.left, way.minutes, way.towels = then.state.ToRun(), then.timeToRun(), max(then.towelsLeft(way.plan), w.Towels)
	switch {
	case way.code == planner.WayResin:
		way.name = "change the resin now"
		way.does.Format = strings.Replace(way.does.Format, "before the wash", "now, step by step, then flush and read again", 1)
	case way.left.DI <= 0:
		way.chance = 1
	default:
		rest, err := m.o.Rest(m.o.Rig, m.o.Places, way.wash, m.unlogged(), way.left.DI, then.flowToCome())
		if err != nil {
			return m
		}
		way.chance = rest.Bed.ChanceLasts
	}
	m.ways = append(m.ways[:len(m.ways):len(m.ways)], way)
	return m
}

// taking is the wash with a way taken, and nothing of it written.
func (m Model) taking(w *wayOut) Model {
	m.u = washday.Replaced(m.u, m.state, w.plan, w.code)
	d := w.deed()
	d.At = m.now
	m.u.Deeds = append(unseen(m.u.Deeds), d)
	m.state = washday.Stand(&m.u, m.now)
	return m
}

// deed is the taking of a way.
func (w *wayOut) deed() model.Deed {
	d := model.Deed{Does: model.TakeWay, Way: w.code}
	if f := washday.DIFlow(&w.plan); f > 0 {
		d.Flow = quantity.Some(f)
	}
	return d
}

// timeToRun is how long the DI water that is left runs.
func (m Model) timeToRun() quantity.Duration {
	total := quantity.Duration(0)
	for i := m.state.At; i < len(m.state.Steps); i++ {
		if s := &m.state.Steps[i]; s.Water == model.DI {
			total += max(s.Duration.Or(0)-m.state.Done[i].Spent, 0)
		}
	}
	return total
}

// towelsLeft is what a plan leaves to be dried by towel.
func (m Model) towelsLeft(p planner.Plan) quantity.Area {
	total := quantity.Area(0)
	for i := m.state.At; i < len(m.state.Steps); i++ {
		for _, f := range p.Faces {
			if s := &m.state.Steps[i]; s.Towel == model.Yes && s.Face == f.Name {
				total += f.Area
			}
		}
	}
	return total
}

// wayLines lists the ways, what the one under the hand is, and what is none and why.
func (m Model) wayLines(width, height int) []string {
	lines := append(m.picker.Lines(m.th, width, min(len(m.ways)+1, height)), "")
	add := func(ink theme.Ink, text string) { lines = append(lines, m.wrapped(ink, text, width)...) }
	if m.odd {
		add(m.th.Doubt, m.oddWords())
	}
	if i := m.picker.At; i >= 0 && i < len(m.ways) && m.ways[i].code != readAgain {
		add(m.th.Text, m.wayWords(&m.ways[i]))
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

// wayWords is a way with what it takes.
func (m Model) wayWords(w *wayOut) string {
	words := w.name
	if does := w.does.Text(m.sys); does != "" {
		words += ": " + does
	}
	if lost := w.lost.Text(m.sys); lost != "" {
		words += ". It costs " + lost
	}
	other := w.left.Softened + w.left.Raw
	words += fmt.Sprintf(". Still to run: DI water %s in %s, other water %s", m.gallons(w.left.DI), report.Time(w.minutes), m.gallons(other))
	if w.towels > 0 {
		words += fmt.Sprintf("; %s to dry by towel in about %s", quantity.Show(w.towels, m.sys), report.Time(towelTime(w.towels)))
	}
	return words + "."
}

func towelTime(a quantity.Area) quantity.Duration {
	return quantity.Duration(a / quantity.Area(planner.TowelRate))
}

func (m Model) wayNote(w *wayOut) string {
	if w.code == readAgain {
		return "first: is the bypass shut?"
	}
	note := "no DI water"
	if w.left.DI > 0 {
		note = fmt.Sprintf("DI %s, %s, chance %s", m.gallons(w.left.DI), report.Time(w.minutes), report.Odds(w.chance))
	}
	if w.towels > 0 {
		note += ", towels " + report.Time(towelTime(w.towels))
	}
	return note
}

func (m Model) pick(does keys.Action, msg tea.KeyMsg) (screen.Screen, tea.Cmd) {
	next, picked, problem := m.picker.Press(does, msg.String())
	switch m.picker = next; {
	case problem != "":
		return m.warn(fmt.Sprintf("There are %d ways.", len(m.ways))), nil
	case picked != nil:
		return m.takeWay(picked.Pick)
	}
	return m, nil
}

// takeWay puts a way out in force: the steps that follow become those of its plan.
func (m Model) takeWay(code string) (screen.Screen, tea.Cmd) {
	m.picker = nil
	if code == readAgain {
		return m.ask(aReading), nil
	}
	for _, w := range m.ways {
		if w.code != code {
			continue
		}
		before := m.flowToCome()
		m.o.Wash = w.wash
		m.u = washday.Replaced(m.u, m.state, w.plan, code)
		m = m.do(w.deed()).lookAtBed()
		m = m.say("Taken: " + w.name + "." + m.throttleWords(before))
		if washday.ChangesResin(code) {
			return m.changeResin()
		}
		return m, nil
	}
	return m, nil
}

// throttleWords tell what to do at the hose where a way made the DI water slower than it
// was before.
func (m Model) throttleWords(before quantity.Flow) string {
	flow := m.flowToCome()
	if flow >= before || m.state.ToRun().DI <= 0 {
		return ""
	}
	return " Throttle to " + quantity.Show(flow, m.sys) + " now: " + m.jugWords(flow) + "."
}

// changeResin opens the guided change; the wash waits where it is.
func (m Model) changeResin() (screen.Screen, tea.Cmd) {
	if m.o.Refill == nil || m.o.Rehearsal {
		return m.say("Change the resin now, flush, and read again."), nil
	}
	page := m.o.Refill(m.o.Desk)
	return m, func() tea.Msg { return screen.Go{To: page} }
}

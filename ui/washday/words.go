package washday

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/cells"
	"washeve/ui/report"
)

// task says what to do, in a sentence or two.
func (m Model) task() string {
	s := m.step()
	face := ""
	if s.Face != "" {
		face = " the " + string(s.Face)
	}
	switch s.Kind {
	case model.SetUp:
		return "Lay the hoses, couple the tanks, let the air out. Ask about local rules; clean towels and the pen at hand."
	case model.LetDry:
		return "Let" + face + " drip: what runs off now need not be rinsed off with DI water."
	case model.Flush:
		return fmt.Sprintf("Run %s through the bed to waste: standing water reads low. Then the pen.", quantity.Show(s.Volume.Or(0), m.sys))
	case model.Read:
		return m.gateWords()
	case model.PackUp:
		return "Release the pressure, drain tanks and hoses before transport and frost, couplings capped, softener back to its valves."
	}
	words := "Do" + face + ", from the top down."
	if s.Sprayer == model.ByHand {
		words = "By hand" + strings.Replace(face, " the ", ", the ", 1) + ", section by section, kept wet."
	}
	if most, given := s.Section.Get(); given {
		words += " No more than " + quantity.Show(most, m.sys) + " at a time through soap and rinse: it dries."
	}
	if s.Towel == model.Yes {
		words += " Then dry it by towel: this water leaves spots."
	}
	return words + m.restWords()
}

func (m Model) gateWords() string {
	limit := ""
	if l, given := m.u.Limit.Get(); given {
		limit = l.String()
	}
	switch m.state.Gate(&m.u) {
	case washday.Go:
		if m.short() {
			return m.shortWords(limit)
		}
		return "GO: the pen shows no more than " + limit + ". " + m.th.Key("enter", "next") + " goes on."
	case washday.NoGo:
		return "NO-GO: the pen shows more than " + limit + ". " + m.th.Key("w", "ways") + " lists the ways out."
	case washday.Cup:
		return "A FIRST CUP, no go yet: " + m.stoodWords() + " " + m.th.Key("b", "before") + " goes back to the flush, " + m.th.Key("a", "all the same") + " goes on all the same."
	case washday.GoAlong:
		return "The reading is taken as it is. " + m.th.Key("enter", "next") + " goes on."
	}
	if m.state.Stands() {
		return m.stoodWords() + " " + m.th.Key("b", "before") + " goes back and runs the rest; " + m.th.Key("r", "reading") + " asks whether it was flushed otherwise."
	}
	return "Hold the pen in the stream behind the bed, then " + m.th.Key("r", "reading") + " and what it shows. Up to " + limit + " is a go."
}

func (m Model) valves() string {
	s := m.step()
	var parts []string
	for _, v := range []struct {
		unit   string
		stands model.Answer
	}{{planner.SoftenerUnit, s.Softener}, {planner.BedUnit, s.Bed}} {
		if v.stands != "" {
			parts = append(parts, report.Valve(planner.Valve{Unit: v.unit, Through: v.stands == model.Yes}))
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "Valves: " + strings.Join(parts, ", ")
}

func (m Model) tool() string {
	s := m.step()
	if s.Sprayer == "" && (s.Kind != model.Read || !m.o.Wash.DIFlow.Given()) {
		return ""
	}
	words := cmp.Or(s.Sprayer, "DI water")
	if flow, given := s.Flow.Get(); given {
		words += ", " + quantity.Show(flow, m.sys)
		if held, stated := m.o.Wash.DIFlow.Get(); stated && s.Bed == model.Yes && flow == held && flow <= m.u.Outlook.Cap.Or(0) {
			return words + ", held by a valve: " + m.jugWords(flow)
		}
	}
	return words + m.capWords()
}

func (m Model) progress() string {
	s, done := m.step(), m.done()
	var parts []string
	if s.Timed() {
		parts = append(parts, fmt.Sprintf("%s of %s", minutes(washday.Seconds(done.Spent)), minutes(washday.Seconds(s.Duration.Or(0)))))
	}
	if v, given := s.Volume.Get(); given {
		parts = append(parts, fmt.Sprintf("%s of %s", m.gallons(done.Used), m.gallons(v)))
	}
	if len(parts) == 0 {
		return ""
	}
	return "This step: " + strings.Join(parts, ", ")
}

func (m Model) waters() string {
	t := m.state.Tally()
	words := "So far: DI " + m.gallons(t.DI)
	if m.softens() {
		words += ", softened " + m.gallons(t.Softened)
	}
	if t.Raw > 0 || !m.softens() {
		words += ", raw " + m.gallons(t.Raw)
	}
	return words
}

// softens tells whether there is a softener in this wash.
func (m Model) softens() bool {
	return m.u.Plan.Softener != "" && m.u.Plan.Softener != model.NoSoftener
}

// gallons is a volume with as many decimals as a running number can bear.
func (m Model) gallons(v quantity.Volume) string {
	if m.sys == quantity.Metric {
		return fmt.Sprintf("%.0f L", v.Litres())
	}
	return fmt.Sprintf("%.1f gal", v.Gallons())
}

func (m Model) bedWords() string {
	left := m.leftWords()
	if left == "" || m.odd {
		return ""
	}
	return "Left in the bed: " + left
}

// endWords is what the bed will give at the end, if this flow goes on.
func (m Model) endWords() string {
	if m.odd {
		return m.doubtWords()
	}
	end, given := m.u.Outlook.End.Get()
	if !given || m.state.ToRun().DI <= 0 {
		return ""
	}
	if m.high != "" {
		return m.highWords(report.PPM(end.Number))
	}
	words := "At the end, at this flow: " + report.PPM(end.Number)
	if limit, given := m.u.Limit.Get(); given {
		words += ", limit " + report.PPM(limit.Number)
	}
	return words + "; lasts: chance " + m.chanceWords()
}

func (m Model) nextWords() string {
	if m.state.At+1 >= len(m.state.Steps) {
		return "This is the last step."
	}
	n := &m.state.Steps[m.state.At+1]
	words := "Then: " + n.Stage
	if n.Face != "" {
		words += ", " + string(n.Face)
	}
	return words
}

// summary is the wash that is over: planned against actual, what was learned, what
// is left, what to do next.
func (m Model) summary(width int) []string {
	words := m.summaryWords()
	lines := append(m.wrapped(m.th.Strong, words[0], width), "")
	for _, w := range words[1:] {
		if strings.HasPrefix(w, " ") {
			lines = append(lines, m.th.Text.On(cells.Clip(cells.Safe(w), width, m.th.Marks.More)))
			continue
		}
		lines = append(lines, m.wrapped(m.th.Text, m.th.Marks.Dot+" "+w, width)...)
	}
	return lines
}

// summaryWords are the summary as it is said: a table of indented lines, then
// sentences.
func (m Model) summaryWords() []string {
	words := []string{"The wash is done."}
	if m.state.Early {
		words[0] = "The wash was ended early; what was done is kept."
	}
	for _, s := range append([]sum{{"", "planned", "done"}}, m.sums()...) {
		words = append(words, fmt.Sprintf("  %-16s %14s %14s", s.what, s.planned, s.done))
	}
	return append(words, m.after...)
}

// sum is what was planned of something, and what was done.
type sum struct{ what, planned, done string }

// sums are the waters and the time of the wash.
func (m Model) sums() []sum {
	t, p := m.state.Tally(), &m.u.Plan
	return []sum{
		{"DI and flush", m.gallons(p.PlannedDI.Or(0)), m.gallons(t.DI)},
		{"softened water", m.gallons(p.PlannedSoftened.Or(0)), m.gallons(t.Softened)},
		{"raw water", m.gallons(p.PlannedRaw.Or(0)), m.gallons(t.Raw)},
		{"water on, hands", minutes(washday.Seconds(p.PlannedDuration.Or(0))), m.spentWords()},
	}
}

func readings(n int) string {
	if n == 1 {
		return "1 reading"
	}
	return fmt.Sprintf("%d readings", n)
}

// paceWords set the hand's pace against the plan's, in the two stages that differ most.
func (m Model) paceWords() string {
	paces := m.state.Paces()
	all := len(paces)
	paces = slices.DeleteFunc(paces, func(p washday.Pace) bool { return !p.Counts() })
	aside := ""
	if odd := all - len(paces); odd > 0 {
		aside = fmt.Sprintf("Too far from the plan to be a pace, and not learned: %d of %d stages.", odd, all)
	}
	off := func(p washday.Pace) float64 { return math.Abs(math.Log(float64(p.Done / p.Planned))) }
	sort.SliceStable(paces, func(i, j int) bool { return off(paces[i]) > off(paces[j]) })
	var parts []string
	for _, p := range paces[:min(len(paces), 2)] {
		parts = append(parts, fmt.Sprintf("%s %s (planned %s)", p.Stage, quantity.Show(p.Done, m.sys), quantity.Show(p.Planned, m.sys)))
	}
	if len(parts) == 0 {
		return aside
	}
	return strings.TrimSpace("Your pace: " + strings.Join(parts, ", ") + ". The next plan leans to it. " + aside)
}

// lookBack works out once, when the wash is over, what was learned and what is next.
func (m Model) lookBack() Model {
	if m.state.Over && m.kept == nil && m.after == nil {
		m.after = append(m.untimedWords(), m.afterwards()...)
	}
	return m
}

// afterwards is what was learned and what is next.
func (m Model) afterwards() []string {
	if m.o.Rehearsal {
		return []string{"This was a rehearsal on the built-in example: nothing was written. Make it yours on the plan (" + m.th.Key("a", "adopt") + "), or start your own (" + m.th.Key("e", "fresh") + ")."}
	}
	var told []string
	plan, _, ahead, err := m.o.Look()
	if err != nil {
		return []string{"Written into the log. The bed could not be looked at: " + err.Error()}
	}
	told = append(told, m.bedLeftWords(plan))
	if plan.InDoubt() {
		told = append(told, "That holds only without the last reading in the log, which fits no bed like this: see to pen, scale and bypass, and read again.")
	}
	if ahead.Used > 0 {
		told = append(told, fmt.Sprintf("Learned from %s of this fill: the bed holds %s.", readings(ahead.Used), report.OfRating(ahead.Factor)))
	} else {
		told = append(told, "No reading of this fill counts yet: one after a flush makes the next plan surer.")
	}
	if words := m.paceWords(); words != "" {
		told = append(told, words)
	}
	if s := plan.Softener; s != nil && !s.Lasts {
		told = append(told, fmt.Sprintf("Regenerate the softener before the next wash: it has %s left, and a wash like this sends %s through it.", m.gallons(s.Remaining), m.gallons(s.Takes)))
	}
	if when := report.OrderWhen(ahead); when != "" {
		told = append(told, "Order resin "+when+".")
	}
	if low, given := m.o.Wash.Low.Get(); given && low <= quantity.Celsius(0) {
		told = append(told, "Frost is forecast: drain the tanks, the hoses and the pump now.")
	}
	return append(told, "Drain the tanks before you drive: a wet tank is heavy, and it freezes.")
}

package entry

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/form"
	"washeve/ui/keys"
	"washeve/ui/report"
	"washeve/ui/theme"
)

const (
	flushed   keys.Action = "flushed"
	already   keys.Action = "already out"
	firstCup  keys.Action = "first cup"
	otherFlow keys.Action = "other flow"
	insist    keys.Action = "insist"
)

// Reading is a reading after the bed while it is added: first the flush, then
// the number.
type Reading struct {
	sample  model.Sample
	flow    quantity.Flow // of the job
	faster  quantity.Flow // that teaches
	flush   quantity.Volume
	soFar   quantity.Volume // the fill has given, by what is known
	isNew   bool            // nobody said so: it is taken as freshly filled
	scale   string
	quick   bool
	told    string // the number, where it was told ahead of the flush
	edit    *form.Edit
	problem string

	slip  func(model.Body) string // what is odd about the reading
	asked string                  // and is asked about before it is written; "" for nothing
}

// NewReading starts by telling the flush of a plan.
func (d Desk) NewReading(plan planner.Plan, faster quantity.Flow) Reading {
	return Reading{
		sample: model.Sample{Point: model.AfterBed, Place: plan.Place, Bed: plan.BedName, Pen: d.Pen(), Feed: yesOrNo(plan.BedBehind)},
		flow:   plan.Sprayer.Flow, faster: faster, flush: plan.Flush.Volume, scale: d.Known().Scale,
		soFar: plan.Bed.SoFar, isNew: plan.TakenAsNew(), slip: d.Slips(&plan),
	}
}

func yesOrNo(yes bool) model.Answer {
	if yes {
		return model.Yes
	}
	return model.No
}

// Typing tells that the flush is settled and the number is typed.
func (r Reading) Typing() bool { return r.edit != nil && r.asked == "" }

// Begun tells that something of the number was typed.
func (r Reading) Begun() bool { return r.edit != nil && r.edit.Text() != "" }

// Keys lists the keys of the moment.
func (r Reading) Keys() []keys.Binding {
	if r.asked != "" {
		return form.AnswerKeys()
	}
	if r.Typing() {
		counts := ""
		if r.sample.Flushed == model.Yes {
			counts = "a flushed reading is used in any case"
		}
		return []keys.Binding{
			keys.New("Reading", Write, "enter", "write it", "enter"),
			keys.New("Reading", insist, "tab", "use it anyway, or not", "tab").Unless(counts),
			keys.New("Reading", Leave, "esc", "no reading", "esc"),
		}
	}
	noFaster := ""
	if r.faster <= r.flow {
		noFaster = "this tank allows no faster flow"
	}
	return []keys.Binding{
		keys.New("Reading", flushed, "y", "yes, it is out", "y", "Y", "enter"),
		keys.New("Reading", already, "a", "already, in a wash", "a", "A"),
		keys.New("Reading", firstCup, "n", "no: a first cup", "n", "N"),
		keys.New("Reading", otherFlow, "f", "faster, or the job's flow", "f").Unless(noFaster),
		keys.New("Reading", Leave, "esc", "no reading", "esc"),
	}
}

// Update takes a key and tells what was asked for: "" for nothing, [Write] or
// [Leave].
func (r Reading) Update(msg tea.KeyMsg) (Reading, keys.Action) {
	b, bound := keys.Find(r.Keys(), msg)
	r.problem = ""
	switch {
	case !bound && r.Typing():
		e := r.edit.Type(msg, r.check)
		r.edit = &e
		return r, ""
	case !bound:
		return r, ""
	case b.Blocked != "":
		r.problem = b.NotNow()
		return r, ""
	}
	switch b.Does {
	case form.Yes:
		r.asked = ""
		return r, Write
	case form.No:
		r.asked, r.problem = "", notWritten
		return r, ""
	case flushed:
		if r.flush > 0 {
			r.sample.FlushWater = Stated(r.flush, quantity.US)
		}
		return r.ask(model.Yes)
	case already:
		return r.ask(model.Yes)
	case firstCup:
		return r.ask(model.No)
	case otherFlow:
		r.quick = !r.quick
		r.flow, r.faster = r.faster, r.flow
		return r, ""
	case insist:
		r.sample.Anyway = map[model.Answer]model.Answer{model.Yes: "", "": model.Yes}[r.sample.Anyway]
		return r, ""
	case Write:
		return r.finished()
	}
	return r, b.Does
}

// ask asks for the number, unless it was told.
func (r Reading) ask(answer model.Answer) (Reading, keys.Action) {
	r.sample.Flushed = answer
	e := form.Start("", Bare("6", r.scale))
	if r.told != "" {
		e = e.With(r.told, r.check)
	}
	r.edit = &e
	if r.told != "" {
		return r.finished()
	}
	return r, ""
}

// Reads is the reading with its number told ahead: it is written as soon as it is said
// whether the standing water is out. What is no reading is an error.
func (r Reading) Reads(text string) (Reading, error) {
	e := form.Start("", Bare("6", r.scale)).With(text, r.check).Offered(r.check)
	if e.Problem != nil {
		return r, e.Problem
	}
	r.told = e.Text()
	return r, nil
}

func (r Reading) check(text string) error { return readingField(&r.sample).Set(text) }

func readingField(s *model.Sample) model.Field {
	for _, f := range s.Fields() {
		if f.Key == "reading" {
			return f
		}
	}
	return model.Field{}
}

// finished takes the number, where there is one.
func (r Reading) finished() (Reading, keys.Action) {
	text := r.edit.Text()
	if r.edit.Offer != "" {
		text = r.edit.Offer
	}
	if strings.TrimSpace(text) == "" || r.check(text) != nil {
		r.problem = "A number is needed, like " + Bare("6", r.scale) + "."
		return r, ""
	}
	r.sample.Flow = Stated(r.flow, quantity.US)
	if err := readingField(&r.sample).Set(text); err != nil {
		r.problem = err.Error()
		return r, ""
	}
	if r.asked = r.slip(&r.sample); r.asked != "" {
		return r, ""
	}
	return r, Write
}

// Sample is the reading, after [Write].
func (r Reading) Sample() *model.Sample {
	s := r.sample
	return &s
}

// Lines ask for it.
func (r Reading) Lines(th theme.Theme, sys quantity.System, width int) []string {
	head := "A reading after the bed, at " + quantity.Show(r.flow, sys)
	if r.sample.Pen != "" {
		head += ", with the " + r.sample.Pen
	}
	lines := []string{th.Strong.On(cells.Clip(cells.Safe(head), width, th.Marks.More))}
	add := func(ink theme.Ink, text string) {
		for _, line := range cells.WrapMost(cells.Safe(text), width, 2, th.Marks.More) {
			lines = append(lines, ink.On(line))
		}
	}
	if r.asked != "" { // needs the room of all else
		lines = append(lines, th.Text.On(cells.Clip("It reads "+r.sample.Reading.Words(), width, th.Marks.More)))
		for _, line := range cells.WrapMost(cells.Safe(allTheSame(r.asked, th.YesOrNo())), width, 4, th.Marks.More) {
			lines = append(lines, th.Doubt.On(line))
		}
		return lines
	}
	add(th.Text, "First let the standing water run out: "+quantity.Show(r.flush, sys)+", which takes "+seconds(r.flow.Time(r.flush))+" at this flow. Standing water reads too low.")
	if r.Typing() {
		r.numberLines(th, sys, width, add, &lines)
		if r.problem == "" {
			add(th.Muted, r.given(sys))
		}
	} else {
		if r.quick {
			add(th.Text, "This flow teaches most. It is for this reading only, and to waste: the wash itself keeps to the cap.")
		}
		add(th.Accent, "Is it out? y: yes, and "+r.counted(sys)+". a: already, by a wash, which counts it. n: no")
	}
	if r.problem != "" {
		add(th.Doubt, r.problem)
	}
	return lines
}

// given says at how many gallons the reading counts.
func (r Reading) given(sys quantity.System) string {
	if r.isNew {
		at := "It counts at 0 gallons so far"
		if r.sample.FlushWater.Given() {
			at += " and the flush"
		}
		return at + ": if it gave more, say so in the plan, under Bed."
	}
	return "This fill has given " + quantity.Show(r.soFar, sys) + ", as far as is known."
}

// counted says what the flush does to the bed.
func (r Reading) counted(sys quantity.System) string {
	return "its " + quantity.Show(r.flush, sys) + " count as given by the bed"
}

// seconds tells a flush so that it can be counted.
func seconds(d quantity.Duration) string {
	if d.Seconds() >= 99.5 && d.Seconds() < 600 {
		return quantity.Round(d.Seconds()) + " s (" + report.Time(d) + ")"
	}
	return report.Time(d)
}

func (r Reading) numberLines(th theme.Theme, sys quantity.System, width int, add func(theme.Ink, string), lines *[]string) {
	standing := "flushed"
	switch {
	case r.sample.Anyway == model.Yes:
		standing = "a first cup, used anyway because you say so (tab takes that back)"
	case r.sample.Flushed == model.No:
		standing = "a first cup: it will be shown and not used (tab uses it anyway)"
	case r.sample.FlushWater.Given():
		standing = "flushed; " + r.counted(sys)
	}
	*lines = append(*lines, th.Text.On("It reads ")+r.edit.View(th, max(width-9, 10)))
	add(th.Muted, standing)
	switch says := r.edit.Says(); {
	case r.edit.Offer != "":
		add(th.Muted, "enter takes it as "+r.edit.Offer)
	case says != "" && r.edit.Text() != "":
		add(r.edit.Ink(th), says)
	}
}

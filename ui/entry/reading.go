package entry

import (
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/washday"
	"washeve/ui/form"
	"washeve/ui/keys"
)

const (
	take      keys.Action = "take the number"
	flushed   keys.Action = "flushed"
	already   keys.Action = "already out"
	firstCup  keys.Action = "first cup"
	otherRun  keys.Action = "other amount"
	overRun   keys.Action = "type an amount"
	otherFlow keys.Action = "other flow"
	otherTime keys.Action = "when"
	before    keys.Action = "before"
)

// wants is what a reading asks for just now.
type wants int

const (
	theNumber wants = iota
	theFlush        // is the standing water out
	theAmount       // of the flush, where it was another than the plan's
	theAge          // of the fill, where nobody said it
	theTime         // that it was read, where that is not now
	theDoubt        // is it to be written although it is odd
)

// Reading is a reading after the bed while it is added: the number, then whether the
// standing water was out, then how old the fill is where nobody said so.
type Reading struct {
	sample  model.Sample
	read    model.Moment     // when; not given for now
	clock   func() time.Time // that tells now
	anyTime bool             // it may have been read before now
	flow    quantity.Flow    // of the job
	faster  quantity.Flow    // that teaches
	flush   quantity.Volume
	soFar   quantity.Volume // the fill has given, by what is known
	isNew   bool            // nobody said so
	aged    bool            // its readings alone say how old it is
	fresh   float64         // ppm that it shows, where it is taken as fresh
	scales  form.Scales     // of a number that is typed without one
	quick   bool
	ahead   bool // the number was told ahead of all else
	at      wants
	number  string // as it was taken
	edit    form.Edit
	problem string

	sys   quantity.System
	slip  func(model.Body) string // what is odd about the reading
	asked string                  // and is asked about before it is written
}

// NewReading begins a reading of a plan's bed.
func (d Desk) NewReading(plan planner.Plan, faster quantity.Flow) Reading {
	r := Reading{
		sample: model.Sample{Point: model.AfterBed, Place: plan.Place, Bed: plan.BedName, Pen: d.Pen(), Feed: yesOrNo(plan.BedBehind)},
		clock:  d.Clock,
		flow:   plan.Sprayer.Flow, faster: faster, flush: plan.Flush.Volume, scales: d.Known().Scales(d.Pen()),
		soFar: plan.Bed.SoFar, isNew: plan.TakenAsNew() || plan.AgedByReadings(), aged: plan.AgedByReadings(), fresh: plan.Bed.OutletNow.P50, slip: d.Slips(&plan), sys: d.Units,
	}
	return r.asks(theNumber, "")
}

func yesOrNo(yes bool) model.Answer {
	if yes {
		return model.Yes
	}
	return model.No
}

// asks goes on to what is asked for, with the text that stands there.
func (r Reading) asks(at wants, text string) Reading {
	r.at, r.asked = at, ""
	switch at {
	case theNumber:
		r.edit = form.Start(text, r.scales.Bare("6")).Telling(r.scales.Taken).OfFigures()
	case theAmount:
		r.edit = form.Start(text, quantity.Show(r.flush, r.sys)).Telling(r.shortOf).OfFigures()
	case theAge:
		r.edit = form.Start(text, r.anAge())
	case theTime:
		r.edit = form.Start(text, model.PastMoments)
	}
	return r
}

// Typing tells that letters are text just now.
func (r Reading) Typing() bool { return r.types() && r.edit.Letters() }

// types tells that a text is asked for.
func (r Reading) types() bool {
	return r.at == theNumber || r.at == theAmount || r.at == theAge || r.at == theTime
}

// Begun tells that something of the number was typed.
func (r Reading) Begun() bool { return r.at != theNumber || r.edit.Text() != "" }

// Update takes a key and tells what was asked for: "" for nothing, [Write] or
// [Leave].
func (r Reading) Update(msg tea.KeyMsg) (Reading, keys.Action) {
	b, bound := keys.Find(r.Keys(), msg)
	r.problem = ""
	switch {
	case r.types() && (!bound || b.Does == form.Spell):
		r.edit = r.edit.Type(msg, r.check)
		r.problem = r.edit.Heard()
		return r, ""
	case !bound:
		return r, ""
	case b.Blocked != "":
		r.problem = b.NotNow()
		return r, ""
	}
	switch b.Does {
	case before:
		return r.back(), ""
	case flushed:
		return r.ran(model.Yes, r.flush)
	case already:
		return r.ran(model.Yes, 0)
	case firstCup:
		return r.ran(model.No, 0)
	case otherRun:
		return r.asks(theAmount, ""), ""
	case overRun:
		r = r.asks(theAmount, "")
		r.edit = r.edit.Type(msg, r.check)
		return r, ""
	case otherTime:
		return r.asks(theTime, ""), ""
	case otherFlow:
		r.quick = !r.quick
		r.flow, r.faster = r.faster, r.flow
		return r, ""
	case form.No:
		r = r.asks(theNumber, r.number)
		r.problem = notWritten
		return r, ""
	case form.Yes:
		return r, Write
	case take:
		return r.taken()
	case form.Abandon:
		return r.abandoned()
	}
	return r, b.Does
}

// abandoned leaves what is typed: the reading itself where it is the number.
func (r Reading) abandoned() (Reading, keys.Action) {
	if r.at == theNumber {
		return r, Leave
	}
	return r.back(), ""
}

// back goes to what was asked for before.
func (r Reading) back() Reading {
	if r.at == theFlush {
		return r.asks(theNumber, r.number)
	}
	r.sample.Flushed, r.sample.FlushWater = "", quantity.Opt[quantity.Volume]{}
	return r.asks(theFlush, "")
}

// Reads is the reading with its number told ahead. What is no reading is an error.
func (r Reading) Reads(text string) (Reading, error) {
	e := r.edit.With(text, r.check).Offered(r.check)
	if e.Problem != nil {
		return r, e.Problem
	}
	r.edit, r.ahead = e, true
	r, _ = r.taken()
	return r, nil
}

// check tells what is wrong with a text for what is asked for.
func (r Reading) check(text string) error {
	s := r.sample
	switch r.at {
	case theTime:
		_, err := r.moment(text)
		return err
	case theAmount:
		return sampleField(&s, "flush_water").Set(text)
	case theAge:
		if nobodyKnows(text) {
			return nil
		}
		return sampleField(&s, "gallons_so_far").Set(text)
	}
	return sampleField(&s, "reading").Set(text)
}

func sampleField(s *model.Sample, key string) model.Field {
	for _, f := range s.Fields() {
		if f.Key == key {
			return f
		}
	}
	return model.Field{}
}

// shortOf says of an amount that does for no flush what it makes of the reading.
func (r Reading) shortOf(text string) string {
	if amount, err := quantity.Parse[quantity.Volume](text); err == nil && !washday.Flushes(amount, r.flush) {
		return "short of the " + quantity.Show(r.flush, r.sys) + " that stand in it and behind: a first cup, shown and not used"
	}
	return ""
}

// taken takes what stands on the line that is typed.
func (r Reading) taken() (Reading, keys.Action) {
	e := r.edit.Offered(r.check)
	text := strings.TrimSpace(e.Text())
	if r.at == theAge && nobodyKnows(text) {
		r.sample.SoFar = quantity.Opt[quantity.Volume]{}
		return r.finished()
	}
	if err := r.check(text); text == "" || err != nil {
		r.edit, _ = r.edit.Held(take)
		r.problem = r.wanted()
		return r, ""
	}
	switch r.at {
	case theTime:
		r.read, _ = r.moment(text)
		return r.asks(theFlush, ""), ""
	case theAmount:
		amount, _ := quantity.Parse[quantity.Volume](text)
		if !washday.Flushes(amount, r.flush) {
			return r.ran(model.No, amount)
		}
		return r.ran(model.Yes, amount)
	case theAge:
		before, _ := quantity.Parse[quantity.Volume](text)
		r.sample.SoFar = Stated(before+r.sample.FlushWater.Or(0), quantity.US)
		return r.finished()
	}
	r.number = text
	_ = sampleField(&r.sample, "reading").Set(text) // checked above
	return r.asks(theFlush, ""), ""
}

// wanted says what is still needed on the line that is typed.
func (r Reading) wanted() string {
	switch r.at {
	case theTime:
		return "A time is needed, like " + model.PastMoments + "."
	case theAmount:
		return "An amount is needed, like " + quantity.Show(r.flush, r.sys) + "."
	case theAge:
		return "An amount is needed, like " + r.anAge() + ", or " + unknown + "."
	}
	return "A number is needed, like " + r.scales.Bare("6") + "."
}

// ran settles what was run out for the reading, and goes on to the age where nobody said it.
func (r Reading) ran(answer model.Answer, amount quantity.Volume) (Reading, keys.Action) {
	r.sample.Flushed, r.sample.FlushWater, r.sample.SoFar = answer, quantity.Opt[quantity.Volume]{}, quantity.Opt[quantity.Volume]{}
	if amount > 0 {
		r.sample.FlushWater = Stated(amount, quantity.US)
	}
	if r.isNew && r.sample.Counts() {
		return r.asks(theAge, ""), ""
	}
	return r.finished()
}

// finished writes, unless there is something odd to be asked about first.
func (r Reading) finished() (Reading, keys.Action) {
	r.sample.Flow = Stated(r.flow, quantity.US)
	if odd := r.slip(&r.sample); odd != "" {
		r.at, r.asked = theDoubt, odd
		return r, ""
	}
	return r, Write
}

// Sample is the reading, after [Write].
func (r Reading) Sample() *model.Sample {
	s := r.sample
	return &s
}

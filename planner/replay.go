package planner

import (
	"math"
	"strings"
	"sync"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/flow"
	"washeve/planner/learning"
	"washeve/planner/water"
)

// replay goes through a log for one bed.
type replay struct {
	rig    *model.Rig
	places model.Places
	bed    model.Bed
	sized  quantity.Volume             // resin that the rig states of the tank
	taps   map[string]quantity.Reading // last at the tap, by place

	fills []FillPast
	draws []Draw
	resin resin
	feed  water.Analysis // of the last use, for readings that name no place
	known bool           // feed is known
	flow  quantity.Flow  // of the last use

	within within // the wash that is to be written down
}

// UsualFlow is that of the sprayer of a rig that states none, and of a use whose flow nobody
// wrote down. PRACTICE: a small pressure washer.
const UsualFlow = flow.UsualWasherFlow

// run goes through the log, and is false where it says nothing of the bed.
func (r *replay) run(events []event) bool {
	if !r.bed.Resin.Given() {
		return false
	}
	r.flow, r.sized = UsualFlow, r.bed.Resin.Or(0)
	r.begin(model.Moment{}, nil)
	touched := false
	for _, e := range events {
		switch b := e.body.(type) {
		case *model.Refill:
			if r.mine(b.Bed) {
				r.begin(e.at, b)
				touched = true
			}
		case *model.Sample:
			if b.Point == model.AtTap {
				r.tap(b)
			} else if b.Point == model.AfterBed && r.mine(b.Bed) {
				touched = r.read(e, b) || touched
			}
		}
		if e.wash != nil && r.mine(e.wash.Wash.Bed) {
			touched = r.use(e) || touched
		}
	}
	return touched
}

// mine tells whether an entry is about this bed: it names it, or names none and
// this is the usual one.
func (r *replay) mine(name string) bool {
	if name == "" {
		name = r.rig.Defaults.Bed
	}
	if name == "" && len(r.rig.Beds) > 0 {
		name = r.rig.Beds[0].Name
	}
	return strings.EqualFold(name, r.bed.Name)
}

func (r *replay) penScale() quantity.Scale {
	for _, p := range r.rig.Pens {
		if strings.EqualFold(p.Name, r.rig.Defaults.Pen) || r.rig.Defaults.Pen == "" {
			return penScale(p)
		}
	}
	return quantity.ScaleUnsaid
}

// scale is that on which the plan shows ppm.
func (r *replay) scale() quantity.Scale {
	scale, _ := scaleOf(r.rig.Defaults.Limit, model.Pen{Scale: quantity.Some(r.penScale())}, water.DefaultScale())
	return scale
}

// begin starts a fill. Before the log's first change of resin the fill is the
// one that the rig describes, gallons so far included.
func (r *replay) begin(at model.Moment, refill *model.Refill) {
	fill := FillPast{Began: at, Last: at, Price: r.bed.Price}
	if refill != nil {
		r.refilled(refill)
		fill.Lot, fill.Price = refill.Lot, r.bed.Price
	}
	fill.Resin, r.within = r.bed.Resin.Or(0), within{}
	r.resin = decideResin(nil, r.bed, r.sized, water.Analysis{}, r.penScale())
	if refill == nil {
		r.fills = append(r.fills, fill)
		return
	}
	if n := len(r.fills); n == 1 && !r.fills[0].Began.Given() && len(r.fills[0].fill.Uses) == 0 && len(r.fills[0].Readings) == 0 {
		r.fills = r.fills[:0] // nothing is known of what was in the tank before
	}
	r.fills = append(r.fills, fill)
}

// refilled puts what a change of resin states over what the rig states.
func (r *replay) refilled(f *model.Refill) {
	if f.Resin.Given() {
		r.bed.Resin = f.Resin
	}
	if f.State != "" {
		r.bed.State = f.State
	}
	if f.Rating.Given() {
		r.bed.Rating, r.bed.GoodFor, r.bed.GoodForTDS = f.Rating, quantity.Opt[quantity.Volume]{}, quantity.Opt[quantity.Reading]{}
		r.bed.CationCapacity, r.bed.AnionCapacity = quantity.Opt[quantity.CapacityDensity]{}, quantity.Opt[quantity.CapacityDensity]{}
	}
	if f.Price.Given() {
		r.bed.Price = f.Price
	}
	r.bed.SoFar, r.bed.LastReading = quantity.Some(quantity.Volume(0)), quantity.Opt[quantity.Reading]{}
}

func (r *replay) present() *FillPast { return &r.fills[len(r.fills)-1] }

// tap keeps the last reading at a tap.
func (r *replay) tap(s *model.Sample) {
	if reading, given := s.Reading.Get(); given && reading.Number > 0 {
		r.taps[strings.ToLower(s.Place)] = reading.WithScale(r.penOf(s))
	}
}

func (r *replay) penOf(s *model.Sample) quantity.Scale {
	for _, p := range r.rig.Pens {
		if strings.EqualFold(p.Name, s.Pen) {
			return penScale(p)
		}
	}
	return r.penScale()
}

// softens tells whether a reading was of a bed that is fed through the softener: as it
// says, else by what the rig has now.
func (r *replay) softens(s *model.Sample) bool {
	if s.Feed != "" {
		return s.Feed == model.Yes
	}
	return softenerOf(model.WashDone{}, r.rig) != ""
}

// with is the resin under a feed.
func (r *replay) with(feed water.Analysis) *resin {
	under := r.resin.on(feed)
	return &under
}

// start gives a fill from before the log the gallons that the rig states.
func (r *replay) start(f *FillPast) {
	if before := r.bed.SoFar.Or(0); len(f.fill.Uses) == 0 && len(f.Readings) == 0 && !f.Began.Given() && before > 0 {
		f.add(r.with(r.feed).use(before, r.flow), before)
	}
}

func (f *FillPast) add(u learning.Use, volume quantity.Volume) {
	f.Gallons += volume
	f.fill.Uses, f.given = append(f.fill.Uses, u), append(f.given, f.Gallons)
}

// read adds a reading after the bed.
func (r *replay) read(e event, s *model.Sample) bool {
	reading, given := s.Reading.Get()
	if !given {
		return false
	}
	if feed, known := r.feedOf(s.Place, r.softens(s), s.Temperature); known && (s.Place != "" || !r.known) {
		r.feed, r.known = feed, true
	}
	if !r.known {
		return false
	}
	f := r.present()
	r.start(f)
	under := r.with(r.feed)
	if ahead := r.ahead(e, s); ahead > 0 {
		f.add(under.use(ahead, s.Flow.Or(r.flow)), ahead)
	}
	scale := r.scale()
	past := PastReading{
		ID: e.id, At: e.at, Gallons: f.Gallons, Reading: reading.WithScale(r.penOf(s)),
		Expected: math.NaN(), Counts: s.Counts(),
	}
	past.PPM = ppmOn(scale, past.Reading)
	f.Readings = append(f.Readings, past)
	f.Last = e.at
	f.fill.Readings = append(f.fill.Readings, learning.Reading{
		Evidence: learning.Evidence{Read: past.PPM, Feed: under.feed.PPM(scale).Number, Units: under.units(s.Flow.Or(r.flow))},
		After:    len(f.fill.Uses), Standing: s.Flushed != model.Yes, Insisted: s.Anyway == model.Yes,
	})
	return true
}

// ahead is the water that a reading tells of: up to what the fill had given by it, or what
// was run out for it alone. A meter has counted that as well, and no wash will.
func (r *replay) ahead(e event, s *model.Sample) quantity.Volume {
	so, metered := s.SoFar.Get()
	if !metered {
		return s.FlushWater.Or(0)
	}
	f := r.present()
	ahead := max(so-f.Gallons, 0)
	f.metered++
	r.within = r.within.with(e.at, max(ahead-s.FlushWater.Or(0), 0))
	return ahead
}

// kin is what the fills teach of those of other tanks: all that count, but for one in the
// tank whose age nobody said.
func (r *replay) kin() kin {
	lessons := sync.OnceValue(func() []learning.Lesson {
		if f := r.present(); f.ageSaid(r.bed.SoFar) {
			return append(r.before(), learning.Recall(f.fill))
		}
		return r.before()
	})
	return kin{
		bed: r.bed.Name, resin: kindOf(r.bed, &r.resin), last: r.present().Last,
		lessons: lessons, next: sync.OnceValue(func() *FillPast { return nextFill(lessons()) }),
	}
}

// before is what the fills that count taught, the oldest first, but for the one in the tank.
func (r *replay) before() []learning.Lesson {
	var lessons []learning.Lesson
	last := len(r.fills) - 1
	for _, f := range r.fills[max(last-learning.MostPast, 0):last] {
		lessons = append(lessons, learning.Recall(f.fill))
	}
	return lessons
}

// learn works out what is believed of the fill in the tank. Its first fill is judged by
// those of other tanks of the kind.
func (r *replay) learn(p *Past) *BedPast {
	lessons := r.before()
	if len(lessons) == 0 {
		if k := p.kinOf(r.bed.Name, kindOf(r.bed, &r.resin)); k != nil {
			lessons = k.lessons()
		}
	}
	f := r.present()
	from := learning.After(lessons)
	f.posterior = from.Learn(f.fill)
	r.judgeAge(f, from)
	f.explain()
	f.settle()
	return &BedPast{Bed: r.bed, sized: r.sized, Fills: r.fills, Draws: r.draws, next: sync.OnceValue(func() *FillPast {
		return nextFill(append(lessons[:len(lessons):len(lessons)], learning.Recall(f.fill)))
	})}
}

// nextFill is how the bed will stand after a change of resin: fresh, and believed
// in as all fills so far have taught.
func nextFill(lessons []learning.Lesson) *FillPast {
	f := FillPast{posterior: learning.After(lessons).Learn(learning.Fill{})}
	f.settle()
	return &f
}

// settle keeps how the bed stands at the fill's end.
func (f *FillPast) settle() {
	p := &f.posterior
	f.stand = stand{belief: p.Belief(), states: p.States, middle: p.Middle(), soFar: f.Gallons, fed: fedBy(f.fill.Uses)}
}

// explain puts beside each reading what it should have shown.
func (f *FillPast) explain() {
	for i := range f.Readings {
		if i < len(f.posterior.Expected) {
			f.Readings[i].Expected = f.posterior.Expected[i][1]
		}
	}
	for i, s := range f.posterior.Unexplained {
		if s.ReadingIndex < len(f.Readings) {
			f.Readings[s.ReadingIndex].Suspect = &f.posterior.Unexplained[i]
		}
	}
}

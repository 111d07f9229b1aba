package planner

import (
	"cmp"
	"slices"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/planner/water"
)

// Past is what a log teaches, worked out once when the log changes: [Recall]
// makes it, and [Memory] hands it to every plan. The zero value is no log.
type Past struct {
	beds  map[string]*BedPast
	paces map[paceKey][]learning.Covered
	since map[string]sinceSalt // through a softener since its last salt
	gone  string               // a bed of the log that the rig does not have
	kin   []kin                // what the tanks teach of one another, the one used last first

	washed []washed // those of planned washes, the oldest first
}

// BedPast is the history of one bed.
type BedPast struct {
	Bed   model.Bed // as it is filled now
	Fills []FillPast
	Draws []Draw

	sized quantity.Volume // resin that the rig states of the tank, whatever was filled in

	next func() *FillPast // after a change of the resin, worked out when first asked for
}

// Draw is DI water that a wash took from a bed.
type Draw struct {
	At      model.Moment
	Volume  quantity.Volume
	Vehicle string // "" where the log does not say
}

// Present is the fill that is in the tank.
func (b *BedPast) Present() *FillPast { return &b.Fills[len(b.Fills)-1] }

// FillPast is one fill of resin, from its change to the next.
type FillPast struct {
	Began    model.Moment // not given for a fill from before the log
	Last     model.Moment // of its last entry
	Lot      string
	Price    quantity.Opt[quantity.Money]
	Resin    quantity.Volume
	Gallons  quantity.Volume // DI water it has given
	Washes   int
	Readings []PastReading

	fill      learning.Fill
	given     []quantity.Volume // by the end of each of the fill's uses
	posterior learning.Posterior
	stand     stand                               // of the present fill
	aged      quantity.Opt[Band[quantity.Volume]] // given before the log, by the readings
	metered   int                                 // readings that told what it had given, by a meter or a person
}

// PastReading is a reading after the bed, where it stands on the curve.
type PastReading struct {
	ID       string
	At       model.Moment
	Gallons  quantity.Volume // the fill had given
	Reading  quantity.Reading
	PPM      float64 // on the scale of the defaults' limit, else of the pen
	Expected float64 // ppm, in the middle of what is believed; NaN where not used
	Counts   bool
	Suspect  *learning.Suspect // where no bed explains it
}

type paceKey struct{ sprayer, stage string }

// Bed gives the past of a bed, or nil where the log knows none.
func (p *Past) Bed(name string) *BedPast {
	if p == nil {
		return nil
	}
	return p.beds[strings.ToLower(name)]
}

// Recall replays a log against the rig and the places. The log is taken as it
// counts: struck entries are left out, corrected ones corrected. The work grows
// with the log; the result does not depend on the wash that is planned.
func Recall(log model.Log, rig model.Rig, places model.Places) *Past {
	p := &Past{beds: map[string]*BedPast{}, paces: map[paceKey][]learning.Covered{}, since: map[string]sinceSalt{}}
	if len(log) == 0 {
		return p
	}
	effective := log.Effective()
	events := eventsOf(effective)
	var replays []*replay
	for _, b := range rig.Beds {
		r := &replay{rig: &rig, places: places, bed: b, taps: map[string]quantity.Reading{}}
		if r.run(events) {
			replays, p.kin = append(replays, r), append(p.kin, r.kin())
		}
	}
	sort.SliceStable(p.kin, func(i, j int) bool { return p.kin[j].last.Compare(p.kin[i].last) < 0 })
	for _, r := range replays {
		p.beds[strings.ToLower(r.bed.Name)] = r.learn(p)
	}
	p.gone = goneBed(events, &rig)
	p.recallWashes(events)
	p.recallPaces(events)
	p.recallSofteners(events, &rig, places)
	return p
}

// goneBed is the bed that the log named last of those which the rig does not have; "" where
// there is none.
func goneBed(events []event, rig *model.Rig) string {
	for _, e := range slices.Backward(events) {
		name := ""
		switch b := e.body.(type) {
		case *model.Refill:
			name = b.Bed
		case *model.Sample:
			name = b.Bed
		}
		if e.wash != nil {
			name = e.wash.Wash.Bed
		}
		if name != "" && !slices.ContainsFunc(rig.Beds, func(b model.Bed) bool { return strings.EqualFold(b.Name, name) }) {
			return name
		}
	}
	return ""
}

// event is one thing of the log in the order in which it counts: a wash with
// its stages is one.
type event struct {
	id   string
	at   model.Moment
	last int // in the log, of the last entry that it was told by
	body model.Body
	wash *model.WashRecord
}

// compare orders events by moment, those of one moment as they stand in the log.
func (e event) compare(f event) int { return cmp.Or(e.at.Compare(f.at), cmp.Compare(e.last, f.last)) }

func eventsOf(log model.Log) []event {
	var events []event
	washes := washEvents(log)
	next := 0
	for i := range log {
		e := event{id: log[i].ID, at: log[i].At, last: i, body: log[i].Body}
		for next < len(washes) && washes[next].compare(e) <= 0 {
			events = append(events, washes[next])
			next++
		}
		switch e.body.(type) {
		case *model.WashDone, *model.StageDone, *model.Correction:
		default:
			events = append(events, e)
		}
	}
	return append(events, washes[next:]...)
}

func (p *Past) recallPaces(events []event) {
	for _, e := range events {
		if e.wash == nil {
			continue
		}
		for _, s := range e.wash.Stages {
			area, known := s.Area.Get()
			if !known {
				continue
			}
			done := learning.CoveredBy(area, 1, s.Used.Or(0), s.Flow.Or(0))
			if time, timed := s.Duration.Get(); timed {
				done = learning.Covered{Area: area, Duration: time}
			}
			key := paceKeyOf(s.Sprayer, s.Stage)
			p.paces[key] = append(p.paces[key], done)
		}
	}
}

func paceKeyOf(sprayer, stage string) paceKey {
	return paceKey{strings.ToLower(sprayer), strings.ToLower(stage)}
}

// pace is the coverage rate that the log teaches for a stage and a sprayer.
func (p *Past) pace(sprayer, stage string, usual quantity.Coverage) (learning.Pace, bool) {
	if p == nil {
		return learning.Pace{}, false
	}
	done := p.paces[paceKeyOf(sprayer, stage)]
	if len(done) == 0 {
		return learning.Pace{}, false
	}
	learned := learning.LearnPace(usual, done)
	return learned, learned.Count > 0
}

// statedSince is what the rig says went through a softener before the log.
func statedSince(name string, rig *model.Rig) quantity.Volume {
	for _, s := range rig.Softeners {
		if strings.EqualFold(s.Name, name) {
			return s.SoFar.Or(0)
		}
	}
	return 0
}

// softenerOf is the softener of a wash that was done: the one it names, else the
// rig's only or usual one, else none.
func softenerOf(w model.WashDone, rig *model.Rig) string {
	switch {
	case strings.EqualFold(w.Softener, model.NoSoftener):
		return ""
	case w.Softener != "":
		return w.Softener
	case rig.Defaults.Softener != "":
		return rig.Defaults.Softener
	case len(rig.Softeners) > 0:
		return rig.Softeners[0].Name
	}
	return ""
}

// feedOf is the water that went into the bed in a wash: that of the place, by
// the last reading at its tap where there was one, softened where it was.
func (r *replay) feedOf(place string, softened bool, temperature quantity.Opt[quantity.Temperature]) (water.Analysis, bool) {
	facts, known := r.factsOf(place)
	if !known {
		return water.Analysis{}, false
	}
	if temperature.Given() {
		facts.Temperature = temperature
	}
	a := water.Analyse(facts)
	if softened {
		a = water.Soften(a)
	}
	return a, true
}

func (r *replay) factsOf(place string) (water.Facts, bool) {
	pen := r.penScale()
	if place == "" {
		place = r.rig.Defaults.Place
	}
	if place == "" && len(r.places) > 0 {
		place = r.places[0].Name
	}
	tap, tapped := r.taps[strings.ToLower(place)]
	if i := model.Find(r.places.Names(), place); i >= 0 {
		facts := water.FactsOf(&r.places[i], pen)
		if tapped {
			facts.TDS = tap
		}
		return facts, facts.TDS.Number > 0
	}
	if tapped {
		return water.Facts{TDS: tap, Pen: pen}, tap.Number > 0
	}
	return water.Facts{}, false
}

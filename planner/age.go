package planner

import (
	"fmt"
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// stand is how the bed stands before the wash.
type stand struct {
	belief learning.Belief
	states []learning.State
	middle learning.State
	soFar  quantity.Volume
	fed    float64 // what the fill was given, in stated capacities; 0 where nobody counted
	odd    float64 // ppm of the last reading where no bed explains it, else 0

	unexplained []learning.Suspect // among the readings that were weighed
}

// ager works out how a bed of an age stands, but for its gallons; see [standAt].
type ager func(learning.Age) stand

// standAt believes of a bed what a log that says as much would teach. Where a reading alone
// is known, it decides among all ages.
func standAt(age learning.Age) stand {
	if age.Reading != nil && len(age.History) == 0 {
		s := stand{belief: learning.Prior()}
		s.states = learning.ByReading(s.belief, *age.Reading)
		s.middle = learning.MiddleByReading(s.states, *age.Reading)
		return s
	}
	fill := learning.Fill{Uses: age.History}
	if age.Reading != nil {
		fill.Readings = []learning.Reading{{Evidence: *age.Reading, After: len(age.History)}}
	}
	p := learning.Start().Learn(fill)
	return stand{belief: p.Belief(), states: p.States, middle: p.Middle(), unexplained: p.Unexplained}
}

// toldAge is what a rig says of a bed's age.
type toldAge struct {
	gallons quantity.Opt[quantity.Volume]
	reading quantity.Opt[quantity.Reading] // flushed
	at      quantity.Flow                  // of the reading
}

// decideAge reads how old the fill is: gallons so far, a reading, both, or
// nothing, which is taken as fresh. Ppm are on scale.
func (r *resin) decideAge(l *ledger, ages ager, b model.Bed, pen, scale quantity.Scale, flow quantity.Flow) stand {
	told := r.statedAge(l, b, pen, flow)
	age := learning.Age{}
	gallons, counted := told.gallons.Get()
	if gallons > 0 {
		age.History = []learning.Use{r.use(gallons, flow)}
	}
	if reading, read := told.reading.Get(); read {
		age.Reading = &learning.Evidence{Read: ppmOn(scale, reading), Feed: r.feed.PPM(scale).Number, Units: r.units(told.at)}
		r.warnOfFeed(l, *age.Reading, scale)
	}
	s := ages(age)
	r.doubt(l, &s, age, scale)
	s.soFar = gallons
	s.fed = fedBy(age.History)
	if !counted {
		s.soFar = r.load.Supply(r.whole * quantity.Capacity(s.middle.Factor*s.middle.Column.Used()))
	}
	return s
}

// fedBy is what uses brought to a bed, in stated capacities.
func fedBy(uses []learning.Use) float64 {
	sum := 0.0
	for _, u := range uses {
		sum += u.Capacities
	}
	return sum
}

// statedAge writes down what the rig says, and leaves a first cup out.
func (r *resin) statedAge(l *ledger, b model.Bed, pen quantity.Scale, flow quantity.Flow) toldAge {
	told := toldAge{gallons: b.SoFar}
	if told.gallons.Given() {
		take(l, bedSoFar, b.SoFar, 0, yours)
	}
	reading, given := b.LastReading.Get()
	if given && b.Flushed == model.No {
		l.warn("unflushed", "The last outlet reading was a first cup after standing: such water reads low, so it is shown and not used. Flush, and read again.")
		given = false
	}
	if given {
		reading = reading.WithScale(pen).WithScale(water.DefaultScale())
		told.reading = quantity.Some(reading)
		l.assume(Assumption{Name: "bed last reading", Words: reading.String(), Source: yours})
		takeWords(l, "last reading flushed", string(b.Flushed), string(model.Yes), practice("you would say so if it were a first cup"))
		told.at = take(l, "flow of the last reading", b.LastFlow, flow, practice("the sprayer's flow"))
	}
	if !given && !told.gallons.Given() {
		l.assume(Assumption{Name: bedSoFar, Value: quantity.ValueOf(quantity.Volume(0)), Source: practice("taken as freshly filled: state gallons_so_far or last_reading")})
	}
	return told
}

// What the assumptions call what the fill has given, in all and before the log.
const (
	bedSoFar      = "bed gallons so far"
	bedBeforeLog  = "bed age when the log began"
	bedByReadings = "bed age by its readings"
)

// TakenAsNew tells that the plan takes the bed as freshly filled since neither the rig nor
// the log says how old the fill is, and no wash has run water through it since.
func (p *Plan) TakenAsNew() bool {
	return p.Bed.SoFar <= 0 && p.assumes(bedSoFar) && !p.AgedByReadings()
}

// AgedByReadings tells that the readings alone say how old the fill is; see [BedPast.Aged].
func (p *Plan) AgedByReadings() bool { return p.assumes(bedByReadings) }

// CountedFromLog tells that the plan counts the fill from the first wash of the log on,
// since nobody said what it had given before.
func (p *Plan) CountedFromLog() bool { return p.assumes(bedBeforeLog) }

// assumes tells that something was taken from practice, since nobody stated it.
func (p *Plan) assumes(name string) bool {
	return slices.ContainsFunc(p.Assumptions, func(a Assumption) bool { return a.Name == name && a.Source.Tag == tag.Practice })
}

// overFeed is how far over the feed a reading is more than a pen's error.
// PRACTICE.
const overFeed = 1.25

func (r *resin) warnOfFeed(l *ledger, e learning.Evidence, scale quantity.Scale) {
	if e.Read > overFeed*e.Feed+learning.PenError {
		l.warnWords("reading-over-feed", fmt.Sprintf("The last outlet reading of %s is over the %s that the water itself reads: a bed cannot add that. One of the two is of another pen, place or scale.", showPPM(e.Read, scale), showPPM(e.Feed, scale)))
	}
}

// doubt tells of a reading that no bed of this age explains.
func (r *resin) doubt(l *ledger, s *stand, age learning.Age, scale quantity.Scale) {
	for i := range s.unexplained {
		odd := &s.unexplained[i]
		s.odd = age.Reading.Read
		l.warnWords("unexplained-reading", fmt.Sprintf("The last outlet reading, %s, fits no bed that has given so many gallons; it would show %s. It is not used. Likely causes, and what to check, follow.", showPPM(s.odd, scale), showPPM(odd.Expected, scale)))
		l.warnCauses(odd)
	}
}

// mostCauses is how many causes of one reading are worth telling at once.
const mostCauses = 3

func (l *ledger) warnCauses(s *learning.Suspect) {
	for _, c := range s.Causes[:min(len(s.Causes), mostCauses)] {
		l.warnings = append(l.warnings, c.Note)
	}
}

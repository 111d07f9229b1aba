package planner

import (
	"cmp"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// sinceSalt is what ran through a softener since its last salt. What it took stays
// the same wherever it goes on; gallons of a water that nobody knows are kept apart.
type sinceSalt struct {
	gallons quantity.Volume
	took    quantity.Capacity
	unknown quantity.Volume // of the gallons, those that are not in took
	salt    model.Moment    // the last one of the log
}

// add is more of a water; hardness is nil where nobody knows it.
func (s sinceSalt) add(v quantity.Volume, hardness *quantity.Load) sinceSalt {
	s.gallons += v
	if hardness == nil {
		s.unknown += v
		return s
	}
	s.took += hardness.In(v)
	return s
}

// takenAt is what the softener has taken, where the gallons of unknown water were of
// this hardness.
func (s sinceSalt) takenAt(hardness quantity.Load) quantity.Capacity {
	return s.took + hardness.In(s.unknown)
}

// hardnessAt is the hardness of the water of the place of that name, else of the
// usual place; nil where neither is known.
func hardnessAt(places model.Places, rig *model.Rig, name string) *quantity.Load {
	for _, wanted := range []string{name, rig.Defaults.Place} {
		if i := model.Find(places.Names(), wanted); wanted != "" && i >= 0 {
			return hardnessOf(&places[i], penScale(usualPen(rig)))
		}
	}
	if len(places) == 0 {
		return nil
	}
	return hardnessOf(&places[0], penScale(usualPen(rig)))
}

func hardnessOf(p *model.Place, pen quantity.Scale) *quantity.Load {
	if !p.TDS.Given() {
		return nil
	}
	a := water.Analyse(water.FactsOf(p, pen))
	load := quantity.Load(a.Hardness())
	return &load
}

// usualPen is the pen that readings are taken with, the zero pen where there is none.
func usualPen(rig *model.Rig) model.Pen {
	for _, p := range rig.Pens {
		if rig.Defaults.Pen == "" || strings.EqualFold(p.Name, rig.Defaults.Pen) {
			return p
		}
	}
	return model.Pen{}
}

// usualPlace is the name of the place that counts where none is named; "" where there
// is none.
func usualPlace(rig *model.Rig, places model.Places) string {
	if name := rig.Defaults.Place; name != "" || len(places) == 0 {
		return name
	}
	return places[0].Name
}

// recallSofteners counts what ran through each softener since its last salt: at the
// hardness of the place that a wash names, else of the usual one.
func (p *Past) recallSofteners(events []event, rig *model.Rig, places model.Places) {
	known := map[string]*quantity.Load{}
	at := func(place string) *quantity.Load {
		hardness, worked := known[place]
		if !worked {
			hardness = hardnessAt(places, rig, place)
			known[place] = hardness
		}
		return hardness
	}
	softened := func(name string, through quantity.Volume, place string) {
		key := strings.ToLower(name)
		since, counted := p.since[key]
		if !counted {
			since = since.add(statedSince(key, rig), at(""))
		}
		p.since[key] = since.add(through, at(place))
	}
	for _, e := range events {
		switch b := e.body.(type) {
		case *model.Regeneration:
			p.since[strings.ToLower(b.Softener)] = sinceSalt{salt: e.at}
		case *model.Sample:
			if flush := b.FlushWater.Or(0); flush > 0 && b.Point == model.AfterBed && b.Feed != model.No {
				softened(softenerOf(model.WashDone{}, rig), flush, b.Place)
			}
		}
		if e.wash == nil {
			continue
		}
		name, through := ThroughSoftener(&e.wash.Wash, rig)
		softened(name, through, e.wash.Wash.Place)
	}
}

// ThroughSoftener is what a wash sent through a softener, and through which one: "" where it
// had none.
func ThroughSoftener(w *model.WashDone, rig *model.Rig) (softener string, through quantity.Volume) {
	through = w.Softened.Or(0)
	if w.Feed != model.No {
		through += w.DI.Or(0)
	}
	return softenerOf(*w, rig), through
}

// Salted is what a log tells of a softener.
type Salted struct {
	Through quantity.Volume // since its last salt, what the rig states included where the log has no salt
	Last    model.Moment    // its last salt; not given where the log has none
}

// Softener gives what the log tells of a softener; false where it tells nothing.
func (p *Past) Softener(name string) (Salted, bool) {
	since, known := p.sinceSalt(name)
	return Salted{Through: since.gallons, Last: since.salt}, known
}

// sinceSalt is what ran through a softener since the log's last regeneration.
func (p *Past) sinceSalt(softener string) (sinceSalt, bool) {
	if p == nil {
		return sinceSalt{}, false
	}
	s, known := p.since[strings.ToLower(softener)]
	return s, known
}

// rememberSoftener puts what ran through the softener by the log over what the rig
// states of it. Gallons that the rig states were of the usual place's water.
func (m *making) rememberSoftener() {
	if m.softener == nil {
		return
	}
	since, known := m.past.sinceSalt(m.softener.Name)
	m.sinceFrom = fromLog
	m.tookFrom = tag.Source{Tag: tag.Yours, Text: "your log: each wash at the hardness of its place" + m.elsewhere(", or of %, where it names none")}
	if m.setting.Salted {
		since, known = sinceSalt{}, true
		m.sinceFrom = tag.Source{Tag: tag.Yours, Text: "this way begins with salt"}
	}
	if !known {
		m.sinceFrom = yours
		m.tookFrom = practice("the log does not say where these gallons ran: taken as" + cmp.Or(m.elsewhere(" water of %, the usual place"), " this place's water"))
		m.since = m.since.add(m.softener.SoFar.Or(0), m.home.hardness)
		return
	}
	m.since = since
	salted := *m.softener
	salted.SoFar = quantity.Some(since.gallons)
	m.softener = &salted
}

// elsewhere is words with the name of the usual place for %; "" where there is none.
func (m *making) elsewhere(words string) string {
	if m.home.name == "" || m.home.hardness == nil {
		return ""
	}
	return strings.Replace(words, "%", m.home.name, 1)
}

// home is the usual place.
type home struct {
	name     string
	hardness *quantity.Load // nil where nobody knows it
}

func homeOf(rig *model.Rig, places model.Places) home {
	return home{usualPlace(rig, places), hardnessAt(places, rig, "")}
}

package planner

import (
	"cmp"
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/split"
)

// sharingOut is a sharing under the pins and the confidence of a wash.
type sharingOut struct {
	*Sharing
	wash       model.Wash
	confidence quantity.Fraction
	pins       []split.Pin
	gives      []quantity.Volume // by flow
	all        split.Worth       // of the faces that the wash rinses with DI
}

// Out shares the DI water out under the pins and the confidence of a wash; the
// rest of it is the wash that the sharing was made for. It makes one plan, seldom
// more.
func (s *Sharing) Out(wash model.Wash) (Share, error) {
	o := sharingOut{Sharing: s, wash: s.wash, confidence: confidenceOf(wash), pins: s.pinsOf(wash)}
	o.wash.DIFaces, o.wash.TowelFaces, o.wash.Confidence = wash.DIFaces, wash.TowelFaces, wash.Confidence
	for _, f := range s.flows {
		o.gives = append(o.gives, f.gives(o.confidence))
	}
	for {
		at, choice := s.best(o.pins, o.gives)
		share, err := o.share(at, choice)
		enough := share.Chance >= o.confidence || choice.Short > 0 || len(choice.In) == 0
		if err != nil || enough {
			return share, err
		}
		// The plan of the share takes more than its faces were thought to: another
		// stage runs at another flow, or the day has another order.
		for i := range o.gives {
			o.gives[i] = min(o.gives[i], choice.Needs) * 0.95
		}
	}
}

// share is a choice, with the plan of it.
func (o *sharingOut) share(at servable, c split.Choice) (Share, error) {
	out := Share{
		Confidence: o.confidence, Flow: at.flow, Drawn: o.drawn, Gives: at.gives(o.confidence),
		Flush: at.made.flush, Takes: c.Needs, Short: c.Short, Asked: o.wash, Wash: o.stated(at, c),
	}
	m, err := o.begin(out.Wash)
	if err != nil {
		return out, err
	}
	m.outcome(&out)
	faces := o.candidates(at, o.pins)
	o.all = 0
	for i, f := range faces {
		if slices.Contains(o.asked, o.order[i]) {
			out.Needs += f.Needs
			o.all += f.Worth
		}
	}
	out.Spared = partOf(c.Worth, o.all)
	_, free := o.best(o.pinsOf(model.Wash{}), o.gives)
	out.Unpinned = max(partOf(free.Worth, o.all), out.Spared)
	through := quantity.Volume(0)
	for _, i := range o.listed(c, faces, &m.plan) {
		f := o.faceShare(i, slices.Contains(c.In, i), m)
		through += faces[i].Needs
		f.Needs, f.Reaches, f.Other = faces[i].Needs, at.reaches(through), o.turned(i, c)
		out.Faces = append(out.Faces, f)
	}
	return out, nil
}

// outcome works out how a share ends: of a plan's answer, what a share shows.
func (m *making) outcome(out *Share) {
	ahead := m.resin.job(m.ask).Outlook(m.before.states)
	out.Chance = quantity.Fraction(ahead.ChanceLasts)
	if m.ask.needless() {
		out.Chance = 1
	}
	out.Verdict = m.verdict(out.Chance)
	out.DI, out.Soft, _ = m.done.totals()
	m.plan.Faces, m.plan.Bed.OutletAtEnd = m.done.faces, ppmBand(ahead.AtEnd, m.ask.feed)
	m.plan.settleFaces(m.faces, m.against)
}

// stated is the wash that has the share.
func (o *sharingOut) stated(at servable, c split.Choice) model.Wash {
	w := o.wash
	w.TowelFaces = nil
	for i, side := range o.order {
		if !slices.Contains(c.In, i) && slices.Contains(o.asked, side) {
			w.TowelFaces = append(w.TowelFaces, side)
		}
	}
	if at.flow < o.drawn && at.flow != w.DIFlow.Or(0) {
		w.DIFlow = holding(at.flow)
	}
	return w
}

// listed is the faces with DI in the order in which the plan of the share rinses them, so
// that what the bed does to get to each is what it does on the day; then the rest, what shows
// most first.
func (o *sharingOut) listed(c split.Choice, faces []split.Face, p *Plan) []int {
	turns := p.InTurn()
	turn := func(i int) int { return slices.Index(turns, o.order[i]) }
	in := slices.Clone(c.In)
	slices.SortStableFunc(in, func(a, b int) int { return cmp.Compare(turn(a), turn(b)) })
	var rest []int
	for i := range faces {
		if !slices.Contains(c.In, i) {
			rest = append(rest, i)
		}
	}
	slices.SortStableFunc(rest, func(a, b int) int { return cmp.Compare(faces[b].Shows, faces[a].Shows) })
	return append(in, rest...)
}

func (o *sharingOut) faceShare(i int, di bool, m *making) FaceShare {
	side := o.order[i]
	f, of := m.faceOf(side)
	out := FaceShare{
		Name: side, Area: f.Area, Asked: slices.Contains(o.asked, side), DI: di, Pin: o.pins[i],
		Water: f.Water, Use: f.Before, Spots: f.Spots, Shows: quantity.Fraction(showsOf(of)),
	}
	switch {
	case di:
		out.Use = Use{Volume: f.DI, Duration: f.DITime}
		out.Towel = towelTime(f.Area * quantity.Area(1-f.DIPart))
	case out.Asked:
		out.Towel = towelTime(f.Area)
	case !slices.Contains(o.wash.TowelFaces, side):
		out.Pin = split.Free
	}
	return out
}

// turned tries one face the other way.
func (o *sharingOut) turned(i int, now split.Choice) Turned {
	other := slices.Clone(o.pins)
	other[i] = split.In
	if slices.Contains(now.In, i) {
		other[i] = split.Out
	}
	_, then := o.best(other, o.gives)
	t := Turned{Spared: partOf(then.Worth, o.all), Short: then.Short}
	for k, side := range o.order {
		was, is := slices.Contains(now.In, k), slices.Contains(then.In, k)
		switch {
		case is && !was:
			t.Gain = append(t.Gain, side)
		case was && !is:
			t.Lose = append(t.Lose, side)
		}
	}
	return t
}

func partOf(some, all split.Worth) quantity.Fraction {
	if all <= 0 {
		return 0
	}
	return quantity.Fraction(min(float64(some)/float64(all), 1))
}

package learning

import (
	"math"
	"slices"
	"sort"

	"washeve/planner/tag"
)

// Suspect is a reading that fits no bed. It weighs next to nothing.
type Suspect struct {
	ReadingIndex int
	Odd          float64 // chance that something else than the bed is behind it
	Expected     float64 // ppm, in the middle of what the fill would give
	Causes       []Cause // the likely ones, most likely first; each says what to check
}

// Cause is what may be behind a reading that fits no bed.
type Cause struct {
	Code CauseCode
	Note tag.Note
}

// foreseeable are all the sound readings, the unflushed ones with them.
func (f Fill) foreseeable(c course) []sight {
	var out []sight
	for i, r := range f.Readings {
		if r.sound() {
			out = append(out, r.sight(i, c.place[f.place(r)]))
		}
	}
	return out
}

// foresee works out what each reading should have shown, and lists those that
// are more likely odd than not.
func (p *Posterior) foresee(s *search, seen []sight, d draws, aside []int) {
	p.Expected = make([]Quantiles, len(p.fill.Readings))
	for i := range p.Expected {
		p.Expected[i] = Quantiles{math.NaN(), math.NaN(), math.NaN()}
	}
	truths := make([]weighted, len(d)*len(seen))
	odd := make([]float64, len(seen))
	for k, x := range d {
		s.fronts.read(math.Log(x.e/x.r), s.front)
		for i, r := range seen {
			m := r.truth(x.e, s.front[r.cut])
			truths[i*len(d)+k] = weighted{m, 1}
			odd[i] += r.odd / r.weight(m)
		}
	}
	for i, r := range seen {
		q := quantiles(truths[i*len(d) : (i+1)*len(d)])
		for k := range q {
			q[k] = math.Exp(q[k]) - PenFloor
		}
		p.Expected[r.index] = q
		chance := odd[i] / float64(len(d))
		if slices.Contains(aside, r.index) {
			chance = math.Max(chance, 0.5)
		}
		if told := p.fill.Readings[r.index]; told.counts() && chance >= 0.5 {
			p.Unexplained = append(p.Unexplained, Suspect{ReadingIndex: r.index, Odd: chance, Expected: q[1]})
		}
	}
	for i := range p.Unexplained {
		p.Unexplained[i].Causes = p.causesOf(i)
	}
}

// certain are the suspects that are odd all but certainly.
func (p *Posterior) certain() []int {
	const sure = 0.99
	var out []int
	for _, s := range p.Unexplained {
		if s.Odd >= sure {
			out = append(out, s.ReadingIndex)
		}
	}
	return out
}

// companions are readings that could be the bed's, but leak the same share as
// two or more suspects: what is behind those is behind these too.
func (p *Posterior) companions() []int {
	const alike, fewest, most = 0.3, 2, 0.7
	var out []int
	for i, r := range p.fill.Readings {
		if !r.counts() || r.Sense != Shown || p.suspects(i) {
			continue
		}
		same := 0
		for _, s := range p.Unexplained {
			other := p.fill.Readings[s.ReadingIndex]
			leaks := other.Sense == Shown && other.Read > s.Expected && other.Read < most*other.Feed
			if leaks && math.Abs(math.Log(r.Read/r.Feed)-math.Log(other.Read/other.Feed)) < alike {
				same++
			}
		}
		if same >= fewest {
			out = append(out, i)
		}
	}
	return out
}

// causesOf puts the causes that suit a suspect in order.
func (p *Posterior) causesOf(which int) []Cause {
	c := p.circumstancesOf(which)
	type scored struct {
		cause Cause
		score float64
	}
	var list []scored
	for _, k := range causes() {
		if score := k.suits(c); score > 0 {
			list = append(list, scored{Cause{k.code, k.note(c)}, score})
		}
	}
	sort.SliceStable(list, func(i, j int) bool { return list[i].score > list[j].score })
	out := make([]Cause, len(list))
	for i, s := range list {
		out[i] = s.cause
	}
	return out
}

// circumstances are what the other readings say of a suspect.
type circumstances struct {
	Reading
	expected  float64 // ppm
	share     float64 // of the feed
	high      bool    // over what the bed should give
	atEnd     bool    // no reading, but how the fill ended
	constant  bool    // another suspect leaks the same share at quite another flow
	falling   bool    // another suspect leaks less at a slower flow
	ratio     float64 // read over expected
	again     bool    // another reading is off in the same ratio
	lowBefore bool    // an earlier reading of this fill was as it should be
	lowAfter  bool    // a later one was
	highSoFar bool    // the reading before was of a bed near its end
	highAfter bool    // a later one was as it should be, and high
	stays     bool    // a later suspect is as high, or as low
}

func (p *Posterior) circumstancesOf(which int) circumstances {
	suspect := p.Unexplained[which]
	r := p.fill.Readings[suspect.ReadingIndex]
	c := circumstances{
		Reading: r, expected: suspect.Expected, share: r.Read / r.Feed,
		high: r.Read > suspect.Expected, atEnd: r.Sense != Shown,
		ratio: (r.Read + PenFloor) / (suspect.Expected + PenFloor),
	}
	for i, other := range p.fill.Readings {
		if i == suspect.ReadingIndex || !other.counts() || other.Sense != Shown {
			continue
		}
		c.compare(other, p.Expected[i][1], p.suspects(i))
	}
	return c
}

func (p *Posterior) suspects(index int) bool {
	return slices.ContainsFunc(p.Unexplained, func(s Suspect) bool { return s.ReadingIndex == index })
}

// compare sets the suspect beside another reading of the fill.
func (c *circumstances) compare(other Reading, expected float64, suspect bool) {
	share := other.Read / other.Feed
	near := math.Abs(math.Log((other.Read+PenFloor)/(expected+PenFloor)/c.ratio)) < 0.2
	c.again = c.again || near && other.Read > 5
	earlier := other.After < c.After
	switch {
	case !suspect && earlier:
		c.lowBefore = c.lowBefore || share < 0.5*c.share
		c.highSoFar = share > 0.3
	case !suspect:
		c.lowAfter = c.lowAfter || share < 0.5*c.share
		c.highAfter = c.highAfter || share > 2*c.share
	case suspect && !earlier:
		c.stays = c.stays || c.high && share > 0.7*c.share || !c.high && share < 1.5*c.share
	}
	if !suspect || !c.high {
		return
	}
	flows, shares := math.Log(other.Units/c.Units), math.Log(share/c.share)
	if math.Abs(flows) > 0.25 {
		same := math.Abs(shares) < 0.3
		c.constant = c.constant || same
		c.falling = c.falling || !same && flows*shares < 0
	}
}

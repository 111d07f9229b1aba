package planner

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/rinse"
	"washeve/planner/surface"
	"washeve/planner/tag"
)

// program is the wash, worked out.
type program struct {
	stages []StagePlan
	faces  []FacePlan
	di     []diUse // what goes through the bed, in order
}

// diUse is DI water drawn at one flow.
type diUse struct {
	flow   quantity.Flow
	volume quantity.Volume
}

// rinser is what the final rinse works against.
type rinser struct {
	raw, softened, clean, target float64 // ppm on the limit's scale
	quick                        float64 // 1; over the usual coverage rate in a band
	mixing                       float64
	only                         []model.Surface // that DI water goes on; all where empty
}

func (r rinser) ppm(w model.Water) float64 {
	switch w {
	case model.DI:
		return r.clean
	case model.Softened:
		return r.softened
	}
	return r.raw
}

// UsualStages are those of a wash that states none, by the rig: whether a softener stands
// in it, and which vehicle is washed.
func UsualStages(rig model.Rig, wash model.Wash) []model.Stage {
	softener := len(rig.Softeners) > 0 && model.Find([]string{model.NoSoftener}, wash.Softener) < 0
	roof := false
	if v, err := pickVehicle(rig, wash); err == nil {
		roof = surface.RoofShows(v.Shape, v.RoofSkin)
	}
	return rinse.UsualStages(softener, roof)
}

// stagesOf gives the stages of the wash, the usual ones where none is stated,
// and warns of softened water without a softener.
func stagesOf(l *ledger, c chosen) []model.Stage {
	stages := c.wash.Stages
	if len(stages) == 0 {
		l.assume(Assumption{Name: "stages", Words: "pre-rinse, soap, contact wash, rinse, final rinse", Source: practice("the usual order")})
		stages = rinse.UsualStages(c.softener != nil, surface.RoofShows(c.vehicle.Shape, c.vehicle.RoofSkin))
	}
	out := make([]model.Stage, len(stages))
	for i, s := range stages {
		if s.Water == model.Softened && c.softener == nil {
			l.warn("no-softener", "A stage asks for softened water, but there is no softener in this wash: it is planned with raw water.")
			s.Water = model.Raw
		}
		if len(s.Faces) == 0 {
			s.Faces = model.Sides()
		}
		out[i] = s
	}
	return share(l, c, out)
}

// work goes through the stages face by face.
func work(l *ledger, stages []model.Stage, faces []face, chain plumbing, r rinser) program {
	var p program
	p.faces, p.stages = make([]FacePlan, len(faces)), make([]StagePlan, 0, len(stages))
	for i, f := range faces {
		p.faces[i] = FacePlan{Name: f.side, Area: f.area, Film: f.film, Pause: f.pause, Water: model.Raw, DIPart: f.part, dirty: r.raw}
	}
	for _, s := range stages {
		tool := chain.toolOf(s)
		sp := StagePlan{
			Name: s.Name, Water: s.Water, Faces: s.Faces, Sprayer: tool.name, Flow: tool.flowOf(s.Water), Final: s.Final,
			Passes:   takeNumber(l, s.Name+" passes", s.Passes, 1),
			Coverage: r.coverage(l, s, tool), Valves: chain.valves(s.Water),
			PerFace: make([]FaceUse, 0, len(s.Faces)),
		}
		for i := range p.faces {
			if f := &p.faces[i]; slices.Contains(s.Faces, f.Name) {
				f.wet(&sp, s, r)
			}
		}
		if s.Water == model.DI && sp.Volume > 0 {
			p.di = append(p.di, diUse{sp.Flow, sp.Volume})
		}
		p.stages = append(p.stages, sp)
	}
	for i, f := range faces {
		p.faces[i].settle(f.shares, r.clean, r.only)
	}
	return p
}

// coverage writes down the rate at which a stage goes over the body.
func (r rinser) coverage(l *ledger, s model.Stage, tool tool) quantity.Coverage {
	rate, source := tool.rate(s)
	l.assume(Assumption{Name: s.Name + " coverage rate", Value: quantity.ValueOf(rate), Source: source})
	return quantity.Coverage(float64(rate) * r.quick)
}

// wet adds one face to a stage. A final rinse of DI takes what replaces the
// film where that is more than going over it once.
func (f *FacePlan) wet(sp *StagePlan, s model.Stage, r rinser) {
	area := f.Area
	if s.Water == model.DI && f.DIPart <= 0 {
		return // none of its surfaces takes it
	}
	if s.Water == model.DI {
		area *= quantity.Area(f.DIPart)
	}
	volume, duration := rinse.Cover(area, sp.Passes, sp.Coverage, sp.Flow)
	if s.Water == model.DI {
		f.ToCover += volume
		f.Governs = ByCoverage
		if s.Final {
			need, possible := rinse.ToReach(r.target, f.film(r.clean, r.mixing), r.clean, area, f.Film, r.mixing)
			f.ToDilute, f.rinsed, f.ample = need, true, possible && need <= volume
			if possible && need > volume && sp.Flow > 0 {
				volume, duration = need, sp.Flow.Time(need)
				f.Governs = ByDilution
			}
		}
		f.DI += volume
		f.DITime += duration
		f.since += volume
	} else {
		f.dirty, f.since = r.ppm(s.Water), 0
		f.Before = Use{volume, duration}
	}
	f.Water = s.Water
	sp.PerFace = append(sp.PerFace, FaceUse{f.Name, area, Use{volume, duration}})
	sp.Area += area
	sp.Volume += volume
	sp.Duration += duration
}

// film is what the film holds now, in ppm, under DI water of clean ppm.
func (f *FacePlan) film(clean, mixing float64) float64 {
	if f.since <= 0 {
		return f.dirty
	}
	return rinse.PPMAfter(f.dirty, clean, f.since, f.Area*quantity.Area(f.DIPart), f.Film, mixing)
}

// ample tells that the target sets no gallons: each face with a final rinse of DI water
// gets more by being covered. It is false where there is none.
func (p program) ample() bool {
	rinsed := false
	for i := range p.faces {
		f := &p.faces[i]
		if f.rinsed && !f.ample {
			return false
		}
		rinsed = rinsed || f.rinsed
	}
	return rinsed
}

// totals adds the stages up by water.
func (p program) totals() (di, soft, raw Use) {
	for _, s := range p.stages {
		at := &raw
		switch s.Water {
		case model.DI:
			at = &di
		case model.Softened:
			at = &soft
		}
		at.Volume += s.Volume
		at.Duration += s.Duration
	}
	return di, soft, raw
}

func takeNumber(l *ledger, name string, given quantity.Opt[float64], fallback float64) float64 {
	v, ok := given.Get()
	source := tag.Source{Tag: tag.Yours, Text: yours.Text}
	if !ok {
		v, source = fallback, practice("once over")
	}
	l.assume(Assumption{Name: name, Words: quantity.Round(v), Source: source})
	return v
}

package planner

import (
	"fmt"
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/bed"
	"washeve/planner/flow"
	"washeve/planner/learning"
	"washeve/planner/rinse"
	"washeve/planner/tag"
	"washeve/planner/water"
)

// reason writes down, for every number that is shown, the formula in words, its
// inputs and its source.
func (p *Plan) reason(l *ledger, r resin, feed water.Analysis, before stand, a asked, faces []face) {
	p.reasonWater(l, feed, a)
	p.reasonUse(l)
	p.reasonCap(l, r, a)
	p.reasonBed(l, r, before, a)
	p.reasonFaces(l, faces, a)
	p.reasonRest(l)
	p.reasonDay(l)
}

func published(text string) tag.Source { return tag.Source{Tag: tag.Published, Text: text} }

func memory(text string) tag.Source { return tag.Source{Tag: tag.Memory, Text: text} }

// hardnessSource says whether the hardness was measured.
func hardnessSource(w Water) tag.Source {
	if w.HardnessSaid {
		return yours
	}
	return practice("a usual hard tap water")
}

func quantityReason[Q quantity.Quantity](number string, q Q, formula string, source tag.Source, inputs ...Assumption) Reason {
	return Reason{Number: number, Value: quantity.ValueOf(q), Formula: formula, Source: source, Inputs: inputs}
}

// capReason is [quantityReason] for a flow that is a limit.
func capReason(number string, limit quantity.Flow, formula string, source tag.Source, inputs ...Assumption) Reason {
	return Reason{Number: number, Value: quantity.AtMost(limit), Formula: formula, Source: source, Inputs: inputs}
}

func wordsReason(number, result, formula string, source tag.Source, inputs ...Assumption) Reason {
	return Reason{Number: number, Result: result, Formula: formula, Source: source, Inputs: inputs}
}

func (p *Plan) reasonWater(l *ledger, feed water.Analysis, a asked) {
	why := feed.EffectiveReason()
	l.explain(quantityReason("load of the feed", p.Softened.Load, why.Text(quantity.US), memory("Standard Methods 1030 E: cations = anions = EC/100 meq/L, within 10 %; ionic conductances of the CRC Handbook"),
		input("conductivity", feed.Conductivity), input("between", feed.Low), input("and", feed.High), input("silica and carbon dioxide", feed.AnionExtra())))
	l.explain(wordsReason("TDS of the feed", showPPM(a.feed, a.scale), "conductivity turned into ppm on your pen's scale, by the scale's published pairs", published("conductivity standards at 25 C, 23 to 2764 uS/cm"),
		input("conductivity", feed.Conductivity)))
	l.explain(quantityReason("hardness", p.Raw.Hardness, "as you stated it, or a usual share of the load; by the classes of the US Geological Survey this water is "+string(water.ClassOf(p.Raw.Hardness)), hardnessSource(p.Raw)))
}

func (p *Plan) reasonUse(l *ledger) {
	total := quantity.Volume(0)
	for _, s := range p.Stages {
		total += s.Volume
		l.explain(quantityReason(s.Name+" gallons", s.Volume, "area x passes x flow / coverage rate, each face; a final rinse takes more where the film asks for more", practice("the arithmetic of a steady hand"),
			input("area", s.Area), plain("passes", s.Passes), input("flow", s.Flow), input("coverage rate", s.Coverage)))
	}
	l.explain(quantityReason("DI gallons", p.DI.Volume, "sum of the stages that use DI; the band is a quicker and a slower hand (a quarter) with better and poorer mixing", practice("coverage rate and mixing are yours to measure"),
		input("least", p.DIBand.P10), input("most", p.DIBand.P90), input("all stages together", total)))
	l.explain(quantityReason("DI minutes", p.DI.Duration, "gallons over flow", practice("arithmetic"), input("flow", p.Sprayer.Flow)))
	l.explain(quantityReason("flush", p.Flush.Volume, "(voids x resin + free space + hose after the bed) x 1.5: the water that stood there has been cleaned on and on, and reads low", practice("one and a half times what stands"),
		Assumption{Name: "resin", Value: p.Bed.Resin.AsResin()}, input("voids", bed.Voids), input("at the flow", p.Sprayer.Flow)))
	l.explain(quantityReason("longer drip saves", p.Drip.Saves, "the final rinse worked out again with the longer pause: a thinner film needs less to replace it, but never less than once over", memory("Jeffreys 1930 for the film"),
		input("pause now", p.Drip.Pause), input("longer pause", p.Drip.Longer)))
}

func (p *Plan) reasonCap(l *ledger, r resin, a asked) {
	for _, c := range p.Cap.Caps {
		switch c.Name {
		case ByRating:
			l.explain(capReason("cap: rated", c.Flow, "the most that the maker allows", yours))
		case ByContactTime:
			l.explain(capReason("cap: contact time", c.Flow, "resin volume / least empty-bed contact time", practice("90 s"), Assumption{Name: "resin", Value: p.Bed.Resin.AsResin()}))
		case ByFaceVelocity:
			l.explain(capReason("cap: face velocity", c.Flow, "15 gpm/ft2 x cross section of the tank", published("AWWA/ASCE, Water Treatment Plant Design, 4th ed., 2005"), input("tank diameter", r.tank.Diameter)))
		case ByExchange:
			l.explain(capReason("cap: exchange", c.Flow, "the flow at which the outlet passes your limit at the end of this job, with the bed as it stands; zero where no flow keeps it", published("Wilson and Geankoplis 1966, for the film; the column marched through its history"),
				input("job", a.volume), ppm("limit", a.limit, a.scale)))
		case ByPressure:
			l.explain(capReason("cap: pressure", c.Flow, "the lesser of the flow at which the resin takes 20 psi, and that at which the sprayer is left with what it needs", published("Ergun 1952; AWWA/ASCE 2005; Hazen-Williams for the hoses"), input("most drop over the resin", flow.MostResinDrop), input("sprayer needs", p.Sprayer.PressureNeed)))
		}
	}
	l.explain(capReason("flow cap", p.Cap.Flow, "the least of the caps; bound by "+string(p.Cap.BoundBy), practice("the stricter limit wins")))
	l.explain(Reason{Number: "jug seconds", Value: quantity.AtLeast(p.Cap.JugSeconds), Formula: "one gallon over the cap: a jug must take at least this long to fill", Source: practice("arithmetic")})
	l.explain(quantityReason("open hose", p.Sprayer.OpenHose, "the flow at which tap, hoses, tanks and the open end take up the whole pressure", published("Hazen-Williams (EPANET 2 manual), Ergun 1952")))
	l.explain(quantityReason("pressure at the sprayer", p.Sprayer.PressureLeft, "the tap's pressure at this flow, less hoses, softener and bed", published("Hazen-Williams (EPANET 2 manual), Ergun 1952"), input("flow", p.Sprayer.Flow), input("drop over the bed", p.Bed.DropAcross)))
}

func (p *Plan) reasonBed(l *ledger, r resin, before stand, a asked) {
	exchange := published("Wilson and Geankoplis, Ind. Eng. Chem. Fundam. 5 (1966) 9")
	l.explain(quantityReason("contact time", p.Bed.ContactTime, "resin volume / flow, as if the tank held no beads", practice("empty-bed contact time"), Assumption{Name: "resin", Value: p.Bed.Resin.AsResin()}, input("flow", a.main)))
	l.explain(wordsReason("transfer units", quantity.Round(p.Bed.Units), "film coefficient x bead surface x depth / velocity, times the contact efficiency", exchange,
		input("depth", r.tank.Depth()), Assumption{Name: "slowest cation", Words: string(r.feed.Slowest)}, input("diffusion coefficient", r.feed.Diffusivity()), input("velocity", r.tank.Velocity(a.main)), plain("contact efficiency, middle", before.middle.Efficiency)))
	l.explain(quantityReason("bed capacity", p.Bed.Capacity, "as stated: what is used when the outlet reaches the end point at the rated flow", r.source,
		input("rated flow", r.rated.Flow), input("end point", r.rated.EndPoint), input("whole capacity behind it", r.whole)))
	l.explain(quantityReason("capacity used", p.Bed.Used, "the fill's gallons so far times the load that they carried, and at most what such a bed holds. Beside the capacity as stated it does not give what is left: readings leave both as they are, and move what the bed is believed to hold in truth", practice("arithmetic on what you stated"), input("gallons so far", p.Bed.SoFar), input("load", r.load)))
	l.explain(quantityReason("remaining gallons", p.Bed.Remaining.P50, "what the bed can still take before the outlet passes the limit at this flow, over the load: the middle of all that may be true after the readings, before this wash. Behind a softener it is a little more although the load is the same: sodium is quicker to the beads than calcium. In eight of ten it lies between the two below. What a fill gives (in Compare, and in the cost) is this and what it has given already", practice(fmt.Sprintf("true capacity over stated: lognormal, spread %g; contact 0.3 to 1", learning.CapacitySpread)),
		input("one in ten has less than", p.Bed.Remaining.P10), input("one in ten has more than", p.Bed.Remaining.P90), input("load", r.load)))
	l.explain(quantityReason("chance of lasting", p.Bed.ChanceLasts, "the weight of all cases in which the outlet stays under the limit through flush and stages", practice("from the same spread; 90 % is called lasting, 50 % tight"), input("job with its flush", a.volume)))
	l.explain(wordsReason("outlet at the end", showPPM(p.Bed.OutletAtEnd.P50, a.scale), "feed x exp(-N (1 - spent part of the depth)) after the job", memory("Wicke; Perry's, constant patterns"),
		ppm("one in ten under", p.Bed.OutletAtEnd.P10, a.scale), ppm("one in ten over", p.Bed.OutletAtEnd.P90, a.scale), ppm("feed", a.feed, a.scale)))
	if p.Claim != nil {
		l.explain(quantityReason("claim: implied feed", p.Claim.Implied, "capacity / gallons claimed", practice("the seller did not say for which water"), input("claimed", p.Claim.Stated), input("capacity", p.Bed.Capacity)))
		l.explain(quantityReason("claim: expect here", p.Claim.Here, "capacity / load of this feed", practice("arithmetic"), input("load", r.load)))
	}
}

func (p *Plan) reasonFaces(l *ledger, faces []face, a asked) {
	for i, f := range p.Faces {
		name := string(f.Name)
		l.explain(areaReason(f, faces[i]))
		l.explain(filmReason(f, faces[i]))
		l.explain(wordsReason(name+" ppm left", showPPM(f.PPMLeft, a.scale), "DI + (film - DI) exp(-e x water over the film), or the last water's own", memory("rinsing of a stirred film, plating trade"),
			plain("mixing efficiency e", rinse.MixingEfficiency), input("water to cover once", f.ToCover), input("water to replace the film", f.ToDilute), Assumption{Name: "what governs", Words: governed(f)}))
		l.explain(quantityReason(name+" residue", f.Residue, "film x ppm left", practice("bands: under 10 ppm none, to 25 faint, to 50 seen, over 50 towel"), plain("shows, 0 to 1", showsOf(faces[i]))))
	}
}

func areaReason(f FacePlan, from face) Reason {
	name := string(f.Name) + " area"
	if from.ownArea {
		return quantityReason(name, f.Area, "as you measured it", yours)
	}
	return quantityReason(name, f.Area, "the box's face less its openings, or a share of the box around a rounded body", practice("your own measure is better"))
}

func filmReason(f FacePlan, from face) Reason {
	name := string(f.Name) + " film"
	switch {
	case from.measured:
		return quantityReason(name, f.Film, "as you measured it", yours)
	case f.Name == model.Roof:
		return quantityReason(name, f.Film, "between well and very poorly drained flat parts", published("Metal Finishing Guide Book 2012-2013, Table II; the middle is PRACTICE"))
	}
	return quantityReason(name, f.Film, "(2/3) sqrt(viscosity x height / (g x drip)), within the table of drained parts", memory("Jeffreys 1930; bounds: Metal Finishing Guide Book 2012-2013"), input("drip", f.Pause))
}

func governed(f FacePlan) string {
	if f.Governs == "" {
		return "no DI on this face"
	}
	return string(f.Governs)
}

// fillParts are what a fill gives in all, what that is made of, and what would be expected
// of fresh resin by what is stated of it alone.
func (p *Plan) fillParts() []Assumption {
	parts := []Assumption{input("gives in all", p.Bed.Fill)}
	if left := p.Bed.Remaining.P50; left <= p.Bed.Fill {
		parts = append(parts, input("it gave", p.Bed.Fill-left), input("left", left))
	}
	return append(parts, input("fresh resin that is as stated would give", p.Bed.StatedFill))
}

func (p *Plan) reasonRest(l *ledger) {
	if s := p.Softener; s != nil {
		l.explain(quantityReason("softener left", s.Remaining, "capacity by its salt, less what it took since regeneration at the hardness of the place where that ran, over the hardness here; DI counts where it is fed through", practice("the trade's salt table"), input("capacity", s.Capacity), input("hardness", p.Raw.Hardness), input("this wash takes", s.Takes)))
	}
	if p.Cost.Known {
		l.explain(wordsReason("cost of the DI", fmt.Sprintf("%s%.2f", p.Cost.Currency, math.Round(100*p.Cost.Wash)/100), "price of a fill x gallons through the bed / gallons that the fill in the tank gives in all: what it gave, as so much of this feed, and what is left", yours,
			append(p.fillParts(), input("through the bed", p.Through()))...))
	}
}

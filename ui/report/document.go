package report

import (
	"slices"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

func document(p planner.Plan) planJSON {
	doc := planJSON{
		Format: Format, Wash: p.Wash, Verdict: p.Verdict,
		Water:   watersJSON{Raw: water(p.Raw), Softened: water(p.Softened)},
		DI:      use(p.DI),
		Soft:    use(p.Soft),
		Raw:     use(p.Untreated),
		FlowCap: flowCap(p.Cap),
		Sprayer: sprayerJSON{number(p.Sprayer.Flow.GPM()), p.Sprayer.WithinCap, number(p.Sprayer.OpenHose.GPM())},
		Bed:     bedDocument(p.Bed),
		Stages:  stages(p.Stages),
		Faces:   faces(p.Faces),
		Day:     dayDocument(p.Day),
		Flush:   flushJSON{number(p.Flush.Volume.Gallons()), number(p.Flush.Duration.Seconds())},

		Shortage: shortageDocument(p.Shortage),
		Warnings: notes(p.Warnings), Cautions: notes(p.Cautions),
		Assumptions: []assumptionJSON{},
	}
	if date, ok := p.Date.Get(); ok {
		text := date.String()
		doc.Date = &text
	}
	if s := p.Softener; s != nil {
		doc.Softener = &softenerJSON{number(s.Remaining.Gallons()), s.Lasts}
	}
	if c := p.Cost; c.Known {
		doc.Cost = &costJSON{c.Currency, number(c.Wash), number(c.PerGallon)}
	}
	for _, a := range slices.Concat(p.Assumptions, p.Constants) {
		doc.Assumptions = append(doc.Assumptions, assumption(a))
	}
	return doc
}

func water(w planner.Water) waterJSON {
	return waterJSON{
		Conductivity: number(w.Conductivity.MicroSiemensPerCm()),
		TDS:          number(w.TDS.Number), Scale: w.TDS.Scale.String(),
		Hardness: number(w.Hardness.GrainsPerGallon()),
		Load:     number(w.Load.MilliEqPerLitre()), LoadCaCO3: number(w.Load.MilligramsPerLitre()),
		Temperature: number(w.Temperature.Fahrenheit()),
	}
}

func flowCap(c planner.FlowCap) flowCapJSON {
	out := flowCapJSON{
		GPM: number(c.Flow.GPM()), BoundBy: c.BoundBy, JugSeconds: number(c.JugSeconds.Seconds()),
		Keeps: c.Useful(), Held: number(c.Held().Flow.GPM()), Caps: make([]capJSON, len(c.Caps)),
	}
	if sure, found := c.Sure.Get(); found {
		gpm := number(sure.GPM())
		out.Sure = &gpm
	}
	for i, one := range c.Caps {
		out.Caps[i] = capJSON{one.Name, number(one.Flow.GPM())}
	}
	return out
}

func bedDocument(b planner.BedOutlook) bedJSON {
	gallons := func(v quantity.Volume) number { return number(v.Gallons()) }
	left, end := b.Remaining, b.OutletAtEnd
	return bedJSON{
		Resin: number(b.Resin.CubicFeet()), Capacity: number(b.Capacity.Grains()), Used: number(b.Used.Grains()),
		ContactTime: number(b.ContactTime.Seconds()), TransferUnits: number(b.Units),
		Remaining:   bandJSON{gallons(left.P10), gallons(left.P50), gallons(left.P90)},
		ChanceLasts: number(b.ChanceLasts),
		OutletAtEnd: bandJSON{number(end.P10), number(end.P50), number(end.P90)},
	}
}

func stages(all []planner.StagePlan) []stageJSON {
	out := make([]stageJSON, len(all))
	for i, s := range all {
		valves := make([]string, len(s.Valves))
		for j, v := range s.Valves {
			valves[j] = Valve(v)
		}
		out[i] = stageJSON{
			Name: s.Name, Water: s.Water, Faces: append([]model.Side{}, s.Faces...), Sprayer: s.Sprayer,
			GPM: number(s.Flow.GPM()), Gallons: number(s.Volume.Gallons()), Minutes: number(s.Duration.Minutes()), Valves: valves,
		}
	}
	return out
}

func faces(all []planner.FacePlan) []faceJSON {
	out := make([]faceJSON, len(all))
	for i, f := range all {
		out[i] = faceJSON{
			Name: f.Name, Area: number(f.Area.SquareFeet()), DI: number(f.DI.Gallons()),
			PPMLeft: number(f.PPMLeft), Residue: number(f.Residue.MilligramsPerSquareMetre()), Spots: f.Spots, Dries: dryMinutes(f),
		}
	}
	return out
}

func notes(all []planner.Note) []noteJSON {
	out := make([]noteJSON, len(all))
	for i, n := range all {
		out[i] = noteJSON{n.Code, n.Text(quantity.US)}
	}
	return out
}

package planner

import (
	"math"
	"time"

	"washeve/model/quantity"
	"washeve/planner/drying"
	"washeve/planner/drying/panel"
)

// reasonDay writes down where the numbers of the day come from.
func (p *Plan) reasonDay(l *ledger) {
	d := p.Day
	if d == nil {
		return
	}
	almanac := memory("J. Meeus, Astronomical Algorithms, 2nd ed. 1998; rise and set with the sun's upper limb on a flat horizon")
	for _, r := range []struct {
		name string
		at   quantity.Opt[time.Time]
	}{{"sunrise", d.Sun.Rise}, {"sunset", d.Sun.Set}} {
		if at, given := r.at.Get(); given {
			l.explain(wordsReason(r.name, at.Format("15:04"), "when the sun's altitude passes -50 minutes of arc", almanac))
		}
	}
	if len(d.Start.Turns) == 0 {
		return
	}
	m, _ := d.At(d.Start.At)
	l.explain(quantityReason("sun's altitude at the start", m.Sun.Altitude, "from place, date and hour", almanac, input("azimuth", m.Sun.Azimuth)))
	if t, given := m.Air.Get(); given {
		l.explain(quantityReason("air at the start", t, "low and high joined by half a sine by day and a flattening fall by night", published("W. Parton and J. Logan, Agric. Meteorol. 23 (1981) 205")))
	}
	d.reasonStart(l)
	for _, f := range d.faces {
		d.reasonFace(l, f, m)
	}
}

func (d *DayPlan) reasonStart(l *ledger) {
	if best, given := d.Recommended.Get(); given {
		l.explain(wordsReason("recommended start", best.Label, "the first start with the sun up that ends before it is down and after which no face dries, while its turn comes, between its rinse and its last water; else one that ends by daylight and needs at most a fifth more time than the films leave; else an easy one; else the one after which the fewest faces hurry, and of those the one that leaves the most time", practice("roof first, then shade ahead of sun"),
			input("whole wash", d.Job.Or(0)), Assumption{Name: "it ends at", Words: endWords(d, best), Source: memory("J. Meeus, Astronomical Algorithms, 2nd ed. 1998; twilight down to 6 degrees under the horizon")}))
	}
	if d.NotAfter.Given() {
		l.explain(wordsReason("latest start", clockTime(d.NotAfter), "the last easy start without a gap after the recommended one: no face hurries", practice("roof first, then shade ahead of sun")))
	}
}

func (d *DayPlan) reasonFace(l *ledger, f face, at drying.Moment) {
	name := string(f.side)
	turn, ok := d.Start.Turn(f.side)
	dries, given := turn.Dries.Get()
	if !ok || !given {
		return
	}
	now, _ := at.Face(f.side)
	balance := published("Lewis relation and McAdams for the wind, Ineichen and Perez for the sun, Clark, Allen and Walton for the sky; see the constants")
	l.explain(wordsReason(name+" dries in", minutesWords(dries), "when evaporation has taken the film, summed from quarter hour to quarter hour as the day goes on, at the panel temperature where sun, sky, air and evaporation balance; the least while its turn comes", balance,
		input("film", f.film), input("sunlight absorbed", panel.Absorptance(f.colour)),
		input("light on it at the start", now.Irradiance), input("wet panel at the start", now.Wet.Or(0)), input("dry panel at the start", now.Dry.Or(0))))
	if section, given := turn.Section.Get(); given {
		l.explain(quantityReason(name+" largest section", section, "the hand's rate through all stages before the final rinse x how long the film lasts, at most the face", practice("a section is soaped and rinsed before it dries")))
	}
}

// endWords are when a start ends, and by which light where that is not the sun's.
func endWords(d *DayPlan, s drying.Start) string {
	at := s.End.Format("15:04")
	if late := d.EndsWithoutSun(s); late != "" {
		return at + ", " + late
	}
	return at + ", with the sun up"
}

// minutesWords writes how long a film lasts.
func minutesWords(d quantity.Duration) string {
	if math.IsInf(float64(d), 1) {
		return "does not dry"
	}
	return quantity.Show(d, quantity.US)
}

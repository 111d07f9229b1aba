// Package report turns a plan into words, rows and JSON. Screens and printed
// plans take theirs from here, so that both say the same.
package report

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Verdict says in a few words whether the bed lasts.
func Verdict(v planner.Verdict) string {
	switch v {
	case planner.Lasts:
		return "The bed lasts this wash"
	case planner.Tight:
		return "Tight: the bed may not last"
	}
	return "The bed will not last"
}

// some of a chance is no flat no.
const some = 0.1

// Judged is the [Verdict] of a plan, or what puts it in doubt. Where nobody said how old the fill is, or was when the
// log began, it says what the verdict then rests on.
func Judged(p *planner.Plan) string {
	verdict := Verdict(p.Verdict)
	if p.Verdict == planner.WillNotLast && p.Bed.ChanceLasts >= some {
		verdict = "The bed will likely not last"
	}
	switch fresh := p.TakenAsNew(); {
	case p.InDoubt():
		return "In doubt: the last reading fits no bed"
	case !fresh && !p.CountedFromLog():
		return verdict
	case p.Verdict != planner.Lasts:
		return verdict + ", even if new"
	case fresh:
		return verdict + ", if just filled"
	}
	return verdict + ", if it was new"
}

// Chance says a probability so that a tired person can weigh it. Around 9 in 10,
// where the verdict turns, no words stand on both sides of it; and what [Odds] writes alike
// has one word.
func Chance(f quantity.Fraction) string {
	percent := 100 * float64(f)
	switch {
	case math.IsNaN(percent):
		return "not known"
	case percent > 99:
		return "almost certain"
	case percent < 1:
		return "almost none"
	case percent >= 95:
		return "very likely"
	case percent < 5:
		return "very unlikely"
	case percent >= 85 && percent < 90:
		return "just under 9 in 10"
	case percent >= 90.5:
		return "a little over 9 in 10"
	}
	return fmt.Sprintf("about %.0f in 10", percent/10)
}

// Lasting is the chance that the bed lasts, in words and in per cent. Where the verdict is
// in doubt the words do not stand: the number is said with the reading that contradicts it.
func Lasting(p *planner.Plan) string {
	chance := p.Bed.ChanceLasts
	if p.InDoubt() {
		return Odds(chance) + " only without that reading"
	}
	return Chance(chance) + " (" + Odds(chance) + ")"
}

// Bound says what limits the flow.
func Bound(b planner.Bound) string {
	switch b {
	case planner.ByRating:
		return "the maker's most"
	case planner.ByContactTime:
		return "contact time"
	case planner.ByFaceVelocity:
		return "face velocity"
	case planner.ByExchange:
		return "exchange"
	case planner.ByPressure:
		return "pressure"
	}
	return string(b)
}

// WaterName is a water as it is spoken of.
func WaterName(w model.Water) string {
	switch w {
	case model.DI:
		return "DI"
	case model.Softened:
		return "softened"
	case model.Raw:
		return "raw"
	}
	return string(w)
}

// SpotWords says what will be seen on a face that has dried.
func SpotWords(s planner.Spots) string {
	switch s {
	case planner.NoSpots:
		return "no spots"
	case planner.Faint:
		return "faint spots"
	case planner.Seen:
		return "spots seen"
	case planner.Towel:
		return "dry by towel"
	}
	return string(s)
}

// Faces lists faces; none named means all.
func Faces(sides []model.Side) string {
	if len(sides) == 0 || len(sides) == len(model.Sides()) {
		return "all faces"
	}
	if len(sides) == len(model.Sides())-1 {
		for _, s := range model.Sides() {
			if !slices.Contains(sides, s) {
				return "all but " + string(s)
			}
		}
	}
	words := make([]string, len(sides))
	for i, s := range sides {
		words[i] = string(s)
	}
	return strings.Join(words, ", ")
}

// Valve says how one unit of the chain stands, in the words of the sheet and the wash day.
func Valve(v planner.Valve) string {
	if v.Through {
		return v.Unit + " THROUGH"
	}
	return v.Unit + " bypassed"
}

// Through lists the units that the water goes through; the others are bypassed.
func Through(all []planner.Valve) string {
	words := "none"
	for _, v := range all {
		switch {
		case !v.Through:
		case words == "none":
			words = v.Unit
		default:
			words += ", " + v.Unit
		}
	}
	return words
}

// Valves says how the chain stands.
func Valves(all []planner.Valve) string {
	words := make([]string, len(all))
	for i, v := range all {
		words[i] = Valve(v)
	}
	return strings.Join(words, ", ")
}

// Time writes a duration for a person: seconds, minutes, or hours.
func Time(d quantity.Duration) string {
	s := d.Seconds()
	switch {
	case math.IsNaN(s) || math.IsInf(s, 0):
		return "no end"
	case s < 9.5:
		return quantity.Round(math.Round(10*s)/10) + " s"
	case s < 99.5:
		return fmt.Sprintf("%.0f s", s)
	case s < 99.5*60:
		return fmt.Sprintf("%.0f min", s/60)
	}
	minutes := math.Round(s / 60)
	return fmt.Sprintf("%.0f h %.0f min", math.Floor(minutes/60), math.Mod(minutes, 60))
}

// Resin writes a volume of resin, which the trade counts in cubic feet.
func Resin(v quantity.Volume, sys quantity.System) string {
	if sys == quantity.Metric {
		return quantity.Show(v, sys)
	}
	return quantity.Round(v.CubicFeet()) + " ft3"
}

// PPM writes a reading of the plan, on the scale of its limit.
func PPM(ppm float64) string {
	if ppm < 0.1 && ppm >= 0 {
		return "under 0.1 ppm"
	}
	return quantity.Round(ppm) + " ppm"
}

// Percent writes a part of a whole.
func Percent(f quantity.Fraction) string {
	switch percent := 100 * float64(f); {
	case math.IsNaN(percent):
		return "unknown"
	case percent < 100 && percent > 99:
		return "over 99 %"
	case percent > 0 && percent < 1:
		return "under 1 %"
	default:
		return fmt.Sprintf("%.0f %%", percent)
	}
}

// Odds is a chance in per cent. Nothing that is foretold is quite sure, so that it is
// never all or nothing.
func Odds(chance quantity.Fraction) string {
	switch percent := 100 * float64(chance); {
	case percent > 99:
		return "over 99 %"
	case percent < 1:
		return "under 1 %"
	}
	return Percent(chance)
}

// Result writes what a reason explains. Of what is reasoned every part of one is a chance.
func Result(r planner.Reason, sys quantity.System) string {
	switch chance := quantity.Fraction(r.Value.SI); {
	case r.Value.Kind == nil:
		return r.Result
	case r.Value.Kind == chance.Kind():
		return Odds(chance)
	}
	return r.Value.Show(sys)
}

// Times writes a ratio of what may be more than a whole, in per cent.
func Times(ratio float64) string { return fmt.Sprintf("%.0f %%", 100*ratio) }

// OfRating says what a fill holds beside its rated capacity, stated or usual, and how sure that is.
func OfRating(holds planner.Band[float64]) string {
	return AsRated(holds.P50) + " (8 in 10: " + Times(holds.P10) + " to " + Times(holds.P90) + ")"
}

// AsRated is a part of the rated capacity; all of it in words.
func AsRated(part float64) string {
	if text := Times(part); text != Times(1) {
		return text + " of its rating"
	}
	return "as much as its rating"
}

// Heading names the wash: what is washed, where, when.
func Heading(p planner.Plan) string {
	words := p.Wash
	if words == "" {
		words = "Wash"
	}
	if p.Vehicle != "" {
		words += ": " + p.Vehicle
	}
	if p.Place != "" {
		words += " at " + p.Place
	}
	if date, ok := p.Date.Get(); ok {
		words += ", " + date.String()
	}
	return words
}

// Value writes an assumption's value.
func Value(a planner.Assumption, sys quantity.System) string {
	if a.Value.Kind == nil {
		return a.Words
	}
	return a.Value.Show(sys)
}

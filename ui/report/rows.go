package report

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Row is a thing, its value, and what to make of it.
type Row struct{ Label, Value, Note string }

// Water lists the waters used and how long each runs, and what is done by hand beside it.
func Water(p planner.Plan, sys quantity.System) []Row {
	var rows []Row
	add := func(label string, of model.Water, u planner.Use) {
		if u.Volume > 0 {
			rows = append(rows, Row{label, quantity.Show(u.Volume, sys), runs(p, of, u)})
		}
	}
	add("DI water", model.DI, p.DI)
	if b := p.DIBand; len(rows) > 0 && b.P90 > b.P10 {
		rows[0].Note += fmt.Sprintf(", likely %s to %s", quantity.Show(b.P10, sys), quantity.Show(b.P90, sys))
	}
	if p.Through() > p.DI.Volume {
		rows = append(rows, Row{"DI to flush", quantity.Show(p.Flush.Volume, sys), Time(p.Flush.Duration) + ", before a reading"})
	}
	add("softened water", model.Softened, p.Soft)
	add("raw water", model.Raw, p.Untreated)
	return rows
}

// runs is how long a water runs, and how long is washed by hand in its stages without it.
func runs(p planner.Plan, of model.Water, u planner.Use) string {
	var byHand quantity.Duration
	for _, s := range p.Stages {
		if s.Water == of && s.Volume == 0 {
			byHand += s.Duration
		}
	}
	if byHand == 0 {
		return Time(u.Duration)
	}
	return Time(u.Duration-byHand) + ", and " + Time(byHand) + " by hand"
}

// Drip says what a longer pause before the final rinse would save; "" where it
// saves nothing.
func Drip(p planner.Plan, sys quantity.System) string {
	d := p.Drip
	if d.Saves <= 0 {
		return ""
	}
	return fmt.Sprintf("Let it drip %s rather than %s before the final rinse: that saves %s of DI.",
		Time(d.Longer), Time(d.Pause), quantity.Show(d.Saves, sys))
}

// Takes is the DI water of the wash, and what the flush takes besides: "24.1 gal and 6.13 gal to flush, 30.3 gal in all".
// Whoever tells DI water without the flush tells it so, that no two figures of one wash seem to contradict each other.
func Takes(p planner.Plan, sys quantity.System) string {
	words := quantity.Show(p.DI.Volume, sys)
	if p.Through() > p.DI.Volume {
		words += " and " + quantity.Show(p.Flush.Volume, sys) + " to flush, " + quantity.Show(p.Through(), sys) + " in all"
	}
	return words
}

// Remaining says what the bed has left against what the wash takes.
func Remaining(p planner.Plan, sys quantity.System) string {
	left := p.Bed.Remaining
	if math.IsInf(float64(left.P50), 1) {
		return fmt.Sprintf("The feed itself keeps the limit of %s: the bed has no end; this wash takes %s.", p.Limit, Takes(p, sys))
	}
	if reach := quantity.Show(left.P50, sys); reach != "" && left.P50 > 0 {
		return fmt.Sprintf("It has about %s left (%s) before the outlet passes %s; this wash takes %s.",
			reach, EightInTen(left, sys), p.Limit, Takes(p, sys))
	}
	return fmt.Sprintf("The outlet is at the limit of %s already; this wash takes %s.", p.Limit, Takes(p, sys))
}

// EightInTen is a band of gallons with how sure it is: one in ten has less, one in ten
// more.
func EightInTen(b planner.Band[quantity.Volume], sys quantity.System) string {
	low, high := quantity.Show(b.P10, sys), quantity.Show(b.P90, sys)
	if math.IsInf(float64(b.P90), 1) {
		return "8 in 10: " + low + " or more"
	}
	if number, unit, _ := strings.Cut(low, " "); strings.HasSuffix(high, " "+unit) {
		low = number
	}
	return "8 in 10: " + low + " to " + high
}

// NoFlow says that there is no cap to keep to.
const NoFlow = "no flow keeps this bed on spec"

// HeldTo says that the plan holds the DI water to less than the sprayer draws; "" where it
// does not.
func HeldTo(p planner.Plan, sys quantity.System) string {
	if !p.Sprayer.Held() {
		return ""
	}
	return "DI held to " + quantity.Show(p.Sprayer.Flow, sys)
}

// JugTime is how long a vessel must take to fill at the flow to hold, and which: a
// gallon, or ten litres. No flow that can be held has none.
func JugTime(p planner.Plan, sys quantity.System) (least, vessel string) {
	if !p.Cap.Useful() {
		return "-", ""
	}
	holds, vessel := Vessel(sys)
	return Fills(holds, p.HoldFlow()), vessel
}

// Vessel is what a flow is timed by, and what it is called: a gallon, or ten litres.
func Vessel(sys quantity.System) (holds quantity.Volume, name string) {
	if sys == quantity.Metric {
		return 10 * quantity.Litre, "10 L"
	}
	return quantity.Gallon, "a gallon"
}

// Fills is the least time that a vessel must take to fill under a cap.
func Fills(vessel quantity.Volume, limit quantity.Flow) string {
	return quantity.AtLeast(limit.Time(vessel)).Show(quantity.US)
}

// Most is a flow that is a cap, shown no greater than it is.
func Most(limit quantity.Flow, sys quantity.System) string { return quantity.AtMost(limit).Show(sys) }

// Jug says how the flow is held without a meter.
func Jug(p planner.Plan, sys quantity.System) string {
	if !p.Cap.Useful() {
		return NoFlow
	}
	least, vessel := JugTime(p, sys)
	return vessel + " takes " + least + " or longer to fill"
}

// Cap says how fast the bed may be run, what limits it, and how to hold it; or that
// no flow is slow enough.
func Cap(p planner.Plan, sys quantity.System) string {
	if !p.Cap.Useful() {
		return "Cap: " + NoFlow
	}
	held := HeldTo(p, sys)
	if held != "" {
		held = ", " + held
	}
	return "Cap " + Most(p.Cap.Flow, sys) + " (" + Bound(p.Cap.BoundBy) + ")" + held + ": " + Jug(p, sys)
}

// SprayerNote says how the sprayer stands against the cap.
func SprayerNote(p planner.Plan) string {
	switch {
	case !p.Cap.Useful():
		return "slowing down does not help: the bed is used up"
	case !p.Sprayer.WithinCap:
		return "over the cap: throttle it until the jug takes its time"
	case p.Sprayer.Held():
		return "held to that by a valve, until the jug takes its time: it draws more by itself"
	case !p.Sprayer.Enough:
		return "under the cap, but the supply is too weak for it"
	}
	return "under the cap"
}

// HoseNote says how far over the cap the open hose is.
func HoseNote(p planner.Plan) string {
	if !p.Cap.Useful() {
		return "the bed allows no flow"
	}
	times := float64(p.Sprayer.OpenHose / p.Cap.Flow)
	switch {
	case math.IsNaN(times) || math.IsInf(times, 0):
		return ""
	case times <= 1:
		return "under the cap"
	}
	return quantity.Round(math.Round(times*10)/10) + " times the cap: not through the bed"
}

// boundBy says what the cap is, where it does not promise that the bed lasts at it.
func boundBy(p planner.Plan) string {
	words := "bound by " + Bound(p.Cap.BoundBy)
	if p.Cap.BoundBy == planner.ByExchange {
		words += ": no safe flow, since beds differ"
	}
	return words
}

// Flows lists the cap, what limits it, the sprayer and the open hose.
func Flows(p planner.Plan, sys quantity.System) []Row {
	name := p.Sprayer.Name
	if name == "" {
		name = "sprayer"
	}
	most, jug := Row{"most through the bed", Most(p.Cap.Flow, sys), boundBy(p)}, Row{"without a meter", "", Jug(p, sys)}
	if !p.Cap.Useful() {
		most, jug = Row{most.Label, "-", NoFlow}, Row{jug.Label, "-", ""}
	}
	return []Row{
		most, jug,
		{name, quantity.Show(p.Sprayer.Flow, sys), SprayerNote(p)},
		{"open hose", quantity.Show(p.Sprayer.OpenHose, sys), HoseNote(p)},
	}
}

// Caps lists the limits on the flow, the least first.
func Caps(p planner.Plan) []planner.Cap {
	caps := append([]planner.Cap(nil), p.Cap.Caps...)
	sort.SliceStable(caps, func(i, j int) bool { return caps[i].Flow < caps[j].Flow })
	return caps
}

// Bed lists the state of the bed and where the wash takes it.
func Bed(p planner.Plan, sys quantity.System) []Row {
	b := p.Bed
	rows := []Row{
		{"resin", Resin(b.Resin, sys), p.BedName},
		{"capacity", quantity.Show(b.Capacity, sys), "operating; " + quantity.Show(b.Used, sys) + " used before this wash"},
		{"contact time", Time(b.ContactTime), quantity.Round(b.Units) + " transfer units at the sprayer's flow"},
		{"outlet at the start", PPM(b.OutletNow.P50), span(b.OutletNow)},
		{"outlet at the end", PPM(b.OutletAtEnd.P50), span(b.OutletAtEnd)},
	}
	if c := p.Claim; c != nil {
		rows = append(rows, Row{"sold as good for", quantity.Show(c.Stated, sys),
			"that means water of " + quantity.Show(c.Implied, sys) + "; expect " + quantity.Show(c.Here, sys) + " here"})
	}
	return rows
}

func span(b planner.Band[float64]) string {
	if b.P90 < 0.1 {
		return "likely " + PPM(b.P90)
	}
	return "likely " + strings.TrimSuffix(PPM(b.P10), " ppm") + " to " + PPM(b.P90)
}

// Softener lists what is left in the softener; nothing where there is none.
func Softener(p planner.Plan, sys quantity.System) []Row {
	s := p.Softener
	if s == nil {
		return nil
	}
	note := "lasts this wash"
	if !s.Lasts {
		note = "regenerate it first"
	}
	return []Row{
		{"takes", quantity.Show(s.Takes, sys), "goes through it in this wash"},
		{"has left", quantity.Show(s.Remaining, sys), note},
	}
}

// Flush says what to run out before a reading counts.
func Flush(p planner.Plan, sys quantity.System) string {
	return fmt.Sprintf("Run out %s (%s) before you trust a reading: standing water reads too low.",
		quantity.Show(p.Flush.Volume, sys), Time(p.Flush.Duration))
}

// Cost says what the wash takes from a fill of resin, by what a whole fill gives:
// what the fill in the tank has cost is [CostOfFill].
func Cost(p planner.Plan, sys quantity.System) string {
	if !p.Cost.Known {
		return "not known: state the price of a fill"
	}
	per, unit := p.Cost.PerGallon, "a gallon"
	if sys == quantity.Metric {
		per, unit = per/quantity.Gallon.Litres(), "a litre"
	}
	wash := "this wash"
	if p.Through() > p.DI.Volume {
		wash += " with its flush"
	}
	return fmt.Sprintf("%s for "+wash+", at %s %s over %s", Money(p.Cost.Wash, p.Cost.Currency), Money(per, p.Cost.Currency), unit, wholeFill(p, sys))
}

// wholeFill says by which gallons a fill is priced.
func wholeFill(p planner.Plan, sys quantity.System) string {
	if p.FillAsStated() {
		return "a whole fill as stated"
	}
	return "the " + quantity.Show(p.Bed.Fill, sys) + " that such a fill is believed to give in all"
}

// Money writes an amount of a currency.
func Money(amount float64, currency string) string {
	number := fmt.Sprintf("%.2f", amount)
	if len([]rune(currency)) == 1 {
		return currency + number
	}
	return number + " " + currency
}

package model

import (
	"fmt"
	"slices"
	"strings"

	"washeve/model/quantity"
)

// ResinState is how a fill of resin came.
type ResinState string

// The states.
const (
	NewResin         ResinState = "new"
	RegeneratedResin ResinState = "regenerated"
)

// Rating is a capacity as a person states it: per volume of resin, or in all.
type Rating struct {
	PerVolume quantity.CapacityDensity // where not zero
	Total     quantity.Capacity        // where not zero
}

// ParseRating reads "10000 gr/ft3" or "5000 gr".
func ParseRating(text string) (Rating, error) {
	if strings.Contains(strings.TrimLeft(text, "0123456789. "), "/") {
		per, err := quantity.Parse[quantity.CapacityDensity](text)
		if err == nil && (per < 500*quantity.GrainPerCubicFoot || per > 60000*quantity.GrainPerCubicFoot) {
			err = quantity.Outside(per.Kind(), quantity.Range{Low: "500 gr/ft3", High: "60000 gr/ft3"}, "capacity", text, "10000 gr/ft3")
		}
		return Rating{PerVolume: per}, err
	}
	total, err := quantity.Parse[quantity.Capacity](text)
	if err == nil && (total < 50*quantity.Grain || total > 1e6*quantity.Grain) {
		err = quantity.Outside(total.Kind(), quantity.Range{Low: "50 gr", High: "1000000 gr"}, "capacity", text, "5000 gr")
	}
	return Rating{Total: total}, err
}

// rating is the field that holds a stated capacity.
func rating(at *quantity.Opt[Rating]) Field {
	f := field("capacity", "stated capacity", "grains as CaCO3, per volume of resin or in all", "10000 gr/ft3", at, ParseRating, Rating.String)
	f.kind = quantity.CapacityDensity(0).Kind()
	return f
}

func (r Rating) String() string {
	if r.PerVolume != 0 {
		return quantity.Exact(r.PerVolume, quantity.US)
	}
	return quantity.Exact(r.Total, quantity.US)
}

// Bed is a tank of mixed-bed resin, and how old its fill is.
type Bed struct {
	Name       string
	Resin      quantity.Opt[quantity.Volume]
	Diameter   quantity.Opt[quantity.Length]
	State      ResinState
	Rating     quantity.Opt[Rating]
	GoodFor    quantity.Opt[quantity.Volume]
	GoodForTDS quantity.Opt[quantity.Reading]

	CationCapacity    quantity.Opt[quantity.CapacityDensity]
	AnionCapacity     quantity.Opt[quantity.CapacityDensity]
	CationRegenerated quantity.Opt[quantity.Fraction]
	AnionRegenerated  quantity.Opt[quantity.Fraction]
	CationShare       quantity.Opt[quantity.Fraction]

	RatedFlow      quantity.Opt[quantity.Flow]
	MaxFlow        quantity.Opt[quantity.Flow]
	EndPoint       quantity.Opt[quantity.Fraction]
	ContactTime    quantity.Opt[quantity.Duration]
	MaxPressure    quantity.Opt[quantity.Pressure]
	MaxTemperature quantity.Opt[quantity.Temperature]
	FreeSpace      quantity.Opt[quantity.Volume]

	SoFar       quantity.Opt[quantity.Volume]
	LastReading quantity.Opt[quantity.Reading]
	LastFlow    quantity.Opt[quantity.Flow]
	Flushed     Answer // was the standing water run out before that reading
	Price       quantity.Opt[quantity.Money]
}

// Fields lists what can be stated of a bed.
func (b *Bed) Fields() []Field {
	return slices.Concat([]Field{
		name("name", "name", "what you call this tank", "half-foot tank", &b.Name).required(),
		measure("resin", "resin volume", "mixed-bed resin in the tank", "0.5 ft3", "0.02 ft3", "10 ft3", &b.Resin).required(),
		measure("gallons_so_far", "gallons so far", "DI water this fill has given; zero when freshly filled", "300 gal", "0 gal", "1000000 gal", &b.SoFar),
		measure("diameter", "tank diameter", "inside diameter of the tank", "8 in", "2 in", "36 in", &b.Diameter),
		choice("resin_state", "resin", "new resin, or resin that a plant has regenerated", []ResinState{NewResin, RegeneratedResin}, &b.State),
		field("price", "price of a fill", "what a fill of resin costs you", "$185", &b.Price, quantity.ParseMoney, quantity.Money.String),
	}, b.capacityFields(), b.limitFields(), b.ageFields())
}

func (b *Bed) capacityFields() []Field {
	return []Field{
		rating(&b.Rating),
		measure("good_for", "good for", "how much water the seller says it is good for", "1500 gal", "1 gal", "1000000 gal", &b.GoodFor),
		reading("good_for_tds", "good for, at", "the water that the seller means by it", 5000, &b.GoodForTDS),
		measure("cation_capacity", "cation resin capacity", "total capacity of the cation resin, from its data sheet", "1.9 eq/L", "0.3 eq/L", "3 eq/L", &b.CationCapacity),
		measure("anion_capacity", "anion resin capacity", "total capacity of the anion resin, from its data sheet", "1.1 eq/L", "0.3 eq/L", "3 eq/L", &b.AnionCapacity),
		measure("cation_regenerated", "cation regenerated", "part of the cation resin in the hydrogen form", "99 %", "10 %", "100 %", &b.CationRegenerated),
		measure("anion_regenerated", "anion regenerated", "part of the anion resin in the hydroxide form", "90 %", "10 %", "100 %", &b.AnionRegenerated),
		measure("cation_share", "cation share", "part of the volume that is cation resin", "40 %", "10 %", "90 %", &b.CationShare),
		measure("rated_flow", "rated flow", "flow at which the capacity is stated", "1.5 gpm", "0.05 gpm", "100 gpm", &b.RatedFlow),
		measure("end_point", "end point", "outlet over feed at which the capacity is counted as used", "5 %", "0.1 %", "50 %", &b.EndPoint),
	}
}

func (b *Bed) limitFields() []Field {
	return []Field{
		measure("max_flow", "maker's most flow", "most flow that the maker allows", "2.5 gpm", "0.05 gpm", "100 gpm", &b.MaxFlow),
		measure("contact_time", "least contact time", "least empty-bed contact time you accept", "90 s", "5 s", "20 min", &b.ContactTime),
		measure("max_pressure", "most pressure", "most pressure on the tank's label", "100 psi", "10 psi", "300 psi", &b.MaxPressure),
		measure("max_temperature", "most temperature", "most water temperature on the tank's label", "100 F", "60 F", "200 F", &b.MaxTemperature),
		measure("free_space", "free space", "water in the tank above and below the resin", "0.5 gal", "0 gal", "50 gal", &b.FreeSpace),
	}
}

func (b *Bed) ageFields() []Field {
	return []Field{
		reading("last_reading", "last outlet reading", "reading after the bed", 5000, &b.LastReading),
		measure("last_reading_flow", "at a flow of", "flow at which that reading was taken", "1.4 gpm", "0.05 gpm", "100 gpm", &b.LastFlow),
		choice("last_reading_flushed", "was it flushed", "yes where the standing water was run out first; a first cup after standing is not believed", []Answer{Yes, No}, &b.Flushed),
	}
}

// Contradictions finds statements that cannot be true together.
func (b *Bed) Contradictions() []Fault {
	var faults []Fault
	ways := b.statedWays()
	if len(ways) > 1 {
		faults = append(faults, Fault{Key: ways[1], Problem: fmt.Sprintf("the capacity is stated twice, by %s; keep one", strings.Join(ways, " and by "))})
	}
	if b.GoodForTDS.Given() && !b.GoodFor.Given() {
		faults = append(faults, Fault{Key: "good_for_tds", Problem: `says for which water, but good_for is missing; write for example good_for = "1500 gal", or "5700 L"`})
	}
	if b.CationCapacity.Given() != b.AnionCapacity.Given() {
		faults = append(faults, Fault{Key: b.resinKey(), Problem: "needs both cation_capacity and anion_capacity, since the scarcer side limits the bed"})
	}
	if b.LastFlow.Given() && !b.LastReading.Given() {
		faults = append(faults, Fault{Key: "last_reading_flow", Problem: "is the flow of a reading, but last_reading is missing"})
	}
	return faults
}

func (b *Bed) resinKey() string {
	if b.CationCapacity.Given() {
		return "cation_capacity"
	}
	return "anion_capacity"
}

func (b *Bed) statedWays() []string {
	var ways []string
	if b.Rating.Given() {
		ways = append(ways, "capacity")
	}
	if b.GoodFor.Given() {
		ways = append(ways, "good_for")
	}
	if b.CationCapacity.Given() || b.AnionCapacity.Given() {
		ways = append(ways, b.resinKey())
	}
	return ways
}

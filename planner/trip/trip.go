// Package trip says before leaving whether a bed lasts a trip: for each wash the
// chance that it ends on spec, where to change the resin, what to carry, and when
// to order. One bed, one capacity, many washes: the chances are worked out over
// all the ways in which the bed and the waters may be, jointly, and never by
// multiplying.
package trip

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// Input is what a trip is planned from.
type Input struct {
	Rig    model.Rig
	Places model.Places
	Trip   model.Trip
	Like   func(name string) (model.Wash, bool) // finds the wash that one is like; nil where there are none
	Past   *planner.Past                        // of the log; nil where there is none
	Today  model.Date                           // not known where zero
	Coming []model.Wash                         // planned by themselves; those before the trip are told, and not counted

	Ordered bool // the order of the washes of each fill is asked for: [Plan.Orders]
	Loose   bool // any of the washes could change places, not only those at one stop

	// What is asked beyond the rig and the log. Setting is what stands around the bed,
	// or was done to the softener before; new resin is a change of the trip. As is a
	// plan of a trip before which the bed stood as it does before this one; nil for
	// none. Where this trip has another bed than that, the bed is bought for it.
	Setting planner.Setting
	As      *Plan
}

// Plan is the answer.
type Plan struct {
	Name        string
	Bed         string
	First, Last model.Date
	Over        bool           // the last day is past
	Scale       quantity.Scale // of the ppm
	Stops       []StopPlan     // by date
	Washes      []WashPlan     // by date; those of one day by stop, then in the trip's order
	Changes     []ChangePlan   // planned and advised, by date

	Start       Band[quantity.Fraction]  // life left in the bed before the trip
	FirstAtRisk int                      // index of the first wash under 90 %, with the changes that are planned; -1: none
	AllOnSpec   quantity.Fraction        // chance that every wash ends on spec, as planned
	AllAdvised  quantity.Fraction        // the same with the advised changes
	Once        quantity.Opt[model.Date] // where one change more than is planned brings most; not given where no wash is at risk, or the trip is over

	ToFill   bool // the tank is, with resin that is ordered for the trip: the log has no fill of it
	Carry    Carry
	Lead     quantity.Duration
	NeededBy quantity.Opt[model.Date] // the day on which resin must be at hand; likewise
	OrderBy  quantity.Opt[model.Date] // not given where no resin is needed, or the trip is over
	Late     bool                     // that day is past

	Used Sum // resin that the washes use up, by its price
	Salt Sum // of the softener, likewise
	Buy  Sum // fills to buy

	Orders []Order // of the fills with more than one wash, where they were asked for; none of a trip that is over

	Notes       []tag.Note
	Assumptions []tag.Assumption

	season planner.Season
}

// Band is an uncertain quantity: one in ten lies below P10, one in ten above P90.
type Band[T any] = planner.Band[T]

// StopPlan is one stop.
type StopPlan struct {
	Index   int // in the trip's list
	Name    string
	From    model.Date
	Unknown bool
	TDS     Band[float64] // ppm; the ends of the band as P10 and P90 where the water is unknown
	Limits  model.Limits
	Needs   quantity.Volume               // of all washes here
	OnHand  quantity.Opt[quantity.Volume] // where there is only the tank
	Washes  int
}

// WashPlan is one wash, or another use of the bed.
type WashPlan struct {
	Index   int // in the trip's list
	Name    string
	Date    model.Date
	Stop    int  // index in [Plan.Stops]
	Assumed bool // several stops begin on its day and it names none: the last is taken
	Other   bool // another user of the bed
	Barred  bool // washing is not allowed at the stop: it is not counted
	Rinse   bool // only the rinses of it
	Fill    int  // 0: the resin that is in the tank; 1: after the first planned change
	Chance  quantity.Fraction
	SoFar   quantity.Fraction // chance that this and all before end on spec
	Advised quantity.Fraction // as Chance, with the advised changes
	Verdict planner.Verdict

	DI, Soft, Untreated Band[quantity.Volume]
	Flush               quantity.Volume
	Time                quantity.Duration       // of all stages, by hand too, and of the flush
	Outlet              Band[float64]           // ppm at its end
	Life                Band[quantity.Fraction] // of the bed left after it

	Hours planner.Hours // on its day, of a wash that is planned by itself

	Softener *SoftenerPlan // nil where there is none
	Cost     Sum           // of the resin that it uses up
}

// SoftenerPlan is the softener after a wash.
type SoftenerPlan struct {
	Left       quantity.Capacity
	Regenerate bool          // before this wash
	Salt       quantity.Mass // NaN where the volume of its resin is not stated
	Cost       Sum           // of the salt that the wash uses up
}

// ChangePlan is a change of resin before a wash.
type ChangePlan struct {
	Index   int // in the trip's list; -1 where it is advised
	Date    model.Date
	Before  int // index in [Plan.Washes]; their number where none follows
	Advised bool
	Wasted  quantity.Fraction // life left in the resin that is thrown out, on average; with two tanks, what is not used of the first
	Price   quantity.Opt[quantity.Money]
}

// Carry is what to take along.
type Carry struct {
	Fills     int
	Spare     bool // the fill is there for the case that the bed ends early
	Resin     quantity.Volume
	Low, High quantity.Mass // of that resin, as shipped
	Regens    int           // regenerations of the softener
	Salt      quantity.Mass // NaN where it is not known of one
}

// Constants lists what the answer rests on beside the plan's own constants.
func Constants() []tag.Assumption {
	practice := tag.FromPractice
	return []tag.Assumption{
		tag.Quantity("lead time of resin", planner.LeadTime, practice("stated otherwise by lead_time")),
		tag.Text("water of a stop that nobody knows", "100 to 600 ppm NaCl, 3 to 25 gr/gal", practice("most tap water; state tds_low, tds_high and the hardness")),
		tag.Text("a wash off spec", "as dear as a fill of resin", practice("where to change the resin weighs the one against the other; a change that is worth it comes before the first wash at risk")),
		tag.Text("water before the final rinse, by dirt", "light 0.75, heavy 1.5 times", practice("the final rinse is the same: it replaces the film")),
	}
}

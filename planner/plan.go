// Package planner answers the evening's questions: how much DI water the wash
// takes, how fast it may run through the bed, and whether the bed will last.
//
// [Make] is a pure function from the model's nouns to a [Plan]. The parts are in
// packages of their own: water, flow, bed, surface, rinse.
package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

// Band is an uncertain quantity: one in ten lies below P10, one in ten above P90.
type Band[T any] struct{ P10, P50, P90 T }

// Plan is the answer. Everything shown is in here, and nothing else is.
type Plan struct {
	Wash      string
	Date      quantity.Opt[model.Date]
	Vehicle   string
	Place     string
	BedName   string
	Verdict   Verdict
	Raw       Water
	Softened  Water
	DI        Use
	DIBand    Band[quantity.Volume] // by a quicker or a slower hand
	Soft      Use
	Untreated Use // raw water used
	Cap       FlowCap
	Sprayer   SprayerCheck
	Bed       BedOutlook
	Softener  *SoftenerOutlook // nil where there is none
	BedBehind bool             // the bed is fed through it
	Stages    []StagePlan
	Faces     []FacePlan
	Flush     Use // standing water to run out before a reading counts
	Cost      Cost
	Claim     *Claim           // nil unless the capacity was stated as "good for"
	Limit     quantity.Reading // outlet limit, on its scale
	Target    quantity.Reading // what the film may carry

	Drip Drip

	// ReadHigh is what the bed last read, on its scale, where the plan warns that it is more than
	// was expected; "" elsewhere.
	ReadHigh string

	// Shortage is nil until somebody asks for it and puts it here: it costs many
	// plans; see [Memory.Shorten].
	Shortage *Shortage

	// Day is nil where the plan does not know which day and where, and DayNote
	// then says what is not known.
	Day     *DayPlan
	DayNote Note

	Warnings    []Note
	Cautions    []Note
	Assumptions []Assumption // what was stated, and what was taken instead
	Constants   []Assumption // what the formulas rest on in any case
	Reasons     []Reason

	stood stand // the bed before the wash
	read  lastRead
}

// Water is what a water is like, as the plan sees it.
type Water struct {
	Conductivity quantity.Conductivity
	TDS          quantity.Reading // in ppm on the scale in use
	Hardness     quantity.Hardness
	HardnessSaid bool          // measured, or assumed
	Load         quantity.Load // what a volume of it takes from the bed
	Temperature  quantity.Temperature
}

// Through is the DI water that the wash draws from the bed in all: that of its stages, and the flush before them. A
// wash without DI water draws none.
func (p *Plan) Through() quantity.Volume {
	if p.DI.Volume <= 0 {
		return 0
	}
	return p.DI.Volume + p.Flush.Volume
}

// HoldFlow is what the DI water is to be held to by a valve and a jug: the cap, or less where
// the plan holds it to less.
func (p Plan) HoldFlow() quantity.Flow {
	if p.Sprayer.Held() {
		return min(p.Sprayer.Flow, p.Cap.Flow)
	}
	return p.Cap.Flow
}

// Use is water used and the time it runs.
type Use struct {
	Volume   quantity.Volume
	Duration quantity.Duration
}

// SprayerCheck sets the sprayer against the cap.
type SprayerCheck struct {
	Name         string
	Flow         quantity.Flow // of the DI water
	Draws        quantity.Flow // by itself: more than Flow where the DI water is held to less
	WithinCap    bool
	OpenHose     quantity.Flow     // what the hose would push without the sprayer
	PressureLeft quantity.Pressure // at the sprayer
	PressureNeed quantity.Pressure
	Enough       bool // the supply gives the sprayer what it needs
}

// Held tells that the DI water is held to less than the sprayer draws by itself.
func (s SprayerCheck) Held() bool { return s.Flow < s.Draws }

// Layers are the parts of a bed's depth, which add up to one: used up, taking
// ions now, and untouched.
type Layers struct{ Spent, Working, Fresh quantity.Fraction }

// CurvePoint is the outlet after a volume counted from the fill.
type CurvePoint struct {
	Volume quantity.Volume
	Outlet Band[float64] // ppm on the limit's scale
}

// BedOutlook is the state of the bed and where the wash takes it.
type BedOutlook struct {
	Resin         quantity.Volume
	Capacity      quantity.Capacity // stated, operating
	Whole         quantity.Capacity // stoichiometric
	Used          quantity.Capacity // before the wash
	ContactTime   quantity.Duration // empty-bed, at the sprayer's flow
	Units         float64           // transfer units at the sprayer's flow
	SoFar         quantity.Volume
	Fill          quantity.Volume // what a whole fill like the one in the tank gives of this feed at this flow, until the limit: what it took, and what is left in the middle of what is believed
	StatedFill    quantity.Volume // the same of a fresh fill that holds what is stated of it
	Remaining     Band[quantity.Volume]
	ChanceLasts   quantity.Fraction
	OutletNow     Band[float64] // ppm on the limit's scale
	OutletAtEnd   Band[float64]
	Before, After Layers // median
	Curve         []CurvePoint
	DropAcross    quantity.Pressure
}

// FillAsStated tells that a fill like the one in the tank gives what is stated of it, as far
// as anybody knows.
func (p *Plan) FillAsStated() bool { return !differ(p.Bed.Fill, p.Bed.StatedFill) }

// NeedsVolume is said of a figure that cannot be had without the volume of a softener's
// resin, of which only the capacity is stated.
const NeedsVolume = "unknown: needs the volume"

// SoftenerOutlook is what is left in the softener.
type SoftenerOutlook struct {
	Name      string
	Capacity  quantity.Capacity
	Whole     quantity.Volume // of this place's water, freshly regenerated
	Remaining quantity.Volume // of this place's water
	Takes     quantity.Volume // that this wash sends through it
	Lasts     bool
	Resin     quantity.Opt[quantity.Volume]
	Share     quantity.Fraction            // of a regeneration that this wash takes
	Salt      quantity.Opt[quantity.Mass]  // of a regeneration, where its dose is known
	Price     quantity.Opt[quantity.Money] // of a regeneration
}

// The units of the chain that water goes through or past.
const (
	SoftenerUnit = "softener"
	BedUnit      = "DI bed"
)

// Valve is how one unit of the chain stands.
type Valve struct {
	Unit    string // [SoftenerUnit] or [BedUnit]
	Through bool   // or bypassed
}

// StagePlan is one step of the wash.
type StagePlan struct {
	Name     string
	Water    model.Water
	Faces    []model.Side
	Sprayer  string
	Flow     quantity.Flow
	Area     quantity.Area
	Passes   float64
	Coverage quantity.Coverage
	Use
	PerFace []FaceUse // those that take water, in the order of [model.Sides]
	Valves  []Valve
	Final   bool
}

// FaceUse is what one face takes in one stage.
type FaceUse struct {
	Side model.Side
	Area quantity.Area // gone over once
	Use
}

// Spots is the outlook for a face when it has dried.
type Spots string

// The outlooks. They are bands of what the film carries.
const (
	NoSpots Spots = "none"
	Faint   Spots = "faint"
	Seen    Spots = "seen"
	Towel   Spots = "towel"
)

// Governs says what sets the water of a final rinse.
type Governs string

// Either the hand must reach every spot once, or the film must be replaced.
const (
	ByCoverage Governs = "coverage"
	ByDilution Governs = "dilution"
)

// FacePlan is one face of the vehicle.
type FacePlan struct {
	Name     model.Side
	Area     quantity.Area
	Water    model.Water // of the last water that touches it
	DI       quantity.Volume
	DITime   quantity.Duration
	DIPart   quantity.Fraction // of the face, that DI water goes on where it gets any
	Before   Use               // of the last water but DI
	ToCover  quantity.Volume
	ToDilute quantity.Volume
	Governs  Governs
	Film     quantity.Film
	Pause    quantity.Duration               // drip before its final rinse, as far as drying allows it
	Dries    quantity.Opt[quantity.Duration] // the least its film lasts while its turn comes; +Inf where it does not dry
	PPMLeft  float64                         // in the film, on the limit's scale
	Residue  quantity.Residue
	Spots    Spots
	Surfaces []SurfaceShare

	dirty float64         // ppm in the film from the last water but DI
	since quantity.Volume // DI that has gone over it after that

	rinsed, ample bool // it has a final rinse of DI water; which covers it with more than the target asks for
}

// SurfaceShare is a part of a face.
type SurfaceShare struct {
	Surface model.Surface
	Share   quantity.Fraction
	Spots   Spots
}

// Cost is what the wash takes from a fill of resin. Not known without a price.
type Cost struct {
	Known     bool
	Currency  string
	Wash      float64
	PerGallon float64
	Fill      quantity.Opt[quantity.Money] // price of a fill
}

// Claim sets a seller's "good for so many gallons" against this water.
type Claim struct {
	Stated  quantity.Volume
	Implied quantity.Hardness // feed that the claim means, at the default capacity
	Here    quantity.Volume   // what to expect on this water
}

// Note is a warning or a caution.
type Note = tag.Note

// Assumption is an input of the plan, given or assumed.
type Assumption = tag.Assumption

// Reason tells where a number comes from.
type Reason struct {
	Number  string // "DI gallons"
	Result  string // for values that are no quantity
	Value   quantity.Value
	Formula string // in words
	Inputs  []Assumption
	Source  tag.Source
}

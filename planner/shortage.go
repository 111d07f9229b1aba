package planner

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/split"
)

// Shortage is what to do with a bed that is short of a wash: who gets its DI
// water, and what else there is to do. [Memory.Shorten] makes it. It costs many
// plans: for when it is asked for, not for every key.
type Shortage struct {
	Share Share
	Ways  []WayOut
}

// Share is how the DI water of a short bed is shared out among the faces.
type Share struct {
	Confidence quantity.Fraction // that the bed gives its gallons
	Flow       quantity.Flow     // that serves best, or that the wash holds the DI water to
	Drawn      quantity.Flow     // by the sprayer where nothing holds it
	Gives      quantity.Volume   // at that flow, after its flush, with that confidence
	Flush      quantity.Volume
	Needs      quantity.Volume // of all faces that the wash rinses with DI
	Takes      quantity.Volume // of those that get it
	Short      quantity.Volume // that the faces pinned in need over what the bed gives

	Faces    []FaceShare       // those with DI in the order in which the wash rinses them, then the rest
	Spared   quantity.Fraction // of the spots that DI on all faces would spare
	Unpinned quantity.Fraction // the same, were no face pinned
	Asked    model.Wash        // the wash, with the pins that this share keeps to
	Wash     model.Wash        // and with the share stated

	// From the plan of that wash.
	Chance   quantity.Fraction // that the bed lasts it
	Verdict  Verdict
	DI, Soft Use
}

// Order lists the faces that get DI water, as the wash rinses them one after the other.
func (s *Share) Order() []model.Side {
	order := []model.Side{}
	for _, f := range s.Faces {
		if f.DI {
			order = append(order, f.Name)
		}
	}
	return order
}

// FaceShare is what one face gets.
type FaceShare struct {
	Name  model.Side
	Area  quantity.Area
	Asked bool // the wash rinses it with DI
	DI    bool // and the share gives it
	Pin   split.Pin
	Needs quantity.Volume // DI for it
	Water model.Water     // of its last rinse
	Use                   // of that water
	Towel quantity.Duration
	Spots Spots // with its last water, left to dry
	Shows quantity.Fraction
	// Reaches is the chance that the bed gives for this face and all before it in
	// the list.
	Reaches quantity.Fraction
	Other   Turned // what pinning it the other way would do
}

// Turned is what a share would be with one face pinned the other way.
type Turned struct {
	Gain, Lose []model.Side // faces that get DI water then, and that do so no more
	Spared     quantity.Fraction
	Short      quantity.Volume
}

// WayOut is one way out of a shortage, with its numbers from a plan made that way.
type WayOut struct {
	Code     string
	Name     string
	Wash     *model.Wash // states the way; nil where it is something to do
	Does     Note        // what it is, or what to do
	Lost     Note        // what it costs beside money
	Not      Note        // why it is no way here; the numbers are then those of the plan as it is
	DI       Use
	Chance   quantity.Fraction // that it ends under the limit
	Verdict  Verdict
	Towels   quantity.Area // that gets no DI water and is dried by towel
	Towel    quantity.Duration
	Buy      Outlay
	Resin    Cost // of the resin used
	Softened Use
}

// Outlay is what is bought for a way. Where no price is stated it is not known.
type Outlay struct {
	Needed bool
	Price  quantity.Opt[quantity.Money]
}

// The ways out, as codes.
const (
	WaySplit    = "split"
	WaySlower   = "slower"
	WayCap      = "cap"
	WayDrip     = "drip"
	WaySurfaces = "glass-and-paint"
	WayTwoFills = "two-fills"
	WayResin    = "new-resin"
	WayBuy      = "buy-water"
)

// TowelRate is how fast a person dries a body by towel. PRACTICE.
const TowelRate = 25 * quantity.SquareFootPerMinute

func towelTime(a quantity.Area) quantity.Duration {
	return quantity.Duration(a / quantity.Area(TowelRate))
}

package planner

import (
	"math"

	"washeve/model/quantity"
)

// Bound names what limits the flow through the bed.
type Bound string

// The five limits.
const (
	ByRating       Bound = "rated"
	ByContactTime  Bound = "contact-time"
	ByFaceVelocity Bound = "face-velocity"
	ByExchange     Bound = "exchange"
	ByPressure     Bound = "pressure"
)

// Cap is one limit on the flow. Only the limits that apply are listed.
type Cap struct {
	Name Bound
	Flow quantity.Flow
}

// FlowCap is the least of the caps, the one that binds.
type FlowCap struct {
	Flow       quantity.Flow
	BoundBy    Bound
	Caps       []Cap
	JugSeconds quantity.Duration // to fill a one-gallon jug at the cap

	// Sure is the flow that keeps the limit with a chance of 90 %: looked for where the exchange
	// binds and the bed is in doubt, since the cap promises no such chance.
	// Not given where it was not looked for, or no nozzle sprays with so little.
	Sure quantity.Opt[quantity.Flow]
}

// Useful tells whether water can be drawn under the cap. Where the exchange allows
// less than a nozzle sprays with, or nothing, no flow keeps the bed on spec to the end
// of the wash, and the cap is a number that nobody can hold.
func (c FlowCap) Useful() bool {
	return c.Flow >= leastHeld || c.Flow > 0 && c.BoundBy != ByExchange
}

// Held is the cap that the water can be held to: the one that binds where it is
// [FlowCap.Useful], else the least of those beside the exchange; without end where
// there is none.
func (c FlowCap) Held() Cap {
	if c.Useful() {
		return Cap{c.BoundBy, c.Flow}
	}
	least := Cap{Flow: quantity.Flow(math.Inf(1))}
	for _, one := range c.Caps {
		if one.Name != ByExchange && one.Flow < least.Flow {
			least = one
		}
	}
	return least
}

// ToWaste is the most that the tank and the chain allow for a few gallons that are run out,
// as a flush is: neither the contact time nor the exchange is kept to, since nobody rinses
// with it. It is without end where no other cap applies.
func (c FlowCap) ToWaste() quantity.Flow {
	most := quantity.Flow(math.Inf(1))
	for _, one := range c.Caps {
		if one.Name != ByContactTime && one.Name != ByExchange {
			most = min(most, one.Flow)
		}
	}
	return most
}

package bed

import "washeve/model/quantity"

// UsualSalt is a usual dose for a regeneration. PRACTICE.
const UsualSalt = 8 * quantity.PoundPerCubicFoot

// saltTable is what softening resin gives for its salt. PRACTICE.
var saltTable = [...]struct {
	salt     quantity.Dose
	capacity quantity.CapacityDensity
}{
	{0, 0},
	{6 * quantity.PoundPerCubicFoot, 20000 * quantity.GrainPerCubicFoot},
	{8 * quantity.PoundPerCubicFoot, 24000 * quantity.GrainPerCubicFoot},
	{10 * quantity.PoundPerCubicFoot, 27000 * quantity.GrainPerCubicFoot},
	{15 * quantity.PoundPerCubicFoot, 30000 * quantity.GrainPerCubicFoot},
}

// SoftenerRange is what softening resin has as capacity, from the least salt that is usual
// to the most: the ends of the table. PRACTICE.
func SoftenerRange() (least, most quantity.CapacityDensity) {
	return saltTable[1].capacity, saltTable[len(saltTable)-1].capacity
}

// SoftenerCapacity of softening resin by the salt of its regeneration: straight
// lines between the points of the trade's table, from nothing without salt to
// no more than its last point.
func SoftenerCapacity(salt quantity.Dose) quantity.CapacityDensity {
	for i := 1; i < len(saltTable); i++ {
		a, b := saltTable[i-1], saltTable[i]
		if salt <= b.salt {
			part := quantity.CapacityDensity((salt - a.salt) / (b.salt - a.salt))
			return a.capacity + part*(b.capacity-a.capacity)
		}
	}
	return saltTable[len(saltTable)-1].capacity
}

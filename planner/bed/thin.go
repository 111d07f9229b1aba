package bed

import "slices"

// Thin is the column with its loading told in at most so many exponentials: the
// nearest become one, which keeps the loading at the front and the capacity
// taken. What follows costs less, and differs by little: see the test.
func (c Column) Thin(most int) Column {
	if len(c.tails) <= max(most, 1) {
		return c
	}
	c.tails = slices.Clone(c.tails)
	for len(c.tails) > max(most, 1) {
		c.tails = mergeNearest(c.tails)
	}
	return c
}

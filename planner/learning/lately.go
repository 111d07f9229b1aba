package learning

// Without is what would be believed had a reading, by its index, not been taken.
// Like [Outset.Learn]'s it has Expected for that reading too: what it should have
// shown by what was believed before it.
func (p Posterior) Without(reading int) Posterior {
	q := p.outset.learn(p.fill, []int{reading})
	q.States = q.draws.states(p.fill.course())
	return q
}

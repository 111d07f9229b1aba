package trip

import (
	"cmp"
	"math"
	"slices"

	"washeve/model/quantity"
	"washeve/planner/bed"
)

// orders works out the [Order] of each fill that serves more than one wash. It goes once
// more through the trip as planned, and from the first wash that could change its place
// through every order that is tried.
func (t *tripping) orders() {
	queues := t.queues()
	if len(queues) == 0 {
		return
	}
	w, fill := t.walker, 0
	w.start()
	worst := freshMargins(len(w.factors))
	for k := range t.legs {
		for ; fill < t.fills[k]; fill++ {
			w.refill(fill + 1)
			worst = freshMargins(len(worst))
		}
		if t.legs[k].barred {
			continue
		}
		q := queues[fill]
		if q != nil && len(q.free) > 1 && q.free[0] == k {
			q.tryAll(w, worst)
		}
		w.feed(k)
		s := w.look(worst, true)
		if q != nil && t.legs[k].takesDI() {
			q.order.Stated = append(q.order.Stated, Turn{k, s.soFar})
		}
	}
	for f := range fill + 1 {
		if q := queues[f]; q != nil {
			q.settle()
			t.plan.Orders = append(t.plan.Orders, q.order)
		}
	}
}

// freshMargins are the least margins of all states before the first wash of a fill.
func freshMargins(n int) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = math.Inf(1)
	}
	return out
}

func (l *leg) takesDI() bool { return !l.barred && len(l.at().Uses) > 0 }

// need is how deep a bed has to be between its front and its outlet when a use of this
// wash ends, in depths of a bed of perfect contact: the most of its uses. It is 0 where the
// water keeps the limit by itself.
func (l *leg) need() float64 {
	d, most := l.at(), 0.0
	for _, u := range d.Uses {
		most = max(most, math.Log(d.Feed/d.Limit)/u.Units)
	}
	return most
}

// load is what it feeds, in stated capacities.
func (l *leg) load() float64 {
	sum := 0.0
	for _, u := range l.at().Uses {
		sum += u.Capacities
	}
	return sum
}

// queue is the washes of one fill on the way to their order.
type queue struct {
	t     *tripping
	legs  []int // of the fill, barred ones left out
	wet   int   // how many of them take DI water
	free  []int // those that could change places
	order Order
	tried [][]Turn
}

// queues are those of the fills with more than one wash that takes DI water.
func (t *tripping) queues() map[int]*queue {
	all := map[int]*queue{}
	for k := range t.legs {
		l := &t.legs[k]
		if l.barred {
			continue
		}
		q := all[t.fills[k]]
		if q == nil {
			q = &queue{t: t, order: Order{Fill: t.fills[k]}}
			all[t.fills[k]] = q
		}
		if q.legs = append(q.legs, k); l.takesDI() {
			q.wet++
		}
	}
	for f, q := range all {
		if q.wet < 2 {
			delete(all, f)
			continue
		}
		q.free = q.couldSwap()
		q.order.Free = q.free
	}
	return all
}

// couldSwap are the legs of the fill that could change places: all of those that are
// planned by themselves; on a trip those at the stop of the wash with the least chance,
// since the vehicle is there on its days.
func (q *queue) couldSwap() []int {
	stop, least := -1, math.Inf(1)
	for _, k := range q.legs {
		if chance := float64(q.t.plan.Washes[k].Chance); q.t.legs[k].takesDI() && chance <= least {
			stop, least = q.t.legs[k].stop, chance
		}
	}
	var free []int
	for _, k := range q.legs {
		if l := &q.t.legs[k]; l.takesDI() && (q.t.in.Loose || l.stop == stop) {
			free = append(free, k)
		}
	}
	return free
}

// tryAll tries orders of the free legs from where the walker stands, and leaves it there.
func (q *queue) tryAll(w *walker, worst []float64) {
	from, until := w.mark(), slices.Clone(worst)
	before := slices.Clone(q.order.Stated)
	rest := q.legs[slices.Index(q.legs, q.free[0]):]
	for _, order := range q.candidates() {
		turns, next := slices.Clone(before), 0
		for _, k := range rest {
			if slices.Contains(q.free, k) {
				k, next = order[next], next+1
			}
			w.feed(k)
			s := w.look(until, true)
			if q.t.legs[k].takesDI() {
				turns = append(turns, Turn{k, s.soFar})
			}
		}
		q.tried = append(q.tried, turns)
		w.backTo(from)
		copy(until, worst)
	}
}

// candidates are the orders to try: all of few legs, else those of the rules and their
// reverses. They hang on what the legs are, and not on the order in which they stand.
func (q *queue) candidates() [][]int {
	at := func(k int) *leg { return &q.t.legs[k] }
	sorted := func(key func(*leg) float64) []int {
		out := slices.Clone(q.free)
		slices.SortStableFunc(out, func(a, b int) int {
			return cmp.Or(cmp.Compare(key(at(a)), key(at(b))), cmp.Compare(at(a).load(), at(b).load()), cmp.Compare(q.t.plan.Washes[a].Name, q.t.plan.Washes[b].Name))
		})
		return out
	}
	neediest := sorted(func(l *leg) float64 { return -l.need() })
	if len(q.free) <= mostTried {
		return permuted(neediest)
	}
	q.order.ByRule = true
	return [][]int{
		neediest, sorted((*leg).need), sorted((*leg).load), sorted(func(l *leg) float64 { return -l.load() }),
	}
}

// permuted are all orders of some legs, the one that is given first.
func permuted(legs []int) [][]int {
	if len(legs) < 2 {
		return [][]int{legs}
	}
	var all [][]int
	for i, first := range legs {
		rest := append(slices.Clone(legs[:i]), legs[i+1:]...)
		for _, tail := range permuted(rest) {
			all = append(all, append([]int{first}, tail...))
		}
	}
	return all
}

// settle finds the best order of those that were tried, and the least of all. Of orders
// with about the same chance of all, the one counts that does more until then.
func (q *queue) settle() {
	o := &q.order
	o.Tried = len(q.tried)
	if o.Tried == 0 {
		o.Whole = whole(All(o.Stated))
		return
	}
	most := quantity.Fraction(0)
	o.Worst, o.Least = 1, math.Inf(1)
	for _, turns := range q.tried {
		most, o.Worst, o.Least = max(most, All(turns)), min(o.Worst, All(turns)), min(o.Least, Done(turns))
	}
	o.Whole = whole(most)
	worth := func(turns []Turn) (all, done float64) {
		if o.Whole {
			all = math.Round(100 * float64(All(turns)))
		}
		return all, math.Round(1e6 * Done(turns))
	}
	better := func(a, b []Turn) int {
		all, done := worth(a)
		otherAll, otherDone := worth(b)
		return cmp.Or(cmp.Compare(all, otherAll), cmp.Compare(done, otherDone))
	}
	for _, turns := range q.tried {
		if o.Best == nil || better(turns, o.Best) > 0 {
			o.Best = turns
		}
	}
}

// mark is where a walker stands within a fill.
type mark struct {
	fed     []float64
	fed0    float64
	columns []bed.Column
	y       []float64
	series  []bed.Series
}

func (w *walker) mark() mark {
	m := mark{fed: slices.Clone(w.fed)}
	if w.pairs != nil {
		m.series = slices.Clone(w.pairs.series)
		return m
	}
	m.fed0, m.columns, m.y = w.fronts.fed, slices.Clone(w.fronts.columns), slices.Clone(w.fronts.y)
	return m
}

// backTo takes the walker back to a mark of the same fill.
func (w *walker) backTo(m mark) {
	copy(w.fed, m.fed)
	if w.pairs != nil {
		copy(w.pairs.series, m.series)
		return
	}
	w.fronts.fed = m.fed0
	copy(w.fronts.columns, m.columns)
	copy(w.fronts.y, m.y)
}

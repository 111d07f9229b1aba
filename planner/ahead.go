package planner

import (
	"math"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/learning"
)

// Ahead is what lies before a bed: when it ends, what it has cost, which reading
// would teach most, and what a fill of new resin would show. It is worked out
// when the log changes, not at every key.
type Ahead struct {
	Pace    Pace
	Ends    quantity.Opt[Band[model.Date]] // one bed in ten ends before P10
	OrderBy quantity.Opt[model.Date]       // so that resin is there when the first of ten ends; today where that is past
	Overdue bool                           // that day is today, or is past
	Lead    quantity.Duration

	Running RunningOn
	Given   quantity.Volume     // by this fill, so far
	Curve   []CurvePoint        // outlet at the job's flow, from the fill's start to past its end
	Factor  Band[float64]       // true capacity over the stated one
	Contact Band[float64]       // contact efficiency
	Used    int                 // readings of this fill that taught something
	Moved   quantity.Opt[Moved] // where the last reading moved the answer by much
	Advice  learning.Advice
	Faster  quantity.Flow // the flow of a reading at a faster flow

	Refill  RefillFigures
	Reasons []Reason
}

// What the screens ask of an advice and of a cause.
const (
	ReadFaster = learning.ReadFaster
	ReadAtEnd  = learning.ReadAtEnd
	ReadLater  = learning.ReadLater
	OtherScale = learning.OtherScale // the pen is on another scale than said
)

// RunningOn is what speaks for keeping the resin that is in the tank.
type RunningOn struct {
	Verdict  Verdict // of the next wash
	Chance   quantity.Fraction
	Job      quantity.Volume              // the next wash with its flush
	Washes   Band[float64]                // like the next one, until the limit
	Price    quantity.Opt[quantity.Money] // of the fill, where it is stated
	Known    bool                         // it is, and the fill gave water: the money below holds
	Currency string
	PerWash  float64 // of the next wash with its flush, as the plan prices it; 0 where that is not known
	// PerGallon is the price over the gallons so far, AtEnd over those that the
	// fill will have given in the middle of what is believed.
	PerGallon, AtEnd float64
	Left             float64 // what the gallons that are left are worth, of the price
}

// quickService is the flow over the resin of a reading that is to teach: 5 gpm
// on half a cubic foot. The faster the flow, the sooner a shortening bed shows on
// a pen. PRACTICE; own computation, see learning's Advise.
const quickService = 10 * quantity.GPMPerCubicFoot

// LookAhead works it out for a plan. Where the log knows nothing of the bed the
// plan's own curve stands, and there is no pace.
func LookAhead(rig model.Rig, places model.Places, wash model.Wash, plan Plan, past *Past, today model.Moment) (Ahead, error) {
	m, err := begin(rig, places, wash, direct(past))
	if err != nil {
		return Ahead{}, err
	}
	r, ask := &m.resin, m.ask
	a := Ahead{Lead: LeadTime, Given: plan.Bed.SoFar, Curve: plan.Bed.Curve}
	fill := &FillPast{Price: m.bed.Price, Gallons: a.Given}
	if history := past.Bed(m.bed.Name); history != nil {
		fill = history.Present()
		a.look(history, plan, today.Date(), PaceOf(history.Draws, today))
		a.Curve = fill.curve(r, ask)
		if moved, much := fill.moved(r, ask, plan.Bed.ChanceLasts); much {
			a.Moved = quantity.Some(moved)
		}
	}
	if plan.Bed.Remaining.P50 <= 0 { // it is at its end, at whatever pace
		a.Overdue, a.OrderBy = true, quantity.Some(today.Date())
	}
	a.Running = runningOn(plan)
	a.Running.cost(fill, plan)
	a.Faster = faster(r, plan.Cap)
	a.Advice = r.job(ask).Advise(m.before.states, ask.feed, learning.Trial{Flow: a.Faster, Units: r.units(a.Faster)})
	a.Refill = refillFigures(r, ask, m.bed)
	a.reason(plan)
	return a, nil
}

// look takes what the log says of the bed.
func (a *Ahead) look(history *BedPast, plan Plan, today model.Date, pace Pace) {
	fill := history.Present()
	p := fill.posterior
	a.Given, a.Pace = fill.Gallons, pace
	a.Factor, a.Contact, a.Used = Band[float64]{p.Factor[0], p.Factor[1], p.Factor[2]}, Band[float64]{p.Contact[0], p.Contact[1], p.Contact[2]}, p.Used
	a.date(plan.Bed.Remaining, today)
}

// faster is a flow that teaches: no more than the tank and the chain allow. The
// contact time is not kept to, since it is for a few gallons.
func faster(r *resin, caps FlowCap) quantity.Flow {
	f := quantity.Flow(float64(quickService) * float64(r.tank.Resin))
	return min(f, caps.ToWaste())
}

func (a *Ahead) date(left Band[quantity.Volume], today model.Date) {
	early, known := a.Pace.Until(left.P10, today)
	if !known {
		return
	}
	order := OrderBy(early, a.Lead)
	a.Overdue = order.Compare(today) <= 0
	if a.OrderBy = quantity.Some(order); a.Overdue {
		a.OrderBy = quantity.Some(today)
	}
	middle, fits := a.Pace.Until(left.P50, today)
	late, far := a.Pace.Until(left.P90, today)
	if fits && far {
		a.Ends = quantity.Some(Band[model.Date]{P10: early, P50: middle, P90: late})
	}
}

func runningOn(plan Plan) RunningOn {
	run := RunningOn{Verdict: plan.Verdict, Chance: plan.Bed.ChanceLasts, Job: plan.Through()}
	if run.Job > 0 {
		left := plan.Bed.Remaining
		run.Washes = Band[float64]{float64(left.P10 / run.Job), float64(left.P50 / run.Job), float64(left.P90 / run.Job)}
	}
	return run
}

// cost sets the price of the fill against what it gave.
func (run *RunningOn) cost(fill *FillPast, plan Plan) {
	money, known := fill.Price.Get()
	run.Price = fill.Price
	if !known || fill.Gallons <= 0 {
		return
	}
	run.Known, run.Currency = true, money.Currency
	run.PerGallon = money.Amount() / fill.Gallons.Gallons()
	if plan.Bed.Fill > 0 {
		run.PerWash = money.Amount() * float64(run.Job/plan.Bed.Fill)
	}
	left := plan.Bed.Remaining.P50
	if all := fill.Gallons + left; !math.IsInf(float64(all), 0) {
		run.AtEnd = money.Amount() / all.Gallons()
		run.Left = money.Amount() * float64(left/all)
	}
}

// curve is the outlet of the fill at the job's flow and on the job's water: along the
// uses as they were, and beyond them until past the end.
func (f *FillPast) curve(r *resin, a asked) []CurvePoint {
	const along, beyond = 24, 28
	var points []CurvePoint
	add := func(v quantity.Volume, q learning.Quantiles) {
		if n := len(points); n > 0 && v <= points[n-1].Volume {
			return
		}
		points = append(points, CurvePoint{Volume: v, Outlet: ppmBand(q, a.feed)})
	}
	n := r.units(a.main)
	after := spread(len(f.given), along)
	for i, q := range f.posterior.Along(n, after) {
		if after[i] == 0 {
			add(0, q)
			continue
		}
		add(f.given[after[i]-1], q)
	}
	all := r.load.Supply(r.whole)
	end := max(1.35*all-f.Gallons, 0.3*all, 1.1*a.volume)
	fed, volumes := make([]float64, beyond), make([]quantity.Volume, beyond)
	for i := range fed {
		volumes[i] = end * quantity.Volume(float64(i+1)/beyond)
		fed[i] = r.capacities(volumes[i])
	}
	for i, q := range f.posterior.Beyond(n, fed) {
		add(f.Gallons+volumes[i], q)
	}
	return points
}

// spread is at most n + 1 numbers from 0 to last, evenly.
func spread(last, n int) []int {
	n = min(n, last)
	out := []int{0}
	for i := 1; i <= n; i++ {
		out = append(out, i*last/n)
	}
	return out
}

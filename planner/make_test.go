package planner_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
)

// threeFacts is the least a person can state.
func threeFacts() (model.Rig, model.Places, model.Wash) {
	rig := model.Rig{
		Vehicles: []model.Vehicle{{Name: "coach", Length: quantity.Some(40 * quantity.Foot), Height: quantity.Some(12.5 * quantity.Foot)}},
		Beds:     []model.Bed{{Name: "tank", Resin: quantity.Some(0.5 * quantity.CubicFoot)}},
	}
	return rig, model.Places{{Name: "home", TDS: quantity.Some(quantity.PPM(250, quantity.ScaleNaCl))}}, model.Wash{}
}

func mustMake(t require.TestingT, rig model.Rig, places model.Places, wash model.Wash) planner.Plan {
	p, err := planner.Make(rig, places, wash)
	require.NoError(t, err)
	return p
}

func codes(notes []planner.Note) []string {
	var out []string
	for _, n := range notes {
		out = append(out, n.Code)
	}
	return out
}

func TestThreeFactsMakeAPlan(t *testing.T) {
	rig, places, wash := threeFacts()
	p := mustMake(t, rig, places, wash)
	assert.Equal(t, planner.Lasts, p.Verdict)
	assert.Greater(t, p.DI.Volume.Gallons(), 20.0)
	assert.Less(t, p.DI.Volume.Gallons(), 60.0)
	assert.Equal(t, planner.ByContactTime, p.Cap.BoundBy)
	assert.InDelta(t, 2.5, p.Cap.Flow.GPM(), 0.02)
	assert.InDelta(t, 24, p.Cap.JugSeconds.Seconds(), 0.2)
	assert.Len(t, p.Stages, 5)
	assert.Len(t, p.Faces, 5)
	assert.NotEmpty(t, p.Cautions)
}

func TestEveryAssumptionAndReasonHasASource(t *testing.T) {
	lib := store.Example()
	p := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	for _, a := range slices.Concat(p.Assumptions, p.Constants) {
		assert.NotEmpty(t, a.Name)
		assert.NotEmpty(t, a.Source.Tag, a.Name)
		assert.NotEmpty(t, a.Source.Text, a.Name)
		assert.True(t, a.Words != "" || a.Value.Kind != nil, "%s has a value", a.Name)
	}
	for _, r := range p.Reasons {
		assert.NotEmpty(t, r.Formula, r.Number)
		assert.NotEmpty(t, r.Source.Tag, r.Number)
		assert.NotEmpty(t, r.Source.Text, r.Number)
		assert.True(t, r.Result != "" || r.Value.Kind != nil, "%s has a result", r.Number)
	}
}

func TestWhatIsMissingIsNamed(t *testing.T) {
	rig, places, wash := threeFacts()
	noPlace, noLength := model.Places{}, rig
	noLength.Vehicles = []model.Vehicle{{Name: "coach", Height: rig.Vehicles[0].Height}}
	unknown := wash
	unknown.Bed = "big tank"
	for _, c := range []struct {
		rig    model.Rig
		places model.Places
		wash   model.Wash
		want   string
	}{
		{model.Rig{}, places, wash, "there is no vehicle yet: state one, and the plan follows"},
		{rig, noPlace, wash, "there is no place yet: state one, and the plan follows"},
		{noLength, places, wash, `the vehicle "coach" has no length yet: state it, and the plan follows`},
		{rig, places, unknown, `no bed is called "big tank"; there is tank`},
	} {
		_, err := planner.Make(c.rig, c.places, c.wash)
		var missing *planner.Missing
		require.ErrorAs(t, err, &missing)
		assert.Equal(t, c.want, err.Error())
	}
}

// Common practice, no source: a small pressure washer takes 1.2 to 1.4 gpm and
// stays under the cap of half a cubic foot; an open hose is far over it.
func TestASmallWasherIsUnderTheCapAndAnOpenHoseIsNot(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Hoses = []model.Hose{{Name: "hose", Bore: quantity.Some(0.625 * quantity.Inch), Length: quantity.Some(25 * quantity.Foot), Run: model.SupplyRun}}
	places[0].Pressure = quantity.Some(60 * quantity.PSI)
	places[0].FlowingAt, places[0].Flowing = quantity.Some(50*quantity.PSI), quantity.Some(15*quantity.GPM)
	p := mustMake(t, rig, places, wash)
	assert.GreaterOrEqual(t, p.Sprayer.Flow.GPM(), 1.2)
	assert.LessOrEqual(t, p.Sprayer.Flow.GPM(), 1.4+1e-9)
	assert.True(t, p.Sprayer.WithinCap)
	assert.GreaterOrEqual(t, p.Sprayer.OpenHose.GPM(), 15.0)
	assert.Greater(t, p.Sprayer.OpenHose/p.Cap.Flow, quantity.Flow(5))
	assert.Contains(t, codes(p.Warnings), "open-hose")
}

// Common practice, no source: the first cup after standing may read 105 where
// 290 is the truth.
func TestAFirstCupIsNotBelieved(t *testing.T) {
	rig, places, wash := threeFacts()
	places[0].TDS = quantity.Some(quantity.PPM(290, quantity.ScaleNaCl))
	silent := mustMake(t, rig, places, wash)
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(105, quantity.ScaleNaCl))
	rig.Beds[0].Flushed = model.No
	cup := mustMake(t, rig, places, wash)
	assert.Contains(t, codes(cup.Warnings), "unflushed")
	assert.Equal(t, silent.Bed.Remaining, cup.Bed.Remaining)
	assert.Positive(t, float64(cup.Flush.Volume))

	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(290, quantity.ScaleNaCl))
	rig.Beds[0].Flushed = model.Yes
	spent := mustMake(t, rig, places, wash)
	assert.Equal(t, planner.WillNotLast, spent.Verdict)
	assert.Zero(t, float64(spent.Bed.Remaining.P50))
}

func TestGallonsAndReadingTogetherSharpenTheBand(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].SoFar = quantity.Some(150 * quantity.Gallon)
	wide := mustMake(t, rig, places, wash)
	rig.Beds[0].LastReading = quantity.Some(quantity.PPM(4, quantity.ScaleNaCl))
	sharp := mustMake(t, rig, places, wash)
	spread := func(b planner.Band[quantity.Volume]) float64 { return float64(b.P90 - b.P10) }
	assert.Less(t, spread(sharp.Bed.Remaining), spread(wide.Bed.Remaining))
}

func TestAClaimIsSetAgainstTheWater(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].GoodFor = quantity.Some(1500 * quantity.Gallon)
	p := mustMake(t, rig, places, wash)
	require.NotNil(t, p.Claim)
	assert.InDelta(t, 57, p.Claim.Implied.MilligramsPerLitre(), 0.5)
	assert.Less(t, p.Claim.Here, p.Claim.Stated/3)
	assert.Contains(t, codes(p.Warnings), "claim")

	rig.Beds[0].GoodForTDS = quantity.Some(quantity.PPM(250, quantity.ScaleNaCl))
	known := mustMake(t, rig, places, wash)
	assert.InEpsilon(t, 1500, known.Claim.Here.Gallons(), 0.1, "the same water gives about the claim back")
}

func TestSoftenedWaterWithoutASoftenerIsRaw(t *testing.T) {
	rig, places, wash := threeFacts()
	wash.Stages = []model.Stage{{Name: "rinse", Water: model.Softened}, {Name: "final rinse", Water: model.DI, Final: true}}
	p := mustMake(t, rig, places, wash)
	assert.Equal(t, model.Raw, p.Stages[0].Water)
	assert.Contains(t, codes(p.Warnings), "no-softener")
	assert.Nil(t, p.Softener)
}

func TestWashWithoutDIAsksNothingOfTheBed(t *testing.T) {
	rig, places, wash := threeFacts()
	wash.Stages = []model.Stage{{Name: "rinse", Water: model.Raw}}
	p := mustMake(t, rig, places, wash)
	assert.Zero(t, float64(p.DI.Volume))
	assert.Contains(t, codes(p.Warnings), "no-di")
	for _, f := range p.Faces {
		assert.InDelta(t, 250, f.PPMLeft, 1e-6)
	}
}

func TestAnUsedUpBedHasNoFlowThatHolds(t *testing.T) {
	rig, places, wash := threeFacts()
	rig.Beds[0].SoFar = quantity.Some(3000 * quantity.Gallon)
	p := mustMake(t, rig, places, wash)
	assert.Equal(t, planner.WillNotLast, p.Verdict)
	assert.Equal(t, planner.ByExchange, p.Cap.BoundBy)
	assert.Zero(t, float64(p.Cap.Flow))
	assert.Equal(t, quantity.Fraction(1), p.Bed.Before.Spent)
	assert.False(t, p.Cap.Useful())
	assert.Equal(t, planner.ByContactTime, p.Cap.Held().Name)
}

// A nearly spent bed would keep its limit at a trickle: no nozzle sprays with it, and
// no two caps stand in one plan.
func TestATrickleIsNoCap(t *testing.T) {
	assert.False(t, planner.FlowCap{Flow: 0.026 * quantity.GPM, BoundBy: planner.ByExchange}.Useful())
	assert.True(t, planner.FlowCap{Flow: 0.026 * quantity.GPM, BoundBy: planner.ByRating}.Useful(), "the tank's own")
	assert.True(t, planner.FlowCap{Flow: 0.5 * quantity.GPM, BoundBy: planner.ByExchange}.Useful())
	lib := worn(3000)
	p := mustMake(t, lib.Rig, lib.Places, lib.Washes[0].Wash)
	for _, w := range p.Warnings {
		assert.NotContains(t, w.Text(quantity.US), " 0 gpm")
	}
	way := wayOf(t, shorten(t, lib, lib.Washes[0].Wash), planner.WayCap)
	assert.Equal(t, "no flow keeps this bed on spec; the DI water runs under its other caps already", way.Not.Text(quantity.US))
}

func TestSoftenerCountsTheDIThatIsFedThroughIt(t *testing.T) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	through := mustMake(t, lib.Rig, lib.Places, wash)
	wash.Feed = model.No
	around := mustMake(t, lib.Rig, lib.Places, wash)
	assert.InDelta(t, float64(through.DI.Volume+through.Flush.Volume), float64(through.Softener.Takes-around.Softener.Takes), 1e-3)
}

// A bed behind a softener takes the same load and yet gives some gallons more: its
// slowest cation is sodium, at 1.334e-9 m2/s in the CRC Handbook against 0.792e-9 of
// calcium. The plan says so where it says that softening spares no resin.
func TestASoftenedFeedGivesMoreAndThePlanSaysWhy(t *testing.T) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	behind := mustMake(t, lib.Rig, lib.Places, wash)
	wash.Feed = model.No
	beside := mustMake(t, lib.Rig, lib.Places, wash)
	assert.InEpsilon(t, float64(beside.Softened.Load), float64(behind.Softened.Load), 1e-9)
	assert.Greater(t, behind.Bed.Remaining.P50, beside.Bed.Remaining.P50)
	note := slices.IndexFunc(behind.Warnings, func(w planner.Note) bool { return w.Code == "softening-spares-nothing" })
	require.GreaterOrEqual(t, note, 0)
	assert.Contains(t, behind.Warnings[note].Text(quantity.US), "sodium is quicker to the beads than calcium")
	slowest := func(p planner.Plan) string {
		why := p.Reasons[slices.IndexFunc(p.Reasons, func(r planner.Reason) bool { return r.Number == "transfer units" })]
		return why.Inputs[slices.IndexFunc(why.Inputs, func(a planner.Assumption) bool { return a.Name == "slowest cation" })].Words
	}
	assert.Equal(t, []string{"sodium", "calcium"}, []string{slowest(behind), slowest(beside)})
}

package washday_test

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/washday"
)

func example(t require.TestingT) planner.Plan {
	lib := store.Example()
	p, err := planner.Make(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	return p
}

func underway(t require.TestingT) model.Underway {
	p := example(t)
	return model.Underway{
		ID: "1k9mz3q7h4v8c2xd", Steps: washday.Steps(p), Limit: quantity.Some(p.Limit),
		Plan:    model.WashDone{Plan: p.Wash, Place: p.Place, Vehicle: p.Vehicle, Bed: p.BedName},
		Outlook: model.BedLeft{Mid: quantity.Some(p.Bed.Remaining.P50), Low: quantity.Some(p.Bed.Remaining.P10), High: quantity.Some(p.Bed.Remaining.P90)},
	}
}

var morning = time.Date(2026, 6, 12, 8, 0, 0, 0, time.UTC)

// after is so many seconds into the wash, by both clocks.
func after(seconds float64) model.Instant {
	d := time.Duration(seconds * float64(time.Second))
	return model.Instant{Wall: morning.Add(d), Boot: "b1", Up: time.Hour + d}
}

func stepAt(u *model.Underway, kind model.StepKind) int {
	return slices.IndexFunc(u.Steps, func(s model.DayStep) bool { return s.Kind == kind })
}

// The steps hold the plan's water and time, no more and no less.
func TestStepsHoldThePlan(t *testing.T) {
	p := example(t)
	u := underway(t)
	var di, soft quantity.Volume
	var time quantity.Duration
	for _, s := range u.Steps {
		if s.Kind != model.Work {
			continue
		}
		time += s.Duration.Or(0)
		switch s.Water {
		case model.DI:
			di += s.Volume.Or(0)
			assert.Equal(t, model.Yes, s.Bed)
		case model.Softened:
			soft += s.Volume.Or(0)
			assert.Equal(t, model.No, s.Bed)
			assert.Equal(t, model.Yes, s.Softener)
		}
	}
	assert.InDelta(t, float64(p.DI.Volume), float64(di), 1e-9)
	assert.InDelta(t, float64(p.Soft.Volume), float64(soft), 1e-9)
	assert.InDelta(t, float64(p.DI.Duration+p.Soft.Duration), float64(time), 1e-6)
	flush, read := stepAt(&u, model.Flush), stepAt(&u, model.Read)
	assert.Equal(t, flush+1, read)
	di1 := slices.IndexFunc(u.Steps, func(s model.DayStep) bool { return s.Kind == model.Work && s.Water == model.DI })
	assert.Greater(t, di1, read, "the flush comes before the first DI on a face")
	assert.Equal(t, model.LetDry, u.Steps[di1-1].Kind)
	assert.Equal(t, p.Day.Start.Turns[0].Side, u.Steps[1].Face, "the day's order")
	assert.Equal(t, model.SetUp, u.Steps[0].Kind)
	assert.Equal(t, model.PackUp, u.Steps[len(u.Steps)-1].Kind)
}

// Where nothing says how fast soap dries no face waits with it for the others.
func TestWithoutADayEachFaceGoesThroughAllItsStages(t *testing.T) {
	lib := store.Example()
	wash := lib.Washes[0].Wash
	wash.Date = quantity.Opt[model.Date]{}
	p, err := planner.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	steps := washday.Steps(p)
	require.Nil(t, p.Day)
	var faces []model.Side
	for _, s := range steps {
		if s.Face != "" && (len(faces) == 0 || faces[len(faces)-1] != s.Face) {
			faces = append(faces, s.Face)
		}
	}
	assert.Equal(t, model.Sides(), faces, "no face is come back to")
	read := stepAt(&model.Underway{Steps: steps}, model.Read)
	assert.Equal(t, model.Left, steps[read+1].Face, "the roof gets no DI water")
	assert.Equal(t, "pre-rinse", steps[read+1].Stage)
}

func TestTimeIsADifferenceOfMoments(t *testing.T) {
	u := underway(t)
	flow := u.Steps[1].Flow.Or(0)
	u.Deeds = []model.Deed{
		{Does: model.GoOn, At: after(10)}, {Does: model.WaterOn, At: after(20)},
		{Does: model.WaterOff, At: after(80)}, {Does: model.WaterOn, At: after(100)},
	}
	s := washday.Stand(&u, after(130))
	assert.InDelta(t, 90, float64(s.Done[1].Spent), 1e-9)
	assert.InDelta(t, float64(flow)*90, float64(s.Done[1].Used), 1e-12)
	assert.True(t, s.Running)
	assert.True(t, s.Sure)

	back := after(130)
	back.Wall = back.Wall.Add(-time.Hour)
	assert.InDelta(t, 90, float64(washday.Stand(&u, back).Done[1].Spent), 1e-9, "the wall's clock set back an hour changes nothing")
	zone := after(130)
	zone.Wall = zone.Wall.In(time.FixedZone("", 9*3600))
	assert.InDelta(t, 90, float64(washday.Stand(&u, zone).Done[1].Spent), 1e-9)

	booted := model.Instant{Wall: after(160).Wall, Boot: "b2", Up: 5 * time.Second}
	assert.InDelta(t, 120, float64(washday.Stand(&u, booted).Done[1].Spent), 1e-9, "after a new start the wall is asked")
	booted.Wall = after(0).Wall
	s = washday.Stand(&u, booted)
	assert.InDelta(t, 60, float64(s.Done[1].Spent), 1e-9, "a wall that went back takes nothing away")
	assert.False(t, s.Sure)
}

func TestADripBeginsByItself(t *testing.T) {
	u := underway(t)
	at := stepAt(&u, model.LetDry)
	for i := range at {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.GoOn, At: after(float64(i))})
	}
	s := washday.Stand(&u, after(float64(at)+19))
	assert.Equal(t, at, s.At)
	assert.True(t, s.Running)
	assert.InDelta(t, 20, float64(s.Done[at].Spent), 1e-9)
}

func TestTheGate(t *testing.T) {
	u := underway(t)
	at := stepAt(&u, model.Read)
	for range at {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.GoOn, At: after(1)})
	}
	gate := func(deeds ...model.Deed) washday.Gate {
		v := u
		v.Deeds = append(slices.Clone(u.Deeds), deeds...)
		s := washday.Stand(&v, after(2))
		return s.Gate(&v)
	}
	read := func(ppm float64, scale quantity.Scale) model.Deed {
		return model.Deed{Does: model.TakeRead, At: after(2), Reading: quantity.Some(quantity.PPM(ppm, scale))}
	}
	limit := u.Limit.Or(quantity.Reading{})
	assert.Equal(t, washday.AskPen, gate())
	assert.Equal(t, washday.Go, gate(read(limit.Number, limit.Scale)))
	assert.Equal(t, washday.NoGo, gate(read(limit.Number+1, limit.Scale)))
	assert.Equal(t, washday.Go, gate(read(limit.Number+1, quantity.Scale442)), "11 ppm of a 442 pen are under 10 as NaCl")
	over := read(50, limit.Scale)
	assert.Equal(t, washday.GoAlong, gate(over, model.Deed{Does: model.Accept, At: after(3)}))
	assert.Equal(t, washday.AskPen, gate(over, model.Deed{Does: model.TakeWay, At: after(3), Way: planner.WaySlower}))
	assert.Equal(t, washday.GoAlong, gate(over, model.Deed{Does: model.TakeWay, At: after(3), Way: washday.WaySoftened}))
}

// A flow that is measured holds from then on, for the same water and sprayer; a hand
// is as fast as before, but no face gets less than replaces its film.
func TestAMeasuredFlowHoldsFromThenOn(t *testing.T) {
	u := underway(t)
	planned := u.Steps[1].Flow.Or(0)
	u.Deeds = []model.Deed{
		{Does: model.GoOn, At: after(0)}, {Does: model.WaterOn, At: after(0)},
		{Does: model.Measure, At: after(60), Flow: quantity.Some(planned / 2)}, {Does: model.WaterOff, At: after(120)},
	}
	s := washday.Stand(&u, after(200))
	assert.InDelta(t, float64(planned)*90, float64(s.Done[1].Used), 1e-9, "what ran before ran at the flow of before")
	for i, step := range s.Steps {
		was := u.Steps[i]
		switch {
		case step.Sprayer == u.Steps[1].Sprayer && step.Water == u.Steps[1].Water && was.Flow.Given():
			assert.InDelta(t, float64(was.Volume.Or(0))/2, float64(step.Volume.Or(0)), 1e-9)
		default:
			assert.Equal(t, was, step, "another water is not touched")
		}
	}
	di := slices.IndexFunc(u.Steps, func(s model.DayStep) bool { return s.Kind == model.Work && s.Water == model.DI })
	u.Steps[di].Least = u.Steps[di].Volume
	for range di - 1 {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.GoOn, At: after(300)})
	}
	u.Deeds = append(u.Deeds, model.Deed{Does: model.Measure, At: after(301), Flow: quantity.Some(planned / 2)})
	s = washday.Stand(&u, after(301))
	assert.InDelta(t, u.Steps[di].Volume.Or(0).Gallons(), s.Steps[di].Volume.Or(0).Gallons(), 1e-9, "the film takes what it takes")
	assert.InDelta(t, 2*u.Steps[di].Duration.Or(0).Seconds(), s.Steps[di].Duration.Or(0).Seconds(), 1e-6)
}

// A flush that runs faster than the bed can purify goes to waste: the rinse behind it keeps
// its own flow. One within the cap is measured at the rinse's own sprayer.
func TestAFastFlushIsNoFlowOfTheRinse(t *testing.T) {
	for over, carries := range map[float64]bool{0.9: true, 1.5: false} {
		u := underway(t)
		at := stepAt(&u, model.Flush)
		limit := 2.5 * quantity.GPM
		u.Outlook.Cap = quantity.Some(limit)
		for range at {
			u.Deeds = append(u.Deeds, model.Deed{Does: model.GoOn, At: after(1)})
		}
		u.Deeds = append(u.Deeds, model.Deed{Does: model.Measure, At: after(2), Flow: quantity.Some(quantity.Flow(over) * limit)})
		s := washday.Stand(&u, after(2))
		assert.InDelta(t, over*float64(limit), float64(s.Steps[at].Flow.Or(0)), 1e-12)
		assert.InDelta(t, u.Steps[at].Volume.Or(0).Gallons(), s.Steps[at].Volume.Or(0).Gallons(), 1e-9, "the gallons are the flush's")
		pen := stepAt(&u, model.Read)
		assert.Equal(t, carries, s.Steps[pen].Flow != u.Steps[pen].Flow, "%v of the cap", over)
	}
}

// A way out in the middle leaves what was done, and asks for nothing twice.
func TestAWayReplacesWhatIsLeft(t *testing.T) {
	lib := store.Example()
	u := underway(t)
	at := stepAt(&u, model.Read)
	for range at {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.GoOn, At: after(1)})
	}
	wash := lib.Washes[0].Wash
	wash.TowelFaces = model.Sides()
	p, err := planner.Make(lib.Rig, lib.Places, wash)
	require.NoError(t, err)
	v := washday.Replaced(u, washday.Stand(&u, after(2)), p, washday.WaySoftened)
	assert.Equal(t, u.Steps[:at+1], v.Steps[:at+1])
	seen := map[string]bool{}
	for _, s := range v.Steps {
		assert.False(t, seen[string(s.Face)+s.Stage+string(s.Kind)], "%s %s twice", s.Stage, s.Face)
		seen[string(s.Face)+s.Stage+string(s.Kind)] = true
		assert.False(t, s.Kind == model.Work && s.Water == model.DI)
	}
	assert.True(t, slices.ContainsFunc(v.Steps, func(s model.DayStep) bool { return s.Towel == model.Yes }))
}

func BenchmarkStand(b *testing.B) {
	u := underway(b)
	for i := range 60 {
		u.Deeds = append(u.Deeds, model.Deed{Does: []model.DeedKind{model.WaterOn, model.WaterOff, model.GoOn}[i%3], At: after(float64(i))})
	}
	for b.Loop() {
		washday.Stand(&u, after(100))
	}
}

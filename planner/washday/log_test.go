package washday_test

import (
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
)

// However often the program was killed on the way, what counts in the log in the end
// is the same, no identifier is there twice, and nothing is lacking.
func TestTheLogIsTheSameHoweverOftenItWasTakenUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := underway(t)
		u.Deeds = append(drawDeeds(t), model.Deed{Does: model.EndEarly, At: after(1e5)})
		var log model.Log
		for _, n := range append(rapid.SliceOf(rapid.IntRange(0, len(u.Deeds))).Draw(t, "written after"), len(u.Deeds)) {
			part := u
			part.Deeds = u.Deeds[:n]
			log = model.Merge(log, model.NewLog(washday.Lacks(&part, log)))
			require.Empty(t, washday.Lacks(&part, log), "nothing is written twice")
		}
		ids := map[string]bool{}
		for _, e := range log {
			require.False(t, ids[e.ID], "one identifier, one entry")
			ids[e.ID] = true
			require.Empty(t, e.Faults())
		}
		assert.Equal(t, counts(model.NewLog(washday.Lacks(&u, nil))), counts(log))
	})
}

// counts is what of a log counts, in words, without identifiers, moments and
// the readings: a step that was gone back to and left again as it was stays as written.
func counts(log model.Log) []string {
	var words []string
	for _, e := range log.Effective() {
		if e.Kind() != model.ReadingKind {
			words = append(words, (&model.Entry{Note: e.Note, Body: e.Body}).Content())
		}
	}
	slices.Sort(words)
	return words
}

// The log's gallons are the screen's: what the stages say adds up to what the wash
// says, with what was struck left out.
func TestTheLogAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := underway(t)
		u.Deeds = append(drawDeeds(t), model.Deed{Does: model.EndEarly, At: after(1e5)})
		log := model.NewLog(washday.Lacks(&u, nil)).Effective()
		washes := log.Washes()
		require.Len(t, washes, 1)
		sums := map[model.Water]quantity.Volume{}
		for _, s := range washes[0].Stages {
			sums[s.Water] += s.Used.Or(0)
		}
		tally := washday.StandAtLast(&u).Tally()
		w := washes[0].Wash
		for water, pair := range map[model.Water][2]quantity.Volume{model.DI: {w.DI.Or(0), tally.DI}, model.Softened: {w.Softened.Or(0), tally.Softened}} {
			assert.InDelta(t, sums[water].Gallons(), pair[0].Gallons(), 0.2, "each step is written to the hundredth")
			assert.InDelta(t, pair[1].Gallons(), pair[0].Gallons(), 0.0051)
		}
	})
}

func drawDeeds(t *rapid.T) []model.Deed {
	kinds := []model.DeedKind{model.WaterOn, model.WaterOff, model.GoOn, model.GoOn, model.GoOn, model.Skip, model.GoBack, model.TakeRead, model.TakeBack, model.Accept, model.Measure}
	n := rapid.IntRange(0, 60).Draw(t, "deeds")
	deeds := make([]model.Deed, n)
	at := 0.0
	for i := range deeds {
		at += rapid.Float64Range(0.1, 300).Draw(t, "seconds")
		deeds[i] = model.Deed{Does: rapid.SampledFrom(kinds).Draw(t, "deed"), At: after(at)}
		if deeds[i].Does == model.Measure {
			deeds[i].Flow = quantity.Some(quantity.Flow(rapid.Float64Range(0.2, 4).Draw(t, "gpm")) * quantity.GPM)
		}
		if deeds[i].Does == model.TakeRead {
			deeds[i].Reading = quantity.Some(quantity.PPM(rapid.Float64Range(0, 40).Draw(t, "ppm"), quantity.ScaleNaCl))
		}
	}
	return deeds
}

// A file that a person has edited may hold any steps and any deeds, with clocks that
// went anywhere: nothing panics, nothing is below zero, and the log takes it.
func TestAnyStepsAndDeeds(t *testing.T) {
	kinds := []model.StepKind{model.SetUp, model.Work, model.LetDry, model.Flush, model.Read, model.PackUp}
	rapid.Check(t, func(t *rapid.T) {
		u := model.Underway{ID: "x"}
		for range rapid.IntRange(1, 6).Draw(t, "steps") {
			s := model.DayStep{Kind: rapid.SampledFrom(kinds).Draw(t, "kind"), Stage: "rinse", Water: rapid.SampledFrom([]model.Water{"", model.DI, model.Raw}).Draw(t, "water")}
			if rapid.Bool().Draw(t, "flows") {
				s.Flow = quantity.Some(quantity.Flow(rapid.Float64Range(0, 1000).Draw(t, "gpm")) * quantity.GPM)
				s.Volume = quantity.Some(quantity.Volume(rapid.Float64Range(0, 1e5).Draw(t, "gal")) * quantity.Gallon)
			}
			if rapid.Bool().Draw(t, "timed") {
				s.Duration = quantity.Some(quantity.Duration(rapid.Float64Range(0, 86400).Draw(t, "s")))
			}
			u.Steps = append(u.Steps, s)
		}
		for _, d := range drawDeeds(t) {
			if d.Does == model.Measure && rapid.Bool().Draw(t, "no flow") {
				d.Flow = quantity.Opt[quantity.Flow]{}
			}
			d.At.Wall = d.At.Wall.Add(-time.Duration(rapid.Int64Range(0, 1e13).Draw(t, "wall back")))
			d.At.Boot = rapid.SampledFrom([]string{"", "b1", "b2"}).Draw(t, "boot")
			u.Deeds = append(u.Deeds, d)
		}
		s := washday.StandAtLast(&u)
		for _, done := range s.Done {
			require.True(t, done.Spent >= 0 && done.Used >= 0 && done.Left >= 0)
		}
		require.True(t, s.At <= len(s.Steps) && s.Far <= len(s.Steps))
		for _, e := range washday.Lacks(&u, nil) {
			require.Empty(t, e.Faults())
		}
	})
}

// Water that is counted as planned stands beside no minutes of other steps: of such a wash
// the log has the gallons, says how many were not timed, and teaches no pace by them.
func TestAWashThatWasNotAllTimedHasNoMinutes(t *testing.T) {
	u := underway(t)
	begin := []model.Deed{{Does: model.GoOn, At: after(1)}, {Does: model.WaterOn, At: after(2)}, {Does: model.GoOn, At: after(302)}}
	end := model.Deed{Does: model.EndEarly, At: after(400)}
	for _, tried := range []struct {
		name  string
		deeds []model.Deed
		timed bool
		note  string
	}{
		{"timed", nil, true, "ended early"},
		{"left out", []model.Deed{{Does: model.Skip, At: after(303)}}, true, "ended early"},
		{"as planned", []model.Deed{{Does: model.GoOn, At: after(303)}}, false, "ended early; steps not timed: 1, with 7.5 gal as planned"},
	} {
		u.Deeds = append(append(slices.Clone(begin), tried.deeds...), end)
		log := model.NewLog(washday.Lacks(&u, nil))
		washes := log.Washes()
		require.Len(t, washes, 1, tried.name)
		duration, given := washes[0].Wash.Duration.Get()
		assert.Equal(t, tried.timed, given, tried.name)
		if given {
			assert.InDelta(t, 300, float64(duration), 1e-9)
		}
		assert.Equal(t, tried.note, log[len(log)-1].Note)
		for _, s := range washes[0].Stages {
			assert.Equal(t, s.Duration.Given(), s.Area.Given(), "no area without its time: it is what teaches a pace")
		}
	}
}

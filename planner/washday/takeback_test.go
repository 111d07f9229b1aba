package washday_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
)

// atThePen is a wash before its reading, the flush counted as planned.
func atThePen(t require.TestingT) model.Underway {
	u := underway(t)
	for i := range stepAt(&u, model.Read) {
		how := model.Skip
		if u.Steps[i].Kind == model.Flush {
			how = model.GoOn
		}
		u.Deeds = append(u.Deeds, model.Deed{Does: how, At: after(1)})
	}
	return u
}

func reads(ppm, at float64, flushed model.Answer) model.Deed {
	return model.Deed{Does: model.TakeRead, At: after(at), Reading: quantity.Some(quantity.PPM(ppm, quantity.ScaleNaCl)), Flushed: flushed}
}

func takenBack(at float64) model.Deed { return model.Deed{Does: model.TakeBack, At: after(at)} }

// does is a wash with some deeds more.
func does(u model.Underway, deeds ...model.Deed) model.Underway {
	u.Deeds = append(slices.Clone(u.Deeds), deeds...)
	return u
}

// What was taken back is as if it had not been read, and what was said of it as if it had
// not been said.
func TestAReadingThatIsTakenBackIsForgotten(t *testing.T) {
	before := atThePen(t)
	for _, tried := range []struct {
		name string
		wash model.Underway
		gate washday.Gate
		last float64 // reading that stands; 0 for none
	}{
		{"over the limit", does(before, reads(14, 2, ""), takenBack(3)), washday.AskPen, 0},
		{"read anew", does(before, reads(14, 2, ""), takenBack(3), reads(4, 3, "")), washday.Go, 4},
		{"the one before stands again", does(before, reads(4, 2, ""), reads(14, 3, ""), takenBack(4)), washday.Go, 4},
		{"both", does(before, reads(4, 2, ""), reads(14, 3, ""), takenBack(4), takenBack(5)), washday.AskPen, 0},
		{"taken as good enough", does(before, reads(14, 2, ""), model.Deed{Does: model.Accept, At: after(3)}, takenBack(4)), washday.AskPen, 0},
		{"the one before was good enough", does(before, reads(14, 2, ""), model.Deed{Does: model.Accept, At: after(3)}, reads(41, 4, ""), takenBack(5)), washday.GoAlong, 14},
		{"lived with on a way out", does(before, reads(14, 2, ""), model.Deed{Does: model.TakeWay, Way: "faces", At: after(3)}, takenBack(4)), washday.AskPen, 0},
		{"nothing to take back", does(before, takenBack(2), reads(4, 3, "")), washday.Go, 4},
	} {
		s := washday.StandAtLast(&tried.wash)
		assert.Equal(t, tried.gate, s.Gate(&tried.wash), tried.name)
		last := 0.0
		if d := washday.LastReading(&tried.wash); d != nil {
			last = d.Reading.Or(quantity.Reading{}).Number
		}
		assert.InDelta(t, tried.last, last, 1e-12, tried.name)
	}
}

// Nor is what was said of the flush.
func TestAReadingTakenBackVouchesForNoFlush(t *testing.T) {
	u := underway(t)
	for range stepAt(&u, model.Read) {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.Skip, At: after(1)})
	}
	u = does(u, reads(14, 2, model.Yes))
	s := washday.StandAtLast(&u)
	assert.False(t, s.Stands())
	u = does(u, takenBack(3))
	s = washday.StandAtLast(&u)
	assert.True(t, s.Stands())
}

// The pen would show the same again until DI water has run, the bed has stood or something
// was done about what comes out of it.
func TestTheWaterIsTheSameUntilItRuns(t *testing.T) {
	before := does(atThePen(t), reads(14, 2, ""))
	on, off := model.Deed{Does: model.WaterOn, At: after(4)}, model.Deed{Does: model.WaterOff, At: after(5)}
	next, back := model.Deed{Does: model.GoOn, At: after(3)}, model.Deed{Does: model.GoBack, At: after(3)}
	for _, tried := range []struct {
		name  string
		deeds []model.Deed
		same  bool
	}{
		{"nothing done", nil, true},
		{"taken as good enough", []model.Deed{{Does: model.Accept, At: after(3)}}, true},
		{"a raw rinse", []model.Deed{next, on, off}, true},
		{"taken back", []model.Deed{takenBack(3)}, false},
		{"the one before stands again", []model.Deed{reads(4, 3, ""), takenBack(3)}, true},
		{"water at the pen", []model.Deed{on, off}, false},
		{"back to the flush", []model.Deed{back, {Does: model.Skip, At: after(4)}}, false},
		{"a slower flow", []model.Deed{{Does: model.TakeWay, Way: "slower", At: after(3)}}, false},
		{"a flow measured", []model.Deed{{Does: model.Measure, Flow: quantity.Some(quantity.GPM), At: after(3)}}, false},
		{"stood", []model.Deed{{Does: model.Accept, At: after(2 + washday.StandsAfter.Seconds())}}, false},
	} {
		u := does(before, tried.deeds...)
		assert.Equal(t, tried.same, washday.StandAtLast(&u).SameWater(), tried.name)
	}
}

// A reading that is in the log is struck out there, once; one that was not written yet
// is never written.
func TestAReadingTakenBackIsStruckOutOnce(t *testing.T) {
	before := atThePen(t)
	u := does(before, reads(14, 2, ""))
	back := does(u, takenBack(3))
	flush := model.NewLog(washday.Lacks(&before, nil))
	require.Empty(t, washday.Lacks(&back, flush), "killed before the log had it")

	read := washday.Lacks(&u, flush)
	require.Len(t, read, 1)
	log := model.Merge(flush, model.NewLog(read))
	lacks := washday.Lacks(&back, log)
	require.Len(t, lacks, 1)
	strike := lacks[0].Body.(*model.Correction)
	assert.Equal(t, model.Correction{Of: read[0].ID, Strike: model.Yes}, *strike)
	assert.Equal(t, lacks, washday.Lacks(&back, log), "the same identifier however often it is worked out")

	struck := model.Merge(log, model.NewLog(lacks))
	assert.Empty(t, washday.Lacks(&back, struck))
	assert.Len(t, struck.Effective(), len(flush))
	byHand := model.Merge(log, model.NewLog([]model.Entry{{ID: model.DerivedID(read[0].At, "by hand"), At: read[0].At, Body: strike}}))
	assert.Empty(t, washday.Lacks(&back, byHand), "struck out on another screen already")
}

// However often the program was killed on the way, the readings that count in the log are
// those that stand.
func TestTheReadingsOfTheLogAreThoseThatStand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := underway(t)
		u.Deeds = drawDeeds(t)
		var log model.Log
		var want []string
		for _, n := range append(rapid.SliceOf(rapid.IntRange(0, len(u.Deeds))).Draw(t, "written after"), len(u.Deeds)) {
			part := u
			part.Deeds = u.Deeds[:n]
			log = model.Merge(log, model.NewLog(washday.Lacks(&part, log)))
		}
		for _, d := range u.Deeds {
			switch {
			case d.Does == model.TakeRead:
				want = append(want, d.Reading.Or(quantity.Reading{}).String())
			case d.Does == model.TakeBack && len(want) > 0:
				want = want[:len(want)-1]
			}
		}
		var got []string
		for _, e := range log.Effective() {
			if s, is := e.Body.(*model.Sample); is {
				got = append(got, s.Reading.Or(quantity.Reading{}).String())
			}
		}
		assert.ElementsMatch(t, want, got)
	})
}

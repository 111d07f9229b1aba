package washday_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
)

// A reading after a flush that was cut short is of water that stood: no go, and a first
// cup in the log, unless the person says otherwise.
func TestAFlushCutShortIsNoFlush(t *testing.T) {
	u := underway(t)
	at := stepAt(&u, model.Flush)
	for range at {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.Skip, At: after(1)})
	}
	full := u.Steps[at].Duration.Or(0).Seconds()
	for _, tried := range []struct {
		name   string
		deeds  []model.Deed
		stands bool
	}{
		{"a second", []model.Deed{{Does: model.WaterOn, At: after(1)}, {Does: model.GoOn, At: after(2)}}, true},
		{"half of it", []model.Deed{{Does: model.WaterOn, At: after(1)}, {Does: model.GoOn, At: after(1 + full/2)}}, true},
		{"all but a moment", []model.Deed{{Does: model.WaterOn, At: after(1)}, {Does: model.GoOn, At: after(full - 2)}}, false},
		{"in two parts", []model.Deed{
			{Does: model.WaterOn, At: after(1)}, {Does: model.GoOn, At: after(2)}, {Does: model.GoBack, At: after(3)},
			{Does: model.WaterOn, At: after(4)}, {Does: model.GoOn, At: after(3 + full)},
		}, false},
		{"not timed", []model.Deed{{Does: model.GoOn, At: after(2)}}, false},
		{"skipped", []model.Deed{{Does: model.Skip, At: after(2)}}, true},
	} {
		v := u
		v.Deeds = append(slices.Clone(u.Deeds), tried.deeds...)
		s := washday.StandAtLast(&v)
		require.Equal(t, model.Read, s.Steps[s.At].Kind, tried.name)
		assert.Equal(t, tried.stands, s.Stands(), tried.name)
	}
}

func TestAFirstCupIsNoGo(t *testing.T) {
	u := underway(t)
	for range stepAt(&u, model.Read) {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.Skip, At: after(1)})
	}
	limit := u.Limit.Or(quantity.Reading{})
	read := func(ppm float64, flushed model.Answer) (washday.Gate, model.Answer) {
		v := u
		v.Deeds = append(slices.Clone(u.Deeds), model.Deed{Does: model.TakeRead, At: after(2), Reading: quantity.Some(quantity.PPM(ppm, limit.Scale)), Flushed: flushed})
		s := washday.StandAtLast(&v)
		log := washday.Lacks(&v, nil)
		require.Len(t, log, 1)
		sample := log[0].Body.(*model.Sample)
		assert.Equal(t, model.Yes, sample.Feed, "the softener stands ahead of the bed")
		return s.Gate(&v), sample.Flushed
	}
	for _, tried := range []struct {
		ppm     float64
		flushed model.Answer
		gate    washday.Gate
		logged  model.Answer
	}{
		{1, model.No, washday.Cup, model.No},
		{1, model.Yes, washday.Go, model.Yes},
		{1, "", washday.Go, model.Yes},
		{limit.Number + 1, model.No, washday.NoGo, model.No},
	} {
		gate, logged := read(tried.ppm, tried.flushed)
		assert.Equal(t, tried.gate, gate, "%v", tried)
		assert.Equal(t, tried.logged, logged, "%v", tried)
	}
}

// A bed that was flushed and read, and then stood while a face was soaped, is not read
// again before a flush has run through it anew; a short wait is no standing.
func TestABedThatStoodIsFlushedNoMore(t *testing.T) {
	u := underway(t)
	flush := stepAt(&u, model.Flush)
	for range flush {
		u.Deeds = append(u.Deeds, model.Deed{Does: model.Skip, At: after(1)})
	}
	ran := 10 + u.Steps[flush].Duration.Or(0).Seconds()
	u.Deeds = append(u.Deeds, model.Deed{Does: model.WaterOn, At: after(10)}, model.Deed{Does: model.GoOn, At: after(ran)})
	const hour = 3600.0
	stands := func(at float64, deeds ...model.Deed) (bool, bool) {
		v := u
		v.Deeds = append(slices.Clone(u.Deeds), deeds...)
		s := washday.Stand(&v, after(at))
		_, long := s.Stood()
		return s.Stands(), long
	}
	for _, tried := range []struct {
		name         string
		at           float64
		deeds        []model.Deed
		stands, long bool
	}{
		{"at once", ran, nil, false, false},
		{"after ten minutes", ran + 600, nil, false, false},
		{"after an hour", ran + hour, nil, true, true},
		{"an hour after the pen was in the stream", ran + 600 + hour, []model.Deed{reading(ran+600, "")}, true, true},
		{"soon after the pen was in the stream", ran + 1200, []model.Deed{reading(ran+600, "")}, false, false},
		{"an hour later, said to be flushed", ran + hour, []model.Deed{reading(ran+hour, model.Yes)}, false, false},
		{"said so before it stood", ran + 100 + hour, []model.Deed{reading(ran+100, model.Yes)}, true, true},
		{"flushed a second time", 2*ran + hour, []model.Deed{
			{Does: model.GoBack, At: after(ran + hour)}, {Does: model.WaterOn, At: after(ran + hour)}, {Does: model.GoOn, At: after(2*ran + hour)},
		}, false, false},
		{"and only begun to be", ran + hour + 20, []model.Deed{
			{Does: model.GoBack, At: after(ran + hour)}, {Does: model.WaterOn, At: after(ran + hour)}, {Does: model.GoOn, At: after(ran + hour + 20)},
		}, true, false},
	} {
		stands, long := stands(tried.at, tried.deeds...)
		assert.Equal(t, tried.stands, stands, tried.name)
		assert.Equal(t, tried.long, long, tried.name)
	}
}

func reading(at float64, flushed model.Answer) model.Deed {
	return model.Deed{Does: model.TakeRead, At: after(at), Reading: quantity.Some(quantity.PPM(1, quantity.ScaleNaCl)), Flushed: flushed}
}

// No step lies between the reading and the first face that gets DI water, so that the go
// is known before that face is wet.
func TestTheGoIsKnownBeforeTheFaceIsWet(t *testing.T) {
	steps := washday.Steps(example(t))
	read := slices.IndexFunc(steps, func(s model.DayStep) bool { return s.Kind == model.Read })
	first := slices.IndexFunc(steps, func(s model.DayStep) bool { return s.Kind == model.Work && s.Water == model.DI })
	for i, s := range steps {
		if s.Face == steps[first].Face {
			assert.Equal(t, read+1, i)
			break
		}
	}
}

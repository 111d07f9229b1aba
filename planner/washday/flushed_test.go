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

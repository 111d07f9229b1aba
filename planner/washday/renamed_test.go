package washday_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/washday"
)

// A reading is put right whenever what it names is called otherwise, there and back again;
// what a person has put right of it stays.
func TestAReadingIsCalledAsItsThingsAreByNow(t *testing.T) {
	u := model.Underway{ID: "w", Plan: model.WashDone{Bed: "old tank", Place: "home"}, Steps: []model.DayStep{{Kind: model.Read, Stage: "read"}}}
	u.Deeds = []model.Deed{{Does: model.TakeRead, At: after(1), Reading: quantity.Some(quantity.Reading{Number: 3}), Pen: "pen"}}
	var log model.Log
	takenUp := func() *model.Sample {
		log = model.Merge(log, model.NewLog(washday.Lacks(&u, log)))
		require.Empty(t, washday.Lacks(&u, log), "nothing is written twice")
		counts := log.Effective()
		require.Len(t, counts, 1)
		return counts[0].Body.(*model.Sample)
	}
	takenUp()
	for _, name := range []string{"new tank", "old tank", "new tank"} {
		u.Plan.Bed, u.Deeds[0].Pen = name, name+"'s pen"
		s := takenUp()
		assert.Equal(t, []string{name, name + "'s pen", "home"}, []string{s.Bed, s.Pen, s.Place})
	}
	right := &model.Correction{Of: log[0].ID, Changes: []model.Change{{Key: "bed", Text: "the other tank"}}}
	log = model.Merge(log, model.NewLog([]model.Entry{{ID: "person", At: log[len(log)-1].At, Body: right}}))
	u.Plan.Bed, u.Plan.Place = "third tank", "camp"
	s := takenUp()
	assert.Equal(t, []string{"the other tank", "camp"}, []string{s.Bed, s.Place})
}

package form_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/form"
)

// What a rig states of a softener is told from what went through it by now.
func TestGallonsOfASoftenerBesideTheLog(t *testing.T) {
	soft := model.Softener{Name: "soft", SoFar: quantity.Some(95 * quantity.Gallon)}
	rig := model.Rig{Softeners: []model.Softener{soft}}
	at := func(day int) model.Moment { return model.MomentOf(time.Date(2026, 6, day, 9, 0, 0, 0, time.UTC)) }
	wash := model.Entry{ID: "w", At: at(5), Body: &model.WashDone{Softener: "soft", Softened: quantity.Some(150 * quantity.Gallon)}}
	salt := model.Entry{ID: "s", At: at(4), Body: &model.Regeneration{Softener: "soft"}}
	told := func(log ...model.Entry) string {
		for _, f := range soft.Fields() {
			if said := form.SoFarTold(f, "softener", "soft", planner.Recall(model.NewLog(log), rig, nil), quantity.US); said != "" {
				return said
			}
		}
		return ""
	}
	assert.Empty(t, told())
	assert.Equal(t, "what had gone through before the log began; with the washes of the log it is 245 gal", told(wash))
	assert.Equal(t, "of before the salt of 2026-06-04, counts no more; since then 150 gal went through", told(salt, wash))
}

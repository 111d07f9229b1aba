package report_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

// One face is in no order.
func TestOneFaceWithDIIsToldAlone(t *testing.T) {
	s := planner.Share{Needs: 10 * quantity.Gallon, Spared: 0.4, Unpinned: 0.4, Faces: []planner.FaceShare{{Name: model.Left, DI: true}, {Name: model.Right}}}
	assert.Equal(t, "DI on the left alone: it spares 40 % of the spots that DI on all would.", report.ShareSays(&s, quantity.US))
	s.Faces[1].DI = true
	assert.Contains(t, report.ShareSays(&s, quantity.US), "DI on left, right, in this order:")
}

package report_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/compare"
	"washeve/ui/internal/sample"
	"washeve/ui/report"
)

// Wherever the DI water of a wash is told, so is whether the flush is in it: two figures of one wash
// can be set against each other.
func TestTheFlushIsToldBesideTheDIWater(t *testing.T) {
	p := sample.Plan()
	p.DI.Volume, p.Flush.Volume = 40*quantity.Gallon, 6*quantity.Gallon
	assert.Equal(t, "40 gal and 6 gal to flush, 46 gal in all", report.Takes(p, quantity.US))
	assert.Contains(t, report.Remaining(p, quantity.US), "this wash takes 40 gal and 6 gal to flush, 46 gal in all.")
	assert.Contains(t, report.Cost(p, quantity.US), "for this wash with its flush")
	rows := report.Water(p, quantity.US)
	assert.Equal(t, []string{"DI water", "DI to flush"}, []string{rows[0].Label, rows[1].Label})
	assert.Equal(t, "6 gal", rows[1].Value)
}

func TestAWashWithoutDIWaterTellsNoFlush(t *testing.T) {
	p := sample.Plan()
	p.DI = planner.Use{}
	assert.Positive(t, p.Flush.Volume)
	assert.Zero(t, p.Through())
	assert.Equal(t, "0 gal", report.Takes(p, quantity.US))
	for _, row := range report.Water(p, quantity.US) {
		assert.NotContains(t, row.Label, "flush")
	}
	assert.NotContains(t, report.Cost(p, quantity.US), "flush")
}

func TestACompareTellsOfWhatItsWaterIsTheSum(t *testing.T) {
	f := compare.Figures{
		DI: 24 * quantity.Gallon, Through: 30 * quantity.Gallon, Softened: 111 * quantity.Gallon, Water: 141 * quantity.Gallon,
	}
	rest := report.CompareRest(compare.Table{Ways: []compare.Way{{Figures: f}}}, quantity.US)
	assert.Contains(t, rest, `"Water in all" counts the flush: 141 gal as planned are 24 gal of DI, 111 gal softened, 6 gal to flush.`)
}

// Of the bed and of the softener it says when they are looked at; of a softener only where there is one.
func TestACompareTellsWhenBedAndSoftenerAreLookedAt(t *testing.T) {
	f := compare.Figures{Plan: sample.Plan()}
	f.Plan.Softener = &planner.SoftenerOutlook{}
	told := func() string {
		return strings.Join(report.CompareRest(compare.Table{Ways: []compare.Way{{Figures: f}}}, quantity.US), "\n")
	}
	assert.Contains(t, told(), `"bed left before" is what is left in the bed before the wash`)
	assert.Contains(t, told(), `"soft left after" is the soft water that is left in the softener after the wash`)
	f.Plan.Softener = nil
	assert.NotContains(t, told(), "soft left")
}

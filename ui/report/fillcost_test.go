package report_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/report"
)

func TestWhatAFillHasCostIsToldInOneWay(t *testing.T) {
	run := planner.RunningOn{Known: true, Currency: "$", PerGallon: 4, AtEnd: 1.5, PerWash: 60, Left: 90}
	assert.Equal(t, "$4.00 a gallon so far, $1.50 by its end; next wash $60.00", report.CostOfFill(run, quantity.US).Words(false))
	assert.Equal(t, "$4.00 a gallon so far", report.CostOfFill(run, quantity.US).Words(true), "it has no end to come")
	assert.Contains(t, report.CostOfFill(run, quantity.Metric).Words(false), "$1.06 a litre so far")
	run.PerWash = 0
	assert.Equal(t, "$4.00 a gallon so far, $1.50 by its end", report.CostOfFill(run, quantity.US).Words(false))
	assert.Empty(t, report.CostOfFill(planner.RunningOn{}, quantity.US).Words(false))
}

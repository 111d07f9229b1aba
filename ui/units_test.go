package ui

import (
	"errors"
	"regexp"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// owner keeps the rig as it was saved last.
type owner struct {
	full
	rig model.Rig
}

func (o *owner) Save(r model.Rig, _ model.Places, _ model.Wash) error {
	if o.err == nil {
		o.rig = r
	}
	return o.err
}

var (
	litres  = regexp.MustCompile(`\d L\b`)
	gallons = regexp.MustCompile(`\d gal\b`)
)

// backOnPlan leaves screens until the plan is seen.
func backOnPlan(t *testing.T, a tea.Model) tea.Model {
	t.Helper()
	for range 4 {
		if a.(App).top().Title() == "Plan" {
			return a
		}
		a, _ = press(a, "esc")
	}
	require.Equal(t, "Plan", a.(App).top().Title())
	return a
}

// The units that are turned to on any screen are those of all of them, and the rig says so;
// on the plan that is undone like any edit.
func TestUnitsAreTurnedOnAllScreens(t *testing.T) {
	for _, way := range []string{"", "D", "B", "B c", "C", "S", "W", "R", "R down down", "T enter", "T enter enter", "T enter C"} {
		o := &owner{}
		a, quits := press(wholeKept(o), way+" m")
		require.False(t, quits, way)
		assert.Equal(t, model.UnitsMetric, o.rig.Defaults.Units, way)
		assert.NotRegexp(t, gallons, see(a), way)
		a = backOnPlan(t, a)
		assert.Regexp(t, litres, see(a), way)
		assert.NotRegexp(t, gallons, see(a), way)
		a, _ = press(a, "u")
		assert.Empty(t, o.rig.Defaults.Units, way)
		assert.Regexp(t, gallons, see(a), way)
		a, _ = press(a, "r B")
		assert.Regexp(t, litres, see(a), way)
	}
}

// On the rig they are undone there, and the plan is in those that stand then.
func TestUnitsAreUndoneOnTheRig(t *testing.T) {
	o := &owner{}
	a, _ := press(wholeKept(o), "R m u")
	assert.Empty(t, o.rig.Defaults.Units)
	a = backOnPlan(t, a)
	assert.Regexp(t, gallons, see(a))
	assert.NotRegexp(t, litres, see(a))
}

// A rig that cannot be saved leaves them turned all the same, and that is told at once.
func TestUnitsOfARigThatCannotBeSaved(t *testing.T) {
	o := &owner{full: full{errors.New("no space left on the disk")}}
	a, _ := press(wholeKept(o), "B m")
	assert.Contains(t, see(a), "till the program ends")
	assert.Contains(t, see(a), "Not saved, but still here: no space")
	assert.Regexp(t, litres, see(a))
	assert.Regexp(t, litres, see(backOnPlan(t, a)))
}

// What a way of Compare or of a trip changes of the rig is not the units.
func TestAWayLeavesTheUnitsThatWereTurned(t *testing.T) {
	o := &owner{}
	a, _ := press(wholeKept(o), "C right m enter")
	require.Equal(t, "Plan", a.(App).top().Title())
	assert.Contains(t, see(a), "The plan is now: ")
	assert.Equal(t, model.UnitsMetric, o.rig.Defaults.Units)
	assert.Regexp(t, litres, see(a))
}

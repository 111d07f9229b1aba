package entry

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/planner"
	"washeve/planner/tag"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/keys"
)

func desk(pen string) Desk {
	lib := store.Example()
	d := Desk{Rig: lib.Rig, Places: lib.Places, Clock: func() time.Time { return time.Date(2026, 9, 1, 8, 0, 0, 0, time.UTC) }}
	if pen != "" {
		d.Rig.Pens = []model.Pen{{Name: "grey pen"}}
		d.Rig.Defaults.Pen = ""
		for _, f := range d.Rig.Pens[0].Fields() {
			if f.Key == "scale" {
				_ = f.Set(pen)
			}
		}
	}
	return d
}

func reads(d Desk, script string) (Reading, keys.Action) {
	r := d.NewReading(sample.Plan(), 5*quantity.GPM)
	var does keys.Action
	for _, k := range hands.Keys(script) {
		r, does = r.Update(k)
	}
	return r, does
}

func asks(r Reading, width int) string {
	return strings.Join(r.Lines(plain(), quantity.US, width), "\n")
}

func TestReadingTellsTheFlushFirst(t *testing.T) {
	r, _ := reads(desk(""), "")
	assert.Contains(t, asks(r, 78), "4 gal, which takes 171 s (3 min) at this\nflow, or 48 s at 5 gpm.")
	assert.Contains(t, asks(r, 78), "like 6 ppm NaCl")
	r, does := reads(desk(""), "enter")
	assert.Empty(t, does, "without a number there is no reading")
	assert.Contains(t, asks(r, 78), "A number is needed, like 6 ppm NaCl")
	r, _ = reads(desk(""), "6 enter f")
	assert.Contains(t, asks(r, 78), "A reading after the bed, at 5 gpm")
	r, does = reads(desk(""), "6 enter f y")
	assert.Equal(t, Write, does)
	assert.Equal(t, "5 gpm", r.Sample().Flow.Words())
}

// A bare number has the scale of the pen, whatever that is.
func TestReadingHasThePensScale(t *testing.T) {
	for scale, want := range map[string]string{"442": "12 ppm 442", "x0.5": "12 ppm x0.5", "NaCl": "12 ppm NaCl"} {
		r, does := reads(desk(scale), "1 2 enter y")
		require.Equal(t, Write, does)
		assert.Equal(t, want, r.Sample().Reading.Words())
		assert.Equal(t, "grey pen", r.Sample().Pen)
	}
	r, _ := reads(desk("442"), "'20 uS/cm' enter y")
	assert.Equal(t, "20 uS/cm", r.Sample().Reading.Words())
}

// A pen of which no scale is said: what is counted is told while it is typed, and what was
// typed is kept as it was.
func TestAReadingWithoutAScaleIsToldHowItCounts(t *testing.T) {
	d := desk("")
	d.Rig.Pens = nil
	d.Rig.Defaults.Pen = ""
	r, _ := reads(d, "'2 ppm'")
	assert.Contains(t, asks(r, 78), "no scale said: counted as NaCl")
	r, _ = reads(d, "'2 ppm' enter y")
	assert.Equal(t, "2 ppm", r.Sample().Reading.Words())
	r, _ = reads(d, "2")
	assert.Contains(t, asks(r, 78), "enter takes it as 2 ppm; no scale said: counted as NaCl")
	r, _ = reads(d, "2 enter")
	assert.Contains(t, asks(r, 78), "It reads 2 ppm, no scale said: counted as NaCl.")
	r, _ = reads(d, "2 enter y")
	assert.Equal(t, "2 ppm", r.Sample().Reading.Words(), "no scale is put into its mouth")
}

func TestAFirstCupIsNotUsed(t *testing.T) {
	r, does := reads(desk(""), "1 enter n")
	assert.Equal(t, Write, does)
	assert.Equal(t, model.No, r.Sample().Flushed)
	assert.False(t, r.Sample().Counts())
	assert.Equal(t, "1 ppm NaCl written: a first cup, not used.", r.Written(quantity.US))
}

func TestEscapeGoesBackAStep(t *testing.T) {
	r, does := reads(desk(""), "1 2 enter esc")
	assert.Empty(t, does)
	assert.Contains(t, asks(r, 78), "It reads 12 ppm NaCl")
	assert.True(t, r.Begun())
	r, does = reads(desk(""), "1 2 enter o 4 esc esc esc")
	assert.Equal(t, Leave, does)
	assert.True(t, r.Begun())
	r, _ = reads(desk(""), "1 2 enter esc 7 enter y")
	assert.Equal(t, "7 ppm NaCl", r.Sample().Reading.Words(), "the number is typed over")
}

// What was run out for a reading alone has gone through the bed; what a wash counts is not
// counted again, and a first cup ran nothing out.
func TestTheFlushOfAReadingIsCountedOnce(t *testing.T) {
	r, _ := reads(desk(""), "1 enter")
	assert.Contains(t, asks(r, 200), "y: yes, and its 4 gal count as given by the bed")
	for script, want := range map[string]string{
		"1 enter y": "4 gal", "1 enter enter y": "4 gal", "1 enter a": "", "1 enter n": "",
		"1 enter o '5 gal' enter": "5 gal", "1 enter 5 enter": "5 gal", "1 enter o 3 . 6 enter": "3.6 gal", "1 enter o 3 enter": "3 gal",
	} {
		r, does := reads(desk(""), script)
		require.Equal(t, Write, does, script)
		assert.Equal(t, want, r.Sample().FlushWater.Words(), script)
		assert.Equal(t, !strings.HasSuffix(script, "n") && want != "3 gal", r.Sample().Counts(), script)
	}
	r, does := reads(desk(""), "1 enter enter")
	assert.Empty(t, does, "a second tap of enter answers nothing unread")
	assert.Contains(t, asks(r, 200), "Was the standing water out?")
	r, _ = reads(desk(""), "1 enter o '3 gal'")
	assert.Contains(t, asks(r, 200), "short of the 4 gal that stand in it and behind: a first cup, shown and not used")
}

// Where nobody said how old the fill is, a reading asks: it means little without.
func TestAReadingAsksTheAgeThatNobodySaid(t *testing.T) {
	plan := sample.Plan()
	plan.Bed.SoFar, plan.Bed.OutletNow.P50 = 0, 0.02
	plan.Assumptions = append(plan.Assumptions, planner.Assumption{Name: "bed gallons so far", Source: tag.FromPractice("taken so")})
	press := func(script string) (Reading, keys.Action) {
		r, does := desk("").NewReading(plan, 5*quantity.GPM), keys.Action("")
		for _, k := range hands.Keys(script) {
			r, does = r.Update(k)
		}
		return r, does
	}
	r, does := press("2 enter y")
	assert.Empty(t, does)
	assert.Contains(t, asks(r, 200), "just filled, it would show under 0.1 ppm here")
	assert.Contains(t, asks(r, 200), "like 120 gal; 0 gal where it was just filled; empty where nobody knows")
	for script, want := range map[string]string{
		"2 enter y 9 0 enter": "94 gal", "2 enter y 0 enter": "4 gal", "2 enter a 9 0 enter": "90 gal", "2 enter a 0 enter": "0 gal",
		"2 enter y enter": "", "2 enter y 'unknown' enter": "",
	} {
		r, does := press(script)
		require.Equal(t, Write, does, script)
		assert.Equal(t, want, r.Sample().SoFar.Words(), script)
	}
	// What was stated of the age is not kept where it is taken back.
	plan.Raw.TDS = quantity.PPM(240, quantity.ScaleNaCl)
	r, does = press("9 0 0 enter y '120 gal' enter n ctrl+u 3 enter y enter")
	assert.Equal(t, Write, does)
	assert.Empty(t, r.Sample().SoFar.Words())
	r, does = press("9 0 0 enter y '120 gal' enter n ctrl+u 3 enter n")
	assert.Equal(t, Write, does)
	assert.Empty(t, r.Sample().SoFar.Words())
	plan.Assumptions = append(plan.Assumptions, planner.Assumption{Name: "bed age by its readings", Source: tag.FromPractice("readings")})
	r, _ = press("2 enter y")
	assert.Contains(t, asks(r, 200), "the reading means little without it.", "what it shows now is no fresh fill's")
	_, does = press("2 enter n")
	assert.Equal(t, Write, does, "a first cup is not used, whatever the age")
	r, does = press("2 enter y 'soon' enter")
	assert.Empty(t, does)
	assert.Contains(t, asks(r, 200), "An amount is needed, like 120 gal, or unknown.")
	r, _ = press("2 enter y esc")
	assert.Contains(t, asks(r, 200), "Was the standing water out?")
}

// After a reading that was refused a new one takes its place.
func TestARefusedReadingIsNoTrap(t *testing.T) {
	r, _ := reads(desk(""), "'6 knots' enter")
	assert.False(t, r.Typing(), "q and ? are keys")
	assert.Contains(t, asks(r, 80), "A number is needed")
	r, _ = reads(desk(""), "'6 knots' enter 7")
	assert.Equal(t, `In place of "6 knots", which was not taken.`, r.problem)
	r, _ = reads(desk(""), "'6 knots' enter '7 ppm NaCl' enter")
	assert.Equal(t, theFlush, r.at)
	assert.Equal(t, "7 ppm NaCl", r.sample.Reading.Words())
	_, does := reads(desk(""), "'6 knots' enter esc")
	assert.Equal(t, Leave, does)
	r, _ = reads(desk(""), "'6' enter o '5 psi' enter esc")
	assert.Equal(t, theFlush, r.at)
}

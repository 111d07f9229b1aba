package report

import (
	"fmt"
	"strings"

	"washeve/model/quantity"
	"washeve/planner"
)

// High says of a last reading that is higher than its fill should show what may be behind
// it, and how to tell; "" where none is. See [planner.BedPast.High].
func High(past *planner.BedPast) string {
	if _, aged := past.Aged(); aged {
		return ""
	}
	r, high := past.High()
	if least, most, steady := past.Steady(); steady {
		return "All readings of this fill show " + fromTo(least, most) + ". A pen that shows so much too much explains them as well as a bed that lets go: try it in distilled water. If it shows as much there, strike them out."
	}
	if !high {
		return ""
	}
	behind := "the fill is older than said, or its resins are badly mixed"
	if past.Present().Began.Given() {
		behind = "the resins are badly mixed, or water gets past them"
	}
	return PPM(r.PPM) + " was read, where " + PPM(r.Expected) + " was expected. A pen may err so near zero: try it in distilled water. If it shows none there, " + behind + "."
}

// fromTo is a range of ppm.
func fromTo(least, most float64) string {
	if least == most {
		return PPM(least)
	}
	low, _, _ := strings.Cut(PPM(least), " ")
	return low + " to " + PPM(most)
}

// Aged says how old a fill is by its readings, where nobody said it; "" elsewhere. See
// [planner.BedPast.Aged].
func Aged(past *planner.BedPast, sys quantity.System) string {
	before, aged := past.Aged()
	if !aged {
		return ""
	}
	return "Nobody said how old this fill is. By its readings it had given " + quantity.Show(before.P10, sys) + " to " + quantity.Show(before.P90, sys) + " before the log (8 in 10); state the gallons if you know them."
}

// OrderWhen says when resin is to be ordered: "now", or "by" a day; "" where no day is known.
func OrderWhen(a planner.Ahead) string {
	day, known := a.OrderBy.Get()
	switch {
	case !known:
		return ""
	case a.Overdue:
		return "now"
	}
	return "by " + day.String()
}

// Moved says what the last reading did to the answer, and why; "" where that is little.
func Moved(a planner.Ahead, sys quantity.System) string {
	m, much := a.Moved.Get()
	if !much {
		return ""
	}
	chances := fmt.Sprintf(" (chance %s without it, %s with it)", Odds(m.Before), Odds(m.After))
	read, expected := PPM(m.PPM)+" after "+quantity.Show(m.Given, sys), PPM(m.Expected)
	better := m.PPM < m.Expected
	switch {
	case m.After > m.Before && better:
		return read + " is less than the " + expected + " expected before it: this fill is likely to last longer than was thought" + chances + "."
	case m.After > m.Before:
		return read + " is more than the " + expected + " expected before it, yet it speaks for this fill" + chances + "."
	case better:
		return read + " is less than the " + expected + " expected before it, yet the chance is lower" + chances + ": " + movedWhy(m) + "."
	}
	return read + " is early, " + expected + " was expected before it: " + movedWhy(m) + chances + "."
}

// movedWhy is what is thought of the fill now that was not before.
func movedWhy(m planner.Moved) string {
	switch {
	case m.Factor.Falls() && m.Factor.After < 1:
		return "this fill is likely to hold less than its rating, about " + Percent(quantity.Fraction(m.Factor.After))
	case m.Factor.Falls():
		return "this fill is likely to hold less than was thought"
	case m.Contact.Falls():
		return "the water is likely to meet less of the resin than was thought"
	}
	return "it leaves fewer ways in which the bed would last"
}

package picture

import (
	"slices"

	"washeve/model"
	"washeve/planner"
	"washeve/ui/cells"
	"washeve/ui/report"
	"washeve/ui/theme"
)

// Letter marks a water where there is no room for its name.
func Letter(w model.Water) string {
	switch w {
	case model.DI:
		return "D"
	case model.Softened:
		return "S"
	case model.Raw:
		return "R"
	}
	return "?"
}

// WaterInk is the colour of a water.
func WaterInk(th theme.Theme, w model.Water) theme.Ink {
	switch w {
	case model.DI:
		return th.DI
	case model.Softened:
		return th.Softened
	case model.Raw:
		return th.Raw
	}
	return th.Edge
}

// WaterFill is the pattern of a water, as dense as what it leaves behind: DI
// water leaves the face clean.
func WaterFill(th theme.Theme, w model.Water) string {
	switch w {
	case model.DI:
		return th.Marks.DIFill
	case model.Softened:
		return th.Marks.SoftFill
	case model.Raw:
		return th.Marks.RawFill
	}
	return " "
}

// SpotInk is the colour of an outlook.
func SpotInk(th theme.Theme, s planner.Spots) theme.Ink {
	switch s {
	case planner.NoSpots:
		return th.Good
	case planner.Faint:
		return th.Doubt
	case planner.Seen, planner.Towel:
		return th.Bad
	}
	return th.Text
}

// spotMark is how a spot is drawn, and in one of how many cells.
func spotMark(th theme.Theme, s planner.Spots) (mark string, every int) {
	switch s {
	case planner.Faint:
		return th.Marks.Faint, 9
	case planner.Seen:
		return th.Marks.Seen, 7
	case planner.Towel:
		return th.Marks.Towel, 4
	}
	return "", 0
}

// FaceLegend says in a line what is strewn over some faces of a vehicle and what they are
// filled in with. What has no room is left out; in words there is nothing to say.
func FaceLegend(th theme.Theme, c Coach, width int, sides ...model.Side) string {
	line := SpotLegend(th, c, width, sides...)
	for _, w := range []model.Water{model.Raw, model.Softened} {
		if c.any(sides, func(f Face) bool { return f.Water == w }) {
			line += legendPart(th, WaterFill(th, w), WaterInk(th, w), report.WaterName(w), width-cells.Width(line))
		}
	}
	return line
}

// SpotLegend says in a line what is strewn over some faces, as [FaceLegend] does.
func SpotLegend(th theme.Theme, c Coach, width int, sides ...model.Side) string {
	line := ""
	for _, spots := range []planner.Spots{planner.Towel, planner.Seen, planner.Faint} {
		if mark, _ := spotMark(th, spots); c.any(sides, func(f Face) bool { return f.Spots == spots }) {
			line += legendPart(th, mark, SpotInk(th, spots), report.SpotWords(spots), width-cells.Width(line))
		}
	}
	return line
}

// any tells whether something holds of any of some faces.
func (c Coach) any(sides []model.Side, is func(Face) bool) bool {
	return slices.ContainsFunc(sides, func(s model.Side) bool { f, known := c.Faces[s]; return known && is(f) })
}

// legendPart is a mark with its words, and nothing where there is no room for it or
// nothing is drawn.
func legendPart(th theme.Theme, mark string, ink theme.Ink, words string, room int) string {
	if text := mark + " " + words; !th.Plain && cells.Width(text) <= room {
		return ink.On(text) + " "
	}
	return ""
}

package compare

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// Yearly is how many washes a year there are, and how that is known.
type Yearly struct {
	Number quantity.Opt[float64]
	Source tag.Source
}

// year is the mean one of the calendar. PUBLISHED: 365.2425 days (any almanac).
const year = 365.2425 * quantity.Day

// YearOf takes the washes a year from the rig's own settings, else from the pace
// of the log with this bed; today is for that pace. It is not known otherwise.
func YearOf(rig model.Rig, bedName string, past *planner.Past, today model.Moment) Yearly {
	if rig.Defaults.Washes.Given() {
		return Yearly{rig.Defaults.Washes, tag.Source{Tag: tag.Yours, Text: "you stated it"}}
	}
	history := past.Bed(bedName)
	if history == nil {
		return Yearly{}
	}
	pace := planner.PaceOf(history.Draws, today)
	if !pace.Known() {
		return Yearly{}
	}
	return Yearly{
		quantity.Some(float64(pace.Washes) * float64(year/pace.Over)),
		tag.Source{Tag: tag.Yours, Text: "the pace of your log, the last 90 days or four washes"},
	}
}

// BedOf is the bed that a wash is done with: the one it names, else the usual
// one, else the first.
func BedOf(rig model.Rig, wash model.Wash) string {
	switch {
	case wash.Bed != "":
		return wash.Bed
	case rig.Defaults.Bed != "":
		return rig.Defaults.Bed
	case len(rig.Beds) > 0:
		return rig.Beds[0].Name
	}
	return ""
}

package store

import (
	"time"

	"washeve/model"
	"washeve/model/pattern"
)

// ExampleOn is the day of the example's wash, as it is built in, and as it is written out
// on a day: the first of the same weekday that is not past.
func ExampleOn(today model.Date) (builtIn, written model.Date) {
	builtIn = Example().Washes[0].Wash.Date.Or(model.Date{})
	return builtIn, builtIn.Plus(exampleMoves(today))
}

// exampleMoves is by how many days the example's days are moved: whole weeks, none where
// they are not past, or today is not known.
func exampleMoves(today model.Date) int {
	const week = 7
	first := Example().Washes[0].Wash.Date.Or(model.Date{})
	if today == (model.Date{}) || today.Compare(first) <= 0 {
		return 0
	}
	past := int(noon(today).Sub(noon(first)).Hours() / 24)
	return (past + week - 1) / week * week
}

func noon(d model.Date) time.Time { return time.Date(d.Year, d.Month, d.Day, 12, 0, 0, 0, time.UTC) }

var (
	exampleDay  = pattern.Of(`\b\d{4}-\d\d-\d\d\b`)
	exampleLoop = pattern.Of(`"June loop"`)
)

// moved is a file of the example with its days so many days later. The trip, which is
// called by the month that it begins in, is called by the new one.
func moved(data []byte, days int) []byte {
	if days == 0 {
		return data
	}
	month := ""
	text := exampleDay().ReplaceAllStringFunc(string(data), func(day string) string {
		d, err := model.ParseDate(day)
		if err != nil {
			return day
		}
		d = d.Plus(days)
		if month == "" {
			month = d.Month.String()
		}
		return d.String()
	})
	if month != "" {
		text = exampleLoop().ReplaceAllString(text, `"`+month+` loop"`)
	}
	return []byte(text)
}

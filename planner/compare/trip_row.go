package compare

import (
	"fmt"
	"strconv"

	"washeve/model"
	"washeve/planner/trip"
)

// tripRows lists the figures of a whole trip. What is as good as equal is as in
// [rows].
func tripRows() []Row {
	const close = 0.005
	return []Row{
		{Key: "di", Label: "DI less flush", near: close, of: func(f Figures) Cell { return measured(f.DI) }},
		{Key: "soft", Label: "softened water", near: close, of: func(f Figures) Cell { return measured(f.Softened) }},
		{Key: "raw", Label: "raw water", near: close, of: func(f Figures) Cell { return measured(f.Raw) }},
		{Key: "water", Label: "water in all", near: close, of: func(f Figures) Cell { return measured(f.Water) }},
		{Key: "time", Label: "working time", near: close, of: func(f Figures) Cell { return measured(f.Time) }},
		{Key: "chance", Label: "all on spec", More: true, apart: close, of: func(f Figures) Cell { return measured(f.Trip.AllOnSpec) }},
		{Key: "advised", Label: ".. with advice", More: true, apart: close, of: func(f Figures) Cell { return measured(f.Trip.AllAdvised) }},
		{Key: "risk", Label: "first at risk", More: true, of: firstAtRisk},
		{Key: "changes", Label: "resin changes", of: changesOfResin},
		{Key: "resin", Label: "resin used up", of: func(f Figures) Cell { return sum(f.Trip.Used, "a fill of resin") }},
		{Key: "salt", Label: "salt used up", of: func(f Figures) Cell { return sum(f.Trip.Salt, "a regeneration's salt") }},
		{Key: "buy", Label: "resin to buy", of: func(f Figures) Cell { return sum(f.Trip.Buy, "a fill of resin") }},
		{Key: "weight", Label: "carried in all", near: close, of: weighed},
		{Key: "order", Label: "order by", More: true, of: orderBy},
	}
}

// never is a day after all others.
const never = 1e9

// firstAtRisk is the day of the first wash at risk, the later the better.
func firstAtRisk(f Figures) Cell {
	if f.Trip.FirstAtRisk < 0 {
		return number(never, "none")
	}
	day := f.Trip.Washes[f.Trip.FirstAtRisk].Date
	return number(float64(dayNumber(day)), day.String())
}

// orderBy is the day to order by, the later the better.
func orderBy(f Figures) Cell {
	day, given := f.Trip.OrderBy.Get()
	switch {
	case f.Trip.Over:
		return number(never, "is over")
	case !given:
		return number(never, "no need")
	}
	return number(float64(dayNumber(day)), day.String())
}

// changesOfResin counts the changes of resin, those that are planned and those advised.
func changesOfResin(f Figures) Cell {
	advised := 0
	for _, c := range f.Trip.Changes {
		if c.Advised {
			advised++
		}
	}
	words, planned := "none", len(f.Trip.Changes)-advised
	switch {
	case planned > 0 && advised > 0:
		words = fmt.Sprintf("%d + %d adv.", planned, advised)
	case advised > 0:
		words = strconv.Itoa(advised) + " advised"
	case planned > 0:
		words = strconv.Itoa(planned)
	}
	return number(float64(len(f.Trip.Changes)), words)
}

// sum is money of a trip.
func sum(s trip.Sum, of string) Cell {
	switch {
	case !s.Known():
		return Cell{Why: "the price of " + of + " is not stated"}
	case s.Nothing():
		return number(0, "none")
	case len(s.Parts) > 1:
		return Cell{Words: s.String(), Why: "prices in two currencies do not compare"}
	}
	return number(float64(s.Parts[0].Hundredths), s.Parts[0].String())
}

// dayNumber puts days in order.
func dayNumber(d model.Date) int { return (d.Year*100+int(d.Month))*100 + d.Day }

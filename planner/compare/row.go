package compare

import (
	"math"

	"washeve/model/quantity"
)

// Row is one figure of every way.
type Row struct {
	Key   string // never changes: "di"
	Label string
	More  bool // the higher is the better
	Cells []Cell

	near, apart float64 // as good as equal: part of the best, and so much beside it
	of          func(Figures) Cell
}

// Cell is one figure of one way.
type Cell struct {
	Known bool
	Why   string         // where it is not known
	Value quantity.Value // where it has a unit
	Words string         // where it has none; or in the place of what is not known
	Best  bool           // of its row, alone or with others

	order float64
}

// rows lists the figures. PRACTICE: what differs by less than half a per cent, or
// half a per cent of chance, is told as equal.
func rows() []Row {
	const close = 0.005
	return []Row{
		{Key: "di", Label: "DI less flush", near: close, of: func(f Figures) Cell { return measured(f.DI) }},
		{Key: "water", Label: "water in all", near: close, of: func(f Figures) Cell { return measured(f.Water) }},
		{Key: "time", Label: "working time", near: close, of: func(f Figures) Cell { return measured(f.Time) }},
		{Key: "chance", Label: "chance it lasts", More: true, apart: close, of: func(f Figures) Cell { return measured(f.Chance) }},
		{Key: "left", Label: "bed left before", More: true, near: close, of: leftInBed},
		{Key: "film", Label: "ppm in the film", near: close, apart: 0.05, of: func(f Figures) Cell { return number(f.Film, quantity.Round(f.Film)) }},
		{Key: "spots", Label: "worst spots", of: func(f Figures) Cell { return number(float64(spotRank(f.Spots)), string(f.Spots)) }},
		{Key: "resin", Label: "resin", of: func(f Figures) Cell { return money(f.Resin) }},
		{Key: "salt", Label: "salt", of: func(f Figures) Cell { return money(f.Salt) }},
		{Key: "cost", Label: "resin and salt", of: func(f Figures) Cell { return money(f.Together()) }},
		{Key: "fill", Label: "a fill gives", More: true, near: close, of: func(f Figures) Cell { return measured(f.Fill) }},
		{Key: "year", Label: "fills a year", near: close, of: yearly},
		{Key: "resin-year", Label: "resin a year", near: close, of: resinYearly},
		{Key: "weight", Label: "carried in all", near: close, of: weighed},
		{Key: "soft", Label: "soft left after", More: true, near: close, of: softLeft},
	}
}

func measured[Q quantity.Quantity](q Q) Cell {
	if math.IsNaN(float64(q)) {
		return Cell{Why: "it cannot be worked out"}
	}
	return Cell{Known: true, Value: quantity.ValueOf(q), order: float64(q)}
}

func number(v float64, words string) Cell { return Cell{Known: true, Words: words, order: v} }

func money(b quantity.Bill) Cell {
	total, known := b.Total()
	if !known {
		return Cell{Why: b.Unknown()}
	}
	words := total.String()
	if total == (quantity.Money{}) {
		words = "none"
	}
	return Cell{Known: true, Words: words, order: float64(total.Hundredths)}
}

func yearly(f Figures) Cell {
	n, known := f.Year.Get()
	if !known {
		return Cell{Why: "how often you wash is not known: state washes_a_year in the rig's defaults, or let the log tell"}
	}
	return number(n, quantity.Round(n))
}

// resinYearly is what tells tanks of different sizes apart.
func resinYearly(f Figures) Cell {
	c := yearly(f)
	if n, known := f.Year.Get(); known {
		c = Cell{Known: true, Value: quantity.Volume(n * float64(f.Plan.Bed.Resin)).AsResin(), order: n * float64(f.Plan.Bed.Resin)}
	}
	return c
}

func weighed(f Figures) Cell {
	w, known := f.Weight.Get()
	if !known {
		return Cell{Why: "the weight of a membrane, or of a regeneration's salt, is not stated"}
	}
	return measured(w)
}

// leftInBed is what the tank is believed to give before the wash; what a fill gives is with
// what it has given already.
func leftInBed(f Figures) Cell {
	left := f.Plan.Bed.Remaining.P50
	if math.IsInf(float64(left), 1) {
		return Cell{Words: "no end", Why: "the feed itself keeps the limit"}
	}
	return measured(left)
}

func softLeft(f Figures) Cell {
	left, known := f.SoftLeft.Get()
	switch {
	case f.Plan.Softener == nil:
		return Cell{Words: "none", Why: "there is no softener"}
	case !known:
		return Cell{Why: "the water has no hardness to take out"}
	}
	return measured(left)
}

// mark finds the best cells. Of what is not known nothing is said: it is not
// best, and it does not keep the others from being so. Where all that is known is
// as good as equal, or one alone is known, none is better than another.
func (r *Row) mark() {
	best, known := math.NaN(), 0
	for _, c := range r.Cells {
		if !c.Known {
			continue
		}
		if known++; known == 1 || r.better(c.order, best) {
			best = c.order
		}
	}
	equal := 0
	for i := range r.Cells {
		c := &r.Cells[i]
		if c.Best = c.Known && r.equals(c.order, best); c.Best {
			equal++
		}
	}
	for i := range r.Cells {
		r.Cells[i].Best = r.Cells[i].Best && equal < known
	}
}

func (r *Row) better(a, b float64) bool {
	if r.More {
		return a > b
	}
	return a < b
}

func (r *Row) equals(v, best float64) bool {
	return v == best || math.Abs(v-best) <= r.near*math.Abs(best)+r.apart
}

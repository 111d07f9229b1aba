package journal

import (
	"strconv"
	"strings"

	"washeve/model"
	"washeve/model/pattern"
	"washeve/model/quantity"
)

// A column of a table holds one field of the log. Where it has a unit its cells
// are bare numbers, and its name ends in the unit.
type column struct {
	name string
	key  string
	unit string // "" where the cells carry their own
	in   func(text, unit string) string
}

// A dimension is how a measured field is written in a table.
type dimension struct {
	us, metric     string // units
	inUS, inMetric string // what the column's name ends in
	in             func(text, unit string) string
}

func dimensionOf(key string) (dimension, bool) {
	switch strings.TrimPrefix(key, "planned_") {
	case "di", "softened", "raw", "used", "gallons_so_far", "flush_water":
		return dimension{"gal", "L", "gal", "l", inUnit[quantity.Volume]}, true
	case "resin":
		return dimension{"ft3", "L", "ft3", "l", inUnit[quantity.Volume]}, true
	case "flow":
		return dimension{"gpm", "L/min", "gpm", "l_min", inUnit[quantity.Flow]}, true
	case "duration":
		return dimension{"min", "min", "min", "min", inUnit[quantity.Duration]}, true
	case "area":
		return dimension{"ft2", "m2", "ft2", "m2", inUnit[quantity.Area]}, true
	case "temperature":
		return dimension{"F", "C", "f", "c", inUnit[quantity.Temperature]}, true
	case "salt":
		return dimension{"lb", "kg", "lb", "kg", inUnit[quantity.Mass]}, true
	}
	return dimension{}, false
}

// columnsOf lists the columns of a table in a system of units: one wide table
// for all kinds of entry, the kind first and the identifier last.
func columnsOf(sys quantity.System) []column {
	columns := []column{{name: kindKey, key: kindKey}}
	everything := model.Entry{Body: &model.Correction{}}
	for _, f := range everything.Fields() {
		c := column{name: f.Key, key: f.Key}
		if d, ok := dimensionOf(f.Key); ok {
			base := strings.TrimPrefix(f.Key, "gallons_")
			c.name, c.unit, c.in = base+"_"+d.inUS, d.us, d.in
			if sys == quantity.Metric {
				c.name, c.unit = base+"_"+d.inMetric, d.metric
			}
		}
		columns = append(columns, c)
	}
	return columns
}

// readable lists every column that is read: those of both systems, the bare
// keys, whose cells carry their units, and readings as numbers.
func readable() []column {
	columns := append(columnsOf(quantity.US), columnsOf(quantity.Metric)...)
	for _, c := range columnsOf(quantity.US) {
		if c.unit != "" {
			columns = append(columns, column{name: c.key, key: c.key})
		}
	}
	return append(columns,
		column{name: "reading_ppm", key: "reading", unit: "ppm"},
		column{name: "reading_us_cm", key: "reading", unit: "uS/cm"})
}

var plainNumber = pattern.Of(`^[0-9]+(\.[0-9]+)?$`)

// inUnit writes a quantity as a bare number of a unit: as it was typed where it
// was typed in that unit, else with the fewest digits that give back the very
// same value. Where no number does, it stays as it is, unit and all.
func inUnit[Q quantity.Quantity](text, unit string) string {
	if number, found := strings.CutSuffix(text, " "+unit); found && plainNumber().MatchString(number) {
		return number
	}
	q, err := quantity.Parse[Q](text)
	if err != nil {
		return text
	}
	for _, u := range q.Kind().Units {
		if u.Symbol != unit {
			continue
		}
		for digits := range 17 {
			number := plain(u.FromSI(float64(q)), digits+1)
			if back, err := quantity.Parse[Q](number + " " + unit); err == nil && back == q {
				return number
			}
		}
	}
	return text
}

// plain writes a number to so many digits, without a power of ten.
func plain(v float64, digits int) string {
	v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'g', digits, 64), 64)
	return strconv.FormatFloat(v, 'f', -1, 64)
}

// cell is a field's text as it stands in the column.
func (c column) cell(text string) string {
	if text == "" || c.in == nil {
		return guarded(text)
	}
	return guarded(c.in(text, c.unit))
}

// text is a cell as the field reads it.
func (c column) text(cell string) string {
	cell = unguarded(strings.TrimSpace(cell))
	pointed, _ := quantity.Pointed(cell)
	if _, err := strconv.ParseFloat(pointed, 64); c.unit != "" && err == nil {
		return cell + " " + c.unit
	}
	return cell
}

// guarded puts an apostrophe before what a spreadsheet would run as a formula.
func guarded(text string) string {
	if runs(strings.TrimLeft(text, "'")) {
		return "'" + text
	}
	return text
}

// unguarded is the inverse of guarded.
func unguarded(cell string) string {
	if strings.HasPrefix(cell, "'") && runs(strings.TrimLeft(cell, "'")) {
		return cell[1:]
	}
	return cell
}

func runs(text string) bool { return text != "" && strings.ContainsRune("=+-@\t\r", rune(text[0])) }

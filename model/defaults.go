package model

import "washeve/model/quantity"

// Units is the system of units that a rig is shown in.
type Units string

// The two systems, as written in a file.
const (
	UnitsUS     Units = "us"
	UnitsMetric Units = "metric"
)

// Defaults are the user's own settings: what a wash uses where it does not say.
type Defaults struct {
	Units    Units
	Vehicle  string
	Bed      string
	Softener string
	Sprayer  string
	Pen      string
	Place    string
	Limit    quantity.Opt[quantity.Reading]
	Bell     Answer                       // at the end of a step of a wash day; yes where it is not said
	DIPrice  quantity.Opt[quantity.Money] // of a gallon of DI water that is bought
	Washes   quantity.Opt[float64]        // a year
}

// Fields lists the settings.
func (d *Defaults) Fields() []Field {
	return []Field{
		choice("units", "units", "units that everything is shown in", []Units{UnitsUS, UnitsMetric}, &d.Units),
		name("vehicle", "vehicle", "vehicle where a wash names none", "our coach", &d.Vehicle).refersTo("vehicle"),
		name("bed", "bed", "DI bed where a wash names none", "half-foot tank", &d.Bed).refersTo("bed"),
		name("softener", "softener", "softener where a wash names none", "bay softener", &d.Softener).refersTo("softener"),
		name("sprayer", "sprayer", "sprayer for stages that name none", "small pressure washer", &d.Sprayer).refersTo("sprayer"),
		name("pen", "pen", "pen that readings without a scale come from", "yellow pen", &d.Pen).refersTo("pen"),
		name("place", "place", "place where a wash names none", "home", &d.Place).refersTo("place"),
		reading("limit", "outlet limit", "outlet reading at which you stop using the bed", 200, &d.Limit),
		choice("bell", "bell", "no keeps the terminal quiet when the time of a step is over", []Answer{Yes, No}, &d.Bell),
		field("di_water_price", "DI water bought", "price of a gallon of DI water where you can buy it", "$0.75", &d.DIPrice, quantity.ParseMoney, quantity.Money.String),
		number("washes_a_year", "washes a year", "how often a year you wash like this, where the log does not tell", "20", 0.1, 400, &d.Washes),
	}
}

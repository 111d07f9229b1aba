package model

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"washeve/model/quantity"
)

// Supply is what pushes the water.
type Supply string

// The supplies.
const (
	Tap  Supply = "tap"
	Pump Supply = "pump" // the vehicle's own, from its tank
)

// leastTap is the least flow that is worth calling a supply.
const leastTap = "0.8 gpm"

// Place is where the water comes from: its quality and its push.
type Place struct {
	Name        string
	TDS         quantity.Opt[quantity.Reading]
	Hardness    quantity.Opt[quantity.Hardness]
	Alkalinity  quantity.Opt[quantity.Hardness]
	PH          quantity.Opt[float64]
	Silica      quantity.Opt[quantity.Concentration]
	Chlorine    quantity.Opt[quantity.Concentration]
	Iron        quantity.Opt[quantity.Concentration]
	Temperature quantity.Opt[quantity.Temperature]

	Supply       Supply
	Pressure     quantity.Opt[quantity.Pressure] // nothing flowing
	FlowingAt    quantity.Opt[quantity.Pressure]
	Flowing      quantity.Opt[quantity.Flow]
	Bucket       quantity.Opt[quantity.Volume]
	BucketTime   quantity.Opt[quantity.Duration]
	PumpPressure quantity.Opt[quantity.Pressure] // shut off
	PumpFlow     quantity.Opt[quantity.Flow]     // wide open
	OnHand       quantity.Opt[quantity.Volume]

	// Where it lies, for the sun and the clock.
	Latitude  quantity.Opt[quantity.Angle] // north positive
	Longitude quantity.Opt[quantity.Angle] // east positive
	Zone      quantity.Opt[*time.Location]
	Elevation quantity.Opt[quantity.Length]
}

// Fields lists what can be stated of a place.
func (p *Place) Fields() []Field {
	return slices.Concat([]Field{
		name("name", "name", "what you call this place", "home", &p.Name).required(),
		reading("tds", "TDS", "what your pen shows at the tap, with its scale, or the conductivity", 3000, &p.TDS).required(),
		measure("hardness", "hardness", "from a strip or a water report", "18 gr/gal", "0 gr/gal", "120 gr/gal", &p.Hardness),
		measure("alkalinity", "alkalinity", "from a water report", "160 mg/L as CaCO3", "0 mg/L as CaCO3", "2000 mg/L as CaCO3", &p.Alkalinity),
		number("ph", "pH", "from a water report", "7.6", 4, 11, &p.PH),
		measure("silica", "silica", "as SiO2, from a water report", "12 mg/L", "0 mg/L", "200 mg/L", &p.Silica),
		measure("chlorine", "free chlorine", "from a strip or a water report", "0.5 mg/L", "0 mg/L", "10 mg/L", &p.Chlorine),
		measure("iron", "iron", "from a water report", "0.1 mg/L", "0 mg/L", "50 mg/L", &p.Iron),
		measure("temperature", "water temperature", "what a thermometer shows in the stream", "68 F", "33 F", "140 F", &p.Temperature),
	}, p.pushFields(), p.positionFields())
}

func (p *Place) positionFields() []Field {
	degrees := func(a quantity.Angle) string { return quantity.Exact(a, quantity.US) }
	return []Field{
		field(LatitudeKey, "latitude", "from a map or a phone's compass; it places the sun", "38.6 N", &p.Latitude, ParseLatitude, degrees).onSides("NS"),
		field(LongitudeKey, "longitude", "from a map or a phone's compass; it places the sun", "109.5 W", &p.Longitude, ParseLongitude, degrees).onSides("EW"),
		field("zone", "time zone", "its name, a city in it, or Pacific", p.zoneExample(), &p.Zone, ParseZone, (*time.Location).String),
		measure("elevation", "elevation", "above the sea; zero where it is below", "4000 ft", "0 ft", "19000 ft", &p.Elevation),
	}
}

func (p *Place) pushFields() []Field {
	return []Field{
		choice("supply", "supply", "a tap, or the vehicle's own pump and tank", []Supply{Tap, Pump}, &p.Supply),
		measure("pressure", "pressure, nothing flowing", "static pressure at the tap", "55 psi", "5 psi", "200 psi", &p.Pressure),
		measure("flowing_pressure", "pressure while flowing", "pressure at the tap while flowing_flow runs", "45 psi", "1 psi", "200 psi", &p.FlowingAt),
		measure("flowing_flow", "flow of that test", "flow at which flowing_pressure was read", "6 gpm", leastTap, "60 gpm", &p.Flowing),
		measure("bucket", "bucket", "bucket filled from the open tap", "5 gal", "1 qt", "100 gal", &p.Bucket),
		measure("bucket_time", "bucket time", "how long that took", "30 s", "1 s", "30 min", &p.BucketTime),
		measure("pump_pressure", "pump shut-off pressure", "pressure at which the pump stops", "55 psi", "5 psi", "150 psi", &p.PumpPressure),
		measure("pump_flow", "pump flow wide open", "flow of the pump without back pressure", "4 gpm", leastTap, "40 gpm", &p.PumpFlow),
		measure("on_hand", "water on hand", "what is in the tank", "100 gal", "1 gal", "2000 gal", &p.OnHand),
	}
}

// Contradictions finds statements that cannot be true together. What only the
// chemistry can tell is found by the planner.
func (p *Place) Contradictions() []Fault {
	var faults []Fault
	pair := func(a, b string, hasA, hasB bool) {
		switch {
		case hasA && !hasB:
			faults = append(faults, Fault{Key: a, Problem: "goes with " + b + ", which is missing"})
		case hasB && !hasA:
			faults = append(faults, Fault{Key: b, Problem: "goes with " + a + ", which is missing"})
		}
	}
	pair("flowing_pressure", "flowing_flow", p.FlowingAt.Given(), p.Flowing.Given())
	pair("bucket", "bucket_time", p.Bucket.Given(), p.BucketTime.Given())
	pair("pump_pressure", "pump_flow", p.PumpPressure.Given(), p.PumpFlow.Given())
	pair("latitude", "longitude", p.Latitude.Given(), p.Longitude.Given())
	bucket, okBucket := p.Bucket.Get()
	time, okTime := p.BucketTime.Get()
	if least := quantity.Must[quantity.Flow](leastTap); okBucket && okTime && quantity.Flow(float64(bucket)/float64(time)) < least {
		faults = append(faults, Fault{Key: "bucket_time", Problem: fmt.Sprintf("%q for a bucket of %q is under %s, less than any tap that a hose runs from; measure again", p.BucketTime.Words(), p.Bucket.Words(), leastTap)})
	}
	static, okStatic := p.Pressure.Get()
	flowing, okFlowing := p.FlowingAt.Get()
	if okStatic && okFlowing && flowing >= static {
		faults = append(faults, Fault{Key: "flowing_pressure", Problem: fmt.Sprintf("%q is not below the pressure with nothing flowing, %q; one of the two was misread", p.FlowingAt.Words(), p.Pressure.Words())})
	}
	return faults
}

// Places is the water by place.
type Places []Place

// Names lists the places.
func (ps Places) Names() []string {
	names := make([]string, len(ps))
	for i, p := range ps {
		names[i] = p.Name
	}
	return names
}

// Faults finds what is wrong across the places.
func (ps Places) Faults() []Fault {
	var faults []Fault
	for i := range ps {
		faults = append(faults, faultsOf("place", i, &ps[i])...)
	}
	return append(faults, doubled("place", ps.Names())...)
}

// keyOf makes a file key of a term: "gel coat" is gel_coat.
func keyOf(term string) string { return strings.ReplaceAll(term, " ", "_") }

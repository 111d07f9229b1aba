package quantity

// The table of units, a kind an entry. Conversions checked against
// testdata/reference/unit-conversions.csv (GNU Units 2.22).
var (
	lengthKind = Kind{Name: "length", Example: "40 ft 6 in", us: "ft", metric: "m", compound: true, Units: []Unit{
		{Symbol: "m", Also: []string{"metre", "metres", "meter", "meters"}, Factor: 1, Then: "cm"},
		{Symbol: "cm", Factor: 0.01},
		{Symbol: "mm", Factor: 0.001},
		{Symbol: "ft", Also: []string{"'", "foot", "feet"}, Factor: float64(Foot), Then: "in"},
		{Symbol: "in", Also: []string{"\"", "''", "inch", "inches"}, Factor: float64(Inch)},
	}}
	areaKind = Kind{Name: "area", Example: "320 ft2", us: "ft2", metric: "m2", Units: []Unit{
		{Symbol: "m2", Also: []string{"m^2", "m²", "sq m"}, Factor: 1},
		{Symbol: "ft2", Also: []string{"ft^2", "ft²", "sq ft", "sqft"}, Factor: float64(SquareFoot)},
	}}
	volumeKind = Kind{Name: "volume", Example: "0.5 ft3", us: "gal", metric: "L", Units: []Unit{
		{Symbol: "m3", Also: []string{"m^3", "m³"}, Factor: 1},
		{Symbol: "L", Also: []string{"litre", "litres", "liter", "liters"}, Factor: 1e-3},
		{Symbol: "mL", Factor: 1e-6},
		{Symbol: "gal", Also: []string{"gallon", "gallons", "us gal"}, Factor: float64(Gallon)},
		{Symbol: "qt", Factor: float64(Gallon) / 4},
		{Symbol: "fl oz", Also: []string{"floz"}, Factor: float64(Gallon) / 128},
		{Symbol: "ft3", Also: []string{"ft^3", "ft³", "cu ft", "cuft"}, Factor: float64(CubicFoot)},
	}}
	resinKind = Kind{Name: "resin volume", Example: "0.5 ft3", us: "ft3", metric: "L", Units: volumeKind.Units}
	flowKind  = Kind{Name: "flow", Example: "1.4 gpm", us: "gpm", metric: "L/min", Units: []Unit{
		{Symbol: "m3/s", Factor: 1},
		{Symbol: "gpm", Also: []string{"gal/min", "us gpm"}, Factor: float64(GPM)},
		{Symbol: "gph", Also: []string{"gal/h", "gal/hr"}, Factor: float64(Gallon) / 3600},
		{Symbol: "L/min", Also: []string{"lpm"}, Factor: float64(LitrePerMinute)},
		{Symbol: "L/h", Also: []string{"l/hr", "lph"}, Factor: 1e-3 / 3600},
		{Symbol: "L/s", Factor: 1e-3},
		{Symbol: "m3/h", Factor: 1.0 / 3600},
		{Symbol: "ft3/s", Factor: float64(CubicFoot)},
	}}
	pressureKind = Kind{Name: "pressure", Example: "55 psi", us: "psi", metric: "bar", Units: []Unit{
		{Symbol: "Pa", Factor: 1},
		{Symbol: "kPa", Factor: 1e3},
		{Symbol: "MPa", Factor: 1e6},
		{Symbol: "bar", Factor: float64(Bar)},
		{Symbol: "psi", Also: []string{"psig"}, Factor: float64(PSI)},
		{Symbol: "ft H2O", Also: []string{"ft water", "ft of water"}, Factor: 0.3048 * 9806.65},
	}}
	temperatureKind = Kind{Name: "temperature", Example: "68 F", us: "F", metric: "C", signed: true, Units: []Unit{
		{Symbol: "K", Factor: 1},
		{Symbol: "C", Also: []string{"°c", "deg c"}, Factor: 1, Zero: 273.15},
		{Symbol: "F", Also: []string{"°f", "deg f"}, Factor: 1 / 1.8, Zero: 459.67 / 1.8},
	}}
	durationKind = Kind{Name: "time", Example: "2 min 30 s", us: "min", metric: "min", compound: true, Units: []Unit{
		{Symbol: "s", Also: []string{"sec", "second", "seconds"}, Factor: 1},
		{Symbol: "min", Also: []string{"minute", "minutes"}, Factor: 60, Then: "s"},
		{Symbol: "h", Also: []string{"hr", "hour", "hours"}, Factor: 3600, Then: "min"},
		{Symbol: "d", Also: []string{"day", "days"}, Factor: 86400, Then: "h"},
	}}
	massKind = Kind{Name: "mass", Example: "22 lb", us: "lb", metric: "kg", compound: true, Units: []Unit{
		{Symbol: "kg", Factor: 1, Then: "g"},
		{Symbol: "g", Factor: 1e-3},
		{Symbol: "lb", Also: []string{"lbs", "pound", "pounds"}, Factor: float64(Pound), Then: "oz"},
		{Symbol: "oz", Factor: float64(Pound) / 16},
	}}
	hardnessKind = Kind{Name: "hardness", Example: "18 gr/gal", us: "gr/gal", metric: "mg/L as CaCO3", Units: []Unit{
		{Symbol: "eq/m3", Also: []string{"meq/l"}, Factor: 1},
		{Symbol: "gr/gal", Also: []string{"gpg", "grains/gal", "grain/gal", "grains per gallon", "grains", "grain", "gr"}, Factor: float64(Grain) / float64(Gallon)},
		{Symbol: "mg/L as CaCO3", Also: []string{"mg/l caco3", "mg/l", "ppm as caco3", "ppm caco3", "ppm"}, Factor: 1 / CaCO3},
		{Symbol: "dH", Also: []string{"°dh", "dgh"}, Factor: 10 / 28.04},
		{Symbol: "fH", Also: []string{"°fh"}, Factor: 10 / CaCO3},
	}}
	conductivityKind = Kind{Name: "conductivity", Example: "430 uS/cm", us: "uS/cm", metric: "uS/cm", Units: []Unit{
		{Symbol: "S/m", Factor: 1},
		{Symbol: "uS/cm", Also: []string{"µs/cm", "μs/cm", "us", "µs", "μs", "umho/cm"}, Factor: float64(MicroSiemensPerCm)},
		{Symbol: "mS/cm", Factor: 0.1},
	}}
	loadKind = Kind{Name: "load", Example: "4.5 meq/L", us: "meq/L", metric: "meq/L", Units: []Unit{
		{Symbol: "meq/L", Also: []string{"eq/m3"}, Factor: 1},
		{Symbol: "mg/L as CaCO3", Also: []string{"mg/l caco3"}, Factor: 1 / CaCO3},
		{Symbol: "gr/gal", Also: []string{"gpg"}, Factor: float64(Grain) / float64(Gallon)},
	}}
	capacityKind = Kind{Name: "capacity", Example: "5000 gr", us: "gr", metric: "eq", Units: []Unit{
		{Symbol: "eq", Factor: 1},
		{Symbol: "gr", Also: []string{"grain", "grains", "gr as caco3"}, Factor: float64(Grain)},
		{Symbol: "kgr", Also: []string{"kilograins"}, Factor: 1000 * float64(Grain)},
		{Symbol: "g as CaCO3", Also: []string{"g caco3"}, Factor: 1 / CaCO3},
	}}
	capacityDensityKind = Kind{Name: "capacity per volume", Example: "10000 gr/ft3", us: "gr/ft3", metric: "eq/L", Units: []Unit{
		{Symbol: "eq/m3", Factor: 1},
		{Symbol: "eq/L", Factor: float64(EqPerLitre)},
		{Symbol: "gr/ft3", Also: []string{"grains/ft3", "gr/cu ft"}, Factor: float64(GrainPerCubicFoot)},
		{Symbol: "kgr/ft3", Factor: 1000 * float64(GrainPerCubicFoot)},
	}}
	concentrationKind = Kind{Name: "concentration", Example: "12 mg/L", us: "mg/L", metric: "mg/L", Units: []Unit{
		{Symbol: "kg/m3", Also: []string{"g/l"}, Factor: 1},
		{Symbol: "mg/L", Also: []string{"ppm"}, Factor: float64(MilligramPerLitre)},
	}}
	doseKind = Kind{Name: "salt dose", Example: "8 lb/ft3", us: "lb/ft3", metric: "g/L", Units: []Unit{
		{Symbol: "kg/m3", Factor: 1},
		{Symbol: "g/L", Factor: 1},
		{Symbol: "lb/ft3", Also: []string{"lb/cu ft"}, Factor: float64(PoundPerCubicFoot)},
	}}
	speedKind = Kind{Name: "speed", Example: "5 mph", us: "mph", metric: "km/h", Units: []Unit{
		{Symbol: "m/s", Factor: 1},
		{Symbol: "km/h", Also: []string{"kmh", "kph"}, Factor: 1 / 3.6},
		{Symbol: "m/h", Factor: 1.0 / 3600},
		{Symbol: "mph", Also: []string{"mi/h"}, Factor: float64(MilePerHour)},
		{Symbol: "kn", Also: []string{"kt", "kts", "knot", "knots"}, Factor: float64(Knot)},
		{Symbol: "ft/s", Factor: float64(Foot)},
		{Symbol: "gpm/ft2", Factor: float64(GPMPerSquareFoot)},
	}}
	serviceRateKind = Kind{Name: "flow over resin volume", Example: "3 gpm/ft3", us: "gpm/ft3", metric: "BV/h", Units: []Unit{
		{Symbol: "1/s", Factor: 1},
		{Symbol: "BV/h", Also: []string{"bed volumes/h"}, Factor: 1.0 / 3600},
		{Symbol: "gpm/ft3", Factor: float64(GPMPerCubicFoot)},
	}}
	coverageKind = Kind{Name: "coverage", Example: "40 ft2/min", us: "ft2/min", metric: "m2/min", Units: []Unit{
		{Symbol: "m2/s", Factor: 1},
		{Symbol: "m2/min", Factor: 1.0 / 60},
		{Symbol: "ft2/min", Also: []string{"sq ft/min"}, Factor: float64(SquareFootPerMinute)},
	}}
	filmKind = Kind{Name: "film", Example: "60 mL/m2", us: "mL/m2", metric: "mL/m2", Units: []Unit{
		{Symbol: "m3/m2", Factor: 1},
		{Symbol: "L/m2", Also: []string{"mm"}, Factor: 1e-3},
		{Symbol: "mL/m2", Also: []string{"um", "µm"}, Factor: 1e-6},
		{Symbol: "gal/1000 ft2", Factor: float64(Gallon) / (1000 * float64(SquareFoot))},
	}}
	residueKind = Kind{Name: "residue", Example: "4 mg/m2", us: "mg/m2", metric: "mg/m2", Units: []Unit{
		{Symbol: "kg/m2", Factor: 1},
		{Symbol: "mg/m2", Factor: 1e-6},
	}}
	irradianceKind = Kind{Name: "irradiance", Example: "800 W/m2", us: "W/m2", metric: "W/m2", Units: []Unit{
		{Symbol: "W/m2", Also: []string{"w/m²"}, Factor: 1},
		{Symbol: "Btu/(h ft2)", Factor: 1055.05585262 / 3600 / float64(SquareFoot)},
	}}
	angleKind = Kind{Name: "angle", Example: "45 deg", us: "deg", metric: "deg", signed: true, Units: []Unit{
		{Symbol: "rad", Factor: 1},
		{Symbol: "deg", Also: []string{"°", "degrees", "degree"}, Factor: float64(Degree)},
	}}
	fractionKind = Kind{Name: "fraction", Example: "40 %", us: "%", metric: "%", Units: []Unit{
		{Symbol: "of 1", Factor: 1},
		{Symbol: "%", Also: []string{"percent"}, Factor: 0.01},
	}}
)

// Kind names the dimension and its units.
func (Length) Kind() *Kind { return &lengthKind }

// Kind names the dimension and its units.
func (Area) Kind() *Kind { return &areaKind }

// Kind names the dimension and its units.
func (Volume) Kind() *Kind { return &volumeKind }

// Kind names the dimension and its units.
func (Flow) Kind() *Kind { return &flowKind }

// Kind names the dimension and its units.
func (Pressure) Kind() *Kind { return &pressureKind }

// Kind names the dimension and its units.
func (Temperature) Kind() *Kind { return &temperatureKind }

// Kind names the dimension and its units.
func (Duration) Kind() *Kind { return &durationKind }

// Kind names the dimension and its units.
func (Mass) Kind() *Kind { return &massKind }

// Kind names the dimension and its units.
func (Hardness) Kind() *Kind { return &hardnessKind }

// Kind names the dimension and its units.
func (Conductivity) Kind() *Kind { return &conductivityKind }

// Kind names the dimension and its units.
func (Load) Kind() *Kind { return &loadKind }

// Kind names the dimension and its units.
func (Capacity) Kind() *Kind { return &capacityKind }

// Kind names the dimension and its units.
func (CapacityDensity) Kind() *Kind { return &capacityDensityKind }

// Kind names the dimension and its units.
func (Concentration) Kind() *Kind { return &concentrationKind }

// Kind names the dimension and its units.
func (Dose) Kind() *Kind { return &doseKind }

// Kind names the dimension and its units.
func (Speed) Kind() *Kind { return &speedKind }

// Kind names the dimension and its units.
func (ServiceRate) Kind() *Kind { return &serviceRateKind }

// Kind names the dimension and its units.
func (Coverage) Kind() *Kind { return &coverageKind }

// Kind names the dimension and its units.
func (Film) Kind() *Kind { return &filmKind }

// Kind names the dimension and its units.
func (Residue) Kind() *Kind { return &residueKind }

// Kind names the dimension and its units.
func (Irradiance) Kind() *Kind { return &irradianceKind }

// Kind names the dimension and its units.
func (Angle) Kind() *Kind { return &angleKind }

// Kind names the dimension and its units.
func (Fraction) Kind() *Kind { return &fractionKind }

package quantity

// The dimensions of the heat balance of a wet panel.
type (
	// HeatTransfer is a surface coefficient in watts a square metre and kelvin.
	HeatTransfer float64
	// SpecificEnergy in joules a kilogram: latent heat.
	SpecificEnergy float64
	// SpecificHeat in joules a kilogram and kelvin.
	SpecificHeat float64
	// Evaporation in kilograms a square metre and second; below zero it is dew.
	Evaporation float64
	// HumidityRatio in kilograms of water a kilogram of dry air.
	HumidityRatio float64
)

// Units as constants.
const (
	WattPerSquareMetreKelvin HeatTransfer = 1

	JoulePerKilogram SpecificEnergy = 1

	// MillimetrePerHour of water of 1000 kg/m3.
	MillimetrePerHour Evaporation = 1.0 / 3600

	WattPerSquareMetre Irradiance = 1
)

var (
	heatTransferKind = Kind{Name: "heat transfer coefficient", Example: "12 W/(m2 K)", us: "Btu/(h ft2 F)", metric: "W/(m2 K)", Units: []Unit{
		{Symbol: "W/(m2 K)", Factor: 1},
		{Symbol: "Btu/(h ft2 F)", Factor: 1055.05585262 / 3600 / float64(SquareFoot) * 1.8},
	}}
	specificEnergyKind = Kind{Name: "latent heat", Example: "2450 kJ/kg", us: "kJ/kg", metric: "kJ/kg", Units: []Unit{
		{Symbol: "J/kg", Factor: 1},
		{Symbol: "kJ/kg", Factor: 1e3},
		{Symbol: "Btu/lb", Factor: 2326},
	}}
	specificHeatKind = Kind{Name: "specific heat", Example: "1.02 kJ/(kg K)", us: "Btu/(lb F)", metric: "kJ/(kg K)", Units: []Unit{
		{Symbol: "J/(kg K)", Factor: 1},
		{Symbol: "kJ/(kg K)", Factor: 1e3},
		{Symbol: "Btu/(lb F)", Factor: 4186.8},
	}}
	evaporationKind = Kind{Name: "evaporation", Example: "0.2 mm/h", us: "mm/h", metric: "mm/h", signed: true, Units: []Unit{
		{Symbol: "kg/(m2 s)", Factor: 1},
		{Symbol: "mm/h", Also: []string{"kg/(m2 h)"}, Factor: float64(MillimetrePerHour)},
	}}
	humidityRatioKind = Kind{Name: "humidity ratio", Example: "9.9 g/kg", us: "g/kg", metric: "g/kg", Units: []Unit{
		{Symbol: "kg/kg", Factor: 1},
		{Symbol: "g/kg", Factor: 1e-3},
		{Symbol: "gr/lb", Factor: 1.0 / 7000},
	}}
)

// Kind names the dimension and its units.
func (HeatTransfer) Kind() *Kind { return &heatTransferKind }

// Kind names the dimension and its units.
func (SpecificEnergy) Kind() *Kind { return &specificEnergyKind }

// Kind names the dimension and its units.
func (SpecificHeat) Kind() *Kind { return &specificHeatKind }

// Kind names the dimension and its units.
func (Evaporation) Kind() *Kind { return &evaporationKind }

// Kind names the dimension and its units.
func (HumidityRatio) Kind() *Kind { return &humidityRatioKind }

// MillimetresPerHour leaves the type.
func (e Evaporation) MillimetresPerHour() float64 { return float64(e / MillimetrePerHour) }

// WattsPerSquareMetre leaves the type.
func (i Irradiance) WattsPerSquareMetre() float64 { return float64(i) }

// MetresPerSecond leaves the type.
func (s Speed) MetresPerSecond() float64 { return float64(s) }

// Time is how long this rate takes for the area a.
func (c Coverage) Time(a Area) Duration { return Duration(float64(a) / float64(c)) }

// Area is what this rate covers in d.
func (c Coverage) Area(d Duration) Area { return Area(float64(c) * float64(d)) }

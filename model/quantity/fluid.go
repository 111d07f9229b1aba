package quantity

// Properties of fluids.
type (
	// Density in kilograms a cubic metre.
	Density float64
	// Viscosity is the dynamic viscosity in pascal seconds.
	Viscosity float64
	// KinematicViscosity in square metres a second.
	KinematicViscosity float64
	// Diffusivity of a solute in square metres a second.
	Diffusivity float64
)

var (
	densityKind = Kind{Name: "density", Example: "998 kg/m3", us: "kg/m3", metric: "kg/m3", Units: []Unit{
		{Symbol: "kg/m3", Factor: 1},
	}}
	viscosityKind = Kind{Name: "viscosity", Example: "1 mPa s", us: "mPa s", metric: "mPa s", Units: []Unit{
		{Symbol: "Pa s", Factor: 1},
		{Symbol: "mPa s", Also: []string{"cp"}, Factor: 1e-3},
	}}
	kinematicViscosityKind = Kind{Name: "kinematic viscosity", Example: "1 mm2/s", us: "mm2/s", metric: "mm2/s", Units: []Unit{
		{Symbol: "m2/s", Factor: 1},
		{Symbol: "mm2/s", Also: []string{"cst"}, Factor: 1e-6},
	}}
	diffusivityKind = Kind{Name: "diffusion coefficient", Example: "1.33e-9 m2/s", us: "1e-9 m2/s", metric: "1e-9 m2/s", Units: []Unit{
		{Symbol: "m2/s", Factor: 1},
		{Symbol: "1e-9 m2/s", Factor: 1e-9},
	}}
)

// Kind names the dimension and its units.
func (Density) Kind() *Kind { return &densityKind }

// Kind names the dimension and its units.
func (Viscosity) Kind() *Kind { return &viscosityKind }

// Kind names the dimension and its units.
func (KinematicViscosity) Kind() *Kind { return &kinematicViscosityKind }

// Kind names the dimension and its units.
func (Diffusivity) Kind() *Kind { return &diffusivityKind }

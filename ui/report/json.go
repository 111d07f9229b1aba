package report

import (
	"encoding/json"
	"fmt"
	"math"
	"strconv"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
)

// Format is the number that the JSON of a plan carries.
const Format = 1

// JSON writes a plan as one object, every number in the unit that its name ends
// in. What is not known is null.
func JSON(p planner.Plan) ([]byte, error) {
	data, err := json.MarshalIndent(document(p), "", "  ")
	if err != nil {
		return nil, fmt.Errorf("write the plan as JSON: %w", err)
	}
	return append(data, '\n'), nil
}

// number is written with six significant digits; what is no number is null.
type number float64

func (n number) MarshalJSON() ([]byte, error) {
	v := float64(n)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return []byte("null"), nil
	}
	rounded, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 6, 64), 64)
	if err != nil {
		return nil, err
	}
	return []byte(strconv.FormatFloat(rounded+0, 'f', -1, 64)), nil
}

type planJSON struct {
	Format      int              `json:"format"`
	Wash        string           `json:"wash"`
	Date        *string          `json:"date"`
	Verdict     planner.Verdict  `json:"verdict"`
	Water       watersJSON       `json:"water"`
	DI          useJSON          `json:"di"`
	Soft        useJSON          `json:"soft"`
	Raw         useJSON          `json:"raw"`
	FlowCap     flowCapJSON      `json:"flow_cap"`
	Sprayer     sprayerJSON      `json:"sprayer"`
	Bed         bedJSON          `json:"bed"`
	Softener    *softenerJSON    `json:"softener"`
	Stages      []stageJSON      `json:"stages"`
	Faces       []faceJSON       `json:"faces"`
	Day         *dayJSON         `json:"day"`
	Flush       flushJSON        `json:"flush"`
	Cost        *costJSON        `json:"cost"`
	Shortage    *shortageJSON    `json:"shortage"`
	Warnings    []noteJSON       `json:"warnings"`
	Cautions    []noteJSON       `json:"cautions"`
	Assumptions []assumptionJSON `json:"assumptions"`
}

type watersJSON struct {
	Raw      waterJSON `json:"raw"`
	Softened waterJSON `json:"softened"`
}

type waterJSON struct {
	Conductivity number `json:"conductivity_us_cm"`
	TDS          number `json:"tds_ppm"`
	Scale        string `json:"scale"`
	Hardness     number `json:"hardness_gr_gal"`
	Load         number `json:"load_meq_l"`
	LoadCaCO3    number `json:"load_mg_l_caco3"`
	Temperature  number `json:"temperature_f"`
}

type useJSON struct {
	Gallons number `json:"gallons"`
	Minutes number `json:"minutes"`
}

type flowCapJSON struct {
	GPM        number        `json:"gpm"`
	BoundBy    planner.Bound `json:"bound_by"`
	JugSeconds number        `json:"jug_seconds_per_gallon"`
	Keeps      bool          `json:"keeps_spec"` // false where no flow that can be held does; then gpm is no cap to keep to
	Held       number        `json:"held_gpm"`   // the cap that is kept to: gpm, or the least of the others
	Sure       *number       `json:"sure_gpm"`   // with a chance of 90 %, where the exchange binds and the bed is in doubt
	Caps       []capJSON     `json:"caps"`
}

type capJSON struct {
	Name planner.Bound `json:"name"`
	GPM  number        `json:"gpm"`
}

type sprayerJSON struct {
	GPM       number `json:"gpm"`
	WithinCap bool   `json:"within_cap"`
	OpenHose  number `json:"open_hose_gpm"`
}

type bandJSON struct {
	P10 number `json:"p10"`
	P50 number `json:"p50"`
	P90 number `json:"p90"`
}

type bedJSON struct {
	Resin         number   `json:"resin_ft3"`
	Capacity      number   `json:"capacity_gr"`
	Used          number   `json:"used_gr"`
	ContactTime   number   `json:"contact_time_s"`
	TransferUnits number   `json:"transfer_units"`
	Remaining     bandJSON `json:"remaining_gallons"`
	ChanceLasts   number   `json:"chance_lasts"`
	OutletAtEnd   bandJSON `json:"outlet_ppm_at_end"`
}

type softenerJSON struct {
	Remaining number `json:"remaining_gallons"`
	Lasts     bool   `json:"lasts"`
}

type stageJSON struct {
	Name    string       `json:"name"`
	Water   model.Water  `json:"water"`
	Faces   []model.Side `json:"faces"`
	Sprayer string       `json:"sprayer"`
	GPM     number       `json:"gpm"`
	Gallons number       `json:"gallons"`
	Minutes number       `json:"minutes"`
	Valves  []string     `json:"valves"`
}

type faceJSON struct {
	Name    model.Side    `json:"name"`
	Area    number        `json:"area_ft2"`
	DI      number        `json:"di_gallons"`
	PPMLeft number        `json:"ppm_left"`
	Residue number        `json:"residue_mg_m2"`
	Spots   planner.Spots `json:"spots"`
	Dries   number        `json:"dry_minutes"`
}

type flushJSON struct {
	Gallons number `json:"gallons"`
	Seconds number `json:"seconds"`
}

type costJSON struct {
	Currency  string `json:"currency"`
	Wash      number `json:"wash"`
	PerGallon number `json:"per_gallon"`
}

type noteJSON struct {
	Code string `json:"code"`
	Text string `json:"text"`
}

// assumptionJSON carries a number with its unit, or words without one.
type assumptionJSON struct {
	Name   string `json:"name"`
	Value  any    `json:"value"`
	Unit   string `json:"unit"`
	Tag    string `json:"tag"`
	Source string `json:"source"`
}

func use(u planner.Use) useJSON {
	return useJSON{number(u.Volume.Gallons()), number(u.Duration.Minutes())}
}

func assumption(a planner.Assumption) assumptionJSON {
	out := assumptionJSON{Name: a.Name, Value: a.Words, Tag: string(a.Source.Tag), Source: a.Source.Text}
	if a.Value.Kind != nil {
		v, unit := a.Value.Number(quantity.US)
		out.Value, out.Unit = number(v), unit
	}
	return out
}

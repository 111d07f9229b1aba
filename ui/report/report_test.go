package report_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
	"washeve/planner/trip"
	"washeve/ui/cells"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/sample"
	"washeve/ui/report"
)

var update = golden.Flag()

func TestText(t *testing.T) {
	golden.Check(t, *update, "us.txt", report.Text(sample.Plan(), quantity.US, false, 80))
	golden.Check(t, *update, "plain.txt", report.Text(sample.Plan(), quantity.US, true, 60))
	golden.Check(t, *update, "metric.txt", report.Text(sample.Plan(), quantity.Metric, false, 100))
}

func TestTextStartsWithTheVerdict(t *testing.T) {
	lines := strings.Split(report.Text(sample.Plan(), quantity.US, true, 80), "\n")
	assert.Equal(t, "Friday wash: Old Goose at Willow Bend, 2026-06-12", lines[0])
	assert.Equal(t, "TIGHT: THE BED MAY NOT LAST", lines[2])
}

func TestTextStaysInWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sample.Plan()
		width := rapid.IntRange(40, 140).Draw(t, "width")
		p.Stages[0].Name = rapid.StringMatching(`[a-z ]{0,60}`).Draw(t, "stage")
		for _, line := range strings.Split(report.Text(p, quantity.US, rapid.Bool().Draw(t, "plain"), width), "\n") {
			if cells.Width(line) > max(width, 60) {
				t.Fatalf("%q is wider than %d", line, width)
			}
		}
	})
}

func TestPlainTextIsASCII(t *testing.T) {
	for _, r := range report.Text(sample.Plan(), quantity.US, true, 80) {
		assert.Less(t, r, rune(0x7f))
	}
}

func TestTextWritesEscapesOut(t *testing.T) {
	p := sample.Plan()
	p.Vehicle, p.Stages[0].Name, p.Sprayer.Name = "\x1b[2Jcoach", "\x1b]0;x\a", "a\nb"
	got := report.Text(p, quantity.US, false, 80)
	assert.NotContains(t, got, "\x1b")
	assert.NotContains(t, got, "\a")
	assert.Contains(t, got, `\x1b[2Jcoach`)
}

// The contract: these names, and no others go missing.
func TestJSONNames(t *testing.T) {
	data, err := report.JSON(sample.Plan())
	require.NoError(t, err)
	golden.Check(t, *update, "plan.json", string(data))
	var doc map[string]any
	require.NoError(t, json.Unmarshal(data, &doc))
	for _, path := range []string{
		"format", "wash", "date", "verdict", "water.raw.conductivity_us_cm", "water.raw.tds_ppm", "water.raw.scale", "water.raw.hardness_gr_gal",
		"water.softened.load_meq_l", "water.softened.load_mg_l_caco3", "water.softened.temperature_f", "di.gallons", "di.minutes", "soft.gallons",
		"raw.minutes", "flow_cap.gpm", "flow_cap.bound_by", "flow_cap.jug_seconds_per_gallon", "flow_cap.caps", "sprayer.gpm", "sprayer.within_cap",
		"sprayer.open_hose_gpm", "bed.resin_ft3", "bed.capacity_gr", "bed.used_gr", "bed.contact_time_s", "bed.transfer_units",
		"bed.remaining_gallons.p10", "bed.chance_lasts", "bed.outlet_ppm_at_end.p90", "softener.remaining_gallons", "softener.lasts",
		"stages", "faces", "flush.gallons", "flush.seconds", "warnings", "cautions", "assumptions",
	} {
		assert.NotNil(t, dig(doc, path), path)
	}
	assert.Equal(t, 60.0, dig(doc, "di.gallons"))
	assert.Equal(t, 0.5, dig(doc, "bed.resin_ft3"))
	assert.Equal(t, 68.0, dig(doc, "water.raw.temperature_f"))
	assert.InDelta(t, 10, dig(doc, "water.raw.hardness_gr_gal"), 1e-3)
}

func dig(doc map[string]any, path string) any {
	var at any = doc
	for _, name := range strings.Split(path, ".") {
		inner, ok := at.(map[string]any)
		if !ok {
			return nil
		}
		at = inner[name]
	}
	return at
}

// No number can break the JSON: what is none is null, lists are never null.
func TestJSONOfAnyNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := func(name string) float64 {
			return rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, 5e-324})).Draw(t, name)
		}
		p := planner.Plan{DI: planner.Use{Volume: quantity.Volume(f("v")), Duration: quantity.Duration(f("d"))}}
		p.Bed.OutletAtEnd.P50, p.Cap.Flow = f("outlet"), quantity.Flow(f("flow"))
		p.Assumptions = []planner.Assumption{{Name: "x", Value: quantity.ValueOf(quantity.Length(f("length")))}}
		data, err := report.JSON(p)
		if err != nil {
			t.Fatal(err)
		}
		var doc map[string]any
		if err := json.Unmarshal(data, &doc); err != nil {
			t.Fatalf("%v in %s", err, data)
		}
		for _, list := range []string{"stages", "faces", "warnings", "cautions", "assumptions"} {
			if _, ok := doc[list].([]any); !ok {
				t.Fatalf("%s is no list", list)
			}
		}
	})
}

func TestJSONRoundsToSixDigits(t *testing.T) {
	p := planner.Plan{Flush: planner.Use{Volume: quantity.Volume(math.Pi) * quantity.Gallon, Duration: 123456.789}}
	data, err := report.JSON(p)
	require.NoError(t, err)
	assert.Contains(t, string(data), `"gallons": 3.14159`)
	assert.Contains(t, string(data), `"seconds": 123457`)
	assert.Contains(t, string(data), `"softener": null`)
	assert.Contains(t, string(data), `"date": null`)
}

func TestChance(t *testing.T) {
	for _, c := range []struct {
		chance quantity.Fraction
		words  string
	}{
		{1, "almost certain"}, {0.992, "almost certain"}, {0.99, "very likely"}, {0.97, "very likely"}, {0.9, "about 9 in 10"}, {0.93, "a little over 9 in 10"}, {0.905, "a little over 9 in 10"}, {0.899, "just under 9 in 10"}, {0.85, "just under 9 in 10"}, {0.84, "about 8 in 10"}, {0.71, "about 7 in 10"}, {0.5, "about 5 in 10"},
		{0.03, "very unlikely"}, {0.006, "almost none"}, {0, "almost none"}, {quantity.Fraction(math.NaN()), "not known"},
	} {
		assert.Equal(t, c.words, report.Chance(c.chance))
	}
}

// A reason tells its chance as the headline does, and what is no chance as it is.
func TestAReasonedChanceIsTold(t *testing.T) {
	result := func(v quantity.Value) string {
		return report.Result(planner.Reason{Result: "by words", Value: v}, quantity.US)
	}
	assert.Equal(t, "over 99 %", result(quantity.ValueOf(quantity.Fraction(1))))
	assert.Equal(t, "under 1 %", result(quantity.ValueOf(quantity.Fraction(0))))
	assert.Equal(t, "93 %", result(quantity.ValueOf(quantity.Fraction(0.93))))
	assert.Equal(t, "2 gal", result(quantity.ValueOf(2*quantity.Gallon)))
	assert.Equal(t, "by words", result(quantity.Value{}))
}

// A hose does not run while the coach is washed by hand.
func TestWaterRunsWithoutTheHandwork(t *testing.T) {
	use := func(gallons, minutes float64) planner.Use {
		return planner.Use{Volume: quantity.Volume(gallons) * quantity.Gallon, Duration: quantity.Duration(minutes) * quantity.Minute}
	}
	p := planner.Plan{Untreated: use(30, 105), Soft: use(20, 15), Stages: []planner.StagePlan{
		{Water: model.Raw, Use: use(30, 10)}, {Water: model.Raw, Use: use(0, 95)}, {Water: model.Softened, Use: use(20, 15)},
	}}
	assert.Equal(t, []report.Row{
		{Label: "softened water", Value: "20 gal", Note: "15 min"},
		{Label: "raw water", Value: "30 gal", Note: "10 min, and 95 min by hand"},
	}, report.Water(p, quantity.US))
}

func TestTime(t *testing.T) {
	for _, c := range []struct {
		seconds float64
		words   string
	}{
		{0, "0 s"}, {4.54, "4.5 s"}, {24.1, "24 s"}, {91, "91 s"}, {120, "2 min"}, {2600, "43 min"}, {6540, "1 h 49 min"},
		{7199, "2 h 0 min"}, {math.Inf(1), "no end"},
	} {
		assert.Equal(t, c.words, report.Time(quantity.Duration(c.seconds)))
	}
}

func TestPercent(t *testing.T) {
	assert.Equal(t, "71 %", report.Percent(0.71))
	assert.Equal(t, "over 99 %", report.Percent(0.9996))
	assert.Equal(t, "under 1 %", report.Percent(0.0004))
	assert.Equal(t, "0 %", report.Percent(0))
}

func TestNoChanceIsAllOrNothing(t *testing.T) {
	for chance, words := range map[quantity.Fraction]string{
		1: "over 99 %", 0.9996: "over 99 %", 0.99: "99 %", 0.905: "90 %", 0.01: "1 %", 0.004: "under 1 %", 0: "under 1 %", quantity.Fraction(math.NaN()): "unknown",
	} {
		assert.Equal(t, words, report.Odds(chance), chance)
	}
	for _, over := range []bool{false, true} {
		p := trip.Plan{Washes: make([]trip.WashPlan, 1), FirstAtRisk: -1, AllOnSpec: 1, Over: over}
		assert.Contains(t, report.TripBrief(p, quantity.US)[0], "All on spec: over 99 %.")
		assert.Contains(t, report.TripVerdict(p), "(over 99 %)")
	}
}

func TestVerdictsAndWords(t *testing.T) {
	assert.Equal(t, "The bed lasts this wash", report.Verdict(planner.Lasts))
	assert.Equal(t, "The bed will not last", report.Verdict(planner.WillNotLast))
	assumed := planner.Assumption{Name: "bed gallons so far", Source: tag.Source{Tag: tag.Practice}}
	assert.Equal(t, "The bed lasts this wash, if just filled", report.Judged(&planner.Plan{Verdict: planner.Lasts, Assumptions: []planner.Assumption{assumed}}))
	assert.Equal(t, "The bed will not last, even if new", report.Judged(&planner.Plan{Verdict: planner.WillNotLast, Assumptions: []planner.Assumption{assumed}}))
	before := planner.Assumption{Name: "bed age when the log began", Source: tag.Source{Tag: tag.Practice}}
	for verdict, words := range map[planner.Verdict]string{
		planner.Lasts: "The bed lasts this wash, if it was new", planner.Tight: "Tight: the bed may not last, even if new", planner.WillNotLast: "The bed will not last, even if new",
	} {
		assert.Equal(t, words, report.Judged(&planner.Plan{Verdict: verdict, Assumptions: []planner.Assumption{before}}))
	}
	doubted := planner.Plan{Verdict: planner.Tight, Bed: planner.BedOutlook{ChanceLasts: 0.995}, Assumptions: []planner.Assumption{before}}
	assert.Equal(t, "In doubt: the last reading fits no bed", report.Judged(&doubted))
	assert.Equal(t, "over 99 % only without that reading", report.Lasting(&doubted), "no chance is put forward as if it held")
	assert.Equal(t, "almost certain (over 99 %)", report.Lasting(&planner.Plan{Verdict: planner.Lasts, Bed: planner.BedOutlook{ChanceLasts: 0.993}}))
	assert.Equal(t, "The bed will not last", report.Judged(&planner.Plan{Verdict: planner.WillNotLast}))
	likely := planner.Plan{Verdict: planner.WillNotLast, Bed: planner.BedOutlook{ChanceLasts: 0.47}}
	assert.Equal(t, "The bed will likely not last", report.Judged(&likely), "47 % is no flat no")
	assert.Equal(t, "all faces", report.Faces(nil))
	assert.Equal(t, "all but roof", report.Faces([]model.Side{model.Rear, model.Left, model.Right, model.Front}))
	assert.Equal(t, "left, roof", report.Faces([]model.Side{model.Left, model.Roof}))
	assert.Equal(t, "under 0.1 ppm", report.PPM(0.00003))
	assert.Equal(t, "dry by towel", report.SpotWords(planner.Towel))
	assert.Equal(t, "softener, DI bed", report.Through([]planner.Valve{{Unit: "softener", Through: true}, {Unit: "DI bed", Through: true}}))
	assert.Equal(t, "none", report.Through([]planner.Valve{{Unit: "softener"}}))
	for _, b := range []planner.Bound{planner.ByRating, planner.ByContactTime, planner.ByFaceVelocity, planner.ByExchange, planner.ByPressure, "other"} {
		assert.NotEmpty(t, report.Bound(b))
	}
}

func TestSprayerAndHoseNotes(t *testing.T) {
	p := sample.Plan()
	assert.Equal(t, "under the cap", report.SprayerNote(p))
	assert.Equal(t, "3.6 times the cap: not through the bed", report.HoseNote(p))
	p.Sprayer.Enough = false
	assert.Contains(t, report.SprayerNote(p), "too weak")
	p.Sprayer.WithinCap = false
	assert.Contains(t, report.SprayerNote(p), "over the cap")
	p.Sprayer.OpenHose = quantity.GPM
	assert.Equal(t, "under the cap", report.HoseNote(p))
	p.Cap.Flow = 0
	assert.Equal(t, "the bed allows no flow", report.HoseNote(p))
}

// Seconds that are a least are never shown fewer, nor a cap greater, than they are.
func TestTheCapIsRoundedToTheSafeSide(t *testing.T) {
	p := sample.Plan()
	p.Cap.Flow = quantity.Flow(float64(quantity.Gallon) / 36.5) // 1.6438 gpm, 6.2228 L/min
	assert.Equal(t, "a gallon takes 37 s or longer to fill", report.Jug(p, quantity.US))
	assert.Equal(t, "10 L takes 97 s or longer to fill", report.Jug(p, quantity.Metric))
	p.Cap.Flow = 1.9999 * quantity.GPM
	assert.Contains(t, report.Cap(p, quantity.US), "Cap 1.99 gpm")
}

func TestACapThatNobodyCanHoldIsNone(t *testing.T) {
	p := sample.Plan()
	for _, f := range []quantity.Flow{0, 0.026 * quantity.GPM} {
		p.Cap.Flow, p.Cap.BoundBy, p.Cap.JugSeconds = f, planner.ByExchange, f.Time(quantity.Gallon)
		least, _ := report.JugTime(p, quantity.US)
		assert.Equal(t, "-", least)
		assert.Equal(t, "Cap: no flow keeps this bed on spec", report.Cap(p, quantity.US))
		text := report.Text(p, quantity.US, true, 80)
		assert.Contains(t, text, report.NoFlow)
		assert.NotContains(t, text, "to fill")
	}
}

func TestSpentBedSaysSo(t *testing.T) {
	p := sample.Plan()
	p.Bed.Remaining = planner.Band[quantity.Volume]{}
	assert.Contains(t, report.Remaining(p, quantity.US), "at the limit of 10 ppm NaCl already")
	p.Softener, p.Cost = nil, planner.Cost{}
	assert.Nil(t, report.Softener(p, quantity.US))
	assert.Contains(t, report.Cost(p, quantity.US), "not known")
}

func TestCapsRiseFromTheOneThatBinds(t *testing.T) {
	caps := report.Caps(sample.Plan())
	assert.Equal(t, planner.ByContactTime, caps[0].Name)
	for i := range caps[1:] {
		assert.LessOrEqual(t, caps[i].Flow, caps[i+1].Flow)
	}
}

func BenchmarkText(b *testing.B) {
	p := sample.Plan()
	for b.Loop() {
		report.Text(p, quantity.US, false, 80)
	}
}

package water

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner/tag"
)

func conducting(microSiemens float64) quantity.Reading {
	return quantity.Reading{Number: microSiemens, Scale: quantity.ScaleConductivity}
}

func hard(mgPerLitre float64) quantity.Opt[quantity.Hardness] {
	return quantity.Some(quantity.HardnessOf(mgPerLitre))
}

func codes(notes []tag.Note) []string {
	found := make([]string, len(notes))
	for i, n := range notes {
		found[i] = n.Code
	}
	return found
}

// Standard Methods 1030 E: EC/100 meq/L, within 10 %.
func TestOnlyConductivityKnown(t *testing.T) {
	a := Analyse(Facts{TDS: conducting(450)})
	assert.InDelta(t, 4.5, a.Load.MilliEqPerLitre(), 1e-9)
	assert.InDelta(t, 4.05, a.Low.MilliEqPerLitre(), 1e-9)
	assert.InDelta(t, 4.95, a.High.MilliEqPerLitre(), 1e-9)
	assert.Equal(t, Calcium, a.Slowest)
	assert.False(t, a.HardnessSaid)
	assert.Equal(t, a.Load, a.Effective())
	assert.Empty(t, a.Contradictions)
	assert.Empty(t, a.Warnings)
}

// The shares taken where nothing was measured make the rule EC/100 hold.
func TestAssumedIonsConductAsTheRuleSays(t *testing.T) {
	a := Analyse(Facts{TDS: conducting(500)})
	assert.InEpsilon(t, 500, a.Ions.Conductivity().MicroSiemensPerCm(), 0.005)
}

// 215.5 mg/L of sodium chloride is 3.687 meq/L (58.44 g/mol).
func TestPureSodiumChlorideIsFoundAgain(t *testing.T) {
	a := Analyse(Facts{TDS: quantity.PPM(215.5, quantity.ScaleNaCl), Hardness: hard(0), Alkalinity: hard(0)})
	assert.InEpsilon(t, 215.5/58.44, a.Load.MilliEqPerLitre(), 0.002)
	assert.Equal(t, Sodium, a.Slowest)
	assert.Equal(t, a.Load, a.Ions.Sodium)
	assert.Equal(t, a.Load, a.Ions.Chloride)
}

func TestHardnessAboveTheLoadIsToldAndBelieved(t *testing.T) {
	for _, alkalinity := range []quantity.Opt[quantity.Hardness]{{}, hard(100)} {
		a := Analyse(Facts{TDS: conducting(300), Hardness: hard(300), Alkalinity: alkalinity})
		require.Equal(t, []string{"hardness-over-tds"}, codes(a.Contradictions))
		assert.InEpsilon(t, 300, a.Load.MilligramsPerLitre(), 1e-9)
		assert.Less(t, a.Low.MilliEqPerLitre(), 3.3)
		text := a.Contradictions[0].Text(quantity.Metric)
		assert.Contains(t, text, "300 mg/L as CaCO3")
		assert.Contains(t, text, "300 uS/cm")
		assert.NotContains(t, text, "%!")
	}
}

// Water of calcium bicarbonate alone reads a little under EC/100, and no pen is
// better than 2 %: neither is a contradiction.
func TestAHardnessWithinTheErrorSharpensTheLoad(t *testing.T) {
	lime := Ions{Hardness: 3, Bicarbonate: 3}
	ec := conducting(lime.Conductivity().MicroSiemensPerCm() * 0.98)
	three := quantity.Some(quantity.Hardness(3))
	for _, f := range []Facts{{TDS: ec, Hardness: three}, {TDS: ec, Hardness: three, Alkalinity: three}} {
		a := Analyse(f)
		assert.Empty(t, a.Contradictions)
		assert.Equal(t, quantity.Load(3), a.Load)
		assert.Less(t, a.Low, a.Load)
	}
}

func TestAlkalinityAboveTheLoadIsTold(t *testing.T) {
	a := Analyse(Facts{TDS: conducting(300), Alkalinity: hard(250)})
	assert.Equal(t, []string{"alkalinity-over-tds"}, codes(a.Contradictions))
	both := Analyse(Facts{TDS: conducting(300), Hardness: hard(250), Alkalinity: hard(250)})
	assert.Equal(t, []string{"hardness-over-tds", "alkalinity-over-tds"}, codes(both.Contradictions))
}

// At pH 6.35 there is as much free carbon dioxide as bicarbonate (pK1).
func TestFreeCarbonDioxide(t *testing.T) {
	f := Facts{TDS: conducting(450), Alkalinity: hard(100), PH: quantity.Some(6.35)}
	a := Analyse(f)
	assert.InEpsilon(t, 100/50.04, a.CO2.MilliEqPerLitre(), 1e-12)
	assert.InEpsilon(t, 4.5+100/50.04, a.Effective().MilliEqPerLitre(), 1e-12)
	f.PH = quantity.Some(8.35)
	assert.InEpsilon(t, 1/50.04, Analyse(f).CO2.MilliEqPerLitre(), 1e-12)
	f.PH = quantity.Some(4.5)
	impossible := Analyse(f)
	assert.Equal(t, []string{"ph-and-alkalinity"}, codes(impossible.Contradictions))
	assert.Zero(t, impossible.CO2)
}

// 60.08 mg of SiO2 is one meq.
func TestSilicaLoadsTheAnionSideAndIsWarnedOf(t *testing.T) {
	a := Analyse(Facts{TDS: conducting(450), Silica: quantity.Some(12 * quantity.MilligramPerLitre)})
	assert.InEpsilon(t, 12/60.08, a.Silica.MilliEqPerLitre(), 1e-12)
	assert.InEpsilon(t, 4.5, a.Load.MilliEqPerLitre(), 1e-12)
	assert.Equal(t, []string{"silica"}, codes(a.Warnings))
	assert.NotContains(t, a.EffectiveReason().Text(quantity.US), "%!")
}

func TestWarnings(t *testing.T) {
	a := Analyse(Facts{
		TDS:      conducting(2900),
		Chlorine: quantity.Some(0.5 * quantity.MilligramPerLitre),
		Iron:     quantity.Some(0.3 * quantity.MilligramPerLitre),
	})
	assert.Equal(t, []string{"chlorine", "iron", "high-tds", "beyond-scale"}, codes(a.Warnings))
	for _, w := range a.Warnings {
		assert.NotContains(t, w.Text(quantity.US), "%!")
	}
}

// US Geological Survey: 0-60, 61-120, 121-180, over 180 mg/L as CaCO3.
func TestClasses(t *testing.T) {
	for mg, class := range map[float64]Class{
		0: Soft, 60: Soft, 61: ModeratelyHard, 120: ModeratelyHard, 121: Hard, 180: Hard, 181: VeryHard,
	} {
		assert.Equal(t, class, ClassOf(quantity.HardnessOf(mg)), "%g mg/L", mg)
	}
}

func TestFactsOfAPlace(t *testing.T) {
	place := model.Place{TDS: quantity.Some(quantity.PPM(300, quantity.ScaleUnsaid)), Hardness: hard(100)}
	a := Analyse(FactsOf(&place, quantity.Scale442))
	assert.InDelta(t, 447, a.Conductivity.MicroSiemensPerCm(), 1e-9)
	assert.InEpsilon(t, 100, a.Hardness().MilligramsPerLitre(), 1e-12)
	names := map[string]bool{}
	for _, assumption := range a.Assumed {
		names[assumption.Name] = true
	}
	assert.Equal(t, map[string]bool{"water temperature": true, "alkalinity": true}, names)
	assert.NotPanics(t, func() { Analyse(FactsOf(&model.Place{}, quantity.ScaleUnsaid)) })
}

func TestEveryConstantNamesItsSource(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range Constants() {
		assert.False(t, seen[c.Name], c.Name)
		seen[c.Name] = true
		assert.NotEmpty(t, c.Source.Tag, c.Name)
		assert.NotEmpty(t, c.Source.Text, c.Name)
		assert.True(t, (c.Words == "") != (c.Value.Kind == nil), c.Name)
	}
}

func drawFacts(t *rapid.T) Facts {
	f := Facts{TDS: conducting(rapid.Float64Range(0, 6000).Draw(t, "uS/cm"))}
	if rapid.Bool().Draw(t, "hardness said") {
		f.Hardness = hard(rapid.Float64Range(0, 2000).Draw(t, "hardness"))
	}
	if rapid.Bool().Draw(t, "alkalinity said") {
		f.Alkalinity = hard(rapid.Float64Range(0, 2000).Draw(t, "alkalinity"))
		f.PH = quantity.Some(rapid.Float64Range(4, 11).Draw(t, "pH"))
	}
	f.Silica = quantity.Some(quantity.Concentration(rapid.Float64Range(0, 0.2).Draw(t, "silica")))
	return f
}

func TestAnalysisHoldsTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFacts(t)
		a := Analyse(f)
		cations, anions := a.Ions.Total(), a.Ions.Bicarbonate+a.Ions.Chloride
		switch {
		case !(a.Low <= a.Load && a.Load <= a.High):
			t.Fatalf("load %g outside its band %g to %g", a.Load, a.Low, a.High)
		case fmt.Sprintf("%.9g", cations) != fmt.Sprintf("%.9g", anions):
			t.Fatalf("cations %g, anions %g", cations, anions)
		case min(a.Ions.Hardness, a.Ions.Sodium, a.Ions.Bicarbonate, a.Ions.Chloride) < 0:
			t.Fatalf("an ion below zero: %+v", a.Ions)
		case a.Effective() < a.Load:
			t.Fatalf("what the pen does not see made the load smaller")
		case max(quantity.Load(f.Hardness.Or(0)), quantity.Load(f.Alkalinity.Or(0))) > a.Load*(1+1e-12): // but for rounding
			t.Fatalf("a reading was clamped")
		}
	})
}

func TestSofteningKeepsTheLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		raw := Analyse(drawFacts(t))
		soft := Soften(raw)
		if soft.Load != raw.Load || soft.Effective() != raw.Effective() || soft.Ions.Total() != raw.Ions.Total() {
			t.Fatalf("load %g became %g", raw.Load, soft.Load)
		}
		if soft.Hardness() != 0 || soft.Class() != Soft || soft.Slowest != Sodium {
			t.Fatalf("not softened: %+v", soft)
		}
		if twice := Soften(soft); twice.Conductivity != soft.Conductivity {
			t.Fatalf("softening twice moved the conductivity from %g to %g", soft.Conductivity, twice.Conductivity)
		}
	})
}

// Method: the pen reads about the same behind a softener.
func TestThePenReadsAboutTheSameBehindASoftener(t *testing.T) {
	raw := Analyse(Facts{TDS: conducting(600), Hardness: hard(250), Alkalinity: hard(200)})
	soft := Soften(raw)
	assert.InEpsilon(t, float64(raw.Conductivity), float64(soft.Conductivity), 0.06)
	assert.Less(t, float64(raw.Diffusivity()), float64(soft.Diffusivity()))
	assert.NotContains(t, SofteningNote(raw).Text(quantity.US), "%!")
	assert.InDelta(t, 600, raw.PPM(quantity.ScaleConductivity).Number, 1e-9)
}

func BenchmarkAnalyse(b *testing.B) {
	f := Facts{TDS: quantity.PPM(240, quantity.ScaleNaCl), Hardness: hard(180), Alkalinity: hard(120)}
	for b.Loop() {
		Analyse(f)
	}
}

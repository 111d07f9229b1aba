package form_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/stock"
	"washeve/ui/form"
)

// A bare reading is given no scale that nobody states, and it is told which it counts on.
func TestABareReadingIsOfferedThePensScale(t *testing.T) {
	limit := func(scale quantity.Scale) quantity.Opt[quantity.Reading] {
		return quantity.Some(quantity.PPM(10, scale))
	}
	for name, c := range map[string]struct {
		pen            quantity.Scale
		limit          quantity.Opt[quantity.Reading]
		key            string
		offer, counted string
	}{
		"no pen says":                {key: "limit", offer: "8 ppm", counted: "NaCl"},
		"the pen says":               {pen: quantity.Scale442, key: "limit", offer: "8 ppm 442", counted: "442"},
		"a target, by the pen":       {pen: quantity.Scale442, key: "target", offer: "8 ppm 442", counted: "442"},
		"a target, by the limit":     {limit: limit(quantity.ScaleKCl), key: "target", offer: "8 ppm", counted: "KCl"},
		"the limit is of no target":  {limit: limit(quantity.ScaleKCl), key: "limit", offer: "8 ppm", counted: "NaCl"},
		"a limit without its scale":  {limit: limit(quantity.ScaleUnsaid), key: "target", offer: "8 ppm", counted: "NaCl"},
		"a limit that has no ppm":    {limit: limit(quantity.ScaleConductivity), key: "target", offer: "8 ppm", counted: "NaCl"},
		"the limit's is not offered": {pen: quantity.Scale442, limit: limit(quantity.ScaleKCl), key: "target", offer: "8 ppm 442", counted: "KCl"},
	} {
		pen := model.Pen{Name: "yellow", Scale: quantity.Some(c.pen)}
		wash := &model.Wash{Limit: c.limit}
		all := stock.Stock{Rig: &model.Rig{Pens: []model.Pen{pen}}, Places: &model.Places{}, Wash: wash}
		for _, f := range (&model.Wash{}).Fields() {
			if f.Key != c.key {
				continue
			}
			e := form.Start("", f.Example).OnScales(f, form.ScalesOf(f, all)).With("8", f.Set)
			require.Equal(t, c.offer, e.Offer, name)
			counts := "no scale said: counted as " + c.counted
			if c.pen == quantity.ScaleUnsaid {
				assert.Equal(t, "needs its unit: tab or enter takes it as 8 ppm; "+counts, e.Says(), name)
			}
			assert.Equal(t, counts, look(e.With("8 ppm", f.Set)).Says(), name)
			assert.Empty(t, look(e.With("8 ppm KCl", f.Set)).Says(), name)
			assert.Empty(t, look(e.With("8 uS/cm", f.Set)).Says(), name)
		}
	}
	pause := (&model.Wash{}).Fields()[0]
	assert.Equal(t, "x", form.Start("", "x").OnScales(pause, form.Scales{}).With("x", pause.Set).Good, "what is no reading stays as it is")
}

// A trip's own limit comes before that of the wash.
func TestATargetCountsOnTheFirstLimitThatIsGiven(t *testing.T) {
	wash := &model.Wash{Limit: quantity.Some(quantity.PPM(10, quantity.ScaleKCl))}
	s := form.ScalesOf(model.Field{Key: "target"}, stock.Stock{Rig: &model.Rig{}, Places: &model.Places{}, Wash: wash}, quantity.Some(quantity.PPM(9, quantity.Scale442)))
	assert.Equal(t, form.Scales{Offered: quantity.ScaleUnsaid, Counted: quantity.Scale442}, s)
}

// A reading counts by the pen that it names, else by the one in use.
func TestAReadingIsOfItsOwnPen(t *testing.T) {
	none, own, other := quantity.ScaleUnsaid, quantity.Scale442, quantity.ScaleKCl
	rig := model.Rig{Pens: []model.Pen{{Name: "yellow", Scale: quantity.Some(own)}, {Name: "grey", Scale: quantity.Some(other)}, {Name: "old"}}}
	all := stock.Stock{Rig: &rig, Places: &model.Places{}, Wash: &model.Wash{}}
	for name, want := range map[string]form.Scales{
		"": {Offered: own, Counted: own}, "Grey": {Offered: other, Counted: other},
		"old": {Offered: none, Counted: quantity.ScaleNaCl}, "lent": {Offered: none, Counted: own},
	} {
		assert.Equal(t, want, form.PenScales(all, name), name)
	}
	rig.Defaults.Pen = "old"
	assert.Equal(t, form.Scales{Offered: none, Counted: quantity.ScaleNaCl}, form.PenScales(all, ""))
}

// Where no pen says its scale, the one that read the place's water reads the bed as well: its
// unit is offered, but for a target, which is one of solids.
func TestABareReadingIsOfferedTheScaleOfThePlacesTDS(t *testing.T) {
	for name, c := range map[string]struct {
		tds, pen, limit, target string
	}{
		"a conductivity":      {tds: "430 uS/cm", limit: "3 uS/cm", target: "3 ppm"},
		"a scale of ppm":      {tds: "240 ppm 442", limit: "3 ppm 442", target: "3 ppm 442"},
		"what counts anyway":  {tds: "240 ppm NaCl", limit: "3 ppm", target: "3 ppm"},
		"no scale":            {tds: "240 ppm", limit: "3 ppm", target: "3 ppm"},
		"nothing":             {limit: "3 ppm", target: "3 ppm"},
		"but the pen says it": {tds: "430 uS/cm", pen: "KCl", limit: "3 ppm KCl", target: "3 ppm KCl"},
	} {
		var all stock.Stock
		all.Rig, all.Places, all.Wash = &model.Rig{Pens: []model.Pen{{Name: "yellow"}}}, &model.Places{{Name: "other"}, {Name: "home"}}, &model.Wash{Place: "home"}
		set := func(section, key, text string, at int) {
			if text != "" {
				require.NoError(t, all.Set(stock.Ref{Section: section, Index: at, Key: key}, text), name)
			}
		}
		set("place", "tds", c.tds, 1)
		set("pen", "scale", c.pen, 0)
		for _, f := range (&model.Wash{}).Fields() {
			if want := map[string]string{"limit": c.limit, "target": c.target}[f.Key]; want != "" {
				e := form.Start("", f.Example).OnScales(f, form.ScalesOf(f, all)).With("3", f.Set)
				assert.Equal(t, want, e.Offer, "%s: %s", name, f.Key)
			}
		}
	}
}

package plan

import (
	"errors"
	"testing"

	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/ui/internal/hands"
	"washeve/ui/internal/sample"
	"washeve/ui/theme"
)

// book keeps what is saved, or fails.
type book struct {
	saves   int
	adopted int
	rig     model.Rig
	places  model.Places
	wash    model.Wash
	fail    error
	was, is model.Date // the day of the example's wash, before and after it is adopted
}

func (b *book) Save(r model.Rig, p model.Places, w model.Wash) error {
	if b.fail != nil {
		return b.fail
	}
	b.saves++
	b.rig, b.places, b.wash = r, p, w
	return nil
}

func (b *book) Adopt() (was, is model.Date, err error) {
	if b.fail != nil {
		return was, is, b.fail
	}
	b.adopted++
	return b.was, b.is, nil
}

func set(t testing.TB, item model.Item, values map[string]string) {
	for _, f := range item.Fields() {
		if text, ok := values[f.Key]; ok {
			require.NoError(t, f.Set(text))
		}
	}
}

// ours is a rig with two of most things.
func ours(t testing.TB) Options {
	o := Options{
		Rig: model.Rig{
			Vehicles:  []model.Vehicle{{Name: "Old Goose"}, {Name: "Tin Box"}},
			Beds:      []model.Bed{{Name: "half-foot tank"}},
			Softeners: []model.Softener{{Name: "bay softener"}},
			Sprayers:  []model.Sprayer{{Name: "small pressure washer"}},
			Hoses:     []model.Hose{{Name: "blue hose"}},
			Pens:      []model.Pen{{Name: "yellow pen"}},
		},
		Places: model.Places{{Name: "Willow Bend"}, {Name: "Sand Hollow"}},
		Wash:   model.Wash{Name: "Friday wash", Place: "Willow Bend", Vehicle: "Old Goose"},
		Theme:  theme.New(theme.Options{Profile: termenv.Ascii}),
		Keeper: &book{}, Make: pretend,
	}
	set(t, &o.Rig.Vehicles[0], map[string]string{"length": "40 ft 6 in", "height": "12 ft 9 in", "shape": "coach"})
	set(t, &o.Rig.Vehicles[1], map[string]string{"length": "20 ft", "height": "9 ft"})
	set(t, &o.Rig.Beds[0], map[string]string{"resin": "0.5 ft3"})
	set(t, &o.Rig.Softeners[0], map[string]string{"resin": "0.5 ft3"})
	set(t, &o.Rig.Hoses[0], map[string]string{"bore": "5/8 in", "length": "50 ft"})
	set(t, &o.Places[0], map[string]string{"tds": "240 ppm NaCl"})
	set(t, &o.Places[1], map[string]string{"tds": "480 ppm NaCl"})
	return o
}

// pretend is the sample's plan, with DI water by the vehicle's length, the
// place by the wash, and an error where a length is missing.
func pretend(r model.Rig, ps model.Places, w model.Wash) (planner.Plan, error) {
	p := sample.Plan()
	work := work{rig: r, places: ps, wash: w}
	if len(work.lacking()) > 0 {
		return planner.Plan{}, errors.New("something is not stated yet")
	}
	v := r.Vehicles[work.chosen("vehicle")]
	p.DI.Volume = 60 * quantity.Gallon * quantity.Volume(v.Length.Or(0)/(40.5*quantity.Foot))
	p.Place, p.Vehicle, p.Wash = ps[work.chosen("place")].Name, v.Name, w.Name
	return p, nil
}

// player presses keys and looks at what is seen.
type player = hands.Player[Model]

func play(t testing.TB, o Options, script string) *player { return hands.Play(t, New(o), script) }

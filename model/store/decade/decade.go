// Package decade invents ten years of washing, for benchmarks and for the
// promises that are measured with such a log. The program itself does not use it.
package decade

import (
	"fmt"
	"math"
	"math/rand"
	"path/filepath"
	"time"

	"washeve/model"
	"washeve/model/store"
	"washeve/model/store/journal"
)

// The log that the promises are made for.
const (
	Washes   = 1000
	Readings = 5000
)

// Write makes a data folder: the built-in example's rig with a log of ten years.
// The folder must not hold a log yet.
func Write(dir string) error {
	if _, err := store.WriteExample(dir); err != nil {
		return fmt.Errorf("write the rig: %w", err)
	}
	entries, err := Entries(Washes, Readings)
	if err != nil {
		return err
	}
	if _, err := journal.Open(filepath.Join(dir, "log.toml")).Append(entries...); err != nil {
		return fmt.Errorf("write the log: %w", err)
	}
	return nil
}

// Entries gives so many washes and readings, evenly over ten years, with the
// changes of resin and the salt that they make needed. It is the same each time.
func Entries(washes, readings int) ([]model.Entry, error) {
	y := &years{chance: rand.New(rand.NewSource(1)), at: time.Date(2016, 4, 2, 7, 30, 0, 0, time.FixedZone("", -6*3600))}
	apart := 10 * 365 * 24 * time.Hour / time.Duration(max(washes, 1)) // a wash takes about an hour of it
	y.refill()
	for i := range washes {
		y.wash(readings*(i+1)/washes - readings*i/washes)
		y.at = y.at.Add(apart - time.Hour)
	}
	return y.entries, y.err
}

// years is the log while it is invented.
type years struct {
	chance  *rand.Rand
	at      time.Time
	given   float64 // gallons of the present fill
	soft    float64 // gallons since the last salt
	lasts   float64 // gallons at which the present fill leaks half of its feed
	leaks   float64 // ppm at the last reading
	entries []model.Entry
	err     error
}

// wash is one wash with its readings: of the tap, of the first cup, and then
// along the rinse.
func (y *years) wash(readings int) {
	if y.leaks > 10 {
		y.refill()
	}
	if y.soft > 900 {
		y.add(model.SaltKind, map[string]string{"softener": "portable softener", "salt": "4 lb"})
		y.soft = 0
	}
	gallons := 26 + 10*y.chance.Float64()
	flow := fmt.Sprintf("%.2f gpm", 1.2+0.2*y.chance.Float64())
	for i := range readings {
		y.at = y.at.Add(12 * time.Minute)
		y.read(i, gallons*float64(max(i-1, 0))/float64(max(readings-2, 1)), flow)
	}
	y.at = y.at.Add(10 * time.Minute)
	y.given += gallons
	y.soft += gallons + 60
	y.add(model.WashKind, map[string]string{
		"plan": "Saturday wash", "place": "Juniper Flats", "vehicle": "Marigold", "bed": "half-foot tank", "softener": "portable softener",
		"di_through_softener": "yes", "sprayer": "small pressure washer", "di": fmt.Sprintf("%.1f gal", gallons), "softened": "60 gal", "flow": flow,
		"duration": fmt.Sprintf("%d min", 70+y.chance.Intn(30)), "area": "1180 ft2", "temperature": "64 F", "planned_di": "30 gal", "planned_duration": "76 min",
	})
}

func (y *years) read(i int, into float64, flow string) {
	texts := map[string]string{"point": "tap", "place": "Juniper Flats", "pen": "yellow pen", "temperature": "64 F"}
	ppm := 310 + 20*y.chance.Float64()
	if i > 0 {
		texts["point"], texts["bed"], texts["flow"], texts["flushed"] = "after bed", "half-foot tank", flow, "yes"
		ppm = 320 / (1 + math.Exp((y.lasts-y.given-into)/40)) * math.Exp(0.1*y.chance.NormFloat64())
	}
	if i == 1 {
		texts["flushed"], ppm = "no", 0.3*ppm
	}
	if i > 1 {
		y.leaks = ppm
		texts["gallons_so_far"] = fmt.Sprintf("%.1f gal", y.given+into)
	}
	texts["reading"] = fmt.Sprintf("%.0f ppm NaCl", ppm)
	y.add(model.ReadingKind, texts)
}

// refill changes the resin for one that lasts more or less.
func (y *years) refill() {
	y.given, y.leaks, y.lasts = 0, 0, 700+150*y.chance.NormFloat64()
	y.add(model.ResinKind, map[string]string{"bed": "half-foot tank", "resin": "0.5 ft3", "resin_state": "new", "price": "$185"})
}

func (y *years) add(kind model.Kind, texts map[string]string) {
	y.at = y.at.Add(time.Minute)
	e := model.Entry{At: model.MomentOf(y.at), Body: model.NewBody(kind)}
	id, err := model.NewID(e.At, y.chance)
	e.ID = id
	for _, f := range e.Fields() {
		if text, said := texts[f.Key]; said && err == nil {
			err = f.Set(text)
		}
	}
	if err != nil && y.err == nil {
		y.err = fmt.Errorf("invent a %s entry: %w", kind, err)
	}
	y.entries = append(y.entries, e)
}

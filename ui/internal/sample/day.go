package sample

import (
	"fmt"

	"washeve/model"
)

// Day is a coach on a clear day in May, of which all is known: what a plan with
// a day is made from.
func Day() (model.Rig, model.Places, model.Wash) {
	rig := model.Rig{Vehicles: []model.Vehicle{{Name: "Old Goose"}}, Beds: []model.Bed{{Name: "half-foot tank"}}}
	places := model.Places{{Name: "Willow Bend"}}
	wash := model.Wash{Name: "Friday wash", Place: "Willow Bend", Vehicle: "Old Goose"}
	Set(&rig.Vehicles[0], map[string]string{"length": "40 ft 6 in", "height": "12 ft 9 in", "shape": "coach", "colour": "mid"})
	Set(&rig.Beds[0], map[string]string{"resin": "0.5 ft3"})
	Set(&places[0], map[string]string{"tds": "240 ppm NaCl", "latitude": "38.5 N", "longitude": "109 W", "zone": "America/Denver", "elevation": "4000 ft"})
	Set(&wash, map[string]string{"date": "2026-05-16", "heading": "east", "low": "50 F", "high": "74 F", "dew_point": "44 F", "wind": "3 mph", "sky": "clear"})
	return rig, places, wash
}

// Set states fields by their keys. It panics where one is not there or does not
// take its text.
func Set(item model.Item, values map[string]string) {
	left := len(values)
	for _, f := range item.Fields() {
		text, wanted := values[f.Key]
		if !wanted {
			continue
		}
		if err := f.Set(text); err != nil {
			panic(err)
		}
		left--
	}
	if left > 0 {
		panic(fmt.Sprintf("some of %v is no field", values))
	}
}

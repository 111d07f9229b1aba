package planner

import (
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
)

// Missing says what a plan cannot do without: the section of the rig or the
// places, and the key in it where one is known.
type Missing struct {
	Section string // "vehicle", "bed", "place", ...
	Name    string // of the item, where there is one
	Key     string // where the item lacks it
	Known   []string
}

func (m *Missing) Error() string {
	switch {
	case m.Key != "":
		return fmt.Sprintf("the %s %q has no %s yet: state it, and the plan follows", m.Section, m.Name, m.Key)
	case m.Name != "":
		return fmt.Sprintf("no %s is called %q; there is %s", m.Section, m.Name, strings.Join(m.Known, ", "))
	}
	return fmt.Sprintf("there is no %s yet: state one, and the plan follows", m.Section)
}

// chosen is what one wash is done with.
type chosen struct {
	wash     model.Wash
	vehicle  model.Vehicle
	bed      model.Bed
	sized    quantity.Volume // resin that the rig states of the bed's tank
	place    model.Place
	softener *model.Softener // nil: none
	sprayer  *model.Sprayer  // nil: the usual one
	pen      model.Pen
	hoses    []model.Hose
	sprayers []model.Sprayer
	defaults model.Defaults
	past     *Past // nil: no log
	setting  Setting
	home     home
}

// choose finds what the wash names, else what the defaults name, else the first
// of its kind.
func choose(rig model.Rig, places model.Places, wash model.Wash) (chosen, error) {
	d := rig.Defaults
	c := chosen{wash: wash, hoses: rig.Hoses, sprayers: rig.Sprayers, defaults: d}
	vehicle, err := pickVehicle(rig, wash)
	if err != nil {
		return c, err
	}
	b, err := pick("bed", rig.Beds, func(b model.Bed) string { return b.Name }, wash.Bed, d.Bed)
	if err != nil {
		return c, err
	}
	place, err := pick("place", places, func(p model.Place) string { return p.Name }, wash.Place, d.Place)
	if err != nil {
		return c, err
	}
	c.vehicle, c.bed, c.sized, c.place = *vehicle, *b, b.Resin.Or(0), *place
	if len(rig.Softeners) > 0 && !strings.EqualFold(wash.Softener, model.NoSoftener) {
		c.home = homeOf(&rig, places)
		if c.softener, err = pick("softener", rig.Softeners, func(s model.Softener) string { return s.Name }, wash.Softener, d.Softener); err != nil {
			return c, err
		}
	}
	if len(rig.Sprayers) > 0 {
		if c.sprayer, err = pick("sprayer", rig.Sprayers, sprayerName, wash.Sprayer, d.Sprayer); err != nil {
			return c, err
		}
	}
	if len(rig.Pens) > 0 {
		pen, err := pick("pen", rig.Pens, func(p model.Pen) string { return p.Name }, d.Pen)
		if err != nil {
			return c, err
		}
		c.pen = *pen
	}
	return c, c.complete()
}

func pickVehicle(rig model.Rig, wash model.Wash) (*model.Vehicle, error) {
	return pick("vehicle", rig.Vehicles, func(v model.Vehicle) string { return v.Name }, wash.Vehicle, rig.Defaults.Vehicle)
}

func sprayerName(s model.Sprayer) string { return s.Name }

func pick[T any](section string, all []T, nameOf func(T) string, wanted ...string) (*T, error) {
	if len(all) == 0 {
		return nil, &Missing{Section: section}
	}
	names := make([]string, len(all))
	for i, item := range all {
		names[i] = nameOf(item)
	}
	for _, w := range wanted {
		if w == "" {
			continue
		}
		if i := model.Find(names, w); i >= 0 {
			return &all[i], nil
		}
		return nil, &Missing{Section: section, Name: w, Known: names}
	}
	return &all[0], nil
}

// complete checks the few facts that nothing can stand for.
func (c *chosen) complete() error {
	lacks := func(section, name, key string, given bool) error {
		if given {
			return nil
		}
		return &Missing{Section: section, Name: name, Key: key}
	}
	for _, err := range []error{
		lacks("vehicle", c.vehicle.Name, "length", c.vehicle.Length.Given()),
		lacks("vehicle", c.vehicle.Name, "height", c.vehicle.Height.Given()),
		lacks("bed", c.bed.Name, "resin volume", c.bed.Resin.Given()),
		lacks("place", c.place.Name, "TDS", c.place.TDS.Given()),
	} {
		if err != nil {
			return err
		}
	}
	if s := c.softener; s != nil && !s.Resin.Given() && !s.Capacity.Given() {
		return &Missing{Section: "softener", Name: s.Name, Key: "resin volume or capacity"}
	}
	return nil
}

package stock

import (
	"fmt"
	"slices"
	"strconv"

	"washeve/model"
)

// Set states a field. A required one cannot be left out, and what names an item
// follows when its name changes. On error parts may be changed: set on a clone.
func (s Stock) Set(r Ref, text string) error {
	f, ok := s.Field(r)
	if !ok {
		return fmt.Errorf("there is no %s %d any more", r.Section, r.Index+1)
	}
	was := f.Text()
	if err := f.Set(text); err != nil {
		return err
	}
	if f.Required && !f.Given() && was != "" {
		return fmt.Errorf("%s cannot be left out; write it like %s", f.Label, f.Example)
	}
	if r.Key == nameKey && slices.Contains(Sections(), r.Section) {
		return s.Renamed(r.Section, r.Index, was, f.Text())
	}
	return nil
}

// Renamed keeps names apart and lets what names an item follow. The item at index
// has its new name already. An error says which name is taken.
func (s Stock) Renamed(section string, index int, was, now string) error {
	if err := s.taken(section, index, now); err != nil {
		return err
	}
	s.follow(section, was, now)
	return nil
}

// Add makes a new item behind the others of its section, and gives its index.
func (s Stock) Add(section string) (int, error) {
	name := s.freeName(section)
	switch section {
	case vehicle:
		s.Rig.Vehicles = append(s.Rig.Vehicles, model.Vehicle{Name: name})
	case bed:
		s.Rig.Beds = append(s.Rig.Beds, model.Bed{Name: name})
	case softener:
		s.Rig.Softeners = append(s.Rig.Softeners, model.Softener{Name: name})
	case sprayer:
		s.Rig.Sprayers = append(s.Rig.Sprayers, model.Sprayer{Name: name})
	case hose:
		s.Rig.Hoses = append(s.Rig.Hoses, model.Hose{Name: name})
	case pen:
		s.Rig.Pens = append(s.Rig.Pens, model.Pen{Name: name})
	case place:
		*s.Places = append(*s.Places, model.Place{Name: name})
	default:
		return 0, fmt.Errorf("nothing new can be made here")
	}
	return len(s.Names(section)) - 1, nil
}

// Copy makes an item like another right behind it, under a name of its own, and
// gives its index. How far a tank is used up is not copied: that is the one
// tank's.
func (s Stock) Copy(section string, index int) (int, error) {
	var none model.Bed
	names := s.Names(section)
	if index < 0 || index >= len(names) {
		return 0, fmt.Errorf("there is no %s to copy", section)
	}
	name := s.likeName(section, names[index])
	switch section {
	case vehicle:
		s.Rig.Vehicles = doubled(s.Rig.Vehicles, index)
		v := &s.Rig.Vehicles[index+1]
		v.Name, v.Faces = name, cloneFaces(v.Faces)
	case bed:
		s.Rig.Beds = doubled(s.Rig.Beds, index)
		b := &s.Rig.Beds[index+1]
		b.Name = name
		b.SoFar, b.LastReading, b.LastFlow, b.Flushed = none.SoFar, none.LastReading, none.LastFlow, none.Flushed
	case softener:
		s.Rig.Softeners = doubled(s.Rig.Softeners, index)
		s.Rig.Softeners[index+1].Name, s.Rig.Softeners[index+1].SoFar = name, none.SoFar
	case sprayer:
		s.Rig.Sprayers = doubled(s.Rig.Sprayers, index)
		s.Rig.Sprayers[index+1].Name = name
	case hose:
		s.Rig.Hoses = doubled(s.Rig.Hoses, index)
		s.Rig.Hoses[index+1].Name = name
	case pen:
		s.Rig.Pens = doubled(s.Rig.Pens, index)
		s.Rig.Pens[index+1].Name = name
	case place:
		*s.Places = doubled(*s.Places, index)
		(*s.Places)[index+1].Name = name
	}
	return index + 1, nil
}

// Remove takes an item out. What named it names none: it falls back to the
// default.
func (s Stock) Remove(section string, index int) error {
	names := s.Names(section)
	if index < 0 || index >= len(names) {
		return fmt.Errorf("there is no %s to take away", section)
	}
	switch section {
	case vehicle:
		s.Rig.Vehicles = without(s.Rig.Vehicles, index)
	case bed:
		s.Rig.Beds = without(s.Rig.Beds, index)
	case softener:
		s.Rig.Softeners = without(s.Rig.Softeners, index)
	case sprayer:
		s.Rig.Sprayers = without(s.Rig.Sprayers, index)
	case hose:
		s.Rig.Hoses = without(s.Rig.Hoses, index)
	case pen:
		s.Rig.Pens = without(s.Rig.Pens, index)
	case place:
		*s.Places = without(*s.Places, index)
	}
	s.follow(section, names[index], "")
	return nil
}

// Use lets the wash in hand use an item or, of a kind that no wash names, the
// defaults.
func (s Stock) Use(section string, index int) error {
	names := s.Names(section)
	at := holderIn(s.Wash, section)
	if at == nil {
		at = defaultOf(&s.Rig.Defaults, section)
	}
	if at == nil || index < 0 || index >= len(names) {
		return fmt.Errorf("no wash names a %s", section)
	}
	*at = names[index]
	return nil
}

func doubled[T any](all []T, index int) []T {
	return slices.Insert(slices.Clone(all), index+1, all[index])
}

func without[T any](all []T, index int) []T {
	return slices.Delete(slices.Clone(all), index, index+1)
}

// freeName is a name that no other item of the section has.
func (s Stock) freeName(section string) string {
	names := s.Names(section)
	for n := len(names) + 1; ; n++ {
		if name := section + " " + strconv.Itoa(n); model.Find(names, name) < 0 {
			return name
		}
	}
}

// mostLetters is how long a name may be.
const mostLetters = 60

// likeName is a free name made from that of another item.
func (s Stock) likeName(section, like string) string {
	names, letters := s.Names(section), []rune(like)
	for n := 2; ; n++ {
		end := " " + strconv.Itoa(n)
		name := string(letters[:min(len(letters), mostLetters-len(end))]) + end
		if model.Find(names, name) < 0 {
			return name
		}
	}
}

package store

import (
	"washeve/model"
)

// A schema says which sections a kind of file has, and where their values go.
type schema struct {
	title    string // "rig.toml"
	top      []model.Field
	sections []section
}

// A section is one kind of header in a file.
type section struct {
	name   string
	single bool                 // [name], at most once; else [[name]]
	add    func() []model.Field // of a new entry; nil where it has no place
	all    func() []item        // what there is now, in order
}

// An item is an entry of a section in memory: its fields and the entries that
// stand under it.
type item struct {
	section string
	fields  []model.Field
	under   []item
}

func (s schema) section(name string) *section {
	for i := range s.sections {
		if s.sections[i].name == name {
			return &s.sections[i]
		}
	}
	return nil
}

// items is everything in memory that the file is to hold, in the file's order.
func (s schema) items() []item {
	var all []item
	for _, sec := range s.sections {
		if sec.all != nil {
			all = append(all, sec.all()...)
		}
	}
	return all
}

// noun is a pointer to a T that has fields.
type noun[T any] interface {
	*T
	model.Item
}

// list is a section whose entries go into a slice.
func list[T any, P noun[T]](name string, at *[]T) section {
	return section{
		name: name,
		add: func() []model.Field {
			*at = append(*at, *new(T))
			return P(&(*at)[len(*at)-1]).Fields()
		},
		all: func() []item {
			all := make([]item, len(*at))
			for i := range *at {
				all[i] = item{section: name, fields: P(&(*at)[i]).Fields()}
			}
			return all
		},
	}
}

func rigSchema(r *model.Rig) schema {
	vehicles := list("vehicle", &r.Vehicles)
	plain := vehicles.all
	vehicles.all = func() []item {
		all := plain()
		for i := range all {
			all[i].under = list("vehicle.face", &r.Vehicles[i].Faces).all()
		}
		return all
	}
	faces := section{name: "vehicle.face", add: func() []model.Field {
		if len(r.Vehicles) == 0 {
			return nil
		}
		return list("vehicle.face", &r.Vehicles[len(r.Vehicles)-1].Faces).add()
	}}
	defaults := section{
		name: defaultsSection, single: true,
		add: r.Defaults.Fields,
		all: func() []item { return []item{{section: defaultsSection, fields: r.Defaults.Fields()}} },
	}
	return schema{title: rigFile, sections: []section{
		vehicles, faces, list("bed", &r.Beds), list("softener", &r.Softeners),
		list("sprayer", &r.Sprayers), list("hose", &r.Hoses), list("pen", &r.Pens), defaults,
	}}
}

func placesSchema(ps *model.Places) schema {
	return schema{title: placesFile, sections: []section{list("place", (*[]model.Place)(ps))}}
}

func washSchema(w *model.Wash) schema {
	return schema{title: "a wash", top: w.Fields(), sections: []section{list("shade", &w.Shades), list("stage", &w.Stages)}}
}

// otherHome names the file that a section belongs in, where it is not this one.
func otherHome(name string) string {
	var (
		rig    model.Rig
		places model.Places
		wash   model.Wash
		trip   model.Trip
	)
	for _, s := range []schema{rigSchema(&rig), placesSchema(&places), washSchema(&wash), tripSchema(&trip)} {
		if s.section(name) != nil {
			return s.title
		}
	}
	return ""
}

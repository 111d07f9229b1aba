// Package packing lists what to do and what to pack the evening before a wash,
// in the order in which one would: what takes hours first, then the tanks, then
// the chain from the tap to the spray, then what is carried in a bucket.
package packing

import (
	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
)

// Code names an item for programs. An item that may come more than once, such
// as a hose, has the same code each time.
type Code string

// The items.
const (
	Ask        Code = "ask"
	Regenerate Code = "regenerate"
	Change     Code = "change-resin"
	Fill       Code = "fill-tank"
	Drain      Code = "drain"
	Frost      Code = "frost"
	Breaker    Code = "vacuum-breaker"
	Reducer    Code = "pressure-reducer"
	Hose       Code = "hose"
	Softener   Code = "softener"
	Bed        Code = "bed"
	Joints     Code = "joints"
	Sprayer    Code = "sprayer"
	Outlet     Code = "outlet"
	Jug        Code = "jug"
	Pen        Code = "pen"
	Strip      Code = "strip"
	Stick      Code = "thermometer"
	Mitt       Code = "mitt"
	Towels     Code = "towels"
	Spare      Code = "spare-resin"
	Paper      Code = "sheet"
)

// Item is one thing to do or to pack, and the reason that this wash has for it.
type Item struct {
	Code Code
	Todo bool // something to do; otherwise something to pack
	What tag.Note
	Why  tag.Note
}

// evening is what the list is made from.
type evening struct {
	plan     planner.Plan
	wash     model.Wash
	hoses    []model.Hose
	place    *model.Place    // nil: not found
	softener *model.Softener // nil: none in this wash
	bed      *model.Bed
	pen      *model.Pen
	tools    []model.Sprayer // that the stages use
	byHand   string          // the first stage done by hand; "" where none is
	uses     uses

	items []Item
}

// uses tells which tanks any water of the wash goes through.
type uses struct{ softener, bed bool }

// List is the evening's list for a plan, made from the same nouns as the plan.
// Whatever is not found among them is left out, never guessed.
func List(rig model.Rig, places model.Places, wash model.Wash, plan planner.Plan) []Item {
	e := &evening{plan: plan, wash: wash, hoses: rig.Hoses}
	e.look(rig, places)
	e.prepare()
	e.tanks()
	e.chain()
	e.measures()
	e.hands()
	return e.items
}

// look finds what the plan names.
func (e *evening) look(rig model.Rig, places model.Places) {
	p := e.plan
	e.place = find(places, p.Place, func(x model.Place) string { return x.Name })
	e.bed = find(rig.Beds, p.BedName, func(x model.Bed) string { return x.Name })
	if p.Softener != nil {
		e.softener = find(rig.Softeners, p.Softener.Name, func(x model.Softener) string { return x.Name })
	}
	if len(rig.Pens) > 0 {
		e.pen = &rig.Pens[max(model.Find(rig.Names("pen"), rig.Defaults.Pen), 0)]
	}
	seen := map[string]bool{}
	for _, s := range p.Stages {
		e.uses.through(s.Valves, p.Softener != nil)
		if seen[s.Sprayer] || s.Sprayer == "" {
			continue
		}
		seen[s.Sprayer] = true
		if s.Sprayer == model.ByHand {
			e.byHand = s.Name
			continue
		}
		tool := model.Sprayer{Name: s.Sprayer, Flow: quantity.Some(s.Flow)}
		if known := find(rig.Sprayers, s.Sprayer, func(x model.Sprayer) string { return x.Name }); known != nil {
			tool.Tool, tool.Number = known.Tool, known.Number
		}
		e.tools = append(e.tools, tool)
	}
}

// through notes what the valves of a stage open.
func (u *uses) through(valves []planner.Valve, softener bool) {
	for _, v := range valves {
		u.bed = u.bed || v.Through && v.Unit == "DI bed"
		u.softener = u.softener || softener && v.Through && v.Unit == "softener"
	}
}

func find[T any](all []T, name string, nameOf func(T) string) *T {
	names := make([]string, len(all))
	for i, item := range all {
		names[i] = nameOf(item)
	}
	if i := model.Find(names, name); i >= 0 {
		return &all[i]
	}
	return nil
}

func (e *evening) todo(code Code, what, why tag.Note) {
	e.items = append(e.items, Item{Code: code, Todo: true, What: what, Why: why})
}

func (e *evening) pack(code Code, what, why tag.Note) {
	e.items = append(e.items, Item{Code: code, What: what, Why: why})
}

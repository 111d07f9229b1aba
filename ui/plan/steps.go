package plan

import (
	"slices"
	"strconv"

	"washeve/model"
)

// step is one part of the walk through a wash.
type step struct {
	letter string // the key that opens it
	name   string
	about  string // the section that it is mostly about
}

// steps are the parts of the walk, in the order of the water's way.
func steps() []step {
	return []step{
		{"v", "Vehicle", "vehicle"},
		{"b", "Bed", "bed"},
		{"w", "Water", "place"},
		{"g", "Gear", "softener"},
		{"t", "Stages", "stage"},
		{"d", "Day", "shade"},
	}
}

// row is one line of an open step: a heading, or a field.
type row struct {
	heading string
	at      ref
	field   model.Field
}

func (r row) isField() bool { return r.heading == "" }

// rows lists the lines of a step.
func (w *work) rows(s step) []row {
	switch s.about {
	case "vehicle":
		return append(w.chosenRows("vehicle"), append([]row{{heading: "In this wash"}}, w.washRows("slide_outs")...)...)
	case "bed":
		rows := append(w.chosenRows("bed"), append([]row{{heading: "When to stop"}}, w.shareRows()...)...)
		return append(rows, row{heading: "How often"}, w.defaultsRow("washes_a_year"))
	case "place":
		return append(w.waterRows(), w.penRows()...)
	case "softener":
		return w.gearRows()
	case "shade":
		return w.dayRows()
	}
	return w.stageRows()
}

// chosenRows is the field that picks an item, and the fields of that item.
func (w *work) chosenRows(section string) []row {
	return append(w.washRows(section), w.itemRows(section, w.chosen(section))...)
}

func (w *work) washRows(keys ...string) []row {
	fields := w.wash.Fields()
	rows := make([]row, len(keys))
	for i, k := range keys {
		rows[i] = rowOf(fields, ref{section: "wash", key: k})
	}
	return rows
}

func (w *work) defaultsRow(key string) row {
	return rowOf(w.rig.Defaults.Fields(), ref{section: "defaults", key: key})
}

// rowOf is the row of one of the fields, which must be among them.
func rowOf(fields []model.Field, at ref) row {
	i := slices.IndexFunc(fields, func(f model.Field) bool { return f.Key == at.key })
	return row{at: at, field: fields[i]}
}

func (w *work) itemRows(section string, index int) []row {
	item := w.item(section, index)
	if item == nil {
		return nil
	}
	fields := item.Fields()
	rows := make([]row, len(fields))
	for i, f := range fields {
		rows[i] = row{at: ref{section, index, f.Key}, field: f}
	}
	return rows
}

func (w *work) gearRows() []row {
	rows := append([]row{{heading: "Softener"}}, w.chosenRows("softener")...)
	rows = append(rows, w.washRows("di_through_softener")...)
	rows = append(rows, row{heading: "Sprayer"})
	rows = append(rows, w.chosenRows("sprayer")...)
	for i, name := range w.names("hose") {
		rows = append(rows, row{heading: "Hose: " + name})
		rows = append(rows, w.itemRows("hose", i)...)
	}
	return rows
}

// shareRows is when to stop, and where the DI water goes when it is short.
func (w *work) shareRows() []row {
	rows := append(w.washRows("limit", "target"), row{heading: "Where DI goes when it is short"})
	return append(rows, w.washRows("di_faces", "towel_faces", "di_surfaces", "di_flow", "confidence")...)
}

func (w *work) penRows() []row {
	rows := []row{{heading: "Pen"}}
	if len(w.rig.Pens) > 0 {
		rows = append(rows, w.defaultsRow("pen"))
	}
	return append(rows, w.itemRows("pen", w.chosen("pen"))...)
}

// position is where a place lies, which is about the day and not its water.
func position(key string) bool {
	return slices.Contains([]string{"latitude", "longitude", "zone", "elevation"}, key)
}

func (w *work) waterRows() []row {
	return slices.DeleteFunc(w.chosenRows("place"), func(r row) bool { return position(r.at.key) })
}

func (w *work) dayRows() []row {
	rows := w.washRows("date", "start", "heading", "low", "high", "dew_point", "humidity", "humidity_at", "wind", "sky")
	place := w.chosen("place")
	if names := w.names("place"); place >= 0 {
		rows = append(rows, row{heading: "Where " + names[place] + " lies"})
	}
	for _, r := range w.itemRows("place", place) {
		if position(r.at.key) {
			rows = append(rows, r)
		}
	}
	for i, name := range w.names("shade") {
		rows = append(rows, row{heading: "Shade " + strconv.Itoa(i+1) + ": " + name})
		rows = append(rows, w.itemRows("shade", i)...)
	}
	return rows
}

func (w *work) stageRows() []row {
	const perStage = 8
	rows := slices.Grow(w.washRows("name", "pause"), perStage*len(w.wash.Stages))
	for i, name := range w.names("stage") {
		rows = append(rows, row{heading: strconv.Itoa(i+1) + ". " + name})
		rows = append(rows, w.itemRows("stage", i)...)
	}
	return rows
}

// lacking lists the fields that a plan cannot do without and that are not
// stated, for the items that the wash uses.
func (w *work) lacking() []ref {
	var out []ref
	for _, section := range []string{"vehicle", "bed", "place", "softener"} {
		index := w.chosen(section)
		item := w.item(section, index)
		if item == nil {
			if section != "softener" { // a wash does without
				out = append(out, ref{section: "wash", key: section})
			}
			continue
		}
		for _, f := range item.Fields() {
			if f.Required && !f.Given() {
				out = append(out, ref{section, index, f.Key})
			}
		}
	}
	return out
}

// faulty tells the fields that contradict others.
func (w *work) faulty() map[ref]string {
	faults := w.rig.Faults(w.places.Names())
	faults = append(faults, w.places.Faults()...)
	faults = append(faults, w.wash.Faults(&w.rig, w.places)...)
	out := map[ref]string{}
	for _, f := range faults {
		section := f.Section
		if section == "" {
			section = "wash"
		}
		out[ref{section, f.Index, f.Key}] = f.Problem
	}
	return out
}

// stepOf finds the step in which a field stands.
func (w *work) stepOf(r ref) (stepIndex, rowIndex int, ok bool) {
	for i, s := range steps() {
		for j, line := range w.rows(s) {
			if line.isField() && line.at == r {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}

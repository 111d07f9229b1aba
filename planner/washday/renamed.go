package washday

import (
	"fmt"

	"washeve/model"
)

// naming are the keys of what a reading names, each with the name.
func naming(s *model.Sample) []model.Change {
	return []model.Change{{Key: "place", Text: s.Place}, {Key: "bed", Text: s.Bed}, {Key: "pen", Text: s.Pen}}
}

// callsAnew puts a reading right that the log holds, where a thing that it names is called
// otherwise by now. What a person has put right stays.
func (w *writing) callsAnew(id string, now *model.Sample) {
	was, held := w.held.samples[id]
	if !held || w.held.struck[id] {
		return
	}
	next, ours := w.renames(id)
	called, persons := map[string]string{}, map[string]bool{}
	for _, name := range naming(was) {
		called[name.Key] = name.Text
	}
	for _, e := range w.held.right[id] {
		for _, change := range e.Body.(*model.Correction).Changes {
			called[change.Key] = change.Text
			persons[change.Key] = persons[change.Key] || !ours[e.ID]
		}
	}
	var changes []model.Change
	for _, name := range naming(now) {
		if name.Text != "" && name.Text != called[name.Key] && !persons[name.Key] {
			changes = append(changes, name)
		}
	}
	if len(changes) > 0 {
		w.add(model.Entry{ID: next, At: w.log.After(id, w.state.Now()), Note: "has another name by now", Body: &model.Correction{Of: id, Changes: changes}})
	}
}

// renames are the identifiers of the corrections of a reading that tell of another name:
// that of the next one, and those that the log holds.
func (w *writing) renames(id string) (next string, held map[string]bool) {
	held = map[string]bool{}
	for n := 0; ; n++ {
		next = w.id(fmt.Sprintf("renamed %s, %d", id, n))
		if !w.held.ids[next] {
			return next, held
		}
		held[next] = true
	}
}

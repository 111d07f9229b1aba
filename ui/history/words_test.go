package history_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/ui/history"
)

type edit = func(stock.Stock) error

func set(section, key, text string) edit {
	return func(s stock.Stock) error { return s.Set(stock.Ref{Section: section, Key: key}, text) }
}

func both(edits ...edit) edit {
	return func(s stock.Stock) error {
		for _, e := range edits {
			if err := e(s); err != nil {
				return err
			}
		}
		return nil
	}
}

// twoPasses has the first step go over the faces twice.
func twoPasses(s stock.Stock) error {
	fields := s.Wash.Stages[0].Fields()
	return fields[slices.IndexFunc(fields, func(f model.Field) bool { return f.Key == "passes" })].Set("2")
}

// renamed is a new name, followed wherever the old one stands.
func renamed(section, name string) edit {
	return func(s stock.Stock) error {
		r := stock.Ref{Section: section, Key: "name"}
		f, _ := s.Field(r)
		was := f.Text()
		if err := s.Set(r, name); err != nil {
			return err
		}
		return s.Renamed(section, 0, was, name)
	}
}

// Whatever was edited last, the undo of it says what it took back, and redo what it did
// again.
func TestUndoNamesWhatItTookBack(t *testing.T) {
	lib := store.Example()
	none := []*stock.Kept{}
	first := stock.Stock{Rig: &lib.Rig, Places: &lib.Places, Wash: &lib.Washes[0].Wash, Others: &none}
	day := first.Wash.Date.Or(model.Date{}).String()
	for name, c := range map[string]struct {
		edit         edit
		undone, done string
	}{
		"a day":              {set("wash", "date", "2027-01-02"), `Undone: "date" of the wash is ` + day + ` again.`, `Done again: "date" of the wash is 2027-01-02.`},
		"what was not":       {set("wash", "target", "12 ppm NaCl"), `Undone: "target in the film" of the wash is not stated, as before.`, `Done again: "target in the film" of the wash is 12 ppm NaCl.`},
		"taken away":         {set("bed", "price", ""), `Undone: "price of a fill" of half-foot tank is $185 again.`, `Done again: "price of a fill" of half-foot tank is not stated.`},
		"a label of no noun": {set("bed", "last_reading_flushed", "yes"), `Undone: "was it flushed" of half-foot tank is not stated, as before.`, `Done again: "was it flushed" of half-foot tank is yes.`},
		"a tank":             {set("bed", "gallons_so_far", "7 gal"), `Undone: "gallons so far" of half-foot tank is 120 gal again.`, `Done again: "gallons so far" of half-foot tank is 7 gal.`},
		"the units":          {set("defaults", "units", "metric"), `Undone: "units" of the defaults is not stated, as before.`, `Done again: "units" of the defaults is metric.`},
		"a step":             {twoPasses, `Undone: "passes" of the step pre-rinse is 1 again.`, `Done again: "passes" of the step pre-rinse is 2.`},
		"two of the wash":    {both(set("wash", "start", "7:30"), set("wash", "sky", "few")), `Undone: "start" of the wash is not stated, as before; 1 more line of it changed.`, `Done again: "start" of the wash is 7:30; "sky" of the wash is few.`},
		"three of the tank":  {both(set("bed", "price", ""), set("bed", "gallons_so_far", "0 gal"), set("bed", "diameter", "9 in")), `Undone: "gallons so far" of half-foot tank is 120 gal again; 2 more lines of it changed.`, `Done again: "gallons so far" of half-foot tank is 0 gal; 2 more lines of it changed.`},
		"two nouns":          {both(set("bed", "price", ""), set("wash", "sky", "few"), set("wash", "start", "7:30")), `Undone: "price of a fill" of half-foot tank is $185 again; 2 other lines changed.`, `Done again: "price of a fill" of half-foot tank is not stated; 2 other lines changed.`},
		"a new name":         {renamed("bed", "grey tank"), "Undone: grey tank is called half-foot tank again, also in the 2 lines that name it.", "Done again: half-foot tank is called grey tank, also in the 2 lines that name it."},
		"a name of no line":  {renamed("hose", "grey hose"), "Undone: grey hose is called supply hose again.", "Done again: supply hose is called grey hose."},
		"a vehicle's name":   {renamed("vehicle", "bus"), "Undone: bus is called Marigold again, also in the 2 lines that name it.", "Done again: Marigold is called bus, also in the 2 lines that name it."},
		"a wash's name":      {set("wash", "name", ""), "Undone: the wash is called Saturday wash again.", `Done again: "name" of the wash is not stated.`},
		"a new pen":          {func(s stock.Stock) error { _, err := s.Add("pen"); return err }, "Undone: pen 2 is gone.", "Done again: pen 2 is back."},
		"one taken out":      {func(s stock.Stock) error { return s.Remove("hose", 0) }, "Undone: supply hose is back.", "Done again: supply hose is gone."},
		"a face taken out":   {func(s stock.Stock) error { return s.RemoveFace(0) }, "Undone: the front of Marigold is back.", "Done again: the front of Marigold is gone."},
		"nothing":            {func(stock.Stock) error { return nil }, "Undone.", "Done again."},
	} {
		edited := first.Clone()
		require.NoError(t, c.edit(edited), name)
		was, is := history.PartsOf(first), history.PartsOf(edited)
		undone, done := history.UndoneWords(is, was), history.RedoneWords(was, is)
		assert.Equal(t, c.undone, undone, name)
		assert.Equal(t, c.done, done, name)
	}
}

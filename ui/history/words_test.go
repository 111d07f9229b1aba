package history_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/stock"
	"washeve/model/store"
	"washeve/ui/history"
)

// Whatever was edited last, the undo of it says what it took back, and redo what it did
// again.
func TestUndoNamesWhatItTookBack(t *testing.T) {
	lib := store.Example()
	none := []*stock.Kept{}
	first := stock.Stock{Rig: &lib.Rig, Places: &lib.Places, Wash: &lib.Washes[0].Wash, Others: &none}
	set := func(section, key, text string) func(stock.Stock) error {
		return func(s stock.Stock) error { return s.Set(stock.Ref{Section: section, Key: key}, text) }
	}
	for name, c := range map[string]struct {
		edit         func(stock.Stock) error
		undone, done string
	}{
		"a day":         {set("wash", "date", "2027-01-02"), "Undone: the date of the wash, " + first.Wash.Date.Or(model.Date{}).String() + " again.", "Done again: the date of the wash, 2027-01-02."},
		"what was not":  {set("wash", "target", "12 ppm NaCl"), "Undone: the target in the film of the wash, not stated again.", "Done again: the target in the film of the wash, 12 ppm NaCl."},
		"a tank":        {set("bed", "gallons_so_far", "7 gal"), "Undone: the gallons so far of half-foot tank, 120 gal again.", "Done again: the gallons so far of half-foot tank, 7 gal."},
		"a new name":    {set("bed", "name", "grey tank"), "Undone: the name of grey tank, half-foot tank again, and 2 more.", "Done again: the name of half-foot tank, grey tank, and 2 more."},
		"a new pen":     {func(s stock.Stock) error { _, err := s.Add("pen"); return err }, "Undone: pen 2 is gone.", "Done again: pen 2 is back."},
		"one taken out": {func(s stock.Stock) error { return s.Remove("hose", 0) }, "Undone: supply hose is back.", "Done again: supply hose is gone."},
		"nothing":       {func(stock.Stock) error { return nil }, "Undone.", "Done again."},
	} {
		edited := first.Clone()
		require.NoError(t, c.edit(edited), name)
		was, is := history.PartsOf(first), history.PartsOf(edited)
		assert.Equal(t, c.undone, history.UndoneWords(is, was), name)
		assert.Equal(t, c.done, history.RedoneWords(was, is), name)
	}
}

package bed

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"washeve/model"
)

// The stages of a wash are told in its line; a key lists them, and each of them can be put
// right, struck out and found there.
func TestTheStagesOfAWashAreFolded(t *testing.T) {
	p := play(t, options(model.NewLog(slices.Concat(seasonLog(t), washDay(100)))), "")
	all := p.M.list.count()
	assert.NotContains(t, p.Seen(), "final rinse")
	for row, _ := p.M.list.here(); row.Entry.ID != "washed"; row, _ = p.M.list.here() {
		p.Keys("down")
	}
	assert.Contains(t, p.Seen(), "24 gal DI, Juniper Flats, 2 stages")
	assert.Contains(t, p.Seen(), "; o lists 2 stages")
	p.Keys("o")
	assert.Equal(t, all+2, p.M.list.count())
	assert.Contains(t, p.Seen(), "; o folds 2 stages")
	p.Keys("down")
	assert.Contains(t, p.Seen(), "final rinse, 12 gal DI")
	assert.Contains(t, oneLine(p.Keys("x").Seen()), "Strike out the stage of 2026-09-12 18:20 UTC?")
	p.Keys("n enter")
	assert.Contains(t, p.Seen(), "Put right: stage")
	p.Keys("esc o")
	assert.Equal(t, all, p.M.list.count(), "folded from one of its stages")
	row, _ := p.M.list.here()
	assert.Equal(t, "washed", row.Entry.ID)

	p.Keys("/ 'rinse, 12 gal' enter")
	assert.Equal(t, 2, p.M.list.count(), "what is looked for is found in them too")
	p.Keys("esc")
	row, _ = p.M.list.here()
	assert.Equal(t, model.StageKind, row.Entry.Kind(), "and the hand stays on it")
}

package journal

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
)

const season = "../../../testdata/season/"

func TestTheSeason(t *testing.T) {
	require.Empty(t, said(Check(season+"log.toml")))
	log, _ := Open(season + "log.toml").Load()
	counts := map[model.Kind]int{}
	places := map[string]bool{}
	unflushed, slipped := 0, 0
	for _, e := range log.Effective() {
		counts[e.Kind()]++
		switch b := e.Body.(type) {
		case *model.WashDone:
			places[b.Place] = true
			if b.Flow.Or(0) > 2*quantity.GPM {
				slipped++
			}
		case *model.Sample:
			if !b.Counts() {
				unflushed++
			}
		}
	}
	assert.Equal(t, map[model.Kind]int{model.WashKind: 14, model.ReadingKind: 30, model.ResinKind: 2, model.SaltKind: 4, model.StageKind: 9}, counts)
	assert.Len(t, places, 3)
	assert.Equal(t, 2, unflushed)
	assert.Zero(t, slipped, "the slip of the finger is corrected")
	assert.Empty(t, log.Faults())
	assert.Len(t, log.Effective().Washes(), 14)
}

// The same answer from the file, from the table, and from typing it in.
func TestTheSeasonByEveryWay(t *testing.T) {
	log, _ := Open(season + "log.toml").Load()
	table, err := os.ReadFile(season + "log.csv")
	require.NoError(t, err)
	assert.Equal(t, tableOf(t, log, quantity.US), string(table))

	imported := newPath(t)
	added, told := importTold(t, imported, string(table))
	assert.Equal(t, len(log), added)
	assert.Empty(t, told)
	assert.Equal(t, log, loadWhole(t, imported))

	typed := newPath(t)
	for _, e := range log {
		again := model.Entry{Body: model.NewBody(e.Kind())}
		texts := map[string]string{}
		for _, f := range e.Fields() {
			texts[f.Key] = f.Text()
		}
		for _, f := range again.Fields() {
			require.NoError(t, f.Set("  "+texts[f.Key]))
		}
		appendTold(t, typed, again)
	}
	assert.Equal(t, log, loadWhole(t, typed))
	assert.Equal(t, read(t, imported), read(t, typed))

	added, _ = mergeTold(t, typed, filepath.Clean(season+"log.toml"))
	assert.Zero(t, added)
}

// The names are those of the built-in example.
func TestTheSeasonKnowsItsRig(t *testing.T) {
	log, _ := Open(season + "log.toml").Load()
	var known strings.Builder
	for _, name := range []string{"rig.toml", "places.toml"} {
		data, err := os.ReadFile("../example/" + name)
		require.NoError(t, err)
		known.Write(data)
	}
	for i := range log {
		for _, f := range log[i].Fields() {
			if f.Refers != "" && f.Given() {
				assert.Contains(t, known.String(), "name = \""+f.Text()+"\"")
			}
		}
	}
}

package store

import (
	"io/fs"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

func TestExampleIsWithoutFault(t *testing.T) {
	lib := Example()
	assert.Empty(t, lib.Rig.Faults(lib.Places.Names()))
	assert.Empty(t, lib.Places.Faults())
	require.Len(t, lib.Washes, 1)
	wash := lib.Washes[0].Wash
	assert.Empty(t, wash.Faults(&lib.Rig, lib.Places))
	require.Len(t, wash.Shades, 1)
	require.Len(t, wash.Stages, 5)
	last := wash.Stages[4]
	assert.True(t, last.Final && last.Water == model.DI)
	for _, file := range []string{"rig.toml", "places.toml", "washes/example.toml", "trips/example.toml"} {
		assert.Empty(t, Check("example/"+file))
	}
}

// TestExampleShowsEveryKey: each thing that can be stated stands in the
// example, live or as a comment that is right once its # is taken away.
func TestExampleShowsEveryKey(t *testing.T) {
	for file, kinds := range map[string][]section{
		"rig.toml":            rigSchema(&model.Rig{Vehicles: make([]model.Vehicle, 1)}).sections,
		"places.toml":         placesSchema(&model.Places{}).sections,
		"trips/example.toml":  append(tripSchema(&model.Trip{Washes: make([]model.TripWash, 1)}).sections, section{add: (&model.Trip{}).Fields}),
		"washes/example.toml": append(washSchema(&model.Wash{}).sections, section{add: (&model.Wash{}).Fields}),
	} {
		data := exampleBytes(t, file)
		blocks := map[string]string{}
		name := ""
		for line := range strings.Lines(string(data)) {
			if m := regexp.MustCompile(`^(?:# )?\[+([a-z.]+)\]+`).FindStringSubmatch(line); m != nil {
				name = m[1]
			}
			blocks[name] += line
		}
		for _, sec := range kinds {
			for _, f := range sec.add() {
				m := regexp.MustCompile(`(?m)^(?:# )?` + f.Key + ` = ("[^"]*"|\[.*\]|[a-z0-9.]+)`).FindStringSubmatch(blocks[sec.name])
				require.NotNil(t, m, "%s: [%s] %s", file, sec.name, f.Key)
				d := parse("", []byte(f.Key+" = "+m[1]))
				assert.Empty(t, set(f, d.tables[0].entries[0]), "%s: [%s] %s", file, sec.name, f.Key)
			}
		}
	}
}

// TestExampleFilesAreTidy: the files are the first thing a person reads.
func TestExampleFilesAreTidy(t *testing.T) {
	require.NoError(t, fs.WalkDir(exampleFiles, exampleFolder, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		data, err := exampleFiles.ReadFile(name)
		for line := range strings.Lines(string(data)) {
			assert.LessOrEqual(t, len(line), 91, "%s: %s", name, line)
			assert.NotContains(t, line, "\t")
			assert.Equal(t, strings.TrimRight(line, " \n")+"\n", line)
		}
		return err
	}))
}

func BenchmarkExample(b *testing.B) {
	for b.Loop() {
		Example()
	}
}

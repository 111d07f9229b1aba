package store

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
)

func exampleBytes(t require.TestingT, file string) []byte {
	data, err := exampleFiles.ReadFile(exampleFolder + "/" + file)
	require.NoError(t, err)
	return data
}

func decoded[T any](data []byte, of func(*T) schema) T {
	var noun T
	parse("", data).decode(of(&noun))
	return noun
}

// TestRandomEdits: whatever is changed, what is read back is what was meant,
// and every line that has nothing to do with the change is still there, in order.
func TestRandomEdits(t *testing.T) {
	original := exampleBytes(t, rigFile)
	rapid.Check(t, func(t *rapid.T) {
		rig := decoded(original, rigSchema)
		touched := map[string]bool{}
		for range rapid.IntRange(0, 6).Draw(t, "edits") {
			all := flat(rigSchema(&rig).items())
			it := all[rapid.IntRange(0, len(all)-1).Draw(t, "item")]
			f := it.fields[rapid.IntRange(0, len(it.fields)-1).Draw(t, "field")]
			word := rapid.SampledFrom(append([]string{"", f.Example}, f.Choices...)).Draw(t, "word")
			if f.Required && word == "" {
				continue
			}
			require.NoError(t, f.Set(word))
			touched[f.Key] = true
		}
		if rapid.Bool().Draw(t, "add") {
			rig.Hoses = append(rig.Hoses, model.Hose{Name: "new"})
		}
		data, _, reason, err := edited(rigFile, original, &rig, rigSchema, nil)
		require.NoError(t, err)
		require.Empty(t, reason)
		got := decoded(data, rigSchema)
		require.True(t, sameRig(&rig, &got))
		rest := string(data)
		for _, line := range strings.SplitAfter(string(original), "\n") {
			if key, _, _ := strings.Cut(line, " "); touched[key] {
				continue
			}
			at := strings.Index(rest, line)
			require.GreaterOrEqual(t, at, 0, line)
			rest = rest[at+len(line):]
		}
	})
}

// TestOneEdit: changing one value leaves all bytes before and behind it.
func TestOneEdit(t *testing.T) {
	original := exampleBytes(t, rigFile)
	rapid.Check(t, func(t *rapid.T) {
		rig := decoded(original, rigSchema)
		d := parse("", original)
		table := d.tables[rapid.IntRange(1, len(d.tables)-1).Draw(t, "table")]
		e := table.entries[rapid.IntRange(0, len(table.entries)-1).Draw(t, "entry")]
		f := fieldOf(t, &rig, d, table, e.key)
		word := rapid.SampledFrom(append([]string{f.Example}, f.Choices...)).Draw(t, "word")
		if f.Key == "name" || f.Refers != "" {
			word = rapid.StringMatching(`[a-z"'\\é#= ]{1,20}x`).Draw(t, "name")
		}
		require.NoError(t, f.Set(word))
		data, _, reason, err := edited(rigFile, original, &rig, rigSchema, nil)
		require.NoError(t, err)
		require.Empty(t, reason)
		require.Equal(t, string(original[:e.from]), string(data[:e.from]))
		require.Equal(t, string(original[e.to:]), string(data[len(data)-len(original)+e.to:]))
	})
}

// fieldOf finds the field that an entry of the document was read into.
func fieldOf(t *rapid.T, rig *model.Rig, d *document, table *table, key string) model.Field {
	n := 0
	for _, other := range d.tables {
		if other == table {
			break
		}
		if other.name == table.name {
			n++
		}
	}
	for _, it := range flat(rigSchema(rig).items()) {
		if it.section != table.name {
			continue
		}
		if n == 0 {
			f, _ := find(it.fields, key)
			return f
		}
		n--
	}
	t.Fatalf("no field for %s", key)
	return model.Field{}
}

func flat(items []item) []item {
	var all []item
	for _, it := range items {
		all = append(append(all, it), flat(it.under)...)
	}
	return all
}

func sameRig(a, b *model.Rig) bool {
	x, y := flat(rigSchema(a).items()), flat(rigSchema(b).items())
	if len(x) != len(y) {
		return false
	}
	for i := range x {
		if x[i].section != y[i].section || !sameFields(x[i].fields, y[i].fields) {
			return false
		}
	}
	return true
}

// TestRandomStages: stages in any order, added, renamed, taken out: the file
// reads as what was meant, whether it had to be asked for or not.
func TestRandomStages(t *testing.T) {
	original := exampleBytes(t, washFolder+"/example.toml")
	top := string(original[:strings.Index(string(original), "[[stage]]")])
	rapid.Check(t, func(t *rapid.T) {
		wash := decoded(original, washSchema)
		pool := append([]model.Stage{{Name: "extra", Water: model.DI}, {Name: "other", Water: model.Raw}}, wash.Stages...)
		wash.Stages = nil
		for _, i := range rapid.SliceOfN(rapid.IntRange(0, len(pool)-1), 0, 8).Draw(t, "stages") {
			wash.Stages = append(wash.Stages, pool[i])
		}
		data, _, _, err := edited("", original, &wash, washSchema, nil)
		require.NoError(t, err)
		require.Equal(t, wash, decoded(data, washSchema))
		require.True(t, strings.HasPrefix(string(data), top), "the top is as it was")
	})
}

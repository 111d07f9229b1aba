package store

import (
	"testing"

	"github.com/stretchr/testify/require"

	"washeve/model"
)

func seeds(f *testing.F) {
	for _, file := range []string{"rig.toml", "places.toml", "washes/example.toml", "trips/example.toml"} {
		f.Add(exampleBytes(f, file))
	}
	for _, text := range []string{
		"", "\xef\xbb\xbf", "[", "[[", "a=", "a = [", "a = '''", "a = \"\"\"\\", "\r", "\"\" = 1", "[\"a.b\"]\nc.d = {e = [1]}",
		"format = 1\n[[vehicle]]\nname = \"a\" # b\n[[vehicle.face]]\nside = 'left'\n[vehicle]\n", "[[bed]]\nresin = 1_0.5e3\r\nprice = 07:32:00",
	} {
		f.Add([]byte(text))
	}
}

// FuzzDecode: any bytes are read without a panic, each fault has its line, and
// each value stands where the document says.
func FuzzDecode(f *testing.F) {
	seeds(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		var rig model.Rig
		var places model.Places
		var wash model.Wash
		var trip model.Trip
		lines := 1
		for _, b := range data {
			if b == '\n' {
				lines++
			}
		}
		all := parse("f", data).rig(&rig, names{places: model.Places{}})
		all = append(all, parse("f", data).places(&places)...)
		all = append(all, parse("f", data).wash(&wash, names{rig: &rig, places: places})...)
		all = append(all, parse("f", data).trip(&trip, names{rig: &rig, places: places, washes: []string{}})...)
		for _, fault := range all {
			require.True(t, fault.Line >= 1 && fault.Line <= lines, fault.Error())
			require.NotContains(t, fault.Error(), "\x1b")
		}
		d := parse("f", data)
		for _, table := range d.tables {
			for _, e := range table.entries {
				require.True(t, e.start < e.from && e.from < e.to && e.to <= e.end && e.end <= len(data))
			}
		}
	})
}

// FuzzEdit: whatever the file, a change of one value is read back, and a file
// that needs no change is not touched.
func FuzzEdit(f *testing.F) {
	seeds(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		rig := decoded(data, rigSchema)
		same, _, reason, err := edited("f", data, &rig, rigSchema, nil)
		if err != nil {
			return
		}
		if reason == "" {
			require.Equal(t, string(data), string(same))
		}
		rig.Beds = append(rig.Beds, model.Bed{Name: "new"})
		rig.Defaults.Units = model.UnitsMetric
		more, _, _, err := edited("f", data, &rig, rigSchema, nil)
		require.NoError(t, err)
		got := decoded(more, rigSchema)
		require.True(t, sameRig(&rig, &got), "%q", more)
	})
}

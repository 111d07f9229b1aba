package journal

import (
	"fmt"
	"math/rand"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"washeve/model"
)

// manyEntries is a log of n entries as years of washing write it: four readings
// to a wash, with many different numbers.
func manyEntries(tb testing.TB, n int) []model.Entry {
	tb.Helper()
	chance := rand.New(rand.NewSource(1))
	at := model.MomentOf(time.Date(2016, 1, 1, 8, 0, 0, 0, time.FixedZone("", -6*3600)))
	entries := make([]model.Entry, 0, n)
	for i := range n {
		at = at.Plus(int64(600 + chance.Intn(30000)))
		e := model.Entry{At: at, Body: model.NewBody(model.ReadingKind)}
		texts := map[string]string{
			"point": "after bed", "reading": fmt.Sprintf("%.1f ppm NaCl", 20*chance.Float64()), "place": "Juniper Flats", "bed": "half-foot tank",
			"temperature": fmt.Sprintf("%.1f F", 50+30*chance.Float64()), "flow": fmt.Sprintf("%.2f gpm", 1+chance.Float64()), "flushed": "yes",
			"gallons_so_far": fmt.Sprintf("%.1f gal", 900*chance.Float64()),
		}
		if i%5 == 0 {
			e.Body = model.NewBody(model.WashKind)
			texts = map[string]string{
				"place": "Juniper Flats", "vehicle": "Marigold", "bed": "half-foot tank", "softener": "portable softener", "sprayer": "small pressure washer",
				"di": fmt.Sprintf("%.1f gal", 60*chance.Float64()), "softened": fmt.Sprintf("%.0f gal", 90*chance.Float64()), "flow": "1.3 gpm",
				"duration": fmt.Sprintf("%d min", 60+chance.Intn(60)), "planned_di": "31 gal", "planned_duration": "80 min",
			}
		}
		var err error
		e.ID, err = model.NewID(at, chance)
		require.NoError(tb, err)
		for _, f := range e.Fields() {
			if text := texts[f.Key]; text != "" {
				require.NoError(tb, f.Set(text))
			}
		}
		entries = append(entries, e)
	}
	return entries
}

func textOf(entries []model.Entry) string {
	var b strings.Builder
	b.WriteString(header)
	for _, e := range entries {
		b.WriteString("\n" + encode(e))
	}
	return b.String()
}

func BenchmarkLoad(b *testing.B) {
	for _, n := range []int{1000, 6000, 25000, 100000} {
		b.Run(fmt.Sprintf("entries=%d", n), func(b *testing.B) {
			path := filepath.Join(b.TempDir(), "log.toml")
			require.NoError(b, os.WriteFile(path, []byte(textOf(manyEntries(b, n))), 0o600))
			b.ReportAllocs()
			for b.Loop() {
				log, faults := Open(path).Load()
				if len(log) != n || len(faults) > 0 {
					b.Fatal(len(log), faults)
				}
			}
		})
	}
}

func BenchmarkAppend(b *testing.B) {
	for _, n := range []int{0, 6000, 100000} {
		b.Run(fmt.Sprintf("entries=%d", n), func(b *testing.B) {
			path := filepath.Join(b.TempDir(), "log.toml")
			require.NoError(b, os.WriteFile(path, []byte(textOf(manyEntries(b, n))), 0o600))
			e := sample(b, "one")
			for b.Loop() {
				if _, err := Open(path).Append(e); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// A log of which every entry was touched by a person goes through the library.
func BenchmarkLoadForeign(b *testing.B) {
	text := strings.ReplaceAll(textOf(manyEntries(b, 6000)), "kind = ", "kind  = ")
	path := filepath.Join(b.TempDir(), "log.toml")
	require.NoError(b, os.WriteFile(path, []byte(text), 0o600))
	for b.Loop() {
		if log, _ := Open(path).Load(); len(log) != 6000 {
			b.Fatal(len(log))
		}
	}
}

func BenchmarkEffective(b *testing.B) {
	log := model.NewLog(append(manyEntries(b, 6000), made(b, model.CorrectionKind, "c", "2030-01-01T00:00:00Z", map[string]string{"of": "x", "strike": "yes"})))
	for b.Loop() {
		if len(log.Effective()) != 6000 {
			b.Fatal("lost")
		}
	}
}

package journal

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
)

var mountain = time.FixedZone("", -6*3600)

func tableOf(t require.TestingT, log []model.Entry, sys quantity.System) string {
	var b bytes.Buffer
	require.NoError(t, WriteCSV(&b, log, sys))
	return b.String()
}

// readCSV gives the entries of a table; none where any row is faulty.
func readCSV(text, name string) ([]model.Entry, []fault.Fault) {
	t := readTable(strings.NewReader(text), name, mountain)
	if fault.HasErrors(t.all) {
		return nil, t.all
	}
	return t.entries, t.all
}

// A table in any units, read into an empty log, gives the same entries.
func TestATableComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := drawEntries(t)
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			back, faults := readCSV(tableOf(t, entries, sys), "log.csv")
			require.Empty(t, said(faults))
			assert.Equal(t, contents(entries), contents(back))
		}
	})
}

// What a spreadsheet would run as a formula stands behind an apostrophe.
func TestNoCellIsAFormula(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows, err := csv.NewReader(strings.NewReader(tableOf(t, drawEntries(t), quantity.US))).ReadAll()
		require.NoError(t, err)
		for _, row := range rows {
			for _, cell := range row {
				assert.NotContains(t, []string{"=", "+", "-", "@", "\t", "\r"}, (cell + " ")[:1], cell)
			}
		}
		text := words.Draw(t, "text")
		assert.Equal(t, text, unguarded(guarded(text)))
	})
}

func TestTheColumnsOfATable(t *testing.T) {
	lines := strings.SplitN(tableOf(t, nil, quantity.US), "\n", 2)
	assert.Equal(t, "kind,at,of,strike,new_at,clear,plan,place,vehicle,bed,softener,di_through_softener,sprayer,"+
		"di_gal,softened_gal,raw_gal,flow_gpm,duration_min,area_ft2,temperature_f,"+
		"planned_di_gal,planned_softened_gal,planned_raw_gal,planned_flow_gpm,planned_duration_min,"+
		"wash,stage,water,used_gal,planned_used_gal,point,reading,pen,flushed,flush_water_gal,so_far_gal,use_anyway,"+
		"resin_ft3,resin_state,lot,capacity,price,salt_lb,note,id", lines[0])
	metric := strings.SplitN(tableOf(t, nil, quantity.Metric), "\n", 2)[0]
	assert.Contains(t, metric, ",di_l,")
	assert.Contains(t, metric, ",flow_l_min,")
	assert.Contains(t, metric, ",flush_water_l,")
	assert.Contains(t, metric, ",temperature_c,")
	assert.Contains(t, metric, ",salt_kg,")
}

func TestNumbersAreAsTheyWereTyped(t *testing.T) {
	wash := made(t, model.WashKind, "w", "2026-06-12T08:15:00-06:00", map[string]string{"di": "31.50 gal", "flow": "5 L/min", "duration": "1 h 20 min"})
	text := tableOf(t, []model.Entry{wash}, quantity.US)
	assert.Contains(t, text, ",31.50,")
	assert.Contains(t, text, ",1.3208602617907421,80,")
	assert.Contains(t, tableOf(t, []model.Entry{wash}, quantity.Metric), ",5,80,")
}

func TestATableMadeByHand(t *testing.T) {
	const text = "\ufeffKind;AT;point;reading_ppm;flow;temperature_c;weather\n" +
		"reading;2026-06-12;after bed;2.5;1.3 gpm;18;sunny\n" +
		";;;;;;\n" +
		"Reading;2026-06-12 09:30;Tap;240;;\n" +
		"reading;2026-06-12;after bed;2.5;1.3 gpm;18;rain\n"
	entries, faults := readCSV(text, "mine.csv")
	assert.Equal(t, []string{"mine.csv:1: weather: is no column of the log, and is left out"}, said(faults))
	require.Len(t, entries, 3)
	first := entries[0].Body.(*model.Sample)
	assert.Equal(t, "2026-06-12T12:00:00-06:00", entries[0].At.String())
	assert.Equal(t, "2.5 ppm", first.Reading.Words())
	assert.Equal(t, "18 C", first.Temperature.Words())
	assert.Equal(t, model.AtTap, entries[1].Body.(*model.Sample).Point)
	assert.NotEqual(t, entries[0].ID, entries[2].ID, "two alike rows are two entries")

	again, _ := readCSV(text, "mine.csv")
	assert.Equal(t, entries, again, "identifiers follow from what the rows say")
}

func TestFaultyTables(t *testing.T) {
	for text, want := range map[string][]string{
		"":                      {"x.csv:1: the table is empty; the first row must name the columns"},
		"a,b\n":                 {"x.csv:1: a: is no column of the log, and is left out", "x.csv:1: b: is no column of the log, and is left out", "x.csv:1: kind: is missing; every row needs it", "x.csv:1: at: is missing; every row needs it"},
		"kind,at,di_gall\n":     {"x.csv:1: di_gall: is no column of the log; did you mean di_gal?"},
		"kind,at,di_gal,di_l\n": {"x.csv:1: di_l: states the same as the column di_gal; keep one"},
		"kind,at,flow_gpm,salt_lb,softener\nwash,2026-06-12,fast,,\nsalt,2026-06-32,,4,a\nwash,2026-06-12,1.3,4,\nsnow,2026-06-12,,,\nsalt,2026-06-12,,4,\nsalt,2026-06-12,,4,a,b\n": {
			`x.csv:2: flow_gpm: "fast" does not start with a number; write the flow like 1.3 gpm`,
			`x.csv:3: at: "2026-06-32" is no moment; write the moment like 2026-06-12T08:15:00-06:00`,
			`x.csv:4: salt_lb: "4" stands in a row of the kind wash, which has no salt; leave the cell empty`,
			`x.csv:5: kind: "snow" is no kind of entry; kind of entry: wash, stage, reading, resin, salt or correction`,
			`x.csv:6: softener: is missing; write for example softener = "bay softener"`,
			`x.csv:7: "b" stands beyond the last column that has a name`,
		},
		"kind,at,flow\nwash,2026-06-12,1.3\n": {`x.csv:2: flow: "1.3" has no unit; write the flow like 1.3 gpm (units: m3/s, gpm, gph, L/min, L/h, L/s, m3/h, ft3/s)`},
		"kind,at\nwash,\"2026":                {`x.csv:2: cannot be read: extraneous or missing " in quoted-field, at letter 11; a cell with quotes or commas in it stands in quotes, and a quote in it is written twice`},
	} {
		entries, faults := readCSV(text, "x.csv")
		assert.Empty(t, entries)
		assert.Equal(t, want, said(faults), text)
	}
}

func importTold(t *testing.T, path, text string) (int, []string) {
	t.Helper()
	added, told, err := Open(path).Import(strings.NewReader(text), "mine.csv", mountain)
	require.NoError(t, err)
	return added, said(told)
}

func TestImportTwiceAddsNothing(t *testing.T) {
	first, second := newPath(t), newPath(t)
	appendTold(t, first, sample(t, "one"), sample(t, "two"))
	text := tableOf(t, loadWhole(t, first), quantity.Metric)
	added, told := importTold(t, first, text)
	assert.Zero(t, added)
	assert.Empty(t, told)
	added, _ = importTold(t, second, text)
	assert.Equal(t, 2, added)
	assert.Equal(t, contents(loadWhole(t, first)), contents(loadWhole(t, second)))

	const nameless = "kind,at,softener\nsalt,2026-06-12,portable softener\nsalt,2026-06-12,portable softener\n"
	added, _ = importTold(t, second, nameless)
	assert.Equal(t, 2, added)
	added, _ = importTold(t, second, nameless)
	assert.Zero(t, added)
}

func TestNothingIsHalfImported(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, sample(t, "one"))
	before := read(t, path)
	const text = "kind,at,softener,salt_lb\nsalt,2026-06-12,portable softener,4\nsalt,2026-06-13,portable softener,four\n"
	added, told, err := Open(path).Import(strings.NewReader(text), "mine.csv", mountain)
	require.ErrorContains(t, err, "mine.csv: nothing was imported, since it has faults; put them right and import it again")
	assert.Zero(t, added)
	assert.Equal(t, []string{`mine.csv:3: salt_lb: "four" does not start with a number; write the mass like 4 lb`}, said(told))
	assert.Equal(t, before, read(t, path))
}

func TestARowThatSaysSomethingElseThanTheLog(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, plainSample("one"))
	added, told := importTold(t, path, "kind,at,softener,id\nsalt,2026-06-12,other softener,one\n")
	assert.Zero(t, added)
	assert.Equal(t, []string{"mine.csv:2: id: the log holds one already, and it says something else there; the log stands, and a correction is the way to change it"}, told)
}

func FuzzCSV(f *testing.F) {
	f.Add(tableOf(f, []model.Entry{sample(f, "one"), plainSample("two")}, quantity.US))
	f.Add("kind;at;flow_l_min\nwash;2026-06-12;5\nwash;;\n")
	f.Add("kind,at,of,clear,reading_us_cm\ncorrection,2026-06-12 08:00,'=x,\"flow, di\",1e3\n")
	f.Fuzz(func(t *testing.T, text string) {
		entries, faults := readCSV(text, "x.csv")
		if fault.HasErrors(faults) {
			require.Empty(t, entries)
		}
		for _, e := range entries {
			require.Empty(t, e.Faults())
			require.Equal(t, []string{e.Content()}, contents(quickly(encode(e)).found))
		}
		back, faults := readCSV(tableOf(t, entries, quantity.US), "x.csv")
		require.Empty(t, said(faults))
		require.Equal(t, contents(entries), contents(back))
	})
}

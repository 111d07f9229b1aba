package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// noon is the moment at which the tests run the program.
var noon = time.Date(2026, 6, 12, 12, 0, 0, 0, time.FixedZone("", -6*3600))

// ran runs the program in this process, away from a terminal.
func ran(t *testing.T, args ...string) (out, errs string, code int) {
	t.Helper()
	var o, e bytes.Buffer
	s := streams{in: strings.NewReader(""), out: &o, errs: &e, columns: pageColumns, env: func(string) string { return "" }, clock: stopped{noon}}
	code = run(args, s)
	return o.String(), e.String(), code
}

func files(t *testing.T, all map[string]string) string {
	dir := t.TempDir()
	for name, text := range all {
		path := filepath.Join(dir, name)
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o700))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	}
	return dir
}

const (
	someRig = `format = 1
[[vehicle]]
name = "coach"
length = "40 ft"
height = "12 ft"
[[bed]]
name = "tank"
resin = "0.5 ft3"
`
	someplaces = `format = 1
[[place]]
name = "home"
tds = "250 ppm NaCl"
`
)

func TestExitCodes(t *testing.T) {
	fresh := files(t, map[string]string{"rig.toml": someRig, "places.toml": someplaces})
	spent := files(t, map[string]string{"rig.toml": someRig + "gallons_so_far = \"900 gal\"\n", "places.toml": someplaces})
	faulty := files(t, map[string]string{"rig.toml": "format = 1\n[[bed]]\nresin = 5\n", "places.toml": someplaces})
	for _, c := range []struct {
		want int
		args []string
	}{
		{done, []string{"plan", "--dir", fresh}},
		{done, []string{"plan", "--strict", "--dir", fresh}},
		{done, []string{"plan", "--dir", spent}},
		{shortBed, []string{"plan", "--strict", "--dir", spent}},
		{shortBed, []string{"plan", "--strict", "--json", "--dir", spent}},
		{wrongUse, []string{"plan", "--dir", faulty}},
		{wrongUse, []string{"check", filepath.Join(faulty, "rig.toml")}},
		{wrongUse, []string{"plan", "--nonsense"}},
		{done, []string{"--help"}},
		{wrongUse, []string{"init", "--dir", filepath.Join(fresh, "rig.toml")}},
	} {
		_, errs, code := ran(t, c.args...)
		assert.Equal(t, c.want, code, "%v: %s", c.args, errs)
	}
}

func TestInitLeavesAFolderThatOpens(t *testing.T) {
	dir := t.TempDir()
	_, errs, code := ran(t, "init", "--dir", dir)
	require.Equal(t, done, code, errs)
	rig := filepath.Join(dir, "rig.toml")
	own, err := os.ReadFile(rig)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(rig, bytes.ReplaceAll(own, []byte("Marigold"), []byte("Teasel")), 0o600))
	require.NoError(t, os.Remove(filepath.Join(dir, "washes", "example.toml")))
	require.NoError(t, os.Remove(filepath.Join(dir, "trips", "example.toml")))
	out, errs, code := ran(t, "init", "--dir", dir)
	assert.Equal(t, done, code, errs)
	assert.Contains(t, out, "Nothing written: rig.toml is there already")
	_, errs, code = ran(t, "bed", "--dir", dir)
	assert.Equal(t, done, code, errs)
}

// The names are the contract with other programs: none may go.
func TestJSONHasEveryFieldOfTheContract(t *testing.T) {
	out, errs, code := ran(t, "plan", "--json", "--dir", t.TempDir())
	require.Zero(t, code, errs)
	assert.Empty(t, errs)
	var plan map[string]any
	require.NoError(t, json.Unmarshal([]byte(out), &plan), "one object and nothing else")
	water := "conductivity_us_cm tds_ppm scale hardness_gr_gal load_meq_l load_mg_l_caco3 temperature_f"
	for path, keys := range map[string]string{
		"":                      "format wash date verdict water di soft raw flow_cap sprayer bed softener stages faces flush warnings cautions assumptions",
		"water.raw":             water,
		"water.softened":        water,
		"di":                    "gallons minutes",
		"soft":                  "gallons minutes",
		"raw":                   "gallons minutes",
		"flow_cap":              "gpm bound_by jug_seconds_per_gallon caps",
		"flow_cap.caps.0":       "name gpm",
		"sprayer":               "gpm within_cap open_hose_gpm",
		"bed":                   "resin_ft3 capacity_gr used_gr contact_time_s transfer_units remaining_gallons chance_lasts outlet_ppm_at_end",
		"bed.remaining_gallons": "p10 p50 p90",
		"bed.outlet_ppm_at_end": "p10 p50 p90",
		"softener":              "remaining_gallons lasts",
		"stages.0":              "name water faces sprayer gpm gallons minutes valves",
		"faces.0":               "name area_ft2 di_gallons ppm_left residue_mg_m2 spots",
		"flush":                 "gallons seconds",
		"warnings.0":            "code text",
		"cautions.0":            "code text",
		"assumptions.0":         "name value unit tag source",
	} {
		object := at(t, plan, path)
		for _, key := range strings.Fields(keys) {
			assert.Contains(t, object, key, "in %q", path)
		}
	}
	assert.EqualValues(t, 1, plan["format"])
}

func at(t *testing.T, from any, path string) map[string]any {
	for _, part := range strings.FieldsFunc(path, func(r rune) bool { return r == '.' }) {
		if list, ok := from.([]any); ok {
			require.NotEmpty(t, list, path)
			from = list[0]
			continue
		}
		from = from.(map[string]any)[part]
	}
	if list, ok := from.([]any); ok {
		require.NotEmpty(t, list, path)
		from = list[0]
	}
	return from.(map[string]any)
}

func TestCheckAsJSON(t *testing.T) {
	dir := files(t, map[string]string{"rig.toml": "format = 1\n[[bed]]\nname = \"tank\"\nresin = \"5 gpm\"\ncolour = \"blue\"\n"})
	out, errs, code := ran(t, "check", "--json", filepath.Join(dir, "rig.toml"))
	assert.Equal(t, wrongUse, code)
	assert.Empty(t, errs)
	var got struct {
		Faults []struct {
			Line                   int
			Key, Problem, Severity string
		}
	}
	require.NoError(t, json.Unmarshal([]byte(out), &got))
	require.Len(t, got.Faults, 2)
	assert.Equal(t, 4, got.Faults[0].Line)
	assert.Equal(t, "error", got.Faults[0].Severity)
	assert.Equal(t, "not read", got.Faults[1].Severity)
	assert.Equal(t, "colour", got.Faults[1].Key)
}

// What the bed has left by an entry is told also where the entry names no bed.
func TestTheEffectOnTheUsualBedIsTold(t *testing.T) {
	dir := files(t, map[string]string{
		"rig.toml":    "format = 1\n[[vehicle]]\nname = \"coach\"\nlength = \"43 ft\"\nheight = \"12.5 ft\"\n[[bed]]\nname = \"tank\"\nresin = \"0.5 ft3\"\n",
		"places.toml": "format = 1\n[[place]]\nname = \"home\"\ntds = \"300 ppm NaCl\"\n",
	})
	out, _, code := ran(t, "log", "wash", "--dir", dir, "--di", "40 gal")
	assert.Equal(t, 0, code)
	assert.Regexp(t, `(?m)^The bed: about [0-9]+ gal left by what the log says now; before this entry, [0-9]+ gal\.$`, out)
}

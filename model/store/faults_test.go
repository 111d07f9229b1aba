package store

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store/fault"
)

// place puts a file into a folder of its own and gives its path.
func place(t *testing.T, file, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), file)
	require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o700))
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}

// told gives the messages of Check, with the file's folder taken away.
func told(path string) []string {
	var all []string
	for _, f := range Check(path) {
		text := strings.TrimPrefix(f.Error(), filepath.Dir(path)+string(filepath.Separator))
		switch f.Severity {
		case fault.Notice:
			text = "notice: " + text
		case fault.Unread:
			text = "not read: " + text
		}
		all = append(all, text)
	}
	return all
}

const coach = "format = 1\n[[vehicle]]\nname = \"x\"\nheight = \"12 ft\"\n" // line 5 is next

func TestBadValues(t *testing.T) {
	const units = " (units: m, cm, mm, ft, in)"
	for line, want := range map[string]string{
		`length = "40"`:         `length: "40" has no unit; write the length like 40 ft 6 in` + units,
		`length = "40 gal"`:     `length: "40 gal" has the unit "gal", which is no unit of length; write the length like 40 ft 6 in` + units,
		`length = 40`:           `length: 40 has no unit; write it in quotes with its unit, like length = "40 ft 6 in"`,
		`length = 40.5`:         `length: 40.5 has no unit; write it in quotes with its unit, like length = "40 ft 6 in"`,
		`length = "-40 ft"`:     `length: "-40 ft" is below zero; write the length like 40 ft 6 in`,
		`length = "0 ft"`:       `length: "0 ft" is outside 5 ft to 75 ft; write the length like 40 ft 6 in`,
		`length = "NaN ft"`:     `length: "NaN ft" is not a finite number; write the length like 40 ft 6 in`,
		`length = "inf ft"`:     `length: "inf ft" is not a finite number; write the length like 40 ft 6 in`,
		`length = nan`:          `length: "nan" is not a finite number; write the length like 40 ft 6 in`,
		`length = "4000 ft"`:    `length: "4000 ft" is outside 5 ft to 75 ft; write the length like 40 ft 6 in`,
		`length = "1e999 ft"`:   `length: "1e999 ft" is too large to be real; write the length like 40 ft 6 in`,
		`length = "1,500 ft"`:   `length: "1,500 ft" has a comma that could part thousands or decimals; write 1500 or 1.500; write the length like 40 ft 6 in`,
		`length = "long"`:       `length: "long" does not start with a number; write the length like 40 ft 6 in`,
		`length = true`:         `length: true is no value here; write it like length = "40 ft 6 in"`,
		`length = ["40 ft"]`:    `length: is a list; write it like length = "40 ft 6 in"`,
		`length = { ft = 40 }`:  `length: is a table; write it like length = "40 ft 6 in"`,
		`length = ""`:           `length: is missing; write for example length = "40 ft 6 in"`,
		`length = 40 ft 6 in`:   `length: "40 ft 6 in" is not in quotes; write length = "40 ft 6 in"`,
		`length = "40 ft`:       `length: has no closing quote; write length = "40 ft"`,
		`length = “40 ft”`:      `length: has curly quotes; write straight ones, as in length = "40 ft"`,
		`length: "40 ft"`:       `length: has a colon; write an equals sign, as in length = "40 ft"`,
		`length =`:              `length: has no value; write one, or put # before the line`,
		`length = "4\q ft"`:     `cannot be read: invalid escape character U+0071 'q'`,
		`length "40 ft"`:        `cannot be read: expected '=' after key`,
		"length = \"40\x01ft\"": `cannot be read: basic strings cannot have control characters`,
	} {
		path := place(t, "rig.toml", coach+line+"\n")
		got := told(path)
		require.NotEmpty(t, got, line)
		found := false
		for _, g := range got {
			found = found || g == "rig.toml:5: "+want || g == "rig.toml:2: "+want
		}
		assert.True(t, found, "%s\nwant %s\ngot  %s", line, want, strings.Join(got, "\n     "))
	}
}

func TestBadRigs(t *testing.T) {
	const bed = "format = 1\n[[bed]]\nname = \"b\"\nresin = \"0.5 ft3\"\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"capacity twice", bed + "capacity = \"5000 gr\"\ngood_for = \"1500 gal\"\n", []string{
			"rig.toml:6: good_for: the capacity is stated twice, by capacity and by good_for; keep one"}},
		{"key twice", bed + "resin = \"1 ft3\"\n", []string{
			"rig.toml:5: resin: is stated twice, first in line 4; keep one"}},
		{"name twice", bed + "[[bed]]\nname = \"B\"\nresin = \"1 ft3\"\n", []string{
			`rig.toml:6: name: "B" is the name of bed 1 already; give each its own name`}},
		{"dangling", bed + "[defaults]\nbed = \"big\"\nsoftener = \"s\"\n", []string{
			`rig.toml:6: bed: no bed is called "big"; there is b`,
			`rig.toml:7: softener: no softener is called "s": there is no softener yet`}},
		{"unknown key", bed + "diametre = \"8 in\"\ncolour = \"blue\"\n", []string{
			"not read: rig.toml:5: diametre: is no key in [[bed]], and is not read; did you mean diameter?",
			"not read: rig.toml:6: colour: is no key in [[bed]], and is not read"}},
		{"a label for a key", "format = 1\n[[vehicle]]\nname = \"v\"\nlength = \"40 ft\"\nheight = \"12 ft\"\ngroud_clearance = \"1 ft\"\n", []string{
			"not read: rig.toml:6: groud_clearance: is no key in [[vehicle]], and is not read; did you mean clearance?"}},
		{"unknown sections", bed + "[[softner]]\nname = \"s\"\n[[face]]\n[[place]]\n[x]\n", []string{
			"not read: rig.toml:5: [[softner]] is no section of this file, and is not read; did you mean softener?",
			"not read: rig.toml:7: [[face]] is no section of this file, and is not read; did you mean vehicle.face?",
			"not read: rig.toml:8: [[place]] belongs in places.toml; here it is not read",
			"not read: rig.toml:9: [x] is no section of this file, and is not read"}},
		{"brackets", "format = 1\n[bed]\nname = \"b\"\nresin = \"1 ft3\"\n[[defaults]]\n", []string{
			"rig.toml:2: [bed] is written [[bed]] in this file",
			"rig.toml:5: [[defaults]] is written [defaults] in this file"}},
		{"bracket missing", "format = 1\n[[bed]\n", []string{
			`rig.toml:2: "[[bed]" has brackets missing; write [[bed]]`}},
		{"defaults twice", "format = 1\n[defaults]\nunits = \"us\"\n[defaults]\n", []string{
			"rig.toml:4: [defaults] is there already, in line 2; put both together"}},
		{"face alone", "format = 1\n[[vehicle.face]]\nside = \"left\"\n", []string{
			"rig.toml:2: [[vehicle.face]] stands before any [[vehicle]]; put it below the vehicle it belongs to"}},
		{"face without side", "format = 1\n[[vehicle]]\nname = \"v\"\nlength = \"30 ft\"\nheight = \"10 ft\"\n[[vehicle.face]]\narea = \"90 ft2\"\n", []string{
			`rig.toml:6: side: is missing; write for example side = "roof"`}},
		{"one line", "format = 1\nbed = [{ name = \"b\" }]\ndefaults = { units = \"us\" }\n", []string{
			"rig.toml:2: bed: is written in one line; write it as a section of its own, with a header such as [[bed]]",
			"rig.toml:3: defaults: is written in one line; write it as a section of its own, with a header such as [[bed]]"}},
		{"missing keys", "format = 1\n[[pen]]\n", []string{
			`rig.toml:2: name: is missing; write for example name = "yellow pen"`,
			`rig.toml:2: scale: is missing; write for example scale = "NaCl"`}},
		{"choice", bed + "resin_state = \"old\"\n", []string{
			`rig.toml:5: resin_state: "old" is none of the choices; resin: new or regenerated`}},
		{"control", "format = 1\n[[pen]]\nname = \"a\\u001b[31mb\"\nscale = 442\n", []string{
			`rig.toml:3: name: "a\x1b[31mb" has characters in it that cannot be shown; write the name like yellow pen`}},
		{"keys that a terminal would obey", "format = 1\n\"\\u001b[2J\" = 1\n[\"\\u001bc\"]\n[\"vehicle.face\"]\n", []string{
			`not read: rig.toml:2: "\x1b[2J": is no key at the top of this file, and is not read`,
			`not read: rig.toml:3: ["\x1bc"] is no section of this file, and is not read`,
			`not read: rig.toml:4: ["vehicle.face"] is no section of this file, and is not read; did you mean vehicle.face?`}},
		{"newer", "format = 2\n[[bed]]\nnonsense = 1\n", []string{
			"rig.toml:1: format = 2: this file is from a newer washeve; this one reads format = 1, so bring the program up to date"}},
		{"format", "format = \"1\"\n", []string{`rig.toml:1: format: "1" is no format; write format = 1`}},
		{"no format", "[defaults]\n", []string{"notice: rig.toml:1: format: is missing, and taken as 1; write format = 1 at the top of the file"}},
		{"empty", "", []string{"notice: rig.toml:1: holds nothing yet; take it away and run washeve init for one to start from"}},
		{"one line to mend", "[[bed]\nname = \"x\"\n", []string{`rig.toml:1: "[[bed]" has brackets missing; write [[bed]]`}},
		{"a face has its own line", "format = 1\n[[vehicle]]\nname = \"a\"\nlength = \"40 ft\"\nheight = \"12 ft\"\n[[vehicle.face]]\nside = \"rear\"\n[[vehicle.face]]\nside = \"front\"\nglass = \"80 %\"\npaint = \"80 %\"\n", []string{
			`rig.toml:8: face: the shares of the face "front" add up to 160%, over 100 %`}},
		{"NUL", "format = 1\n\x00\n", []string{"rig.toml:2: is not text in UTF-8; save the file as plain text in UTF-8"}},
		{"not UTF-8", "format = 1\n# caf\xe9\n", []string{"rig.toml:2: is not text in UTF-8; save the file as plain text in UTF-8"}},
		{"only what is wrong", bed + "good_for = \"1500\"\ngood_for_tds = \"200 ppm\"\n", []string{
			`rig.toml:5: good_for: "1500" has no unit; write the volume like 1500 gal (units: m3, L, mL, gal, qt, fl oz, ft3)`}},
		{"all at once", "format = 1\nx y\n[[bed]]\nresin = \"1\"\nprice = \"5\"\n= 3\n", []string{
			"rig.toml:2: cannot be read: expected '=' after key",
			`rig.toml:3: name: is missing; write for example name = "half-foot tank"`,
			`rig.toml:4: resin: "1" has no unit; write the volume like 0.5 ft3 (units: m3, L, mL, gal, qt, fl oz, ft3)`,
			`rig.toml:5: price: "5" has no currency; write the price like "$5" or "5 EUR"`,
			"rig.toml:6: cannot be read: invalid character at start of key: U+003D '='"}},
	} {
		assert.Equal(t, c.want, told(place(t, "rig.toml", c.text)), c.name)
	}
}

func TestBadPlacesAndWashes(t *testing.T) {
	places := "format = 1\n[[place]]\nname = \"p\"\ntds = \"200\"\nph = \"acid\"\nbucket = \"5 gal\"\n"
	assert.Equal(t, []string{
		`places.toml:4: tds: "200" has no unit; write the TDS like "240 ppm NaCl" or "430 uS/cm"`,
		`places.toml:5: ph: "acid" is not a number from 4 to 11; write the pH like 7.6`,
		"places.toml:6: bucket: goes with bucket_time, which is missing",
	}, told(place(t, "places.toml", places)))

	wash := "format = 1\ndate = 2026-02-30\nbed = \"b\"\n[[stage]]\nname = \"n\"\nwater = \"hot\"\nfaces = [\"left\", 3]\nfinal = 1\n[[stage]]\nname = \"m\"\nwater = \"di\"\nfaces = [\"left\", \"top\"]\nfinal = true\n"
	assert.Equal(t, []string{
		`friday.toml:2: date: "2026-02-30" is no day of the calendar; write the date like 2026-06-12`,
		`friday.toml:6: water: "hot" is none of the choices; water: raw, softened or di`,
		`friday.toml:7: faces: is a list; write it like faces = ["left", "right", "front"]`,
		`friday.toml:8: final: "1" is none of the choices; final rinse: yes or no`,
		`friday.toml:12: faces: "left, top" names "top", which is no face; write the faces like left, right, front, rear, roof`,
	}, told(place(t, "friday.toml", wash)))
}

func TestNoFile(t *testing.T) {
	dir := t.TempDir()
	for path, want := range map[string]string{
		filepath.Join(dir, "none.toml"): "is not there",
		dir:                             "is a folder; a file is needed",
		os.DevNull:                      "is no ordinary file; a text file is needed",
	} {
		assert.Equal(t, []fault.Fault{{File: path, Problem: want}}, Check(path))
	}
	large := filepath.Join(dir, "rig.toml")
	require.NoError(t, os.WriteFile(large, nil, 0o600))
	require.NoError(t, os.Truncate(large, 50<<20))
	assert.Equal(t, []string{"rig.toml: is 50.0 MB; no such file is over 4 MB, so this is something else: move it out of the folder, or name the right file"}, told(large))
	other := place(t, "notes.toml", "format = 1\ntitle = \"mine\"\n")
	assert.Equal(t, []string{"notes.toml: is no file of this program: it has neither the name nor a section of a rig ([[vehicle]], [[bed]]), places ([[place]]), a wash ([[stage]]), a trip ([[stop]]) or a log ([[entry]])"}, told(other))
}

func TestKindByContent(t *testing.T) {
	for text, want := range map[string]string{
		"[[stage]]\n":      washFolder,
		"[[place]]\n":      placesFile,
		"[[pen]]\n":        rigFile,
		"[defaults]\n":     rigFile,
		"[[stop]]\n":       TripFolder,
		"[[wash.stage]]\n": TripFolder,
		"place = \"x\"\n":  "",
	} {
		assert.Equal(t, want, kindOf("some.toml", parse("", []byte(text))), text)
	}
	assert.Equal(t, washFolder, kindOf("washes/a.toml", parse("", nil)))
}

func TestManyBadLinesAreCutShort(t *testing.T) {
	got := told(place(t, "rig.toml", strings.Repeat("?\n", 100000)))
	require.Len(t, got, mostSyntax+1)
	assert.Equal(t, "rig.toml:51: and more lines cannot be read; is this the right file?", got[mostSyntax])
}

func TestOtherWaysToWrite(t *testing.T) {
	text := "\xef\xbb\xbfformat = 1\r\ndate = 2026-06-12\r\nslide_outs = 'out'\r\n[[stage]]\r\nname = \"\"\"two\"\"\"\r\nwater = \"DI\"\r\nfaces = [\r\n  \"left\", # one\r\n  \"roof\",\r\n]\r\npasses = 1.5\r\nfinal = true\r\n[[ stage ]]\r\nname = 'x'\r\nwater = \"raw\"\r\nfaces = \"front, rear\"\r\npasses = \"2\"\r\nfinal = \"no\"\r\n"
	path := place(t, "a.toml", text)
	assert.Empty(t, Check(path))
	e := parse("", []byte(text)).tables[2].entries[2]
	assert.Equal(t, 16, e.line)
	assert.Equal(t, `"front, rear"`, text[e.from:e.to])
}

// A log is checked like any other file, by its name or by its sections.
func TestCheckOfALog(t *testing.T) {
	for _, name := range []string{"log.toml", "copy.toml"} {
		path := filepath.Join(t.TempDir(), name)
		require.NoError(t, os.WriteFile(path, []byte("format = 1\n\n[[entry]]\nkind = \"salt\"\nat = 2026-06-12T08:00:00Z\nsalt = \"4\"\nsoftener = \"s\"\nid = \"a\"\n"), 0o600))
		faults := Check(path)
		require.Len(t, faults, 1)
		assert.Equal(t, fault.Fault{File: path, Line: 6, Key: "salt", Problem: faults[0].Problem, Severity: fault.Error}, faults[0])
		assert.Contains(t, faults[0].Problem, `"4" has no unit`)
	}
	assert.Empty(t, Check("../../testdata/season/log.toml"))
}

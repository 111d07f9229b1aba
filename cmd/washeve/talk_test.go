package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store"
	"washeve/ui"
	"washeve/ui/keys"
)

// mine is the built-in example made one's own, in a folder of its own.
func mine(t *testing.T) string {
	dir := t.TempDir()
	_, err := store.WriteExample(dir)
	require.NoError(t, err)
	return dir
}

// atTerminal is a person at a terminal who types some lines.
func atTerminal(out, errs *bytes.Buffer, lines ...string) streams {
	return streams{
		in: strings.NewReader(strings.Join(lines, "\n")), out: out, errs: errs, screen: true, columns: pageColumns,
		env: func(string) string { return "" }, clock: stopped{noon},
	}
}

// saidIn does something by lines alone, until the input ends, and gives what was said.
func saidIn(t *testing.T, dir string, lines ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	code := run([]string{"--plain", "--dir", dir}, atTerminal(&out, &errs, lines...))
	require.Zero(t, code, errs.String())
	return out.String()
}

// keyedIn does something by keys on the screens: names of keys, or text behind a "=".
func keyedIn(t *testing.T, dir string, script ...string) {
	t.Helper()
	var out, errs bytes.Buffer
	p := &program{streams: atTerminal(&out, &errs), dir: dir, plain: true, opening: true}
	lib, err := p.load()
	require.NoError(t, err)
	wash, err := p.wash(lib, nil)
	require.NoError(t, err)
	o := p.options(lib, wash, p.bookBeside())
	o.Means.Tick, o.Rest = 0, nil
	app := ui.Open(o)
	a := given(app, tea.WindowSizeMsg{Width: 80, Height: 24})
	if learn := app.Init(); learn != nil {
		a = given(a, learn())
	}
	for _, key := range append(script, "ctrl+c") {
		typed := []string{key}
		if text, isText := strings.CutPrefix(key, "="); isText {
			typed = strings.Split(text, "")
		}
		for _, name := range typed {
			a = given(a, keys.Press(name))
		}
	}
}

var identifier = regexp.MustCompile(`\b(id|of|wash) = "([^"]+)"`)

// kept is all files of a folder; the identifiers of the log, which are drawn by lot,
// are numbered in their order.
func kept(t *testing.T, dir string) map[string]string {
	t.Helper()
	all, numbers := map[string]string{}, map[string]string{}
	require.NoError(t, filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasSuffix(path, ".lock") {
			return err
		}
		text, err := os.ReadFile(path)
		name, _ := filepath.Rel(dir, path)
		all[name] = identifier.ReplaceAllStringFunc(string(text), func(found string) string {
			part := identifier.FindStringSubmatch(found)
			if numbers[part[2]] == "" {
				numbers[part[2]] = fmt.Sprint(len(numbers) + 1)
			}
			return part[1] + " = " + numbers[part[2]]
		})
		return err
	}))
	return all
}

// jobs are what a person does with the program, once by words and once by keys.
func jobs() map[string][2][]string {
	lines := func(text string) []string { return strings.Split(text, "; ") }
	return map[string][2][]string{
		"a line of the plan":       {lines("change vehicle length 33; place Fernwater; clear vehicle colour; undo; redo"), lines("v; down; down; down; enter; ctrl+u; =33 ft; enter; p; 3; v; down; down; down; down; down; down; down; down; down; down; delete; u; r")},
		"a walk through a step":    {lines("walk vehicle; ; ; ; 33; ; 8 ft; .; new shade left; drop shade 2 side"), lines("v; down; down; down; enter; ctrl+u; =33 ft; enter; down; down; enter; ctrl+u; =8 ft; enter; d; n; 2; X")},
		"the day":                  {lines("day; start 7:30; turn left; later; undo; heading north; back"), lines("D; s; =7:30; enter; ,; right; u; n; =north; enter; esc")},
		"a reading":                {lines("bed; reading 4 ppm NaCl; yes; back"), lines("B; r; =4 ppm NaCl; enter; y; esc")},
		"a reading, last evening":  {lines("bed; reading 4 ppm NaCl; when yesterday 19:00; yes; back"), lines("B; r; =4 ppm NaCl; enter; w; =yesterday 19:00; enter; y; esc")},
		"a first cup that counts":  {lines("bed; reading; 40; no; use 1; undo; yes"), lines("B; r; =40; enter; n; i; u; y")},
		"a wash that was done":     {lines("bed; wash; change DI water 25; change note windy; write; strike 1; yes"), lines("B; w; enter; =25; enter; end; down; down; down; down; down; down; down; down; down; down; down; down; down; down; down; down; down; down; down; enter; =windy; enter; w; x; y")},
		"salt":                     {lines("bed; salt; change salt 4 lb; write; undo; yes"), lines("B; s; enter; ctrl+u; =4 lb; enter; w; u; y")},
		"days in words":            {lines("change date tomorrow; bed; salt; change salt 4 lb; change when yesterday 19:30; write"), lines("d; enter; =tomorrow; enter; B; s; enter; ctrl+u; =4 lb; enter; down; enter; =yesterday 19:30; enter; w")},
		"a position, both at once": {lines("change latitude 33.45, -112.07; change longitude 112.07; undo"), lines("d; down; down; down; down; down; down; down; down; down; down; enter; ctrl+u; =33.45, -112.07; enter; down; enter; ctrl+u; =112.07; enter; u")},
		"an entry of any kind":     {lines("bed; new reading; change point tap; change reading 240 ppm NaCl; write; correct 1; change reading 250 ppm NaCl; write"), lines("B; n; 3; enter; 1; enter; =240 ppm NaCl; enter; w; enter; enter; ctrl+u; =250 ppm NaCl; enter; w")},
		"new resin, step by step":  {lines("bed; resin; next; change bag 0.25; next; next; next; next; next; next; next; change price 90 USD; write; next; reading; 2; yes"), lines("B; c; right; down; enter; ctrl+u; =0.25 ft3; enter; right; right; right; right; right; right; right; enter; ctrl+u; =90 USD; enter; w; right; r; =2; enter; y")},
		"new resin, taken back":    {lines("bed; resin; next; next; next; next; next; next; next; next; change when 2026-05-01; write; back; undo; yes"), lines("B; c; right; right; right; right; right; right; right; right; end; down; down; down; down; enter; ctrl+u; =2026-05-01; enter; w; esc; u; y")},
		"faces pinned":             {lines("short; in right; out left; less sure; back"), lines("S; i; down; down; down; o; -; esc")},
		"a way out":                {lines("short; take glass and paint only"), lines("S; tab; down; down; down; down; enter")},
		"another way of the wash":  {lines("compare; way 3; take 2; undo; redo"), lines("C; right; right; left; enter; u; r")},
		"what a way needs, bought": {lines("compare; take twice the tank; yes"), lines("C; right; right; right; right; right; enter; y")},
		"a place and its name":     {lines("rig; new place Dock; change TDS 150; back; rename Dock to Pier; back; copy Pier to Quay; back; take out Quay; use Pier; back"), lines("R; pgdown; pgdown; pgdown; pgdown; pgdown; pgdown; n; =Dock; enter; enter; =150; enter; esc; e; ctrl+u; =Pier; enter; esc; c; =Quay; enter; esc; X; t; esc")},
		"a face of the coach":      {lines("rig; show Marigold; face left; change left area 400 ft2; drop face left area; undo"), lines("R; enter; f; 2; enter; =400 ft2; enter; X; u")},
		"a wash after another":     {lines("new wash Toad day; place Fernwater; washes 2; place Fernwater; undo; washes Toad"), lines("N; ctrl+u; =Toad day; enter; p; 3; L; 2; p; 3; u; L; 2")},
		"a softener by its grains": {lines("rig; show portable softener; change capacity 10000 gr; clear resin volume; back; back"), lines("R; pgdown; pgdown; enter; down; down; down; down; enter; =10000 gr; enter; up; up; up; up; delete; esc; esc")},
		"a trip begun, taken back": {lines("trip; later 2; begin; later 2; undo; undo; later 2"), lines("T; home; down; .; b; home; down; .; u; u; home; down; .")},
		"a trip":                   {lines("trip; take advice; begin; new wash; change date 2026-07-01; back; later 2; drop 3; undo; next trip; back"), lines("T; t; b; n; enter; ctrl+u; =2026-07-01; enter; esc; home; down; .; home; down; down; X; u; tab; esc")},
		"the stop of a wash":       {lines("trip; show 3; change date 2026-06-08; change at the stop Juniper Flats; back"), lines("T; down; down; enter; enter; =2026-06-08; enter; down; enter; 1; esc")},
		"a slip at the pen":        {lines("wash; yes; skip; skip; skip; skip; skip; skip; reading 5; yes; reading 4; yes; reading 3; no; undo; end; yes; back"), lines("W; y; s; s; s; s; s; s; r; =5; enter; y; r; =4; enter; y; r; =3; enter; n; u; x; y; esc")},
		"a wash ended early":       {lines("wash; yes; next; on; off; flow 46 s; end; yes; back"), lines("W; y; enter; space; space; f; =46 s; enter; x; y; esc")},
	}
}

// Each job wholly by words leaves every file as the screens leave it by keys.
func TestEveryJobByWordsWritesWhatTheScreensWrite(t *testing.T) {
	for name, job := range jobs() {
		t.Run(name, func(t *testing.T) {
			byWords, byKeys, before := mine(t), mine(t), kept(t, mine(t))
			said := saidIn(t, byWords, job[0]...)
			for i, key := range job[1] {
				if key == "space" {
					job[1][i] = " "
				}
			}
			keyedIn(t, byKeys, job[1]...)
			words := kept(t, byWords)
			assert.Equal(t, kept(t, byKeys), words)
			assert.NotEqual(t, before, words, "the job writes something")
			assert.NotRegexp(t, "no such word|[Ww]rite it like|Not taken|Not now", said, "every word is known")
			assert.Empty(t, keysNamed(said))
			for _, r := range said {
				require.Less(t, r, rune(0x7f))
			}
		})
	}
}

// Where the input ends, work that is kept nowhere is an error; quit asks first.
func TestWhatIsNotKeptEndsInAnError(t *testing.T) {
	var out, errs bytes.Buffer
	code := run([]string{"--plain", "--dir", t.TempDir()}, atTerminal(&out, &errs, "change vehicle length 33"))
	assert.Equal(t, 1, code)
	assert.Contains(t, errs.String(), "not all is kept: you changed the example")

	out.Reset()
	code = run([]string{"--plain", "--dir", t.TempDir()}, atTerminal(&out, &errs, "change vehicle length 33", "quit", "no", "quit", "yes"))
	assert.Zero(t, code)
	assert.Equal(t, 2, strings.Count(out.String(), "This would be lost: you changed the example"))
}

// A word that is meant for one kind of line takes nothing else away.
func TestOnlyAFaceIsDroppedAsAFace(t *testing.T) {
	dir := mine(t)
	before := kept(t, dir)
	said := saidIn(t, dir, "rig", "show Marigold", "drop face 3", "back", "back", "short", "take front")
	assert.Contains(t, said, "length is none of the faces")
	assert.Contains(t, said, "front is none of the ways out")
	assert.Equal(t, before, kept(t, dir))
}

// An empty line tells how things stand on every page: in the change of resin, the step.
func TestAnEmptyLineTellsTheStepAgain(t *testing.T) {
	said := saidIn(t, mine(t), "bed", "resin", "next", "next", "", "back")
	assert.Equal(t, 2, strings.Count(said, "Close the tap. Open the sprayer until nothing comes"))
}

// Where a value is asked for, a word of the page that can be no value is heard as the
// word.
func TestAWordIsHeardWhereAValueIsAskedFor(t *testing.T) {
	dir := mine(t)
	said := saidIn(t, dir, "day", "start earlier", "start 7:45", "start noonish", "undo", "back")
	assert.Contains(t, said, "07:45 to")
	assert.Contains(t, said, "Undone: ")
	assert.NotContains(t, said, `Read: "undo"`)
	assert.NotContains(t, said, `Read: "start 7:45"`)
}

// Where a name or a note is asked for, a word of the page is the word; in quotes, and
// behind a word that takes it, it is the value.
func TestAWordIsNoNameUnlessItIsQuoted(t *testing.T) {
	for _, word := range []string{"undo", "help", "back", "quit", "rig", "walk bed", "list bed", "why flow cap", "place Fernwater", "change vehicle length 41 ft"} {
		dir := mine(t)
		said := saidIn(t, dir, "change vehicle length 33 ft", "new place", word, "", "quit")
		assert.NotContains(t, kept(t, dir)["places.toml"], `name = "`+word+`"`)
		if word != "back" && word != "quit" {
			assert.Contains(t, said, `in quotes, "`+word+`" is the value.`)
		}
	}
	for _, lines := range [][]string{{"new place", `"undo"`}, {"new place undo"}, {`new place "undo"`}} {
		dir := mine(t)
		saidIn(t, dir, append(lines, "", "quit")...)
		assert.Contains(t, kept(t, dir)["places.toml"], `name = "undo"`)
	}
	dir := mine(t)
	saidIn(t, dir, "bed", "salt", "change salt 4 lb", `change note "windy" at first, then "calm"`, "write")
	assert.NotContains(t, kept(t, dir)["log.toml"], `note = "windy`)
	saidIn(t, dir, "bed", "salt", "change salt 4 lb", `change note "calm"`, "write")
	assert.Contains(t, kept(t, dir)["log.toml"], `note = "calm"`)
	dir = mine(t)
	saidIn(t, dir, "new wash", "place by the river")
	assert.Contains(t, kept(t, dir)["washes/place-by-the-river.toml"], `name = "place by the river"`, "no place is called so")
}

// A line is called by its first word, and by the step that it is in, too.
func TestALineIsCalledByItsFirstWord(t *testing.T) {
	dir := mine(t)
	said := saidIn(t, dir, "change low 51 F", "change day date 2026-07-03", "change day high 79 F", "change water 70 F", "quit")
	assert.Contains(t, said, "Several are called so: say the number, or more of the name, of")
	wash := ""
	for name, text := range kept(t, dir) {
		if strings.HasPrefix(name, "washes/") {
			wash += text
		}
	}
	for _, line := range []string{`low = "51 F"`, `date = "2026-07-03"`, `high = "79 F"`} {
		assert.Contains(t, wash, line)
	}
}

// A walk ends with a word, which is done; the value of its line stays.
func TestAWordInAWalkIsDone(t *testing.T) {
	dir := mine(t)
	said := saidIn(t, dir, "bed", "wash", "change DI water 25", "change note", "write", "strike 1", "yes", "back", "rig", "show Marigold", "walk", "help", "undo", "walk", `"undo"`)
	assert.Contains(t, kept(t, dir)["rig.toml"], `name = "undo"`)
	assert.Contains(t, kept(t, dir)["log.toml"], `kind = "wash"`)
	assert.NotContains(t, kept(t, dir)["log.toml"], "note")
	assert.Contains(t, said, "Write a value like our coach.")
}

// Where nothing was stated, what is asked for is told again, and why.
func TestNoNumberIsNoReading(t *testing.T) {
	assert.Contains(t, saidIn(t, mine(t), "bed", "reading", "-", "", "back"), "A number is needed, like 6 ppm NaCl.")
}

// What a person wrote is said as it was written, also where it reads like a message that
// names a key.
func TestWhatAPersonWroteIsSaidAsItIs(t *testing.T) {
	const name = "old dock. u brings it back; esc leaves it"
	said := saidIn(t, mine(t), "rig", "rename Fernwater to "+name, "back", "list dock", "take out "+name, "yes", "undo")
	assert.Contains(t, said, " "+name+": ")
	assert.Contains(t, said, name+" is taken out; undo brings it back.")
}

// A message that names keys of a screen names the words by which they are had here.
func TestMessagesNameWordsAndNotKeys(t *testing.T) {
	said := saidIn(t, mine(t), "bed", "resin", "back", "back", "compare", "take 2")
	assert.Contains(t, said, "next goes on with the change; back leaves all as it is.")
	assert.Contains(t, said, "wash adds one")
	assert.Contains(t, said, "undo takes it back.")
	assert.NotRegexp(t, `(^|[ .;])(u|w|e|esc) (takes|brings|adds|tells|leaves)`, said)
}

// What an answer says can be asked where it comes from, by the name that it says.
func TestEveryNumberThatIsSaidCanBeAskedFor(t *testing.T) {
	said := saidIn(t, mine(t), "trip", "why order by", "why chance", "why changes", "why cost", "why to carry", "back",
		"bed", "why left", "why ends", "why order by", "why cost", "back", "why chance of lasting", "why flow cap", "day", "why recommended start")
	assert.NotContains(t, said, "no such number")
	assert.Contains(t, said, "order by: 2026-05-22. Order resin")
	assert.Contains(t, said, "The lead time is taken off that day.")
	assert.Contains(t, said, "order by: no date yet (10 days before it ends)")
}

// A trip and a wash whose days are over are told as such, before all that was.
func TestWhatIsPastIsSaidFirst(t *testing.T) {
	dir := mine(t)
	var out, errs bytes.Buffer
	s := atTerminal(&out, &errs, "trip", "back")
	s.clock = stopped{noon.AddDate(1, 0, 0)}
	require.Zero(t, run([]string{"--plain", "--dir", dir}, s), errs.String())
	assert.Regexp(t, `Saturday wash: .*, 2026-05-16\. This day is past: \d+ days ago\. State the day of the wash\.\n`, out.String())
	assert.Contains(t, out.String(), "This trip is over: its last day was 2026-06-27.")
}

// What a person stated is told as stated, and where.
func TestWhatIsStatedIsToldAsStated(t *testing.T) {
	said := saidIn(t, t.TempDir(), "fresh", "walk needed", "33 ft", "12 ft", "0.5 ft3", "210 ppm NaCl", "why scale of the ppm shown", "full", "list pushed")
	assert.Contains(t, said, "YOURS     scale of the ppm shown: NaCl. you stated it")
	assert.Regexp(t, `YOURS +scale of the ppm shown: NaCl`, said[strings.Index(said, "What this rests on"):])
	assert.Contains(t, said, "slide-outs pushed: assumed in")
	said = saidIn(t, mine(t), "bed", "reading 1 ppm NaCl", "yes", "unknown", "back", "why bed gallons so far")
	assert.Contains(t, said, "bed gallons so far: 126 gal. stated in your rig, and your log from there on", "120 gal are the rig's, the flush of the reading is the log's")
}

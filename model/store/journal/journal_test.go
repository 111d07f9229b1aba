package journal

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model"
)

func newPath(t *testing.T) string { return filepath.Join(t.TempDir(), "log.toml") }

func write(t *testing.T, path, text string) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
}

func read(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(data)
}

func appendTold(t *testing.T, path string, entries ...model.Entry) []string {
	t.Helper()
	told, err := Open(path).Append(entries...)
	require.NoError(t, err)
	return said(told)
}

func TestALogThatIsNotThereIsEmpty(t *testing.T) {
	path := filepath.Join(t.TempDir(), "data", "log.toml")
	assert.Empty(t, loadWhole(t, path))
	assert.NoDirExists(t, filepath.Dir(path), "reading makes nothing")

	appendTold(t, path, sample(t, "one"))
	assert.Len(t, loadWhole(t, path), 1)
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode().Perm())
	info, err = os.Stat(filepath.Dir(path))
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o700), info.Mode().Perm())
}

func TestTheFormOfAnEntry(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, sample(t, "one"))
	const block = `
[[entry]]
kind = "reading"
at = 2026-06-12T08:15:00-06:00
point = "after bed"
reading = "2 ppm NaCl"
bed = "half-foot tank"
flow = "1.3 gpm"
flushed = "yes"
note = "a \"dim\" day \\ é"
id = "one"
`
	assert.Equal(t, header+block, read(t, path))
	appendTold(t, path, sample(t, "two"), sample(t, "three"))
	two, three := strings.Replace(block, "one", "two", 1), strings.Replace(block, "one", "three", 1)
	assert.Equal(t, header+block+two+three, read(t, path))
	assert.Len(t, loadWhole(t, path), 3)
}

func TestWhatIsAppendedIsReadBack(t *testing.T) {
	dir := t.TempDir()
	n := 0
	rapid.Check(t, func(rt *rapid.T) {
		n++
		path := filepath.Join(dir, string(rune('a'+n%26))+"log.toml")
		_ = os.Remove(path)
		entries := drawEntries(rt)
		half := len(entries) / 2
		for _, part := range [][]model.Entry{entries[:half], entries[half:]} {
			told, err := Open(path).Append(part...)
			require.NoError(rt, err)
			require.Empty(rt, told)
		}
		log, faults := Open(path).Load()
		require.Empty(rt, said(faults))
		assert.Equal(rt, model.NewLog(entries), log)
	})
}

func TestAnEntryThatCannotBeReadBackIsRefused(t *testing.T) {
	path := newPath(t)
	bad := sample(t, "one")
	bad.Body.(*model.Sample).Place = "two\nlines"
	_, err := Open(path).Append(bad)
	require.ErrorContains(t, err, "would not be read back as it is")
	_, err = Open(path).Append(model.Entry{ID: "x", Body: &model.Regeneration{}})
	require.ErrorContains(t, err, "is not complete: at: is missing")
	assert.NoFileExists(t, path)
}

// handMade is a log that a person has worked on, with its faults.
const handMade = `# mine
format = 1
owner = "me"

[[entry]]
kind = "salt"
at = 2026-06-01T08:00:00-06:00
softener = "portable softener"
id = "a1"
# rained all day

  [[ entry ]] # typed in bed
id = 'a2'
kind = "salt"
at = 2026-06-02T08:00:00-06:00
softener = """portable softener"""
salt = "4 lb"

[[entry]]
kind = "salt"
at = 2026-06-03T08:00:00-06:00
softener = "portable softener"
sallt = "4 lb"
id = "a3"

[[entry]]
kind = "salt"
at = 2026-06-04T08:00:00-06:00
softener = "portable softener"
salt = "4"
id = "a4"

[[entry]]
kind = "salt"
at = 2026-06-05T08:00:00-06:00
softener = "portable softener
id = "a5"

[[entry]]
kind = "snow"
at = 2026-06-06T08:00:00-06:00
id = "a6"

[[entry]]
kind = "salt"
at = 2026-06-07T08:00:00-06:00
softener = "portable softener"

[[entry]]
kind = "salt"
at = 2026-06-08T08:00:00-06:00
id = "a8"

[[entry]]
kind = "salt"
at = 2026-06-09T08:00:00-06:00
softener = "portable softener"
salt = "4 lb"
salt = "5 lb"
id = "a9"
`

func TestAHandEditedLog(t *testing.T) {
	path := newPath(t)
	write(t, path, handMade)
	log, faults := Open(path).Load()
	var ids []string
	for _, e := range log {
		ids = append(ids, e.ID)
	}
	unnamed := log[3].ID
	assert.Equal(t, []string{"a1", "a2", "a3", unnamed}, ids)
	assert.Equal(t, []string{
		"log.toml:3: owner: is not known here; it is kept and not used",
		"log.toml:12: this entry was written or changed by hand; it counts as it stands",
		"log.toml:23: sallt: is no field of this kind of entry; it is kept and not used; did you mean salt?",
		`log.toml:30: salt: "4" has no unit; write the mass like 4 lb (units: kg, g, lb, oz); the entry is left out until this is put right`,
		"log.toml:36: cannot be read: basic strings cannot have new lines; the entry is left out until this is put right",
		`log.toml:40: kind: "snow" is no kind of entry; kind of entry: wash, stage, reading, resin, salt or correction; the entry is left out until this is put right`,
		"log.toml:44: id: is missing; the entry is known as " + unnamed + " as long as nothing in it is changed",
		`log.toml:49: softener: is missing; write for example softener = "bay softener"; the entry is left out until this is put right`,
		"log.toml:59: salt: is stated twice; keep one; the entry is left out until this is put right",
	}, said(faults))

	assert.Empty(t, appendTold(t, path, sample(t, "one")))
	assert.True(t, strings.HasPrefix(read(t, path), handMade), "what a person wrote keeps every byte")
	more, _ := Open(path).Load()
	assert.Len(t, more, len(log)+1)
	assert.Equal(t, said(faults), said(Check(path)))
}

func TestANewerLogIsLeftAlone(t *testing.T) {
	path := newPath(t)
	text := "format = 2\n\n[[entry]]\nkind = \"wash\"\n"
	write(t, path, text)
	log, faults := Open(path).Load()
	assert.Empty(t, log)
	const why = "log.toml:1: format = 2: this log is from a newer washeve; this one reads format = 1, so bring the program up to date"
	assert.Equal(t, []string{why}, said(faults))
	_, err := Open(path).Append(sample(t, "one"))
	require.ErrorContains(t, err, why)
	assert.Equal(t, text, read(t, path))
	assert.Len(t, listed(t, path), 2, "nothing is set aside")
}

func TestFormatMissingOrWrong(t *testing.T) {
	path := newPath(t)
	block := encode(sample(t, "one"))
	write(t, path, block)
	log, faults := Open(path).Load()
	assert.Len(t, log, 1)
	assert.Equal(t, []string{"log.toml:1: format: is missing, and taken as 1; write format = 1 at the top of the file"}, said(faults))
	assert.Empty(t, appendTold(t, path, sample(t, "two")))

	write(t, path, "format = \"one\"\n"+block)
	log, faults = Open(path).Load()
	assert.Empty(t, log)
	assert.Equal(t, []string{`log.toml:1: format: "one" is no format; write format = 1`}, said(faults))
}

func TestFilesThatAreNoLog(t *testing.T) {
	path := newPath(t)
	write(t, path, "format = 1\n# \xff\n")
	_, faults := Open(path).Load()
	assert.Equal(t, []string{"log.toml:2: is not text in UTF-8; save the file as plain text in UTF-8"}, said(faults))

	require.NoError(t, os.Remove(path))
	require.NoError(t, os.Mkdir(path, 0o700))
	_, faults = Open(path).Load()
	assert.Equal(t, []string{"log.toml: is no ordinary file; a text file is needed"}, said(faults))
}

func TestNothingInTheLogIsObeyedByATerminal(t *testing.T) {
	path := newPath(t)
	write(t, path, "format = 1\n[[entry]]\n\"\\u001b[31mred\" = 1\nkind = \"\\u001b[2J\"\nid = \"a\"\n")
	_, faults := Open(path).Load()
	require.NotEmpty(t, faults)
	assert.NotContains(t, strings.Join(said(faults), ""), "\x1b")
}

func TestWindowsLineEndsAndTheMarkOfItsEditor(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, sample(t, "one"), sample(t, "two"))
	write(t, path, byteOrderMark+strings.ReplaceAll(read(t, path), "\n", "\r\n"))
	assert.Len(t, loadWhole(t, path), 2)
	appendTold(t, path, sample(t, "three"))
	assert.Len(t, loadWhole(t, path), 3)
}

func TestALinkIsFollowed(t *testing.T) {
	path := newPath(t)
	real := filepath.Join(t.TempDir(), "real.toml")
	write(t, real, header)
	require.NoError(t, os.Symlink(real, path))
	appendTold(t, path, sample(t, "one"), sample(t, "two"))
	appendTold(t, path, sample(t, "three"))
	assert.Len(t, loadWhole(t, real), 3)

	require.NoError(t, os.Remove(real))
	_, err := Open(path).Append(sample(t, "four"))
	require.ErrorContains(t, err, "it is a link to "+real+", which is not there")
}

func listed(t *testing.T, path string) []string {
	t.Helper()
	there, err := os.ReadDir(filepath.Dir(path))
	require.NoError(t, err)
	var names []string
	for _, e := range there {
		names = append(names, e.Name())
	}
	return names
}

package bed

import (
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/journal"
	"washeve/planner"
	"washeve/ui/entry"
)

// On failure what is stated stays on the screen, with the reason, and can be
// written again.
func TestFailedAppendKeepsTheEntry(t *testing.T) {
	for name, script := range map[string]string{"reading": "r 1 2 enter y", "form": "s 4 enter w"} {
		o := seasonOptions(t)
		o.book().Fail = errFull
		before := len(o.book().Kept)
		p := play(t, o, script)
		assert.Contains(t, p.Seen(), "Not written, but still here: no space left on the disk", name)
		assert.Error(t, p.M.Leave(), name)
		assert.Len(t, o.book().Kept, before)
		o.book().Fail = nil
		p.Keys(map[string]string{"reading": "y", "form": "w"}[name])
		assert.Len(t, o.book().Kept, before+1, name)
		assert.NoError(t, p.M.Leave(), name)
	}
	o := seasonOptions(t)
	o.book().Fail = errFull
	p := play(t, o, "r 9 enter y esc esc")
	assert.NoError(t, p.M.Leave(), "let go of on purpose")
	p.Keys("x y")
	assert.Contains(t, p.Seen(), "no space left")
}

// What the screen makes up itself, planned amounts and flows, reads back as it
// was written.
func TestEveryEntryIsWrittenByTheJournal(t *testing.T) {
	for _, metric := range []bool{false, true} {
		o := seasonOptions(t)
		j := journal.Open(filepath.Join(t.TempDir(), "log.toml"))
		o.Logger = onDisk{j}
		plan, err := planner.Make(o.Rig, o.Places, o.Wash)
		require.NoError(t, err)
		o.Answer = func() (planner.Plan, *planner.Past, error) { return plan, nil, nil }
		script := "w '30 gal' enter w s '4 lb' enter w r 1 2 enter y r 3 enter f n"
		if metric {
			script = "m " + script
		}
		p := play(t, o, script)
		assert.NoError(t, p.M.kept)
		log, faults := j.Load()
		assert.Empty(t, faults)
		assert.Len(t, log, 4)
	}
}

// onDisk is a log in a file.
type onDisk struct{ *journal.Journal }

func (d onDisk) Append(entries ...model.Entry) error {
	_, err := d.Journal.Append(entries...)
	return err
}

func (d onDisk) Log() model.Log {
	log, _ := d.Load()
	return log
}

func TestStrikingOutAndBack(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "/ '23 ppm' enter x")
	assert.Contains(t, p.Seen(), "Strike out the reading of 2026-09-12")
	p.Keys("n")
	assert.Len(t, o.book().Kept, 62)
	p.Keys("x y")
	assert.Contains(t, p.Seen(), "struck out: 23 ppm NaCl", "it stays to be seen")
	for _, r := range p.M.past.Present().Readings {
		assert.NotEqual(t, 23.0, r.PPM, "it does not count")
	}
	p.Keys("x y")
	assert.Contains(t, p.Seen(), "It counts again.")
	assert.NotContains(t, p.Seen(), "struck out: 23")
	found := false
	for _, r := range p.M.past.Present().Readings {
		found = found || r.PPM == 23
	}
	assert.True(t, found)
}

func TestUndoStrikesOutWhatWasWritten(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "u")
	assert.Contains(t, p.Seen(), "Not now: nothing was written since the program began")
	given := p.M.past.Present().Gallons
	p.Keys("w 3 0 enter w")
	assert.Greater(t, p.M.past.Present().Gallons, given)
	p.Keys("u")
	assert.Contains(t, p.Seen(), "Strike out the wash of 2026-09-13")
	p.Keys("n")
	assert.Greater(t, p.M.past.Present().Gallons, given, "it asks first")
	p.Keys("u y")
	assert.InDelta(t, float64(given), float64(p.M.past.Present().Gallons), 1e-12)
	assert.Contains(t, p.Seen(), "Undone: the wash of 2026-09-13")
	p.Keys("u")
	assert.Contains(t, p.Seen(), "nothing was written")
}

// What was written before the screen was left, or on another one, is undone as well; what
// was struck out by hand meanwhile is passed over.
func TestUndoReachesAllThatThisRunWrote(t *testing.T) {
	o := seasonOptions(t)
	o.Deeds = &entry.Deeds{}
	play(t, o, "w 3 0 enter w s 4 enter w esc")
	p := play(t, o, "u")
	assert.Contains(t, p.Seen(), "Strike out the salt of")
	p.Keys("n")
	for row, ok := p.M.list.here(); ok && row.Entry.Kind() != model.SaltKind; row, ok = p.M.list.here() {
		p.Keys("down")
	}
	p.Keys("x y u")
	assert.Contains(t, p.Seen(), "Strike out the correction of")
	p.Keys("y u y")
	assert.Contains(t, p.Seen(), "Undone: the salt of")
	p.Keys("u y u")
	assert.Contains(t, p.Seen(), "Not now: nothing was written since the program began")
}

func TestAnUndoThatCannotBeWrittenIsNotLost(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "s 4 enter w")
	o.book().Fail = errFull
	p.Keys("u y")
	assert.Contains(t, p.Seen(), "no space left")
	o.book().Fail = nil
	p.Keys("u y")
	assert.Contains(t, p.Seen(), "Undone: the salt of")
}

func TestPuttingRight(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "/ '23 ppm' enter enter")
	assert.Contains(t, p.Seen(), "Put right: reading of 2026-09-12")
	p.Keys("w")
	assert.Contains(t, p.Seen(), "Nothing was changed.")
	assert.Regexp(t, `› reading +23 ppm NaCl`, play(t, o, "/ '23 ppm' enter enter").Seen(), "the hand begins on what a reading is about")
	p.Keys("enter enter ctrl+u '2 ppm NaCl' enter w")
	assert.Contains(t, p.Seen(), "Put right; both can be seen.")
	p.Keys("esc")
	c := o.last().Body.(*model.Correction)
	assert.Equal(t, []model.Change{{Key: "reading", Text: "2 ppm NaCl"}}, c.Changes)
	assert.Contains(t, play(t, o, "/ 'corrects the' enter").Seen(), "correction corrects the reading of 2026-09-12: reading 2 ppm NaCl")
	assert.Contains(t, play(t, o, "/ 'corrected: 2 ppm' enter").Seen(), "corrected: 2 ppm NaCl")
}

// What is put right stays under the hand, as a correction is a line of its own above it; so
// does what was found, when the search is over.
func TestTheHandStaysOnWhatIsPutRight(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "down down down down")
	before, _ := p.M.list.here()
	require.NotEmpty(t, before.Entry.ID)
	p.Keys("x y")
	after, _ := p.M.list.here()
	assert.Equal(t, before.Entry.ID, after.Entry.ID)
	assert.Equal(t, model.Struck, after.Standing)
	p = play(t, o, "/ 'fernwater' enter down")
	before, _ = p.M.list.here()
	p.Keys("esc")
	after, _ = p.M.list.here()
	assert.Equal(t, before.Entry.ID, after.Entry.ID)
}

// At 80 x 24 the line in hand is always seen, and when it was at the first glance.
func TestTheLineInHandIsSeen(t *testing.T) {
	for kind, at := range map[string]string{"wash": "w", "reading": "n enter"} {
		p := play(t, seasonOptions(t), at)
		assert.Regexp(t, `\n[ ›>]+when +2026-09-13 08:00`, p.Seen(), kind)
		assert.Regexp(t, `A new entry: `+kind+` +line 1 of \d+`, p.Seen(), kind)
		labels := map[string]bool{}
		for range 30 {
			here := regexp.MustCompile(`\n› (\S.{22})`).FindStringSubmatch(p.Seen())
			require.NotNil(t, here, "%s:\n%s", kind, p.Seen())
			labels[here[1]] = true
			p.Keys("down")
		}
		assert.Contains(t, p.Seen(), "› log number", kind)
		assert.Regexp(t, `line (\d+) of `+strconv.Itoa(len(labels))+`\n`, p.Seen(), kind)
	}
}

// A price is known before the first gallon, and then it is no lack.
func TestTheCostOfAFillThatGaveNothingYet(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "n down enter w")
	require.IsType(t, &model.Refill{}, o.last().Body)
	assert.Contains(t, p.Seen(), "$185.00  for this fill")
	assert.NotContains(t, p.Seen(), "state the price")
}

// A wash of before a reading that stated the fill's gallons is within them, and that is said.
func TestAWashWithinWhatWasStatedLater(t *testing.T) {
	o := seasonOptions(t)
	stated := reading("zz1", 13, 23)
	stated.Body.(*model.Sample).SoFar = quantity.Some(300 * quantity.Gallon)
	require.NoError(t, o.book().Append(stated))
	o.Clock = func() time.Time { return time.Date(2026, 9, 20, 8, 0, 0, 0, time.UTC) }
	p := play(t, o, "w '30 gal' enter down '2026-09-12 20:00' enter w")
	assert.Contains(t, p.Seen(), "Written. Its DI water is within the 300 gal that were stated later.")
	row, _ := p.M.list.here()
	assert.Equal(t, "typed0001", row.Entry.ID, "the hand is on what was written")
	p = play(t, o, "w '30 gal' enter down '2026-09-19 20:00' enter w")
	assert.NotContains(t, p.Seen(), "stated later")
	assert.Contains(t, p.Seen(), "330 gal given")
}

// Gallons that the rig states count beside those of the first entry of a bed: of an earlier
// day that is told, with what to do; of today, or where the log knows the bed, it is not.
func TestTheFirstEntryTellsOfTheGallonsOfTheRig(t *testing.T) {
	const told = "The 120 gal so far that the rig states of the bed count as before it; if this wash is among them, state 100 gal there."
	spaced := func(p *player) string { return strings.Join(strings.Fields(p.Seen()), " ") }
	p := play(t, options(nil), "w '20 gal' enter down '2026-09-05 10:00' enter w")
	assert.Contains(t, spaced(p), told)
	p.Keys("w '20 gal' enter down '2026-09-04 10:00' enter w")
	assert.NotContains(t, spaced(p), "that the rig states", "told once")
	assert.NotContains(t, spaced(play(t, options(nil), "w '20 gal' enter w")), "that the rig states")
	assert.NotContains(t, spaced(play(t, seasonOptions(t), "w '20 gal' enter down '2026-09-05 10:00' enter w")), "that the rig states")
}

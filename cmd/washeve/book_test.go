package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store"
	"washeve/model/store/fault"
	"washeve/ui/entry"
)

// seasonBook is a book of the invented season, read beside the screens.
func seasonBook(t *testing.T) (*book, library) {
	t.Helper()
	return seasonBookIn(t, t.TempDir())
}

func seasonBookIn(t *testing.T, dir string) (*book, library) {
	t.Helper()
	log, err := os.ReadFile("../../testdata/season/log.toml")
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, logFile), log, 0o600))
	p := &program{streams: streams{clock: stopped{noon}, errs: &bytes.Buffer{}, env: func(string) string { return "" }}, dir: dir}
	return p.bookBeside(), library{Library: store.Example()}
}

// learns lets the work beside run until nothing is due.
func learns(t *testing.T, b *book, again func()) (rounds int) {
	t.Helper()
	for ; ; rounds++ {
		require.Less(t, rounds, 50, "learning comes to an end")
		cmd := b.learn()
		if cmd == nil {
			return rounds
		}
		if told, ok := cmd().(entry.Learned); ok {
			require.NoError(t, told.Err)
			again()
		}
	}
}

func TestTheAnswerBesideIsThatOfACommand(t *testing.T) {
	b, lib := seasonBook(t)
	first, err := b.plan(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.Equal(t, entry.Unread, b.lag(), "the first frame does not wait")
	learns(t, b, func() {})
	assert.Equal(t, entry.UpToDate, b.lag())
	beside, err := b.plan(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.NotEqual(t, first.Bed.Remaining, beside.Bed.Remaining, "the log teaches something")

	atOnce := &book{today: b.today, journal: b.journal, read: true, log: b.Log()}
	plain, err := atOnce.plan(lib.Rig, lib.Places, lib.Washes[0].Wash)
	require.NoError(t, err)
	assert.Equal(t, plain.Bed.Remaining, beside.Bed.Remaining)
}

// What another program has written into the log is found while the hand rests, once.
func TestAnEntryOfAnotherProgramIsFoundAtRest(t *testing.T) {
	b, lib := seasonBook(t)
	assert.Nil(t, b.fresh(), "the log is not read yet")
	learns(t, b, func() { b.past(lib.Rig, lib.Places) })
	b.load()
	assert.Nil(t, b.fresh())
	done := &model.WashDone{Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon)}
	_, err := b.journal.Append(model.Entry{ID: "theirs", At: model.MomentOf(noon), Body: done})
	require.NoError(t, err)
	before := len(b.Log())
	assert.Equal(t, entry.Learned{}, b.fresh())
	assert.Len(t, b.Log(), before+1)
	assert.Nil(t, b.fresh(), "once")

	require.NoError(t, b.Append(model.Entry{ID: "mine", At: model.MomentOf(noon), Body: done}))
	assert.Nil(t, b.fresh(), "what is written here is known")
	assert.Len(t, b.Log(), before+2)
}

// What a person has taken out of the log's file stays out, also where the log is being read
// beside the screens while all files are read anew.
func TestALineTakenOutByHandStaysOutOfAReadingUnderWay(t *testing.T) {
	dir := t.TempDir()
	b, _ := seasonBookIn(t, dir)
	path := filepath.Join(dir, logFile)
	done := model.Entry{ID: "slip", At: model.MomentOf(noon), Body: &model.WashDone{Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon)}}
	before, err := os.ReadFile(path)
	require.NoError(t, err)
	_, err = b.journal.Append(done)
	require.NoError(t, err)
	underWay := b.reading()
	_, held := underWay.log.Find("slip")
	require.True(t, held)
	require.NoError(t, os.WriteFile(path, before, 0o600))
	b.renew()
	b.take(underWay)
	_, held = b.Log().Find("slip")
	assert.False(t, held)
	assert.Nil(t, b.fresh(), "and what the file holds is known")
	_, err = b.journal.Append(done)
	require.NoError(t, err)
	assert.NotNil(t, b.fresh(), "what comes later counts")
}

// The same by many at once, for the race detector.
func TestReadingsBesideRenewals(t *testing.T) {
	b, _ := seasonBook(t)
	b.load()
	entries := len(b.Log())
	var all sync.WaitGroup
	for range 4 {
		all.Go(b.reads)
		all.Go(b.renew)
		all.Go(func() { b.fresh() })
	}
	all.Wait()
	assert.Len(t, b.Log(), entries)
}

// The example becomes the person's own while the log is looked at beside the screens.
func TestMakingTheExampleOnesOwnWhileTheLogIsLookedAt(t *testing.T) {
	b, lib := seasonBook(t)
	b.load()
	b.example = true
	k := &keeper{store: store.Open(t.TempDir()), book: b}
	looked := make(chan struct{})
	go func() {
		defer close(looked)
		b.fresh()
	}()
	require.NoError(t, k.Save(lib.Rig, lib.Places, lib.Washes[0].Wash))
	<-looked
	assert.NoError(t, b.Append(model.Entry{ID: "mine", At: model.MomentOf(noon), Body: &model.WashDone{Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon)}}))
}

// What is written while the log is read is in the log once, and counts.
func TestAnEntryWhileTheLogIsRead(t *testing.T) {
	b, lib := seasonBook(t)
	b.past(lib.Rig, lib.Places)
	cmd := b.learn()
	require.NotNil(t, cmd)
	done := &model.WashDone{Bed: "half-foot tank", DI: quantity.Some(30 * quantity.Gallon)}
	require.NoError(t, b.Append(model.Entry{ID: "mine", At: model.MomentOf(noon), Body: done}))
	require.NotEmpty(t, b.Log())
	cmd()
	b.past(lib.Rig, lib.Places) // as a screen does that is told of an entry
	learns(t, b, func() { b.past(lib.Rig, lib.Places) })
	found := 0
	for _, e := range b.Log() {
		if e.ID == "mine" {
			found++
		}
	}
	assert.Equal(t, 1, found)
	assert.Greater(t, len(b.Log()), 50, "and so is the rest")
	var drawn []model.Moment
	for _, d := range b.past(lib.Rig, lib.Places).Bed("half-foot tank").Draws {
		drawn = append(drawn, d.At)
	}
	assert.Contains(t, drawn, model.MomentOf(noon))
}

// Two screens that ask by different rigs do not set each other off for ever.
func TestLearningOfSeveralRigsEnds(t *testing.T) {
	b, lib := seasonBook(t)
	other := lib.Rig
	other.Beds = append([]model.Bed(nil), other.Beds...)
	other.Beds[0].Resin = quantity.Some(1 * quantity.CubicFoot)
	ask := func() {
		b.past(lib.Rig, lib.Places)
		b.past(other, lib.Places)
	}
	ask()
	assert.LessOrEqual(t, learns(t, b, ask), 4)
	assert.Equal(t, entry.UpToDate, b.lag())
	assert.NotEqual(t, b.past(lib.Rig, lib.Places), b.past(other, lib.Places))
}

// A list that was emptied is learned for as one that never held anything.
func TestLearningOfARigWithoutItsSoftenerEnds(t *testing.T) {
	b, lib := seasonBook(t)
	rig := lib.Rig
	rig.Softeners = rig.Softeners[:0]
	b.past(rig, lib.Places)
	learns(t, b, func() { b.past(rig, lib.Places) })
	assert.Equal(t, entry.UpToDate, b.lag())
	rig.Softeners = nil
	b.past(rig, lib.Places)
	assert.Equal(t, entry.UpToDate, b.lag())
}

// A log that becomes unreadable while it is shown is told when it is found, once; what was
// read stays, and at the end only what still holds is told.
func TestALogThatBecomesUnreadableIsToldWhenItIsFound(t *testing.T) {
	dir := t.TempDir()
	b, _ := seasonBookIn(t, dir)
	path := filepath.Join(dir, logFile)
	whole, err := os.ReadFile(path)
	require.NoError(t, err)
	b.load()
	entries := len(b.Log())
	newer := bytes.Replace(whole, []byte("format = 1\n"), []byte("format = 9\n"), 1)
	const before = "The log cannot be read any more; the answer is by what was read before: log.toml:"
	for _, c := range []struct {
		spoil func() error
		lacks string
		told  string
		held  int
	}{
		{func() error { return os.WriteFile(path, newer, 0o600) }, before, "format = 9", entries},
		{func() error { return os.WriteFile(path, append(bytes.Clone(whole), "nonsense\n"...), 0o600) }, "Not all of the log can be read; the answer is by what could be. Mend this line: log.toml:", "cannot be read", entries - 1},
		{func() error { return os.Remove(path) }, before, "was here, and is gone", entries},
	} {
		require.NoError(t, c.spoil())
		assert.Nil(t, b.fresh(), "nothing new is learned")
		told := b.unheard()
		assert.True(t, strings.HasPrefix(told, c.lacks), told)
		assert.Contains(t, told, c.told)
		assert.Len(t, b.Log(), entries)
		assert.Nil(t, b.fresh())
		assert.Empty(t, b.unheard(), "once")
		assert.True(t, fault.HasErrors(b.faultsRead()))
		b.renew()
		assert.Contains(t, b.unheard(), c.told, "and when all is read anew")
		assert.Equal(t, c.held, len(b.Log()), "of a log that cannot be read nothing is let go")
		require.NoError(t, os.WriteFile(path, whole, 0o600))
		assert.False(t, fault.HasErrors(b.faultsRead()), "what was mended is told no more")
		assert.Empty(t, b.unheard())
	}
}

// An end that was cut off is set aside by the first reading, and told at the end though
// later ones do not meet it.
func TestWhatWasSetAsideIsToldAfterLaterReadings(t *testing.T) {
	dir := t.TempDir()
	b, _ := seasonBookIn(t, dir)
	path := filepath.Join(dir, logFile)
	whole, err := os.ReadFile(path)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, append(whole, "\n[[entry]]\nkind = \"wa"...), 0o600))
	b.load()
	b.fresh()
	b.fresh()
	require.Len(t, b.faultsRead(), 1)
	assert.Contains(t, b.faultsRead()[0].Problem, "is kept in log.torn-1.toml")
}

func TestALogThatCannotBeUsedIsToldOnce(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, logFile), []byte("format = 99\n"), 0o600))
	p := &program{streams: streams{clock: stopped{noon}, errs: &bytes.Buffer{}, env: func(string) string { return "" }}, dir: dir}
	b, lib := p.bookBeside(), library{Library: store.Example()}
	b.past(lib.Rig, lib.Places)
	told := b.learn()().(entry.Learned)
	require.ErrorContains(t, told.Err, "log.toml:1")
	b.renew()
	assert.Contains(t, b.unheard(), "The log cannot be read, and the answer is without it. Mend this line: log.toml:1")
	b.past(lib.Rig, lib.Places)
	for cmd := b.learn(); cmd != nil; cmd = b.learn() {
		assert.NoError(t, cmd().(entry.Learned).Err)
	}
}

// A long log is left alone until the first frame is drawn.
func TestALongLogWaitsForTheFirstFrame(t *testing.T) {
	dir := t.TempDir()
	long := "format = 1\n" + strings.Repeat("# much was written here by hand\n", longLog/30)
	require.NoError(t, os.WriteFile(filepath.Join(dir, logFile), []byte(long), 0o600))
	p := &program{streams: streams{clock: stopped{noon}, errs: &bytes.Buffer{}, env: func(string) string { return "" }}, dir: dir}
	b, lib := p.bookBeside(), library{Library: store.Example()}
	b.past(lib.Rig, lib.Places)
	cmd := b.learn()
	require.NotNil(t, cmd)
	assert.Nil(t, b.learn(), "one wait is enough")
	assert.IsType(t, entry.Due{}, cmd())
	learns(t, b, func() {})
	assert.Equal(t, entry.UpToDate, b.lag())
}

package model

import (
	"bytes"
	"math/rand"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"washeve/model/quantity"
)

// entry makes an entry from texts.
func entry(t require.TestingT, kind Kind, id, at string, texts map[string]string) Entry {
	e := Entry{Body: NewBody(kind)}
	fields := e.Fields()
	set := func(key, text string) {
		i := slices.IndexFunc(fields, func(f Field) bool { return f.Key == key })
		require.GreaterOrEqual(t, i, 0, key)
		require.NoError(t, fields[i].Set(text))
	}
	set("id", id)
	set("at", at)
	for key, text := range texts {
		set(key, text)
	}
	require.Empty(t, e.Faults())
	return e
}

// drawEntry draws an entry of a small world, so that identifiers and moments meet.
func drawEntry(t *rapid.T) Entry {
	id := func(label string) string { return "e" + strconv.Itoa(rapid.IntRange(0, 6).Draw(t, label)) }
	at := MomentOf(time.Unix(1780000000, 0).UTC()).Plus(rapid.Int64Range(0, 4).Draw(t, "seconds"))
	e := Entry{ID: id("id"), At: at, Body: NewBody(rapid.SampledFrom(Kinds()).Draw(t, "kind"))}
	for _, f := range e.Body.Fields() {
		switch {
		case f.Key == "of" || f.Key == "wash":
			require.NoError(t, f.Set(id(f.Key)))
		case f.Key == "new_at" || f.Key == "clear" || !f.Required && !rapid.Bool().Draw(t, f.Key):
		case len(f.Choices) > 0:
			require.NoError(t, f.Set(rapid.SampledFrom(f.Choices).Draw(t, f.Key)))
		default:
			require.NoError(t, f.Set(strings.Replace(f.Example, "5", rapid.SampledFrom([]string{"4", "5"}).Draw(t, f.Key), 1)))
		}
	}
	if c, ok := e.Body.(*Correction); ok {
		c.Strike = rapid.SampledFrom([]Answer{Yes, No}).Draw(t, "strike")
		if c.Strike == Yes {
			c.Changes = nil
		} else if len(c.Changes) == 0 {
			c.Changes = []Change{{"place", "Fernwater"}}
		}
	}
	if s, ok := e.Body.(*Sample); ok && s.Point != AfterBed {
		s.FlushWater = quantity.Opt[quantity.Volume]{}
	}
	require.Empty(t, e.Faults())
	return e
}

func drawLog(t *rapid.T, label string) Log {
	return NewLog(rapid.SliceOfN(rapid.Custom(drawEntry), 0, 8).Draw(t, label))
}

// same compares logs, of which an empty one may be nil.
func same(t *rapid.T, want, got Log, why string) {
	assert.Equal(t, append(Log{}, want...), append(Log{}, got...), why)
}

func contents(log Log) []string {
	texts := make([]string, len(log))
	for i := range log {
		texts[i] = log[i].Content()
	}
	return texts
}

func TestMergeIsAUnion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := drawLog(t, "a"), drawLog(t, "b"), drawLog(t, "c")
		ab := Merge(a, b)
		assert.Equal(t, said(ab), said(Merge(b, a)), "what it holds is commutative")
		same(t, Merge(ab, c), Merge(a, Merge(b, c)), "associative")
		same(t, a, Merge(a, a), "idempotent")
		same(t, ab, Merge(ab, b), "idempotent")
		held := ab.Holding()
		for _, e := range slices.Concat(a, b) {
			assert.True(t, held(e), "nothing is lost")
		}
		assert.LessOrEqual(t, len(ab), len(a)+len(b))
	})
}

func TestWhatCountsHangsNotOnTheOrderOfWriting(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		entries := rapid.SliceOfN(rapid.Custom(drawEntry), 1, 10).Draw(t, "entries")
		other := rapid.Permutation(entries).Draw(t, "other")
		a, b := NewLog(slices.Clone(entries)), NewLog(slices.Clone(other))
		assert.Equal(t, said(a), said(b))
		assert.Equal(t, said(a.Effective()), said(b.Effective()))
		assert.Equal(t, a.Faults(), b.Faults())
		rows := a.Rows()
		require.Len(t, rows, len(a), "every entry can be seen")
		for i := range rows {
			assert.Equal(t, a[i].Content(), rows[i].Entry.Content(), "and is as it was written")
		}
		assert.Equal(t, contents(NewLog(slices.Clone(entries))), contents(a), "resolving changes no entry")
	})
}

func TestTwoContentsOfOneIdentifierAreKeptAndTold(t *testing.T) {
	a := entry(t, SaltKind, "e1", "2026-06-12T08:00:00Z", map[string]string{"softener": "portable softener", "salt": "4 lb"})
	b := entry(t, SaltKind, "e1", "2026-06-12T08:00:00Z", map[string]string{"softener": "portable softener", "salt": "5 lb"})
	log := Merge(Log{b}, Log{a})
	require.Len(t, log, 2)
	assert.Equal(t, Log{a}, log.Effective())
	require.Len(t, log.Faults(), 1)
	assert.Contains(t, log.Faults()[0].Error(), "entry e1: two entries have this identifier")
}

func TestTheSameInOtherUnitsIsTheSame(t *testing.T) {
	a := entry(t, StageKind, "e1", "2026-06-12T08:00:00Z", map[string]string{"stage": "rinse", "used": "10 gal"})
	b := entry(t, StageKind, "e1", "2026-06-12T08:00:00Z", map[string]string{"stage": "rinse", "used": "37.85411784 L"})
	assert.Len(t, Merge(Log{a}, Log{b}), 1)
	assert.Equal(t, said(Merge(Log{a}, Log{b})), said(Merge(Log{b}, Log{a})))
}

// wash and its corrections, at seconds of one minute.
func at(second int) string { return "2026-06-12T08:00:" + strconv.Itoa(10+second) + "-06:00" }

func correction(t *testing.T, id string, second int, of string, texts map[string]string) Entry {
	texts["of"] = of
	return entry(t, CorrectionKind, id, at(second), texts)
}

func TestCorrections(t *testing.T) {
	type texts = map[string]string
	wash := entry(t, WashKind, "w", at(0), texts{"place": "Fernwater", "di": "31 gal", "flow": "1.3 gpm"})
	flow := correction(t, "c1", 1, "w", texts{"flow": "1.5 gpm"})
	later := correction(t, "c2", 2, "w", texts{"flow": "1.6 gpm", "di": "30 gal"})
	cleared := correction(t, "c3", 3, "w", texts{"clear": "place", "new_at": "2026-06-11T08:00:00-06:00"})
	strike := correction(t, "s", 4, "w", texts{"strike": "yes"})
	undo := correction(t, "u", 5, "s", texts{"strike": "yes"})
	undoOther := correction(t, "v", 6, "c2", texts{"strike": "yes"})

	one := func(entries ...Entry) string {
		log := NewLog(entries).Effective()
		if len(log) != 1 {
			return ""
		}
		w := log[0].Body.(*WashDone)
		return strings.Join([]string{log[0].At.String(), w.Place, w.DI.Words(), w.Flow.Words()}, ", ")
	}
	assert.Equal(t, at(0)+", Fernwater, 31 gal, 1.3 gpm", one(wash))
	assert.Equal(t, at(0)+", Fernwater, 31 gal, 1.5 gpm", one(wash, flow))
	assert.Equal(t, at(0)+", Fernwater, 30 gal, 1.6 gpm", one(later, flow, wash), "the later holds")
	assert.Equal(t, "2026-06-11T08:00:00-06:00, , 30 gal, 1.6 gpm", one(wash, flow, later, cleared))
	assert.Empty(t, one(wash, strike, flow, later), "a strike wins")
	assert.Equal(t, at(0)+", Fernwater, 31 gal, 1.5 gpm", one(wash, flow, strike, undo), "and can be struck")
	assert.Equal(t, at(0)+", Fernwater, 31 gal, 1.5 gpm", one(wash, flow, later, undoOther))

	rows := NewLog([]Entry{wash, flow, later}).Rows()
	assert.Equal(t, Corrected, rows[0].Standing)
	assert.Equal(t, []string{"c1", "c2"}, rows[0].By)
	assert.Equal(t, "1.3 gpm", rows[0].Entry.Body.(*WashDone).Flow.Words(), "what was written can still be seen")
	assert.Equal(t, "1.6 gpm", rows[0].Now.Body.(*WashDone).Flow.Words())
}

func TestCorrectionsThatDoNotGoWithTheirEntry(t *testing.T) {
	type texts = map[string]string
	salt := entry(t, SaltKind, "e", at(0), texts{"softener": "portable softener"})
	for _, c := range []struct {
		correction Entry
		fault      string
	}{
		{correction(t, "c", 1, "e", texts{"flow": "1.5 gpm"}), "entry c: corrects flow, which a salt entry does not have"},
		{correction(t, "c", 1, "e", texts{"clear": "softener"}), "entry c: would leave the entry wrong: softener: is missing"},
		{correction(t, "c", 1, "x", texts{"strike": "yes"}), "entry c: corrects the entry x, which is not in this log"},
		{correction(t, "c", 1, "c", texts{"strike": "yes"}), "entry c: strikes a correction that is later than itself"},
	} {
		log := NewLog([]Entry{salt, c.correction})
		require.Len(t, log.Faults(), 1)
		assert.Contains(t, log.Faults()[0].Error(), c.fault)
		assert.Equal(t, Log{salt}, log.Effective())
	}
}

func TestAfterIsPastAllThatCorrects(t *testing.T) {
	type texts = map[string]string
	salt := entry(t, SaltKind, "e", at(5), texts{"softener": "portable softener"})
	strike := correction(t, "s", 7, "e", texts{"strike": "yes"})
	now, err := ParseMoment(at(1), nil)
	require.NoError(t, err)
	assert.Equal(t, at(8), NewLog([]Entry{salt, strike}).After("e", now).String())
	assert.Equal(t, at(1), NewLog([]Entry{salt, strike}).After("other", now).String())
}

func TestAStrikeThatContradictsItself(t *testing.T) {
	for _, c := range []Correction{{Of: "e"}, {Of: "e", Strike: Yes, Clear: []string{"flow"}}} {
		assert.Len(t, c.Contradictions(), 1)
	}
}

func TestAKeyMeansTheSameInEveryKind(t *testing.T) {
	examples := map[string]string{}
	for _, kind := range Kinds() {
		e := Entry{Body: NewBody(kind)}
		seen := map[string]bool{}
		for _, f := range e.Fields() {
			assert.False(t, seen[f.Key], "%s has %s twice", kind, f.Key)
			seen[f.Key] = true
			if known, met := examples[f.Key]; met && f.Key != "id" {
				assert.Equal(t, known, f.Example, "%s of %s", f.Key, kind)
			}
			examples[f.Key] = f.Example
		}
	}
}

func TestIdentifiers(t *testing.T) {
	m, err := ParseMoment(at(0), nil)
	require.NoError(t, err)
	chance := rand.New(rand.NewSource(1))
	seen := map[string]bool{}
	last := ""
	for i := range 1000 {
		id, err := NewID(m.Plus(int64(i)), chance)
		require.NoError(t, err)
		assert.Len(t, id, 16)
		assert.Greater(t, id, last, "identifiers sort by time")
		var e Entry
		require.NoError(t, e.Fields()[2].Set(id))
		last, seen[id] = id, true
	}
	assert.Len(t, seen, 1000)
	_, err = NewID(m, bytes.NewReader(nil))
	assert.ErrorContains(t, err, "the source of chance gave none")

	e := entry(t, SaltKind, "e", at(0), map[string]string{"softener": "portable softener"})
	assert.Equal(t, ContentID(e, 0), ContentID(Entry{At: e.At, Body: e.Body}, 0))
	assert.NotEqual(t, ContentID(e, 0), ContentID(e, 1))
}

func TestAFirstCupDoesNotCountUnlessInsistedOn(t *testing.T) {
	for _, c := range []struct {
		sample Sample
		counts bool
	}{
		{Sample{Point: AfterBed, Flushed: Yes}, true},
		{Sample{Point: AfterBed, Flushed: No}, false},
		{Sample{Point: AfterBed}, false},
		{Sample{Point: AfterBed, Flushed: No, Anyway: Yes}, true},
		{Sample{Point: AtTap}, true},
		{Sample{Point: AfterSoftener, Flushed: No}, true},
	} {
		assert.Equal(t, c.counts, c.sample.Counts(), "%+v", c.sample)
	}
}

func TestWashesGatherTheirStages(t *testing.T) {
	type texts = map[string]string
	stage := func(id string, second int, wash, water, used string) Entry {
		return entry(t, StageKind, id, at(second), texts{"wash": wash, "stage": "rinse", "water": water, "used": used, "flow": "1.3 gpm", "duration": "20 min", "bed": "half-foot tank"})
	}
	log := NewLog([]Entry{
		stage("s1", 0, "w1", "softened", "40 gal"), stage("s2", 1, "w1", "di", "20 gal"), stage("s3", 2, "w1", "di", "11 gal"),
		entry(t, WashKind, "w1", at(3), texts{"softened": "45 gal"}),
		stage("s4", 4, "w2", "di", "9 gal"),
		stage("s5", 5, "", "raw", "5 gal"),
	})
	washes := log.Washes()
	require.Len(t, washes, 3)
	assert.Equal(t, 45*quantity.Gallon, washes[0].Wash.Softened.Or(0), "what the wash says stands")
	assert.InEpsilon(t, 31, washes[0].Wash.DI.Or(0).Gallons(), 1e-9)
	assert.Equal(t, "half-foot tank", washes[0].Wash.Bed)
	assert.InEpsilon(t, 60, washes[0].Wash.Duration.Or(0).Minutes(), 1e-9)
	assert.Len(t, washes[0].Stages, 3)
	assert.False(t, washes[0].Broken)
	assert.Equal(t, []string{"w2", "s5"}, []string{washes[1].ID, washes[2].ID})
	assert.True(t, washes[1].Broken, "the lid was closed on it")
	assert.InEpsilon(t, 9, washes[1].Wash.DI.Or(0).Gallons(), 1e-9)
}

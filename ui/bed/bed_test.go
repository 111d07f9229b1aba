package bed

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/planner"
	"washeve/planner/tag"
	"washeve/ui/entry"
	"washeve/ui/internal/golden"
	"washeve/ui/internal/hands"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

var update = golden.Flag()

func TestFrames(t *testing.T) {
	hands.Frames(t, *update, func(th theme.Theme) screen.Screen {
		o := seasonOptions(t)
		o.Theme = th
		return New(o)
	}, layout.Least(), layout.Size{W: 140, H: 40})
}

func TestPlainIsASCII(t *testing.T) {
	o := seasonOptions(t)
	o.Theme = theme.New(theme.Options{Plain: true})
	for _, script := range []string{"", "r", "r 4 enter", "w", "n", "/ 's'", "x"} {
		for _, r := range play(t, o, script).Seen() {
			assert.Less(t, r, rune(0x7f), script)
		}
	}
}

// What matters is seen at 80x24.
func TestFirstFrameHasTheWholeAnswer(t *testing.T) {
	seen := play(t, seasonOptions(t), "").Seen()
	for _, words := range []string{
		"half-foot tank, 0.5 ft3, filled 2026-06-27, lot 26-0312", "219 gal given", "Tight", "about 7 in 10", "left", "85 gal", "8 in 10: 40 to 150 gal",
		"ends", "in 30 days", "order by", "cost", "$0.87", "by its end; next wash $", "limit", "●", "○ first cup, not used", "next wash", "spent", "Log: 1 of 53", "Teaches most", "4 gpm, to waste",
		"23 ppm after 219 gal is less than the 32.5 ppm expected before it",
	} {
		assert.Contains(t, seen, words)
	}
}

// The promise: at most five keys from this screen, the flush told first.
func TestReadingTakesAtMostFiveKeys(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "r")
	assert.Contains(t, p.Seen(), "let the standing water run out: 4 gal, which takes 171 s")
	p.Keys("1 2 enter y")
	const pressed = 1 + 4
	assert.LessOrEqual(t, pressed, 5)
	s := o.last().Body.(*model.Sample)
	assert.Equal(t, "12 ppm NaCl", s.Reading.Words())
	assert.Equal(t, model.Yes, s.Flushed)
	assert.Equal(t, "4 gal", s.FlushWater.Words(), "the bed has given what was run out")
	assert.Equal(t, model.No, s.Feed, "no softener is in the line")
	assert.Equal(t, "1.4 gpm", s.Flow.Words())
	assert.Equal(t, "Juniper Flats", s.Place)
	assert.Equal(t, "yellow pen", s.Pen)
	assert.NotEmpty(t, o.last().ID)
	assert.Contains(t, p.Seen(), "12 ppm NaCl written, 4 gal flushed.")
	assert.Contains(t, p.Seen(), "Log: 1 of 54")
}

func TestFirstCupIsShownAndLeftOut(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "r 2 enter n")
	assert.Contains(t, p.Seen(), "2 ppm NaCl written: a first cup, not used.")
	readings := p.M.past.Present().Readings
	assert.False(t, readings[len(readings)-1].Counts)
	assert.Contains(t, p.Page("e"), "a first cup: shown, not used")
	p.Keys("i")
	assert.Contains(t, p.Seen(), "Used anyway")
	readings = p.M.past.Present().Readings
	assert.True(t, readings[len(readings)-1].Counts, "the person insists")
	p.Keys("u y")
	readings = p.M.past.Present().Readings
	assert.False(t, readings[len(readings)-1].Counts)
}

func TestTheAnswerFollowsAnEntry(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "w 3 0 enter 4 0 enter w")
	w := o.last().Body.(*model.WashDone)
	assert.Equal(t, "30 gal", w.DI.Words())
	assert.Equal(t, "40 min", w.Duration.Words())
	assert.Equal(t, "64 gal", w.PlannedDI.Words(), "what was planned stands beside, its flush counted as in what is done")
	assert.Equal(t, "Old Goose", w.Vehicle)
	assert.Contains(t, p.Seen(), "Written.")
	assert.Nil(t, p.M.form)
	p.Keys("s 4 enter w")
	salt := o.last().Body.(*model.Regeneration)
	assert.Equal(t, "bay softener", salt.Softener)
	assert.Equal(t, "4 lb", salt.Salt.Words())
}

func TestAnyEntryOfAnyDay(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "n 3")
	assert.Contains(t, p.Seen(), "A new entry: reading")
	p.Keys("enter 1 '310' enter")
	p.Keys("w")
	s := o.last().Body.(*model.Sample)
	assert.Equal(t, model.AtTap, s.Point)
	assert.Equal(t, "310 ppm NaCl", s.Reading.Words())
	assert.Contains(t, p.Seen(), "Written. The plan goes on by the 240 ppm NaCl of the place.")
	p.Keys("n 3 enter 1 '250' enter w")
	assert.NotContains(t, p.Seen(), "goes on by", "near enough to be the same water")
	p.Keys("n 3 enter 1 '240 ppm 442' enter w")
	assert.Contains(t, p.Seen(), "goes on by", "on another scale it is other water")
	p.Keys("n esc")
	assert.Nil(t, p.M.kinds)
}

func TestSearch(t *testing.T) {
	p := play(t, seasonOptions(t), "/ 'fernwater'")
	assert.Contains(t, p.Seen(), "find: fernwater_")
	n := p.M.list.count()
	assert.Positive(t, n)
	assert.Less(t, n, 62)
	p.Keys("' x'")
	assert.Contains(t, p.Seen(), "nothing found")
	p.Keys("backspace backspace enter")
	assert.Equal(t, n, p.M.list.count())
	assert.Contains(t, p.Seen(), `hold "fernwater"; esc shows all`)
	assert.Nil(t, p.Send(hands.Key("esc")))
	assert.Equal(t, 53, p.M.list.count())
	_, back := p.Send(hands.Key("esc")).(screen.Back)
	assert.True(t, back)
}

// A reading that fits no bed is named, with the causes in order and what to
// check. A pen on another scale is said loudly.
func TestWhatDoesNotFit(t *testing.T) {
	o := options(append(seasonLog(t), reading("zz1", 13, 300), reading("zz2", 13, 2)))
	p := play(t, o, "")
	require.NotEmpty(t, p.M.suspects())
	assert.Contains(t, p.Seen(), "fits no bed")
	assert.Contains(t, p.Seen(), "? fits no bed")
	page := p.Page("e")
	for _, words := range []string{"What does not fit", "the likeliest first", "1. ", "Which reading would teach most", "narrower by", "now at 4 gpm", "The readings of this fill", "of its rating (8 in 10: "} {
		assert.Contains(t, page, words)
	}
	for i := range p.M.past.Present().Readings {
		if s := p.M.past.Present().Readings[i].Suspect; s != nil {
			s.Causes[0].Code = planner.OtherScale
		}
	}
	assert.Contains(t, p.Seen(), "!! THE PEN'S SCALE IS IN DOUBT")
	assert.Contains(t, p.Page("e"), "THE PEN'S SCALE IS IN DOUBT. Read the tap")
}

// What was expected before a reading, and what is by all of them, are told apart.
func TestEachExpectedValueSaysWhatItIs(t *testing.T) {
	page := strings.Join(strings.Fields(play(t, seasonOptions(t), "").Page("e")), " ")
	assert.Regexp(t, `[0-9.]+ ppm expected before it`, page)
	assert.Regexp(t, `23 ppm; should have shown [0-9.]+ ppm, by all readings`, page)
}

func TestEmptyLog(t *testing.T) {
	p := play(t, options(nil), "")
	seen := p.Seen()
	for _, words := range []string{"The log is empty", "no date yet", "w adds one"} {
		assert.Contains(t, seen, words)
	}
	assert.Contains(t, p.Page("e"), "None yet: r adds one.")
	p.Keys("r 3 enter y")
	assert.Contains(t, p.Seen(), "Log: 1 of 1")
}

// Where nobody said how old the fill is, that it lasts rests on it being new.
func TestAGoodVerdictSaysWhatItRestsOn(t *testing.T) {
	o := options(nil)
	answer := o.Answer
	lasts := func(bed string) string {
		o.Answer = func() (planner.Plan, *planner.Past, error) {
			p, past, err := answer()
			p.Verdict, p.Bed.SoFar = planner.Lasts, 0
			p.Assumptions = []planner.Assumption{{Name: bed, Source: tag.FromPractice("taken so")}}
			return p, past, err
		}
		return play(t, o, "").Seen()
	}
	assert.Contains(t, lasts("bed gallons so far"), "It lasts the next wash, if just filled: chance ")
	assert.Contains(t, lasts("limit"), "It lasts the next wash: chance ")
}

func TestWithoutAPlanTheLogIsThere(t *testing.T) {
	o := seasonOptions(t)
	o.Answer = func() (planner.Plan, *planner.Past, error) { return planner.Plan{}, nil, errFull }
	p := play(t, o, "r")
	assert.Contains(t, p.Seen(), "No plan yet")
	assert.Contains(t, p.Seen(), "Not now:")
	assert.Contains(t, p.Seen(), "Log: 1 of 53")
}

func TestUnitsTurnEverything(t *testing.T) {
	p := play(t, seasonOptions(t), "m")
	assert.Equal(t, quantity.Metric, p.M.sys)
	seen := p.Seen()
	assert.Contains(t, seen, "322 L")
	assert.Contains(t, seen, "a litre so far")
	assert.NotContains(t, strings.Split(seen, "Log:")[0], " gal ")
}

func TestWhy(t *testing.T) {
	page := play(t, seasonOptions(t), "").Page("y")
	for _, words := range []string{"pace", "end of the fill", "order by", "cost so far", "resin depth", "PRACTICE"} {
		assert.Contains(t, page, words)
	}
}

// Another screen may have written meanwhile; this one tells the one below.
func TestNewsOfTheLog(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "")
	back := p.Send(hands.Key("esc")).(screen.Back)
	assert.Nil(t, back.With)
	require.NoError(t, o.book().Append(reading("zz1", 13, 1)))
	p.Send(entry.Written{})
	assert.Contains(t, p.Seen(), "Log: 1 of 54")
	back = p.Send(hands.Key("esc")).(screen.Back)
	assert.Equal(t, entry.Written{}, back.With)
	_, opens := p.Send(hands.Key("c")).(screen.Go)
	assert.True(t, opens)
}

// A reading of another time is added where one of now is: its time is stated where it is asked
// whether the standing water was out, and is now unless it is.
func TestAReadingOfLastEvening(t *testing.T) {
	o := seasonOptions(t)
	p := play(t, o, "r 3 enter")
	assert.Contains(t, p.Seen(), "Read now; w: another time.")
	p.Keys("w 'yesterday 19:00'")
	assert.Contains(t, p.Seen(), "It was read yesterday 19:00")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "Read at 2026-09-12 19:00; w: another time.")
	p.Keys("y")
	var found bool
	for _, e := range o.book().Kept {
		s, reads := e.Body.(*model.Sample)
		found = found || reads && s.Reading.Or(quantity.Reading{}).Number == 3 && e.At.String() == "2026-09-12T19:00:00-06:00"
	}
	assert.True(t, found, "written as of then")

	p = play(t, seasonOptions(t), "r 3 enter w 'today 23:00' enter")
	assert.Contains(t, oneLine(p.Seen()), "is still to come", "at eight in the morning")
	assert.Contains(t, p.Keys("esc").Seen(), "Read now; w: another time.", "esc goes back to the question")
}

package plan

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"washeve/ui/internal/hands"
)

// A day is typed in words over the old one, is said in full, and goes into the file as its date.
func TestTheDayOfTheWashIsTypedInWords(t *testing.T) {
	o := ours(t)
	o.Book.Clock = func() time.Time { return time.Date(2026, 11, 28, 21, 0, 0, 0, time.UTC) }
	p := onDate(t, o)
	was := p.M.now.wash.Date
	assert.Contains(t, p.Says(), "06-12, tomorrow or")
	p.Keys("enter 'fri'")
	assert.Contains(t, p.Says(), "Fri 2026-12-04")
	p.Keys("enter")
	assert.Contains(t, p.Seen(), "Fri 2026-12-04. Saved.")
	assert.Equal(t, "2026-12-04", p.M.now.wash.Date.Words())
	p = onDate(t, o).Keys("enter 'yesterday' enter")
	assert.Contains(t, p.Says(), `Not taken: date "yesterday" is over; write it like 2026-06-12, 06-12, tomorrow or fri`)
	assert.Equal(t, was, p.M.now.wash.Date)
	p.Keys("ctrl+u '12-01' enter")
	assert.Equal(t, "2026-12-01", p.M.now.wash.Date.Words())
	p.Keys("esc u")
	assert.Equal(t, was, p.M.now.wash.Date)
}

// onDate is the plan with the hand on the day of the wash.
func onDate(t *testing.T, o Options) *player {
	p := play(t, o, "d")
	for range p.M.rows() {
		if _, f, ok := p.M.target(); ok && f.Day {
			return p
		}
		p.Keys("down")
	}
	t.Fatal("no row holds the day of the wash")
	return p
}

// Without a clock only whole dates are read.
func TestNoClockKnowsNoTomorrow(t *testing.T) {
	p := onDate(t, ours(t)).Keys("enter 'tomorrow'")
	assert.Contains(t, p.M.edit.Says(), "is no day of the calendar; write it like 2026-06-12")
	assert.NotContains(t, p.M.edit.Says(), "fri")
	assert.Nil(t, p.Send(hands.Key("esc")))
}

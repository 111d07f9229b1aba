package model

import (
	"fmt"
	"strings"
	"time"

	"washeve/model/quantity"
)

// Instant is a moment as exactly as the machine tells it, by two clocks: that on
// the wall, which people and time zones set, and one that nobody can set, which
// runs on while the machine sleeps and ends when it is started anew.
type Instant struct {
	Wall time.Time
	Boot string        // which start of the machine; "" where it has no such clock
	Up   time.Duration // since that start
}

// Since is the time from an earlier instant to i. Within one start of the machine
// it does not depend on the clock on the wall. It is never below zero; it is not
// sure where only the wall's clock is left to ask, and that one went back.
func (i Instant) Since(earlier Instant) (d time.Duration, sure bool) {
	if i.Boot != "" && i.Boot == earlier.Boot {
		return max(i.Up-earlier.Up, 0), i.Up >= earlier.Up
	}
	d = i.Wall.Sub(earlier.Wall)
	return max(d, 0), d >= 0
}

// Given tells whether there is an instant.
func (i Instant) Given() bool { return !i.Wall.IsZero() }

// Moment is the instant as the log keeps it.
func (i Instant) Moment() Moment { return MomentOf(i.Wall) }

const (
	instantExample = "2026-06-12T08:15:00.250-06:00"
	instantForm    = "2006-01-02T15:04:05.000Z07:00"
)

// String writes the instant: the wall's moment to the millisecond and, where there
// is one, the other clock with its start.
func (i Instant) String() string {
	if !i.Given() {
		return ""
	}
	text := i.Wall.Format(instantForm)
	if i.Boot != "" {
		text += fmt.Sprintf(" up %d ms boot %s", i.Up.Milliseconds(), i.Boot)
	}
	return text
}

// ParseInstant reads what [Instant.String] writes.
func ParseInstant(text string) (Instant, error) {
	wall, other, hasOther := strings.Cut(strings.TrimSpace(text), " ")
	at, err := time.Parse(instantForm, wall)
	if err != nil || at.Year() < 1990 || at.Year() > 2200 {
		return Instant{}, wrongInstant(text)
	}
	i := Instant{Wall: at}
	if !hasOther {
		return i, nil
	}
	var ms int64
	if n, err := fmt.Sscanf(other, "up %d ms boot %s", &ms, &i.Boot); n != 2 || err != nil || ms < 0 || ms > 1e12 || !isID(i.Boot) {
		return Instant{}, wrongInstant(text)
	}
	i.Up = time.Duration(ms) * time.Millisecond
	return i, nil
}

func wrongInstant(text string) error {
	return &quantity.ParseError{What: "moment", Text: text, Reason: "is no moment to the thousandth with its offset from UTC", Example: instantExample}
}

func instantField(key, label, help string, at *Instant) Field {
	return Field{
		Key: key, Label: label, Help: help, Example: instantExample,
		value: placed[Instant]{at, at.String, func(text string) error {
			i, err := ParseInstant(text)
			if err == nil {
				*at = i
			}
			return err
		}},
	}
}

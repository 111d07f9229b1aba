package main

import (
	"time"

	"washeve/model"
)

// clock tells the time. The whole program asks the one that it was given, so that
// tests move it.
type clock interface {
	// Now is the time by the clock on the wall, in its zone.
	Now() time.Time
	// Instant is the same moment by both clocks of the machine.
	Instant() model.Instant
}

// systemClock is the machine's.
type systemClock struct{}

func (systemClock) Now() time.Time { return time.Now() }

// Instant leaves out the clock that Go keeps beside the wall's: it stands still while
// the machine sleeps.
func (systemClock) Instant() model.Instant {
	boot, up := sinceBoot()
	return model.Instant{Wall: time.Now().Round(0), Boot: boot, Up: up}
}

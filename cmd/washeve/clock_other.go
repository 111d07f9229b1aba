//go:build !linux

package main

import (
	"time"

	"washeve/model"
)

// instantNow asks the wall's clock: of what runs on through sleep and a new start
// of the machine there is no other here.
func instantNow() model.Instant { return model.Instant{Wall: time.Now()} }

//go:build !linux

package main

import "time"

// sinceBoot is not known here: the clock on the wall is all there is.
func sinceBoot() (boot string, up time.Duration) { return "", 0 }

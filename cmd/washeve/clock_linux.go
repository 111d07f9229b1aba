package main

import (
	"os"
	"strings"
	"time"

	"golang.org/x/sys/unix"
)

// sinceBoot is the time since the machine was started, its sleep included, and what
// tells this start from others; "" where that is not known.
func sinceBoot() (boot string, up time.Duration) {
	id, err := os.ReadFile("/proc/sys/kernel/random/boot_id")
	if err != nil {
		return "", 0
	}
	var at unix.Timespec
	if err := unix.ClockGettime(unix.CLOCK_BOOTTIME, &at); err != nil {
		return "", 0
	}
	return strings.TrimSpace(string(id)), time.Duration(at.Nano())
}

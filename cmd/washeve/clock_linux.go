package main

import (
	"os"
	"strings"
	"time"

	"golang.org/x/sys/unix"

	"washeve/model"
)

// instantNow asks the wall's clock and the one since the machine was started, which
// runs on while it sleeps and which nobody sets.
func instantNow() model.Instant {
	now := model.Instant{Wall: time.Now()}
	var up unix.Timespec
	boot, err := os.ReadFile("/proc/sys/kernel/random/boot_id")
	if err != nil || unix.ClockGettime(unix.CLOCK_BOOTTIME, &up) != nil {
		return now
	}
	now.Boot, now.Up = strings.TrimSpace(string(boot)), time.Duration(up.Nano())
	return now
}

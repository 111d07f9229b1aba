//go:build unix

package main

import (
	"os"

	"golang.org/x/sys/unix"
)

// waits tells that a pipe holds something that nobody has read. It does not wait for it.
func waits(pipe *os.File) bool {
	fds := []unix.PollFd{{Fd: int32(pipe.Fd()), Events: unix.POLLIN}}
	n, err := unix.Poll(fds, 0)
	return err == nil && n > 0 && fds[0].Revents&unix.POLLIN != 0
}

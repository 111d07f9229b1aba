//go:build unix

package tty

import (
	"errors"
	"io"
	"os"
	"time"

	"golang.org/x/sys/unix"
)

// Keys reads whole keys, and no answers, from a terminal. What is no file is read as it
// is.
func Keys(in io.Reader) io.Reader {
	if file, ok := in.(*os.File); ok {
		return &input{File: file}
	}
	return in
}

// input is a file, as the runtime wants it.
type input struct {
	*os.File
	escaped bool // what was read last ended in an escape alone
}

// Read waits for something to come, and then a little for the rest of it.
func (in *input) Read(p []byte) (int, error) {
	n, err := in.File.Read(p)
	if in.escaped && n > 0 && n < len(p) && cut().Match(p[:n]) {
		n = copy(p[1:], p[:n]) + 1
		p[0] = escape
	}
	for err == nil && n < len(p) && in.comes(unfinished(p[:n])) {
		more, readErr := in.File.Read(p[n:])
		if n += more; readErr != nil {
			break // the next read meets it again
		}
	}
	n = copy(p, keys(p[:max(n, 0)]))
	in.escaped = n > 0 && p[n-1] == escape
	return n, err
}

// comes waits so long at most for something to come. Nothing does where the system
// cannot tell (macOS says of some devices that they cannot be waited for): the read
// would then wait for the next key.
func (in *input) comes(wait time.Duration) bool {
	if wait == 0 {
		return false
	}
	fds := []unix.PollFd{{Fd: int32(in.Fd()), Events: unix.POLLIN}}
	for end := time.Now().Add(wait); ; {
		n, err := unix.Poll(fds, int(max(time.Until(end), 0).Milliseconds()))
		if !errors.Is(err, unix.EINTR) {
			return err == nil && n > 0 && fds[0].Revents&unix.POLLNVAL == 0
		}
	}
}

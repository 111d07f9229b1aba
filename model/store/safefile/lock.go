package safefile

import (
	"context"
	"errors"
	"time"

	"github.com/gofrs/flock"
)

// ErrBusy says that another program held a lock for all of the wait.
var ErrBusy = errors.New("another program is writing")

// lockRetry is the time between two tries.
const lockRetry = 2 * time.Millisecond

// Lock waits so long for a lock between programs, a file at path, and gives what
// lets go of it. The lock is the kernel's: it is gone when the program that holds
// it is, however it ended. Errors are [ErrBusy], or those of the file.
func Lock(path string, wait time.Duration) (unlock func() error, err error) {
	lock := flock.New(path, flock.SetPermissions(FileMode))
	ctx, cancel := context.WithTimeout(context.Background(), wait)
	defer cancel()
	got, err := lock.TryLockContext(ctx, lockRetry)
	if errors.Is(err, context.DeadlineExceeded) || err == nil && !got {
		return nil, ErrBusy
	}
	if err != nil {
		return nil, err
	}
	return lock.Unlock, nil
}

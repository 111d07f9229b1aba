package main

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// stopped is a clock that always tells the same.
type stopped struct{ at time.Time }

func (s stopped) Now() time.Time         { return s.at }
func (s stopped) Instant() model.Instant { return model.Instant{Wall: s.at} }

// inClockFile names the file that the program under test has its time from.
const inClockFile = "WASHEVE_TEST_CLOCK"

// fileClock is a clock that stands in a file, as [model.Instant.String] writes it.
type fileClock struct{ path string }

func (f fileClock) Instant() model.Instant {
	text, err := os.ReadFile(f.path)
	if err != nil {
		panic(err)
	}
	at, err := model.ParseInstant(string(text))
	if err != nil {
		panic(err)
	}
	return at
}

func (f fileClock) Now() time.Time { return f.Instant().Wall }

// set puts the clock to an instant, at one stroke.
func (f fileClock) set(t *testing.T, at model.Instant) {
	t.Helper()
	temp := f.path + ".new"
	require.NoError(t, os.WriteFile(temp, []byte(at.String()), 0o600))
	require.NoError(t, os.Rename(temp, f.path))
}

func TestTheSystemsClocksGoOn(t *testing.T) {
	a, b := systemClock{}.Instant(), systemClock{}.Instant()
	_, sure := b.Since(a)
	assert.True(t, sure)
	assert.Equal(t, a.Boot, b.Boot)
	back, err := model.ParseInstant(a.String())
	require.NoError(t, err)
	assert.Equal(t, a.Boot, back.Boot)
	assert.True(t, a.Wall.Truncate(time.Millisecond).Equal(back.Wall))
	f := fileClock{filepath.Join(t.TempDir(), "clock")}
	f.set(t, a)
	assert.Equal(t, back.Up, f.Instant().Up)
}

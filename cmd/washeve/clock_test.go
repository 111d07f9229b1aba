package main

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"washeve/model"
)

// clockFile names the file that the test's own program takes the time from.
const clockFile = "WASHEVE_TEST_CLOCK"

// testClock is a clock that a test moves: a file with the wall's seconds and those
// since the machine was started.
type testClock struct{ path string }

func clockOf(path string) testClock { return testClock{path} }

func newTestClock(t *testing.T) *movedClock {
	c := &movedClock{t: t, testClock: testClock{filepath.Join(t.TempDir(), "clock")}}
	c.set(0, 0)
	return c
}

// now reads the file. It is replaced whole, so it is never half written.
func (c testClock) now() model.Instant {
	var wall, up float64
	text, err := os.ReadFile(c.path)
	if err == nil {
		_, err = fmt.Sscan(string(text), &wall, &up)
	}
	if err != nil {
		panic(err)
	}
	seconds := func(s float64) time.Duration { return time.Duration(s * float64(time.Second)) }
	return model.Instant{Wall: noon.Add(seconds(wall)), Boot: "test", Up: time.Hour + seconds(up)}
}

func (c testClock) on(s streams) streams {
	s.clock, s.instant = func() time.Time { return c.now().Wall }, c.now
	return s
}

// movedClock is the test's end of it.
type movedClock struct {
	testClock
	t        *testing.T
	wall, up float64
}

// pass lets time go by.
func (c *movedClock) pass(seconds float64) { c.set(c.wall+seconds, c.up+seconds) }

// set sets both clocks, in seconds from the start.
func (c *movedClock) set(wall, up float64) {
	c.wall, c.up = wall, up
	temp := c.path + ".new"
	require.NoError(c.t, os.WriteFile(temp, fmt.Appendf(nil, "%f %f\n", wall, up), 0o600))
	require.NoError(c.t, os.Rename(temp, c.path))
}

package main

import (
	"fmt"
	"slices"
	"time"
)

// firstFrames starts the program and the bare one in turn, and gives the middle
// time of each from its start to the foot of its first whole frame.
func firstFrames(washeve, bare, home string, rounds int) (ours, theirs time.Duration, err error) {
	var a, b []time.Duration
	for range rounds {
		for _, run := range []struct {
			program, foot string
			times         *[]time.Duration
		}{{bare, "any key: quit", &b}, {washeve, "all keys", &a}} {
			took, err := firstFrame(run.program, run.foot, home)
			if err != nil {
				return 0, 0, err
			}
			*run.times = append(*run.times, took)
		}
	}
	return middle(a), middle(b), nil
}

func firstFrame(program, foot, home string) (time.Duration, error) {
	t, err := open([]string{"WASHEVE_DIR=" + home, "HOME=" + home}, program)
	if err != nil {
		return 0, err
	}
	defer t.close()
	return t.shows(foot)
}

func middle(times []time.Duration) time.Duration {
	slices.Sort(times)
	return times[len(times)/2]
}

func ms(d time.Duration) string { return fmt.Sprintf("%.1f ms", float64(d.Microseconds())/1000) }

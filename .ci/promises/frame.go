package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// A frame is what a first frame took: time by the clock, and by the processors.
type frame struct{ clock, busy time.Duration }

// firstFrames starts the program and the bare one in turn, and gives the middle
// of each from its start to the foot of its first whole frame.
func firstFrames(washeve, bare, home string, rounds int) (ours, theirs frame, err error) {
	var a, b []frame
	for range rounds {
		for _, run := range []struct {
			program, foot string
			frames        *[]frame
		}{{bare, "any key: quit", &b}, {washeve, "all keys", &a}} {
			took, err := firstFrame(run.program, run.foot, home)
			if err != nil {
				return ours, theirs, err
			}
			*run.frames = append(*run.frames, took)
		}
	}
	return middle(a), middle(b), nil
}

func firstFrame(program, foot, home string) (frame, error) {
	t, err := open([]string{"WASHEVE_DIR=" + home, "HOME=" + home}, program)
	if err != nil {
		return frame{}, err
	}
	defer t.close()
	clock, err := t.shows(foot)
	if err != nil {
		return frame{}, err
	}
	return frame{clock, busy(t.cmd.Process.Pid)}, nil
}

// busy is the time that the threads of a process have run so far; 0 where the
// system does not tell.
func busy(pid int) time.Duration {
	threads, _ := filepath.Glob(fmt.Sprintf("/proc/%d/task/*/schedstat", pid))
	var all time.Duration
	for _, path := range threads {
		text, _ := os.ReadFile(path)
		first, _, _ := strings.Cut(string(text), " ")
		ns, _ := strconv.ParseInt(first, 10, 64)
		all += time.Duration(ns)
	}
	return all
}

func middle(frames []frame) frame {
	of := func(pick func(frame) time.Duration) time.Duration {
		var all []time.Duration
		for _, f := range frames {
			all = append(all, pick(f))
		}
		slices.Sort(all)
		return all[len(all)/2]
	}
	return frame{of(func(f frame) time.Duration { return f.clock }), of(func(f frame) time.Duration { return f.busy })}
}

func ms(d time.Duration) string { return fmt.Sprintf("%.1f ms", float64(d.Microseconds())/1000) }

package main

import (
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"
)

// frames compares the first frame with the bare program's.
func frames(b bench) ([]promise, error) {
	const most, rounds = 1.3, 31
	ours, theirs, err := firstFrames(b.washeve, b.bare, b.home, rounds)
	if err != nil {
		return nil, err
	}
	ratio := float64(ours.clock) / float64(theirs.clock)
	return []promise{{
		"first frame at most 1.3 x a bare bubbletea program's",
		fmt.Sprintf("%.2f x (%s to %s; busy %s to %s)", ratio, ms(ours.clock), ms(theirs.clock), ms(ours.busy), ms(theirs.busy)), ratio <= most,
	}}, nil
}

// keys takes the times of keys from the benchmarks.
func keys(bench) ([]promise, error) {
	const most = 2.0
	var all []promise
	for _, of := range []struct{ words, name string }{
		{"key on the Plan screen to the changed answer at most 2 ms", "BenchmarkPlanKeys"},
		{"key on the Day screen to the changed answer at most 2 ms", "BenchmarkDayKeys"},
	} {
		p99, err := metric("./cmd/washeve", of.name, "300x", "p99-ms")
		if err != nil {
			return nil, err
		}
		all = append(all, promise{of.words, fmt.Sprintf("%.2f ms, 99th of 100", p99), p99 <= most})
	}
	return all, nil
}

// loading takes the time of a log of 100 000 entries from its benchmark, and
// how it grows from 25 000.
func loading(bench) ([]promise, error) {
	const most, entries, fewer = 150.0, 100000, 25000
	long, err := metric("./model/store/journal", "BenchmarkLoad/entries=100000", "10x", "ns/op")
	if err != nil {
		return nil, err
	}
	short, err := metric("./model/store/journal", "BenchmarkLoad/entries=25000", "20x", "ns/op")
	if err != nil {
		return nil, err
	}
	growth := long / short / (entries / fewer)
	return []promise{
		{"a log of 100 000 entries loads in at most 150 ms", fmt.Sprintf("%.0f ms", long/1e6), long/1e6 <= most},
		{"its cost grows no faster than the log", fmt.Sprintf("%.2f x as fast, from 25 000 entries on", growth), growth <= 1.25},
	}, nil
}

// metric runs a benchmark and reads one of its figures.
func metric(folder, name, times, unit string) (float64, error) {
	parts := strings.Split(name, "/")
	for i, p := range parts {
		parts[i] = "^" + p + "$"
	}
	out, err := exec.Command("go", "test", "-run", "^$", "-bench", strings.Join(parts, "/"), "-benchtime", times, folder).CombinedOutput()
	found := regexp.MustCompile(`([0-9.]+) ` + regexp.QuoteMeta(unit)).FindSubmatch(out)
	if err != nil || found == nil {
		return 0, fmt.Errorf("benchmark %s in %s: %w\n%s", name, folder, err, out)
	}
	return strconv.ParseFloat(string(found[1]), 64)
}

// sent counts the bytes that keys make the program send.
func sent(b bench) ([]promise, error) {
	const most = 2048
	var all []promise
	for _, of := range []struct {
		words, open string
		keys        []string
	}{
		{"a key on the Plan screen sends at most 2 KB", "v", []string{"\x1b[B", "\x1b[B", "\x1b[B", "3", "8", " ", "f", "t", "\r", "u", "w", "b", "p", "\x1b[B", "\r", "u", "\t"}},
		{"a key on the Day screen sends at most 2 KB", "D", []string{"\x1b[C", "\x1b[C", "\x1b[D", "\x1b[C"}},
		{"a key on the Bed screen sends at most 2 KB", "B", []string{"\x1b[B", "\x1b[B", "\x1b[A", "r", "y", "1", "\r", "u", "r", "y", "2", "2", "\r"}},
		{"a key on the Trip screen sends at most 2 KB", "T", []string{"\x1b[B", ".", ".", ">", "<", ",", "u", "u"}},
	} {
		costs, err := keysAt(b, of.open, of.keys)
		if err != nil {
			return nil, err
		}
		worst := slices.Max(costs)
		all = append(all, promise{of.words, fmt.Sprintf("%d bytes, for %q", worst, of.keys[slices.Index(costs, worst)]), worst <= most})
	}
	openings := []string{"D", "\x1b", "B", "\x1b", "T", "\x1b", "C", "\x1b", "R", "\x1b", "?"}
	costs, err := keysAt(b, "v", openings)
	if err != nil {
		return nil, err
	}
	worst := slices.Max(costs)
	fmt.Printf("(a key that opens another screen draws all of it: at most %d bytes, for %q)\n", worst, openings[slices.Index(costs, worst)])
	return all, nil
}

func keysAt(b bench, open string, keys []string) ([]int, error) {
	t, err := b.open()
	if err != nil {
		return nil, err
	}
	defer t.close()
	if _, err := t.costs(open); err != nil {
		return nil, err
	}
	return t.costs(keys...)
}

func (b bench) open() (*terminal, error) {
	t, err := open([]string{"WASHEVE_DIR=" + b.home, "HOME=" + b.home}, b.washeve)
	if err != nil {
		return nil, err
	}
	if _, err := t.shows("all keys"); err != nil {
		t.close()
		return nil, err
	}
	t.quiet(500 * time.Millisecond)
	return t, nil
}

// memory looks at the most that was resident, after every screen was seen.
func memory(b bench) ([]promise, error) {
	const most = 32.0
	t, err := b.open()
	if err != nil {
		return nil, err
	}
	defer t.close()
	if _, err := t.costs("D", "\x1b", "B", "r", "y", "3", "\r", "\x1b", "f", "\x1b", "?", "\x1b"); err != nil {
		return nil, err
	}
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", t.cmd.Process.Pid))
	if err != nil {
		return nil, err
	}
	found := regexp.MustCompile(`VmHWM:\s+([0-9]+) kB`).FindSubmatch(status)
	if found == nil {
		return nil, fmt.Errorf("the system does not tell the memory of a process")
	}
	kb, _ := strconv.Atoi(string(found[1]))
	mb := float64(kb) / 1024
	return []promise{{"memory at most 32 MB resident", fmt.Sprintf("%.1f MB at the most", mb), mb <= most}}, nil
}

func size(b bench) ([]promise, error) {
	const most = 12.0
	info, err := os.Stat(b.washeve)
	if err != nil {
		return nil, err
	}
	mb := float64(info.Size()) / (1 << 20)
	return []promise{{"stripped binary at most 12 MB", fmt.Sprintf("%.1f MB (%d bytes)", mb, info.Size()), mb <= most}}, nil
}

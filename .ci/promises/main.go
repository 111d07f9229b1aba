// Command promises measures what the program promises, and prints each promise
// with its figure and its verdict. It needs Go, and Linux for the memory. A
// machine that is busy with other things spoils the times; where it is, that is
// said. Exit 1 where a promise is missed.
//
//	go run ./.ci/promises
package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"washeve/model/store/decade"
)

func main() {
	kept, err := measure()
	if err != nil {
		fmt.Fprintln(os.Stderr, "promises:", err)
		os.Exit(1)
	}
	if !kept {
		os.Exit(1)
	}
}

// A promise is a figure and the most that it may be.
type promise struct {
	words, figure string
	kept          bool
}

// bench is where everything is measured: the two programs, and a data folder
// with ten years of log.
type bench struct{ washeve, bare, home string }

func measure() (kept bool, err error) {
	dir, err := os.MkdirTemp("", "promises")
	if err != nil {
		return false, err
	}
	defer os.RemoveAll(dir)
	b := bench{filepath.Join(dir, "washeve"), filepath.Join(dir, "bare"), filepath.Join(dir, "home")}
	for program, from := range map[string]string{b.washeve: "./cmd/washeve", b.bare: "./.ci/promises/bare"} {
		if out, err := build(program, from).CombinedOutput(); err != nil {
			return false, fmt.Errorf("build %s: %w\n%s", from, err, out)
		}
	}
	if err := decade.Write(b.home); err != nil {
		return false, err
	}
	load, _ := os.ReadFile("/proc/loadavg")
	fmt.Printf("ten years of log: %d washes, %d readings; load of the machine: %s\n\n", decade.Washes, decade.Readings, strings.TrimSpace(string(load)))
	kept = true
	for _, step := range []func(bench) ([]promise, error){frames, keys, sent, loading, memory, size} {
		promises, err := step(b)
		if err != nil {
			return false, err
		}
		for _, p := range promises {
			verdict := "kept"
			if !p.kept {
				verdict, kept = "MISSED", false
			}
			fmt.Printf("%-66s %-44s %s\n", p.words, p.figure, verdict)
		}
	}
	return kept, nil
}

// build makes a program as .goreleaser.yaml makes the one that is shipped: without C, and
// stripped.
func build(program, from string) *exec.Cmd {
	cmd := exec.Command("go", "build", "-trimpath", "-ldflags", "-s -w", "-o", program, from)
	cmd.Env = append(os.Environ(), "CGO_ENABLED=0")
	return cmd
}

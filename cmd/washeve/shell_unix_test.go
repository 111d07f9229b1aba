//go:build unix

package main

import (
	"os"
	"os/exec"
	"syscall"
)

// asShell makes the test's own binary be a shell with job control that runs the
// program: without one nobody can stop it, since a signal to stop is lost on a program
// that has no one to continue it.
const asShell = "WASHEVE_TEST_AS_SHELL"

// shell runs the program in the foreground, in a process group of its own.
func shell() int {
	self, err := os.Executable()
	if err != nil {
		return 1
	}
	c := exec.Command(self, os.Args[1:]...)
	for _, v := range os.Environ() {
		if v != asShell+"=1" {
			c.Env = append(c.Env, v)
		}
	}
	c.Stdin, c.Stdout, c.Stderr = os.Stdin, os.Stdout, os.Stderr
	c.SysProcAttr = &syscall.SysProcAttr{Setpgid: true, Foreground: true, Ctty: 0}
	if err := c.Run(); err != nil {
		return 1
	}
	return 0
}

package main

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// asProgram makes the test's own binary be the program.
const asProgram = "WASHEVE_TEST_AS_PROGRAM"

func TestMain(m *testing.M) {
	if os.Getenv(asShell) != "" {
		os.Exit(shell())
	}
	if os.Getenv(asProgram) != "" {
		s := terminal()
		if path := os.Getenv(inClockFile); path != "" {
			s.clock = fileClock{path}
		}
		os.Exit(run(os.Args[1:], s))
	}
	testscript.Main(tidy{m}, map[string]func(){toolsName: main})
}

// Scripts run the program as a person would, in a folder of their own with an
// empty home.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(e *testscript.Env) error {
			home := e.Getenv("WORK") + "/home"
			e.Setenv("HOME", home)
			e.Setenv("XDG_DATA_HOME", home+"/data")
			e.Setenv("NO_COLOR", "1")
			return os.MkdirAll(home, 0o700)
		},
	})
}

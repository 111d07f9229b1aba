package main

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"sync"
	"testing"
)

// shippedIn is the folder of the built program; "" where no test asked for it.
var shippedIn string

// shipped is the path of the program as it is shipped, built once in a run of the tests.
var shipped = sync.OnceValues(func() (string, error) {
	dir, err := os.MkdirTemp("", toolsName)
	if err != nil {
		return "", err
	}
	shippedIn = dir
	name := toolsName
	if runtime.GOOS == "windows" {
		name += ".exe"
	}
	path := filepath.Join(dir, name)
	if out, err := exec.Command("go", "build", "-o", path, ".").CombinedOutput(); err != nil {
		return "", fmt.Errorf("build the program: %w\n%s", err, out)
	}
	return path, nil
})

// tidy takes the built program away when all tests have run.
type tidy struct{ *testing.M }

// Run lets more tests run beside each other than there are processors: those at a
// terminal wait most of the time.
func (m tidy) Run() int {
	flag.Parse()
	if given := flag.Lookup("test.parallel"); given.Value.String() == given.DefValue {
		_ = flag.Set("test.parallel", "6")
	}
	code := m.M.Run()
	if shippedIn != "" {
		_ = os.RemoveAll(shippedIn)
	}
	return code
}

package store

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store/fault"
)

const crashFolder = "WASHEVE_TEST_CRASH_FOLDER"

// TestMain is also the program that TestKilledWhileSaving kills: it saves one
// length after the other and says each that was acknowledged.
func TestMain(m *testing.M) {
	dir := os.Getenv(crashFolder)
	if dir == "" {
		os.Exit(m.Run())
	}
	s := Open(dir)
	lib, _ := s.Load()
	for feet := 20; ; feet = 20 + (feet-19)%50 {
		f, _ := find(lib.Rig.Vehicles[0].Fields(), "length")
		if f.Set(fmt.Sprintf("%d ft", feet)) != nil || s.SaveRig(lib.Rig) != nil {
			os.Exit(1)
		}
		fmt.Println(f.Text())
	}
}

// TestKilledWhileSaving: at whatever moment the program is killed, the file is
// whole, and holds what was acknowledged last or what came after it.
func TestKilledWhileSaving(t *testing.T) {
	s, _ := written(t)
	self, err := os.Executable()
	require.NoError(t, err)
	for round := range 8 {
		child := exec.Command(self)
		child.Env = append(os.Environ(), crashFolder+"="+s.Dir())
		out, err := child.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, child.Start())
		lines := bufio.NewScanner(out)
		require.True(t, lines.Scan())
		acknowledged := lines.Text()
		kill := time.AfterFunc(time.Duration(round*7)*time.Millisecond, func() { _ = child.Process.Kill() })
		for lines.Scan() {
			acknowledged = lines.Text()
		}
		_ = child.Wait() // killed
		kill.Stop()

		again, faults := s.Load()
		require.Empty(t, faults)
		next := ""
		var feet int
		if _, err := fmt.Sscanf(acknowledged, "%d ft", &feet); err == nil {
			next = fmt.Sprintf("%d ft", 20+(feet-19)%50)
		}
		got, _ := find(again.Rig.Vehicles[0].Fields(), "length")
		assert.Contains(t, []string{acknowledged, next}, got.Text())
	}
	lib, _ := s.Load()
	setField(t, lib.Rig.Vehicles[0].Fields(), "length", "70 ft")
	require.NoError(t, s.SaveRig(lib.Rig))
	for _, name := range listed(t, s.Dir()) {
		assert.False(t, strings.HasSuffix(name, ".tmp"), "what the killed program left is cleared away")
	}
}

func TestReadWash(t *testing.T) {
	lib := Example()
	wash, faults := ReadWash("example/washes/example.toml", lib)
	assert.Empty(t, faults)
	assert.Equal(t, lib.Washes[0].Wash, wash)
	_, faults = ReadWash("example/none.toml", lib)
	assert.Equal(t, []fault.Fault{{File: "example/none.toml", Problem: "is not there"}}, faults)
}

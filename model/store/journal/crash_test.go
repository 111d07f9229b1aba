package journal

import (
	"bufio"
	"fmt"
	"io"
	"math/rand"
	"os"
	"os/exec"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
)

// A child is this test binary run again as a program that appends.
const (
	childLog   = "JOURNAL_TEST_LOG"
	childName  = "JOURNAL_TEST_NAME"
	childCount = "JOURNAL_TEST_COUNT"
)

func TestMain(m *testing.M) {
	if path := os.Getenv(childLog); path != "" {
		os.Exit(child(path))
	}
	os.Exit(m.Run())
}

// child appends entries, now one and now three at once, and prints the
// identifiers of each that it was told is on the disk.
func child(path string) int {
	var count int
	if _, err := fmt.Sscan(os.Getenv(childCount), &count); err != nil {
		return 2
	}
	for i := range count {
		var entries []model.Entry
		ids := ""
		for part := range 1 + 2*(i%2) {
			e := plainSample(fmt.Sprintf("%s-%d-%d", os.Getenv(childName), i, part))
			entries, ids = append(entries, e), ids+e.ID+"\n"
		}
		if _, err := Open(path).Append(entries...); err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
		_, _ = os.Stdout.WriteString(ids)
	}
	return 0
}

func plainSample(id string) model.Entry {
	at := model.MomentOf(time.Unix(1780000000, 0).UTC())
	return model.Entry{ID: id, At: at, Note: strings.Repeat("long ", 20) + "note", Body: &model.Regeneration{Softener: "portable softener"}}
}

func startChild(t *testing.T, path, name string, count int) (*exec.Cmd, io.Reader) {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childLog+"="+path, childName+"="+name, fmt.Sprintf("%s=%d", childCount, count))
	cmd.Stderr = os.Stderr
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	return cmd, out
}

// told gathers the identifiers that a child was told are on the disk.
func told(out io.Reader) []string {
	var ids []string
	lines := bufio.NewScanner(out)
	for lines.Scan() {
		ids = append(ids, lines.Text())
	}
	return ids
}

func requireAll(t *testing.T, path string, acknowledged []string) {
	t.Helper()
	log, faults := Open(path).Load()
	for _, f := range faults {
		require.Contains(t, f.Problem, "the last entry was cut off", f.Error())
	}
	there := map[string]bool{}
	for _, e := range log {
		there[e.ID] = true
	}
	for _, id := range acknowledged {
		require.True(t, there[id], "%s was acknowledged and is lost", id)
	}
	assert.Len(t, there, len(log), "nothing is doubled")
}

// Programs are killed while they write, 200 times, several at a time. No entry
// that was acknowledged is lost, none of several at once comes alone, and the
// next writer is never kept waiting.
func TestKilledWhileWriting(t *testing.T) {
	const kills, together = 200, 8
	path := newPath(t)
	chance := rand.New(rand.NewSource(time.Now().UnixNano()))
	var acknowledged []string
	for round := range kills / together {
		var wait sync.WaitGroup
		var mutex sync.Mutex
		for i := range together {
			cmd, out := startChild(t, path, fmt.Sprintf("k%d-%d", round, i), 1e6)
			patience := time.Duration(chance.Intn(40)) * time.Millisecond
			wait.Go(func() {
				first := make([]byte, 1)
				n, _ := io.ReadFull(out, first) // it has begun to write
				timer := time.AfterFunc(patience, func() { _ = cmd.Process.Kill() })
				ids := told(io.MultiReader(strings.NewReader(string(first[:n])), out))
				_ = cmd.Wait()
				timer.Stop()
				mutex.Lock()
				defer mutex.Unlock()
				acknowledged = append(acknowledged, ids...)
			})
		}
		wait.Wait()
		_, err := Open(path).Append(plainSample(fmt.Sprintf("after-%d", round)))
		require.NoError(t, err, "the next start is not blocked")
	}
	require.Greater(t, len(acknowledged), kills)
	requireAll(t, path, acknowledged)
	requireWholeBatches(t, path)
	appendTold(t, path, plainSample("x"), plainSample("y"))
	for _, name := range listed(t, path) {
		assert.NotContains(t, name, ".tmp", "nothing half written stays about")
	}
}

// requireWholeBatches: what was appended together is there together.
func requireWholeBatches(t *testing.T, path string) {
	t.Helper()
	log, _ := Open(path).Load()
	parts := map[string]int{}
	for _, e := range log {
		if i := strings.LastIndex(e.ID, "-"); strings.HasPrefix(e.ID, "k") {
			parts[e.ID[:i]]++
		}
	}
	for batch, n := range parts {
		require.Contains(t, []int{1, 3}, n, batch)
	}
}

func TestFiftyWritersAtOnce(t *testing.T) {
	const programs, tasks, each = 10, 40, 4
	path := newPath(t)
	var wait sync.WaitGroup
	var mutex sync.Mutex
	var acknowledged []string
	for i := range programs {
		cmd, out := startChild(t, path, fmt.Sprintf("p%d", i), each)
		wait.Go(func() {
			ids := told(out)
			assert.NoError(t, cmd.Wait())
			mutex.Lock()
			defer mutex.Unlock()
			acknowledged = append(acknowledged, ids...)
		})
	}
	for i := range tasks {
		wait.Go(func() {
			for k := range each {
				id := fmt.Sprintf("g%d-%d", i, k)
				told, err := Open(path).Append(plainSample(id))
				assert.NoError(t, err)
				assert.Empty(t, said(told))
				mutex.Lock()
				acknowledged = append(acknowledged, id)
				mutex.Unlock()
			}
		})
	}
	wait.Wait()
	assert.Len(t, acknowledged, programs*(each/2*1+each/2*3)+tasks*each)
	requireAll(t, path, acknowledged)
	assert.Len(t, loadWhole(t, path), len(acknowledged))
}

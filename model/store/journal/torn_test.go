package journal

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model"
	"washeve/model/store/fault"
)

// The log is cut at every byte of its last entry.
func TestALogCutAnywhereOpens(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, sample(t, "one"))
	appendTold(t, path, sample(t, "two"))
	before := read(t, path)
	appendTold(t, path, sample(t, "three"))
	text := read(t, path)
	for cut := len(before); cut <= len(text); cut++ {
		path := newPath(t)
		write(t, path, text[:cut])
		log, faults := Open(path).Load()
		tail := text[len(before):cut]
		switch {
		case strings.TrimSpace(tail) == "":
			assert.Len(t, log, 2, "cut at %d", cut)
			assert.Empty(t, faults)
		case cut >= len(text)-1: // all but the end of the last line
			assert.Len(t, log, 3, "cut at %d", cut)
			assert.Empty(t, faults)
		default:
			assert.Equal(t, []string{"log.toml:29: the last entry was cut off while it was written, by a crash or a power cut; what there is of it is kept in log.torn-1.toml, and all before it stands. If you wrote it by hand, give it a last line such as id = \"mine-1\" and put it back"}, said(faults))
			assert.Len(t, log, 2, "cut at %d", cut)
			assert.Equal(t, tail[1:], read(t, filepath.Join(filepath.Dir(path), "log.torn-1.toml")))
			assert.Equal(t, before+"\n", read(t, path))
		}
		whole := loadWhole(t, path)
		assert.Equal(t, contents(log), contents(whole), "the second start has nothing to tell")
		assert.Empty(t, appendTold(t, path, sample(t, "four")))
		assert.Len(t, loadWhole(t, path), len(whole)+1, "cut at %d", cut)
	}
}

// A new log is cut at every byte before its first entry is whole.
func TestANewLogCutAnywhereOpens(t *testing.T) {
	first := newPath(t)
	appendTold(t, first, sample(t, "one"))
	text := read(t, first)
	for cut := range len(text) {
		path := newPath(t)
		write(t, path, text[:cut])
		appendTold(t, path, sample(t, "two"))
		log, faults := Open(path).Load()
		assert.Empty(t, said(faults), "cut at %d", cut)
		assert.NotEmpty(t, log, "cut at %d", cut)
	}
}

func TestAppendSetsATornEndAside(t *testing.T) {
	path := newPath(t)
	write(t, path, header+"\n"+encode(sample(t, "one"))+"\n[[entry]]\nkind = \"wash\"\nat = 2026")
	told := appendTold(t, path, sample(t, "two"))
	require.Len(t, told, 1)
	assert.Contains(t, told[0], "is kept in log.torn-1.toml")
	assert.Len(t, loadWhole(t, path), 2)
}

func TestTornEndsGetNamesOfTheirOwn(t *testing.T) {
	path := newPath(t)
	for _, tail := range []string{"[[entry]]\nkind", "[[entry]]\nki", "[[entry]]\nki"} {
		write(t, path, header+tail)
		_, faults := Open(path).Load()
		require.Len(t, faults, 1)
	}
	assert.Equal(t, []string{"log.toml", "log.toml.lock", "log.torn-1.toml", "log.torn-2.toml"}, listed(t, path))
}

// After a power cut a file may have grown without having been filled.
func TestZerosAtTheEndAreSetAside(t *testing.T) {
	for _, tail := range []string{strings.Repeat("\x00", 300), "\n[[entry]]\nkind = \"was" + strings.Repeat("\x00", 50), "\n" + strings.Repeat("\x00", 10) + "id = \"x\"\n"} {
		path := newPath(t)
		write(t, path, header+"\n"+encode(sample(t, "one"))+tail)
		log, faults := Open(path).Load()
		assert.Len(t, log, 1)
		require.Len(t, faults, 1)
		assert.Contains(t, faults[0].Error(), "is kept in log.torn-1.toml")
		assert.Len(t, loadWhole(t, path), 1)
	}
}

func TestALongTailOfCommentsIsNoTornEnd(t *testing.T) {
	path := newPath(t)
	write(t, path, header+"\n"+encode(sample(t, "one"))+strings.Repeat("# a long winter\n", 10000))
	assert.Empty(t, appendTold(t, path, sample(t, "two")))
	assert.Len(t, loadWhole(t, path), 2)
}

// A reader that comes while an entry is half written takes nothing away from it.
func TestHalfWrittenIsNotTorn(t *testing.T) {
	path := newPath(t)
	appendTold(t, path, sample(t, "one"))
	block := "\n" + encode(sample(t, "two"))
	half, rest := block[:40], block[40:]
	var log model.Log
	var faults []fault.Fault
	read := make(chan struct{})
	require.NoError(t, locked(path, func() error {
		grow(t, path, half)
		go func() {
			defer close(read)
			log, faults = Open(path).Load()
		}()
		time.Sleep(50 * time.Millisecond) // the reader meets the half, and waits for the lock
		grow(t, path, rest)
		return nil
	}))
	<-read
	assert.Empty(t, said(faults))
	assert.Len(t, log, 2)
	assert.Equal(t, []string{"log.toml", "log.toml.lock"}, listed(t, path))
}

func grow(t *testing.T, path, text string) {
	t.Helper()
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_APPEND, 0)
	require.NoError(t, err)
	_, err = file.WriteString(text)
	require.NoError(t, err)
	require.NoError(t, file.Close())
}

//go:build unix

package tty

import (
	"os"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestWhatComes(t *testing.T) {
	from, to, err := os.Pipe()
	require.NoError(t, err)
	defer from.Close()
	in := &input{File: from}
	assert.False(t, in.comes(0))
	assert.False(t, in.comes(time.Millisecond))
	_, err = to.WriteString("[A")
	require.NoError(t, err)
	assert.True(t, in.comes(time.Minute))
	require.NoError(t, to.Close())
	assert.True(t, in.comes(time.Minute), "the end, too")
}

// Nothing comes from what cannot be waited for; here a file that is not open.
func TestNothingComesFromWhatCannotBeWaitedFor(t *testing.T) {
	const unopened = 1 << 14
	assert.False(t, (&input{File: os.NewFile(unopened, "unopened")}).comes(time.Minute))
}

// What a terminal answers in pieces never acts as keys, wherever it is cut, even where an
// escape has been taken for the key; what is typed behind it acts.
func TestAnAnswerInPiecesIsNoKeys(t *testing.T) {
	for _, answer := range []string{"\x1b]11;rgb:ffff/00aa/ffff\x1b\\", "\x1b]11;rgb:ffff/ffff/ffff\x07", "\x1b[12;40R"} {
		for at := 1; at < len(answer); at++ {
			from, to, err := os.Pipe()
			require.NoError(t, err)
			in, got := &input{File: from}, make(chan string, 2)
			go func() {
				for range map[bool]int{true: 2, false: 1}[at == 1] {
					buffer := make([]byte, 256)
					n, _ := in.Read(buffer)
					got <- string(buffer[:n])
				}
			}()
			write := func(text string) {
				_, err := to.WriteString(text)
				require.NoError(t, err)
			}
			write(answer[:at])
			if at == 1 { // nobody can tell it from the key
				assert.Equal(t, "\x1b", <-got)
			} else {
				waits := &input{File: from}
				require.Eventually(t, func() bool { return !waits.comes(time.Millisecond) }, time.Minute, time.Millisecond, "the first piece should be read")
			}
			write(answer[at:] + "q")
			assert.Equal(t, "q", <-got, "%q cut at %d", answer, at)
			require.NoError(t, to.Close())
			require.NoError(t, from.Close())
		}
	}
}

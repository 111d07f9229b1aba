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
	in := &input{from}
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
	assert.False(t, (&input{os.NewFile(unopened, "unopened")}).comes(time.Minute))
}

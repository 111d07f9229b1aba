package keeping_test

import (
	"errors"
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/model/store"
	"washeve/ui/keeping"
	"washeve/ui/screen"
	"washeve/ui/theme"
)

type changed struct{ takesOut bool }

func (changed) Error() string            { return "rig.toml was changed by another hand" }
func (c changed) TakesOut() bool         { return c.takesOut }
func (changed) Rewrite() (string, error) { return "rig.toml.1", nil }

func rewritten(m string, r keeping.Rewriter) string {
	backup, _ := r.Rewrite()
	return m + ", beside " + backup
}

func TestOnlyWhatAYesSettlesIsAsked(t *testing.T) {
	assert.Nil(t, keeping.Question(errors.New("the disk is full"), theme.Theme{}, rewritten))
	assert.Nil(t, keeping.Question(nil, theme.Theme{}, rewritten))
	q := keeping.Question(fmt.Errorf("the rig: %w", changed{}), theme.Theme{}, rewritten)
	require.NotNil(t, q)
	assert.Equal(t, "Not saved: the rig: rig.toml was changed by another hand. Write it anew, and keep the old file aside? y or n", q.Spoken())
	assert.Equal(t, "the rig, beside rig.toml.1", q.Yes("the rig"))
	assert.Equal(t, "Take it out of the file too, and keep a copy of the file as it was? y or n", keeping.Question(changed{takesOut: true}, theme.Theme{}, rewritten).Text)
}

// After a no the work is on the screen and nowhere else, and that is said with what to do.
func TestANoSaysWhatCanBeDone(t *testing.T) {
	q := keeping.Question(changed{}, theme.Theme{}, rewritten)
	assert.Equal(t, "Not saved. It is as you see it here; s tries again, u takes the change back.", q.Declined())
	q = keeping.Question(changed{}, theme.New(theme.Options{Words: true}), rewritten)
	assert.Equal(t, "Not saved. It is as you see it here; save tries again, undo takes the change back.", q.Declined())
}

// A file that another program has changed is told with the key that reads it anew; what
// else went wrong is not.
func TestAChangedFileIsToldWithWhatReadsItAnew(t *testing.T) {
	changed := fmt.Errorf("rig.toml %w", store.ErrChanged)
	assert.Equal(t, "Not saved, but still here: rig.toml was changed on the disk since it was read, by an editor or another program; nothing was written over; A reads it anew, then repeat your change", keeping.NotSaved(changed, theme.Theme{}))
	assert.Contains(t, keeping.NotSaved(changed, theme.New(theme.Options{Words: true})), "; reload reads it anew")
	assert.Equal(t, "Not saved, but still here: the disk is full", keeping.NotSaved(errors.New("the disk is full"), theme.Theme{}))
	assert.NotEmpty(t, keeping.AnewKey("Keep", true, theme.Theme{}).Blocked, "the example is in no file")
	assert.Empty(t, keeping.AnewKey("Keep", false, theme.Theme{}).Blocked)
}

// Trouble that was found beside a screen does not take the place of what it has to say.
func TestWhatIsFoundBesideGoesBehindAScreensOwnWords(t *testing.T) {
	found := screen.Said{Text: "Not all of the log can be read.", Alarm: true, Behind: true}
	text, alarm := keeping.Told(found, "Saved.", false, theme.Theme{})
	assert.Equal(t, "Saved. Not all of the log can be read.", text)
	assert.True(t, alarm)
	text, _ = keeping.Told(found, "", false, theme.Theme{})
	assert.Equal(t, "Not all of the log can be read.", text)
	text, alarm = keeping.Told(screen.Said{Text: "Read anew."}, "Saved.", true, theme.Theme{})
	assert.Equal(t, "Read anew.", text)
	assert.False(t, alarm)
}

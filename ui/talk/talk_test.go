package talk_test

import (
	"errors"
	"io"
	"strings"
	"sync"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"washeve/ui/internal/hands"
	"washeve/ui/keys"
	"washeve/ui/layout"
	"washeve/ui/screen"
	"washeve/ui/talk"
)

// lamp is a screen with a switch: l turns it on, and it goes out by itself.
type lamp struct {
	lit  bool
	said string
	lost error
}

type burntOut struct{}

func (m lamp) Title() string           { return "Lamp" }
func (m lamp) Init() tea.Cmd           { return nil }
func (m lamp) View(layout.Size) string { return "" }
func (m lamp) Typing() bool            { return false }
func (m lamp) Leave() error            { return m.lost }

func (m lamp) Keys() []keys.Binding {
	lit := ""
	if m.lit {
		lit = "it is lit"
	}
	return []keys.Binding{keys.New("Lamp", "light", "l", "light it", "l").Unless(lit)}
}

func (m lamp) Update(msg tea.Msg) (screen.Screen, tea.Cmd) {
	switch msg := msg.(type) {
	case burntOut:
		m.lit, m.said = false, "It went out."
	case tea.KeyMsg:
		if msg.String() == "l" {
			m.lit, m.said = true, "Lit."
		}
	}
	return m, nil
}

func (m lamp) Spoken() talk.Page {
	p := talk.Page{Title: "Lamp", Like: "light", Said: m.said, Words: []talk.Word{{Say: "light", Does: "light"}}}
	if m.lit {
		p.Alarm = &talk.Alarm{After: time.Nanosecond, Sends: burntOut{}}
	}
	return p
}

// heard keeps what was said, and tells when some words have come.
type heard struct {
	mu   sync.Mutex
	text strings.Builder
	wait string
	came chan struct{}
}

func (h *heard) Write(p []byte) (int, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.text.Write(p)
	if h.wait != "" && strings.Contains(h.text.String(), h.wait) {
		h.wait = ""
		close(h.came)
	}
	return len(p), nil
}

func TestAnAlarmIsHeardWhileNoWordIsSaid(t *testing.T) {
	in, words := io.Pipe()
	out := &heard{wait: "It went out.", came: make(chan struct{})}
	ended := make(chan error)
	go func() { ended <- talk.Run(t.Context(), hands.Root{Screen: lamp{}}, in, out) }()
	_, err := io.WriteString(words, "light\n")
	require.NoError(t, err)
	<-out.came
	require.NoError(t, words.Close())
	require.NoError(t, <-ended)
	assert.Equal(t, "Lamp.\nLamp. A word, like light, or help: Lit.\nLamp. A word, like light, or help: \nIt went out.\nLamp. A word, like light, or help: ", out.text.String())
}

func TestInputThatEndsLosesNothingWithoutAWord(t *testing.T) {
	why := errors.New("the lamp is not paid for")
	err := talk.Run(t.Context(), hands.Root{Screen: lamp{lost: why}}, strings.NewReader("quit\n"), io.Discard)
	assert.ErrorIs(t, err, why)
}

// shut is a terminal that went away.
type shut struct{}

func (shut) Write([]byte) (int, error) { return 0, io.ErrClosedPipe }

func TestATerminalThatWentAwayEndsTheTalk(t *testing.T) {
	assert.ErrorIs(t, talk.Run(t.Context(), hands.Root{Screen: lamp{}}, strings.NewReader("light\n"), shut{}), io.ErrClosedPipe)
	why := errors.New("the lamp is not paid for")
	err := talk.Run(t.Context(), hands.Root{Screen: lamp{lost: why}}, strings.NewReader("light\n"), shut{})
	assert.ErrorIs(t, err, io.ErrClosedPipe)
	assert.ErrorIs(t, err, why, "it was to be kept all the same")
}

func TestALineThatIsTooLongIsRefusedAndTheNextIsHeard(t *testing.T) {
	var out strings.Builder
	lines := strings.Repeat("light ", 20_000) + "\nlight\n"
	require.NoError(t, talk.Run(t.Context(), hands.Root{Screen: lamp{}}, strings.NewReader(lines), &out))
	assert.Contains(t, out.String(), "That line is not read")
	assert.Equal(t, 1, strings.Count(out.String(), "Lit."))
}

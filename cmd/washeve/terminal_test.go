//go:build unix

package main

import (
	"image/color"
	"os"
	"os/exec"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/charmbracelet/x/vt"
	"github.com/creack/pty"
	"github.com/stretchr/testify/require"
	"golang.org/x/term"
)

// screen is the real program in a real pseudo-terminal, with a terminal
// emulator that reads what it draws.
type screen struct {
	t     *testing.T
	setup setup
	cmd   *exec.Cmd
	pty   *os.File
	found *term.State // of the terminal before the program had it
	emu   *vt.SafeEmulator
	mu    sync.Mutex
	news  *sync.Cond
	raw   strings.Builder
	modes map[ansi.Mode]bool // that are on
	over  bool
}

// setup is a terminal and a program at it.
type setup struct {
	width, height int
	margin        int // cells that the emulator has beyond the window, where nothing may come
	home          string
	env           []string
	args          []string
	light         bool                       // the terminal writes on white
	answers       func(answer []byte) []byte // what the terminal's answers become; nil: they come as they are
	slow          time.Duration              // for a few bytes to arrive
	quiet         time.Duration              // after which no more is thought to come; 0: the usual
}

// program is the built one; with a clock that the test moves, the test's own binary.
func (s setup) program(t *testing.T) string {
	for _, v := range s.env {
		if strings.HasPrefix(v, inClockFile+"=") {
			self, err := os.Executable()
			require.NoError(t, err)
			return self
		}
	}
	path, err := shipped()
	require.NoError(t, err)
	return path
}

// start runs the program at a terminal.
func start(t *testing.T, s setup) *screen {
	t.Helper()
	if s.width == 0 {
		s.width, s.height = 80, 24
	}
	if s.home == "" {
		s.home = t.TempDir()
	}
	c := exec.Command(s.program(t), s.args...)
	c.Env = append([]string{asProgram + "=1", "HOME=" + s.home, "XDG_DATA_HOME=" + s.home + "/data", "PATH=" + os.Getenv("PATH"), "TERM=xterm-256color", "COLORTERM=truecolor"}, s.env...)
	file, tty, err := pty.Open()
	require.NoError(t, err)
	require.NoError(t, pty.Setsize(file, &pty.Winsize{Rows: uint16(s.height), Cols: uint16(s.width)}))
	found, err := term.GetState(int(tty.Fd()))
	require.NoError(t, err)
	c.Stdin, c.Stdout, c.Stderr = tty, tty, tty
	c.SysProcAttr = &syscall.SysProcAttr{Setsid: true, Setctty: true}
	require.NoError(t, c.Start())
	require.NoError(t, tty.Close())
	require.NoError(t, syscall.SetNonblock(int(file.Fd()), true)) // else a read that waits keeps it open when it is closed
	sc := &screen{t: t, setup: s, cmd: c, pty: file, found: found, emu: vt.NewSafeEmulator(s.width+s.margin, s.height+s.margin), modes: map[ansi.Mode]bool{}}
	sc.emu.SetCallbacks(vt.Callbacks{
		EnableMode:  func(m ansi.Mode) { sc.modes[m] = true },
		DisableMode: func(m ansi.Mode) { delete(sc.modes, m) },
	})
	if s.light {
		sc.emu.SetBackgroundColor(color.White)
	}
	sc.news = sync.NewCond(&sc.mu)
	go sc.read()
	go sc.reply()
	t.Cleanup(sc.kill)
	return sc
}

func (s *screen) read() {
	buffer := make([]byte, 8192)
	if s.setup.slow > 0 {
		buffer = buffer[:64]
	}
	for {
		n, err := s.pty.Read(buffer)
		s.mu.Lock()
		if n > 0 {
			_, _ = s.emu.Write(buffer[:n])
			s.raw.Write(buffer[:n])
		}
		s.over = err != nil
		s.news.Broadcast()
		s.mu.Unlock()
		if err != nil {
			return
		}
		time.Sleep(s.setup.slow)
	}
}

// reply sends the terminal's own answers, such as its colours, back.
func (s *screen) reply() {
	buffer := make([]byte, 1024)
	for {
		n, err := s.emu.Read(buffer)
		if err != nil {
			return
		}
		answer := buffer[:n]
		if s.setup.answers != nil {
			answer = s.setup.answers(answer)
		}
		if _, err := s.pty.Write(answer); err != nil {
			return
		}
	}
}

// text is what a person sees, a line a row.
func (s *screen) text() string {
	var b strings.Builder
	for y := range s.emu.Height() {
		line := make([]string, 0, s.emu.Width())
		for x := 0; x < s.emu.Width(); x++ {
			cell := s.emu.CellAt(x, y)
			if cell == nil || cell.Content == "" {
				line = append(line, " ")
				continue
			}
			line = append(line, cell.Content)
			x += max(cell.Width-1, 0)
		}
		b.WriteString(strings.TrimRight(strings.Join(line, ""), " ") + "\n")
	}
	return b.String()
}

// sees waits until the screen holds every text.
func (s *screen) sees(texts ...string) {
	s.t.Helper()
	s.await(func(shown string) bool {
		for _, text := range texts {
			if !strings.Contains(shown, text) {
				return false
			}
		}
		return true
	}, "the screen should show "+strings.Join(texts, " and "))
}

// settles waits until nothing has come for a while.
func (s *screen) settles() {
	s.t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); {
		came := len(s.output())
		s.pause()
		if len(s.output()) == came {
			return
		}
	}
}

// pause waits for news from the program, or a short while for none to come.
func (s *screen) pause() {
	quiet := s.setup.quiet
	if quiet == 0 {
		quiet = 150 * time.Millisecond
	}
	wake := time.AfterFunc(quiet, func() {
		s.mu.Lock()
		s.news.Broadcast()
		s.mu.Unlock()
	})
	defer wake.Stop()
	s.mu.Lock()
	s.news.Wait()
	s.mu.Unlock()
}

const patience = 15 * time.Second

func (s *screen) await(good func(string) bool, what string) {
	s.t.Helper()
	late := time.AfterFunc(patience, func() {
		s.mu.Lock()
		s.news.Broadcast()
		s.mu.Unlock()
	})
	defer late.Stop()
	end := time.Now().Add(patience)
	s.mu.Lock()
	defer s.mu.Unlock()
	for !good(s.text()) {
		if s.over || time.Now().After(end) {
			s.t.Fatalf("%s; it shows:\n%s", what, s.text())
		}
		s.news.Wait()
	}
}

// sent is each named key as a terminal sends it.
var sent = map[string]string{
	"enter": "\r", "esc": "\x1b", "tab": "\t", "shift+tab": "\x1b[Z", "space": " ", "backspace": "\x7f", "delete": "\x1b[3~",
	"up": "\x1b[A", "down": "\x1b[B", "left": "\x1b[D", "right": "\x1b[C", "shift+left": "\x1b[1;2D", "shift+right": "\x1b[1;2C",
	"home": "\x1b[H", "end": "\x1b[F", "pgdown": "\x1b[6~", "pgup": "\x1b[5~", "f1": "\x1bOP", "f2": "\x1bOQ", "f5": "\x1b[15~",
	"ctrl+c": "\x03", "ctrl+u": "\x15", "ctrl+y": "\x19", "ctrl+z": "\x1a",
}

// press sends keys by name, or text as it is.
func (s *screen) press(keys ...string) {
	s.t.Helper()
	for _, k := range keys {
		bytes, known := sent[k]
		if !known {
			bytes = k
		}
		_, err := s.pty.WriteString(bytes)
		require.NoError(s.t, err)
	}
}

// resize changes the window.
func (s *screen) resize(width, height int) {
	s.emu.Resize(width, height) // what lies beyond is gone
	s.emu.Resize(width+s.setup.margin, height+s.setup.margin)
	require.NoError(s.t, pty.Setsize(s.pty, &pty.Winsize{Rows: uint16(height), Cols: uint16(width)}))
}

// ends waits for the program to end, and gives its exit code.
func (s *screen) ends() int {
	s.t.Helper()
	done := make(chan struct{})
	go func() { _ = s.cmd.Wait(); close(done) }()
	select {
	case <-done:
		return s.cmd.ProcessState.ExitCode()
	case <-time.After(patience):
		s.t.Fatalf("the program should have ended; it shows:\n%s", s.text())
		return -1
	}
}

func (s *screen) kill() {
	_ = s.cmd.Process.Signal(syscall.SIGKILL)
	_, _ = s.cmd.Process.Wait()
	_ = s.pty.Close()
}

// output is all that the program has sent.
func (s *screen) output() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.raw.String()
}

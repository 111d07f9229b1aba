package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"sync"
	"time"

	"github.com/creack/pty"
)

// A terminal is a program at a pseudo-terminal of 80 x 24 that answers what
// terminals are asked, at once.
type terminal struct {
	cmd   *exec.Cmd
	pty   *os.File
	began time.Time

	mu   sync.Mutex
	news *sync.Cond
	sent []byte
	last time.Time // of the last byte
	over bool
}

// patience is the longest that a program is waited for.
const patience = 20 * time.Second

func open(env []string, program string, args ...string) (*terminal, error) {
	t := &terminal{cmd: exec.Command(program, args...)}
	t.news = sync.NewCond(&t.mu)
	t.cmd.Env = append([]string{"TERM=xterm-256color", "COLORTERM=truecolor", "PATH=" + os.Getenv("PATH")}, env...)
	t.began = time.Now()
	file, err := pty.StartWithSize(t.cmd, &pty.Winsize{Rows: 24, Cols: 80})
	if err != nil {
		return nil, fmt.Errorf("start %s: %w", program, err)
	}
	t.pty = file
	go t.read()
	return t, nil
}

func (t *terminal) read() {
	buffer := make([]byte, 1<<16)
	for {
		n, err := t.pty.Read(buffer)
		if bytes.Contains(buffer[:n], []byte("\x1b[6n")) {
			_, _ = t.pty.WriteString("\x1b]11;rgb:0000/0000/0000\x1b\\\x1b[1;1R")
		}
		t.mu.Lock()
		t.sent, t.last, t.over = append(t.sent, buffer[:n]...), time.Now(), err != nil
		t.news.Broadcast()
		t.mu.Unlock()
		if err != nil {
			return
		}
	}
}

// shows waits until the program has sent a text, and gives the time from its
// start.
func (t *terminal) shows(text string) (time.Duration, error) {
	late := time.AfterFunc(patience, t.news.Broadcast)
	defer late.Stop()
	t.mu.Lock()
	defer t.mu.Unlock()
	for !bytes.Contains(t.sent, []byte(text)) {
		if t.over || time.Since(t.began) > patience {
			return 0, fmt.Errorf("%s never showed %q", t.cmd.Path, text)
		}
		t.news.Wait()
	}
	return t.last.Sub(t.began), nil
}

// quiet waits until nothing has come for a while.
func (t *terminal) quiet(pause time.Duration) {
	for {
		t.mu.Lock()
		since := time.Since(t.last)
		t.mu.Unlock()
		if since >= pause {
			return
		}
		time.Sleep(pause - since)
	}
}

// costs gives the bytes that each key makes the program send.
func (t *terminal) costs(keys ...string) ([]int, error) {
	const pause = 250 * time.Millisecond
	all := make([]int, len(keys))
	for i, key := range keys {
		t.quiet(pause)
		t.mu.Lock()
		before := len(t.sent)
		t.last = time.Now()
		t.mu.Unlock()
		if _, err := t.pty.WriteString(key); err != nil {
			return nil, err
		}
		t.quiet(pause)
		t.mu.Lock()
		all[i] = len(t.sent) - before
		t.mu.Unlock()
	}
	return all, nil
}

func (t *terminal) close() {
	_ = t.cmd.Process.Kill()
	_, _ = t.cmd.Process.Wait()
	_ = t.pty.Close()
}

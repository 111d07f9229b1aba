package main

import (
	"io"
	"runtime/debug"
	"slices"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model/store/decade"
	"washeve/ui"
	"washeve/ui/keys"
	"washeve/ui/theme"
)

// opened is the root with its real book and files, in the folder of ten years,
// once everything is learned. What writing them left is given back to the system, as if
// another program had; what reading and learning left is this one's.
func opened(b *testing.B) tea.Model {
	dir := b.TempDir()
	require.NoError(b, decade.Write(dir))
	debug.FreeOSMemory()
	p := &program{streams: streams{out: io.Discard, errs: io.Discard, env: func(string) string { return "" }, clock: stopped{noon}}, dir: dir}
	lib, err := p.load()
	require.NoError(b, err)
	book := p.bookBeside()
	o := p.options(lib, lib.Washes[0].Wash, book)
	o.Theme = theme.New(theme.Options{Profile: termenv.ANSI256})
	var a tea.Model = ui.Open(o)
	a, _ = a.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
	for cmd := book.learn(); cmd != nil; cmd = book.learn() {
		a, _ = a.Update(cmd())
	}
	return a
}

// benchmarkKeys measures keys from the key to the frame, and reports the time under
// which 99 of 100 stay. As in the program, what a key has made due is done while the
// hand rests, which it does for less time than a key that is held down.
func benchmarkKeys(b *testing.B, open []string, sees string, hand ...string) {
	collectSeldom()
	a := opened(b)
	for _, key := range open {
		a, _ = a.Update(keys.Press(key))
	}
	require.Contains(b, ansi.Strip(a.View()), sees)
	var times []time.Duration
	collectAtRest()
	b.ResetTimer()
	presses := max(b.N, 100)
	for i := range presses {
		began := time.Now()
		next, due := a.Update(keys.Press(hand[i%len(hand)]))
		a = next
		_ = a.View()
		times = append(times, time.Since(began))
		if due != nil {
			a = given(a, due())
		}
	}
	slices.Sort(times)
	b.ReportMetric(float64(times[len(times)*99/100].Microseconds())/1000, "p99-ms")
	b.ReportMetric(float64(times[len(times)/2].Microseconds())/1000, "p50-ms")
}

// BenchmarkPlanKeys types lengths and takes them back, digit by digit; the whole
// plan follows each. No length comes soon again, so none is remembered.
func BenchmarkPlanKeys(b *testing.B) {
	var hand []string
	for _, digit := range []string{"8", "1", "9", "2", "5", "3", "7", "4", "6"} {
		hand = append(hand, "3", digit, " ", "f", "t", "backspace", "backspace", "backspace", "backspace", "backspace")
	}
	benchmarkKeys(b, []string{"v", "down", "down", "down"}, "› length ", hand...)
}

// BenchmarkDayKeys moves the start along the day.
func BenchmarkDayKeys(b *testing.B) {
	benchmarkKeys(b, []string{"D"}, "easy: no face hurries", "right", "right", "right", "left", "left", "left")
}

// given is all that follows from a message, but for an end.
func given(a tea.Model, msg tea.Msg) tea.Model {
	switch msg := msg.(type) {
	case nil, tea.QuitMsg:
		return a
	case tea.BatchMsg:
		for _, cmd := range msg {
			if cmd != nil {
				a = given(a, cmd())
			}
		}
		return a
	}
	a, cmd := a.Update(msg)
	if cmd == nil {
		return a
	}
	return given(a, cmd())
}

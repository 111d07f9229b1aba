package main

import (
	"io"
	"runtime/debug"
	"slices"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/muesli/termenv"
	"github.com/stretchr/testify/require"

	"washeve/model/store/decade"
	"washeve/ui"
	"washeve/ui/plan"
	next "washeve/ui/screen"
	"washeve/ui/theme"
)

// opened is the root with its real book and files, in the folder of ten years,
// once everything is learned.
func opened(b *testing.B) tea.Model {
	dir := b.TempDir()
	require.NoError(b, decade.Write(dir))
	p := &program{streams: streams{out: io.Discard, errs: io.Discard, env: func(string) string { return "" }, clock: stopped{noon}}, dir: dir}
	lib, err := p.load()
	require.NoError(b, err)
	book := p.bookBeside()
	th := theme.New(theme.Options{Profile: termenv.ANSI256})
	var a tea.Model = ui.NewApp(th, plan.New(plan.Options{
		Rig: lib.Rig, Places: lib.Places, Wash: lib.Washes[0].Wash, Keeper: &keeper{store: lib.keep, book: book, file: lib.Washes[0].File},
		Make: book.plan, Sharing: book.sharing, Book: p.entries(book), Theme: th,
	}))
	a, _ = a.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
	for cmd := book.learn(); cmd != nil; cmd = book.learn() {
		a, _ = a.Update(cmd())
	}
	return a
}

// benchmarkKeys measures keys from the key to the frame, with garbage collected
// as in the program, and reports the time under which 99 of 100 stay.
func benchmarkKeys(b *testing.B, open string, keys ...string) {
	collectSeldom()
	a := opened(b)
	a, cmd := a.Update(letters(open))
	for cmd != nil {
		to, ok := cmd().(next.Go)
		if !ok {
			break
		}
		a, cmd = a.Update(to)
	}
	var times []time.Duration
	debug.FreeOSMemory() // what writing and learning ten years left
	b.ResetTimer()
	presses := max(b.N, 100)
	for i := range presses {
		began := time.Now()
		a, _ = a.Update(letters(keys[i%len(keys)]))
		_ = a.View()
		times = append(times, time.Since(began))
	}
	slices.Sort(times)
	b.ReportMetric(float64(times[len(times)*99/100].Microseconds())/1000, "p99-ms")
	b.ReportMetric(float64(times[len(times)/2].Microseconds())/1000, "p50-ms")
}

func letters(key string) tea.KeyMsg {
	switch key {
	case "backspace":
		return tea.KeyMsg{Type: tea.KeyBackspace}
	case "left":
		return tea.KeyMsg{Type: tea.KeyLeft}
	case "right":
		return tea.KeyMsg{Type: tea.KeyRight}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(key)}
}

// BenchmarkPlanKeys types a length and takes it back, digit by digit; the whole
// plan follows each.
func BenchmarkPlanKeys(b *testing.B) {
	benchmarkKeys(b, "v", "3", "8", " ", "f", "t", "backspace", "backspace", "backspace", "backspace", "backspace")
}

// BenchmarkDayKeys moves the start along the day.
func BenchmarkDayKeys(b *testing.B) {
	benchmarkKeys(b, "D", "right", "right", "right", "left", "left", "left")
}

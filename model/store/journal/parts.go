package journal

import (
	"runtime"
	"strings"
	"sync"

	"washeve/model"
)

// leastPart is how many bytes are worth a goroutine.
const leastPart = 2 << 20

// partsFor is in how many parts a text is best read.
func partsFor(text string) int { return min(runtime.GOMAXPROCS(0), len(text)/leastPart) }

// entriesInParts reads the blocks as entries does, n stretches of the file at
// once.
func (s *scanner) entriesInParts(n int) {
	starts := s.cuts(n)
	if len(starts) == 0 {
		s.entries()
		return
	}
	parts := make([]*scanner, len(starts))
	var wait sync.WaitGroup
	for i, start := range starts {
		end := len(s.text)
		if i+1 < len(starts) {
			end = starts[i+1]
		}
		parts[i] = newScanner(s.file, s.text[:end])
		parts[i].at = start
		wait.Go(parts[i].entries)
	}
	wait.Wait()
	s.join(parts)
}

// cuts divides the rest of the text into n stretches that begin with an entry,
// or into none.
func (s *scanner) cuts(n int) []int {
	if n < 2 {
		return nil
	}
	starts := []int{s.at}
	step := (len(s.text) - s.at) / n
	for i := 1; i < n; i++ {
		from := s.at + i*step
		at := strings.Index(s.text[from:], "\n"+blockStart)
		if at >= 0 && from+at+1 > starts[len(starts)-1] {
			starts = append(starts, from+at+1)
		}
	}
	return starts
}

// join puts together what the parts found. Entries without an identifier are
// named by how many alike came before, so these are read in one go.
func (s *scanner) join(parts []*scanner) {
	for _, part := range parts {
		if len(part.nameless) > 0 {
			s.entries()
			return
		}
	}
	total := 0
	for _, part := range parts {
		total += len(part.found)
	}
	s.found, s.spans = make([]model.Entry, 0, total), make([]span, 0, total)
	lines := s.line - 1
	for _, part := range parts {
		for _, f := range part.all {
			s.add(f.Severity, f.Line+lines, f.Key, f.Problem)
		}
		lines += part.line - 1
		s.found = append(s.found, part.found...)
		s.spans = append(s.spans, part.spans...)
	}
	s.at, s.line = len(s.text), lines+1
}

package main

import (
	"fmt"
	"slices"

	"washeve/model"
	"washeve/model/store/fault"
)

// unusable tells a log of which nothing could be read.
func unusable(log model.Log, faults []fault.Fault) bool {
	return fault.HasErrors(faults) && len(log) == 0
}

// meets takes the faults of a reading in the place of those of the one before. Notices
// stay: what was mended on the way is not met again. The book is locked.
func (b *book) meets(r reading) {
	faults := r.faults
	if b.read, b.stamp = true, r.stamp; r.exists {
		b.there = true
	} else if b.there {
		faults = append(faults, fault.Fault{File: logFile, Severity: fault.Error, Problem: "was here, and is gone; put it back, or what is written from now on begins a new log"})
	}
	b.lost = unusable(r.log, faults)
	stays := func(f fault.Fault) bool { return f.Severity == fault.Notice && !slices.Contains(faults, f) }
	b.faults = append(only(b.faults, stays), faults...)
}

// broken is what cannot be read of the log. The book is locked.
func (b *book) broken() []fault.Fault {
	return only(b.faults, func(f fault.Fault) bool { return f.Severity == fault.Error })
}

func only(faults []fault.Fault, keep func(fault.Fault) bool) (kept []fault.Fault) {
	for _, f := range faults {
		if keep(f) {
			kept = append(kept, f)
		}
	}
	return kept
}

// faultsRead are those that were met in the log and, of what cannot be read, those that
// still hold. It locks the book as load does.
func (b *book) faultsRead() []fault.Fault {
	b.glance()
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.faults
}

// unheard says, once, what cannot be read in the log; "" where there is nothing new to
// say. It locks the book.
func (b *book) unheard() string {
	b.mu.Lock()
	defer b.mu.Unlock()
	broken := b.broken()
	heard := slices.Equal(broken, b.heard)
	if b.heard = broken; heard || len(broken) == 0 {
		return ""
	}
	more := ""
	if n := len(broken) - 1; n > 0 {
		more = fmt.Sprintf(" (and %d more)", n)
	}
	return b.lack() + more + ": " + broken[0].Error()
}

// lack is how much of the log cannot be read, and what the answer is by then. The book is
// locked.
func (b *book) lack() string {
	switch {
	case !b.lost:
		return "Not all of the log can be read; the answer is by what could be. Mend this line"
	case len(b.log) > 0:
		return "The log cannot be read any more; the answer is by what was read before"
	}
	return "The log cannot be read, and the answer is without it. Mend this line"
}

// tell ends the news of the last work. It gives, once, why the log cannot be
// used. It locks the book.
func (b *book) tell() error {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.news, b.awaited = false, false
	if b.told || !unusable(b.log, b.faults) {
		return nil
	}
	b.told, b.heard = true, b.broken()
	return fmt.Errorf("the log cannot be used, and the answer is without it; mend this line: %w", b.heard[0])
}

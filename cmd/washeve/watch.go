package main

import (
	"slices"
	"sync"

	tea "github.com/charmbracelet/bubbletea"

	"washeve/model/store"
	"washeve/ui"
)

// watch looks, while the hand rests, at what other programs have done in the data
// folder meanwhile. Several may look at once.
type watch struct {
	store *store.Store
	book  *book
	once  bool // tell of a file once, not after every key

	mu   sync.Mutex
	told []string // the files that were told last
}

// atRest collects what some keys have left, takes what is new in the log, and tells what
// cannot be read of it and which files are no longer as they were read.
func (w *watch) atRest() tea.Msg {
	collectAtRest()
	if msg := w.book.fresh(); msg != nil {
		return msg
	}
	if text := w.book.unheard(); text != "" {
		return ui.Found(text)
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	changed := w.store.Changed()
	told := w.once && slices.Equal(changed, w.told)
	if w.told = changed; told || len(changed) == 0 {
		return nil
	}
	return ui.Changed(someOf(changed))
}

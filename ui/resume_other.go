//go:build !unix

package ui

import tea "github.com/charmbracelet/bubbletea"

// whenContinued does nothing where programs cannot be stopped.
func whenContinued(*tea.Program) (end func()) { return func() {} }

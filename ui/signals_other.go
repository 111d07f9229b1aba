//go:build !unix

package ui

import tea "github.com/charmbracelet/bubbletea"

// heedSignals does nothing where programs are neither stopped nor hung up.
func heedSignals(*tea.Program) (end func()) { return func() {} }

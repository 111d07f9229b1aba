// Command bare is a bubbletea program with nothing in it: what any program of
// the kind needs to show a first frame. The promises compare with it.
package main

import (
	"fmt"
	"os"
	"strings"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
)

type page struct{ width, height int }

func (p page) Init() tea.Cmd { return nil }

func (p page) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		p.width, p.height = msg.Width, msg.Height
	case tea.KeyMsg:
		return p, tea.Quit
	}
	return p, nil
}

// View fills the screen with as much text as a page of the program has.
func (p page) View() string {
	if p.height == 0 {
		return ""
	}
	lines := make([]string, p.height)
	ink := lipgloss.NewStyle().Foreground(lipgloss.Color("39"))
	for i := range lines {
		lines[i] = ink.Render(strings.Repeat("bare ", (p.width-8)/5))
	}
	lines[p.height-1] = "any key: quit"
	return strings.Join(lines, "\n")
}

func main() {
	program := tea.NewProgram(page{}, tea.WithAltScreen(), tea.WithMouseCellMotion())
	if _, err := program.Run(); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

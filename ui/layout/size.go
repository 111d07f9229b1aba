package layout

import tea "github.com/charmbracelet/bubbletea"

// SizeOf is the size of a window.
func SizeOf(msg tea.WindowSizeMsg) Size { return Size{W: msg.Width, H: msg.Height} }

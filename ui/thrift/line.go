// Package thrift sends a terminal fewer bytes that look the same.
package thrift

import (
	"strings"

	"washeve/ui/cells"
)

// Line rewrites a line so that it sends fewer bytes and looks the same: a
// colour is set only where a letter needs it and it is not set already. Blanks
// take the colour before them. The line may hold colours, bold and reverse, each
// set by one code and ended by the empty code.
func Line(line string) string {
	if !strings.Contains(line, csi) {
		return line
	}
	var b strings.Builder
	b.Grow(len(line))
	wanted, set := "", ""
	for i := 0; i < len(line); {
		if strings.HasPrefix(line[i:], csi) {
			end := strings.IndexByte(line[i:], 'm')
			if end < 0 {
				break
			}
			wanted = line[i+len(csi) : i+end]
			i += end + 1
			continue
		}
		if wanted != set && (line[i] != ' ' || wanted == reverse || set == reverse) {
			b.WriteString(turn(set, wanted))
			set = wanted
		}
		b.WriteByte(line[i])
		i++
	}
	if set != "" {
		b.WriteString(csi + "m")
	}
	return b.String()
}

const (
	csi     = cells.CSI
	reverse = "7"
)

// turn goes from one code to another. A colour replaces a colour; bold and
// reverse have to be ended.
func turn(from, to string) string {
	if to == "" || from == "" || (isColour(from) && isColour(to)) {
		return csi + to + "m"
	}
	return csi + "0;" + to + "m"
}

func isColour(code string) bool { return len(code) > 1 }

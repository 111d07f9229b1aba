// Command washeve plans a spot-free wash the evening before.
package main

import (
	"os"
	"runtime/debug"

	_ "time/tzdata" // the zones of the day, on machines that have none
)

func main() {
	collectSeldom()
	os.Exit(run(os.Args[1:], terminal()))
}

// collectSeldom lets garbage lie while there is little of it: a collection costs a
// key half a millisecond, and one key in a dozen met one. Past the limit it is
// collected as often as it takes.
func collectSeldom() {
	const triple, most = 200, 22 << 20
	debug.SetGCPercent(triple)
	debug.SetMemoryLimit(most)
}

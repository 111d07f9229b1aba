package main

import (
	"runtime"
	"runtime/debug"
)

// collectSeldom lets garbage lie while there is little of it: a collection costs a
// key a millisecond or two. Past the limit it is collected as often as it takes.
func collectSeldom() {
	const triple, most = 200, 22 << 20
	debug.SetGCPercent(triple)
	debug.SetMemoryLimit(most)
}

// collectAtRest collects what some keys have left, while no key is pressed: the next
// ones then do not meet a collection, which comes when the heap is three times what lives.
func collectAtRest() {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	if m.HeapAlloc > m.NextGC/5*3 {
		runtime.GC()
	}
}

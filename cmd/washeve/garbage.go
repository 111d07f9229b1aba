package main

import (
	"runtime"
	"runtime/debug"
	"runtime/metrics"
)

// collectSeldom lets garbage lie while there is little of it: a collection costs a
// key a millisecond or two. Past the limit it is collected as often as it takes.
func collectSeldom() {
	const triple, most = 200, 22 << 20
	debug.SetGCPercent(triple)
	debug.SetMemoryLimit(most)
}

// collectAtRest collects what some keys have left, while no key is pressed: the next
// ones then do not meet a collection.
func collectAtRest() {
	const some = 4 << 20
	heap := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}, {Name: "/gc/heap/live:bytes"}}
	metrics.Read(heap)
	if heap[0].Value.Uint64() > heap[1].Value.Uint64()+some {
		runtime.GC()
	}
}

// Command washeve plans a spot-free wash the evening before.
package main

import (
	"os"

	_ "time/tzdata" // the zones of the day, on machines that have none
)

func main() {
	collectSeldom()
	os.Exit(run(os.Args[1:], terminal()))
}

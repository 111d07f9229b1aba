package main

import "fmt"
import "os"

func main() {
	a, b, err := firstFrames(os.Args[1], os.Args[2], os.Args[3], 21)
	fmt.Println("clock", ms(a.clock), ms(b.clock), float64(a.clock)/float64(b.clock), "busy", ms(a.busy), ms(b.busy), err)
}

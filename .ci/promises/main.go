package main

import "fmt"
import "os"

func main() {
	a, b, err := firstFrames(os.Args[1], os.Args[2], os.Args[3], 21)
	fmt.Println(ms(a), ms(b), float64(a)/float64(b), err)
}

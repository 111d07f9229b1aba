//go:build !unix

package main

// There is no job control here, and no test asks for it.
const asShell = "WASHEVE_TEST_AS_SHELL"

func shell() int { return 1 }

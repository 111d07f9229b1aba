//go:build !unix

package tty

import "io"

// Keys reads from a terminal whose system gives whole keys.
func Keys(in io.Reader) io.Reader { return in }

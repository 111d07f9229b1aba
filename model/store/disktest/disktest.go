// Package disktest brings about, for tests, what a disk can do to a program:
// there is no room on it, or it may not be written. It works on Linux alone, and
// is empty elsewhere.
package disktest

// Package pattern is regular expressions that are compiled when they are first asked
// for: what a program shows first need not wait for those that it does not use.
package pattern

import (
	"regexp"
	"sync"
)

// Of is the regular expression of a text of package regexp's own syntax, compiled at the
// first call. A text that is none panics there, as [regexp.MustCompile] does.
func Of(text string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(text) })
}

package journal

import (
	"errors"
	"io/fs"
	"os"
	"strings"

	"washeve/model"
	"washeve/model/store/fault"
)

// Merge adds to this log what another log file holds and this one does not, as
// it is written there, and gives how many entries that were. Both logs may be
// merged into each other in any order and as often as one likes. The other file
// is only read; what is wrong in it is told.
func (j *Journal) Merge(other string) (added int, told []fault.Fault, err error) {
	if _, err := os.Stat(other); errors.Is(err, fs.ErrNotExist) {
		missing := fault.Fault{File: other, Problem: "is not there; name the other log, such as one on a stick"}
		return 0, []fault.Fault{missing}, missing
	}
	there := scanFile(other)
	told = there.all
	if fault.HasErrors(told) && len(there.found) == 0 {
		return 0, told, told[0]
	}
	more, err := j.add(func() ([]string, error) {
		here := scanFile(j.path)
		blocks := there.lacking(model.Log(here.found).Holding())
		added = len(blocks)
		return blocks, nil
	})
	if err != nil {
		added = 0
	}
	return added, append(told, more...), err
}

// lacking gives the blocks whose entries are not held.
func (s *scanner) lacking(held func(model.Entry) bool) []string {
	var blocks []string
	for i := range s.found {
		if !held(s.found[i]) {
			blocks = append(blocks, s.block(i))
		}
	}
	return blocks
}

// block is an entry as it is written. One without an identifier gets the one it
// is known by.
func (s *scanner) block(i int) string {
	text := strings.ReplaceAll(s.text[s.spans[i].start:s.spans[i].end], "\r\n", "\n")
	if !hasID(text) {
		return encode(s.found[i])
	}
	if !strings.HasSuffix(text, "\n") {
		text += "\n"
	}
	return text
}

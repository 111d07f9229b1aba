package thrift

import (
	"bytes"
	"strconv"
)

// squeeze shortens what is sent to a terminal: many blanks in a row are erased
// and passed over, by ECH and CUF of ECMA-48, instead of being written. It is for
// terminals that obey; reversed or coloured ground must not reach that far.
func squeeze(sent []byte) []byte {
	if !bytes.Contains(sent, manyBlanks) {
		return sent
	}
	out := make([]byte, 0, len(sent))
	for {
		from := bytes.Index(sent, manyBlanks)
		if from < 0 {
			return append(out, sent...)
		}
		rest := bytes.TrimLeft(sent[from:], " ")
		number := strconv.Itoa(len(sent) - from - len(rest))
		out = append(out, sent[:from]...)
		out = append(out, csi+number+"X"+csi+number+"C"...)
		sent = rest
	}
}

// manyBlanks are as many as are longer than the codes that stand for them.
var manyBlanks = bytes.Repeat([]byte(" "), len(csi+"11X"+csi+"11C")+1)

package model

import (
	"crypto/sha256"
	"fmt"
	"io"
	"strconv"
	"strings"

	"washeve/model/quantity"
)

// The letters of an identifier: no i, l or o, which are misread, and no e, which
// a spreadsheet takes for a power of ten.
const idLetters = "0123456789abcdfghjkmnpqrstuvwxyz"

const (
	idTime   = 7 // letters of five bits: the second, good to the year 3058
	idRandom = 9 // letters: two entries of one second meet once in 3.5e13
	mostID   = 40
)

// NewID is an identifier that no other machine gives: the second of the entry,
// so that identifiers sort by time, and random letters from random.
func NewID(at Moment, random io.Reader) (string, error) {
	var bytes [idRandom]byte
	if _, err := io.ReadFull(random, bytes[:]); err != nil {
		return "", fmt.Errorf("no identifier could be made, since the source of chance gave none: %w", err)
	}
	return idOf(at, bytes[:]), nil
}

// ContentID is the identifier of an entry that came without one. It follows
// from what the entry says, so that reading a file twice gives the same one;
// nth tells alike entries of one file apart, from 0.
func ContentID(e Entry, nth int) string {
	e.ID = ""
	sum := sha256.Sum256([]byte(e.Content() + "\n" + strconv.Itoa(nth)))
	return idOf(e.At, sum[:idRandom])
}

// DerivedID is the identifier of an entry that follows from another one: the same
// seed gives the same identifier.
func DerivedID(at Moment, seed string) string {
	sum := sha256.Sum256([]byte(seed))
	return idOf(at, sum[:idRandom])
}

func idOf(at Moment, chance []byte) string {
	id := make([]byte, 0, idTime+idRandom)
	for shift := 5 * (idTime - 1); shift >= 0; shift -= 5 {
		id = append(id, idLetters[at.unix>>shift&31])
	}
	for _, b := range chance {
		id = append(id, idLetters[b&31])
	}
	return string(id)
}

// idField holds an identifier: of this program's making, or of a person's.
func idField(key, label, help string, at *string) Field {
	const example = "1k9mz3q7h4v8c2xd"
	return Field{
		Key: key, Label: label, Help: help, Example: example,
		value: spoken{
			say: func() string { return *at },
			hear: func(text string) error {
				trimmed := strings.TrimSpace(text)
				if !isID(trimmed) {
					return &quantity.ParseError{What: label, Text: text, Reason: fmt.Sprintf("is not 1 to %d letters, digits, - or _", mostID), Example: example}
				}
				*at = trimmed
				return nil
			},
			drop: func() { *at = "" },
		},
	}
}

func isID(text string) bool {
	for i := range len(text) {
		c := text[i]
		alphanumeric := c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
		if !alphanumeric && (i == 0 || c != '-' && c != '_') {
			return false
		}
	}
	return len(text) <= mostID
}

// leastTail is how many last letters of an identifier are told at least.
const leastTail = 4

// Tail is how many last letters tell the identifiers of the log apart, 4 at least.
func (l Log) Tail() int {
	for n := leastTail; n < mostID; n++ {
		if l.apart(n) {
			return n
		}
	}
	return mostID
}

// apart tells whether no two identifiers end in the same n letters.
func (l Log) apart(n int) bool {
	ends := make(map[string]string, len(l))
	for i := range l {
		id := l[i].ID
		end := id[max(len(id)-n, 0):]
		if other, taken := ends[end]; taken && other != id {
			return false
		}
		ends[end] = id
	}
	return true
}

// Ending gives the entries whose identifiers end in some letters, four at least.
func (l Log) Ending(letters string) Log {
	var found Log
	for i := range l {
		if len(letters) >= leastTail && strings.HasSuffix(l[i].ID, letters) {
			found = append(found, l[i])
		}
	}
	return found
}

package journal

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"washeve/model"
	"washeve/model/store/fault"
)

// A scanner reads the text of a log. Blocks in the program's own form are read
// in one pass over their bytes; any other block goes through the TOML library
// (see foreign). Both fill entries through the same [model.EntryReader].
type scanner struct {
	faults
	text     string
	at       int // byte
	line     int // of that byte, from 1
	reader   *model.EntryReader
	found    []model.Entry
	spans    []span // of the entries found
	torn     bool   // the end was cut off, and is not in text
	nameless map[string]int
}

// A span is the text of one block: from its header to its last key.
type span struct{ start, end int }

func newScanner(file, text string) *scanner {
	return &scanner{faults: faults{file: file}, text: text, line: 1, reader: model.NewEntryReader(), nameless: map[string]int{}}
}

// entries reads blocks up to the end.
func (s *scanner) entries() {
	const usual = 180 // bytes a block, to begin with the right size
	s.found = make([]model.Entry, 0, (len(s.text)-s.at)/usual+1)
	s.spans = make([]span, 0, cap(s.found))
	for s.at < len(s.text) {
		start, line := s.at, s.line
		if e, end, ok := s.quick(); ok {
			s.keep(e, span{start, end}, line)
			continue
		}
		s.at, s.line = start, line
		s.skipBlock()
		s.foreign(start, s.at, line)
	}
}

func (s *scanner) keep(e model.Entry, at span, line int) {
	if e.ID == "" {
		e.ID = s.nameFor(e)
		s.add(fault.Notice, line, idKey, fmt.Sprintf("is missing; the entry is known as %s as long as nothing in it is changed", e.ID))
	}
	s.found = append(s.found, e)
	s.spans = append(s.spans, at)
}

// leftOut ends every error about an entry.
const leftOut = "; the entry is left out until this is put right"

// notUsed ends what is told of a statement that changes nothing.
const notUsed = "; it is kept and not used"

// nameFor is the identifier of an entry that somebody wrote without one.
func (s *scanner) nameFor(e model.Entry) string {
	content := e.Content()
	nth := s.nameless[content]
	s.nameless[content]++
	return model.ContentID(e, nth)
}

// quick reads a block in the program's own form, blank lines and comments
// between allowed. Where it is anything else, nothing is read.
func (s *scanner) quick() (e model.Entry, end int, ok bool) {
	if s.nextLine() != blockStart {
		return e, 0, false
	}
	key, text, ok := keyLine(s.nextLine())
	if !ok || key != kindKey || s.reader.Start(text) != nil {
		return e, 0, false
	}
	end = s.at
	complete := false
	for s.at < len(s.text) && s.text[s.at] != '[' {
		line := s.nextLine()
		if line == "" || line[0] == '#' && !strings.ContainsFunc(line, forbidden) {
			continue
		}
		key, text, ok := keyLine(line)
		if !ok || s.reader.Set(key, text) != nil {
			return e, 0, false
		}
		end = s.at
		complete = complete || key == idKey
	}
	if !complete || s.at < len(s.text) && !isStart(s.text[s.at:]) || len(s.reader.Faults()) > 0 {
		return e, 0, false
	}
	return s.reader.Entry(), end, true
}

// nextLine takes a line, without its end.
func (s *scanner) nextLine() string {
	rest := s.text[s.at:]
	n := strings.IndexByte(rest, '\n')
	if n < 0 {
		s.at = len(s.text)
		return rest
	}
	s.at += n + 1
	s.line++
	if n > 0 && rest[n-1] == '\r' {
		n--
	}
	return rest[:n]
}

// keyLine reads key = "text" without escapes, or key = and a moment.
func keyLine(line string) (key, text string, ok bool) {
	n := strings.IndexByte(line, ' ')
	if n <= 0 || len(line) < n+5 || line[n+1] != '=' || line[n+2] != ' ' || !bareKey(line[:n]) {
		return "", "", false
	}
	key, text = line[:n], line[n+3:]
	if text[0] != '"' {
		return key, text, plainMoment(text)
	}
	last := len(text) - 1
	if last == 0 || text[last] != '"' {
		return "", "", false
	}
	text = text[1:last]
	for i := range len(text) {
		if c := text[i]; c < ' ' || c == '"' || c == '\\' || c == 0x7f {
			return "", "", false
		}
	}
	return key, text, text != ""
}

func bareKey(key string) bool {
	for i := range len(key) {
		if c := key[i]; (c < 'a' || c > 'z') && c != '_' {
			return false
		}
	}
	return true
}

// plainMoment tells whether text has the shape of the one bare value that the
// program writes.
func plainMoment(text string) bool {
	const form = "0000-00-00T00:00:00+00:00"
	if len(text) != len(form) && (len(text) != len("0000-00-00T00:00:00Z") || text[19] != 'Z') {
		return false
	}
	for i := range len(text) {
		switch c := text[i]; {
		case form[i] == '0' && (c < '0' || c > '9') && i != 19:
			return false
		case form[i] != '0' && c != form[i] && i != 19:
			return false
		case i == 19 && c != '+' && c != '-' && c != 'Z':
			return false
		}
	}
	return true
}

// forbidden tells the characters that TOML does not allow even in a comment.
func forbidden(r rune) bool { return r < ' ' && r != '\t' || r == 0x7f }

// skipBlock goes to the next header that starts a line, or to the end.
func (s *scanner) skipBlock() {
	s.nextLine()
	for s.at < len(s.text) && !isStart(s.text[s.at:]) {
		s.nextLine()
	}
}

// isStart tells whether an entry begins here, however it is spaced.
func isStart(text string) bool {
	text = strings.TrimLeft(text, " \t")
	if strings.HasPrefix(text, blockStart) {
		return true
	}
	if !strings.HasPrefix(text, "[[") {
		return false
	}
	name, found := strings.CutPrefix(strings.TrimLeft(text[2:], " \t"), "entry")
	return found && strings.HasPrefix(strings.TrimLeft(name, " \t"), "]]")
}

// notText tells the first line of a text that is not UTF-8, or 0.
func notText(text string) int {
	if utf8.ValidString(text) {
		return 0
	}
	for i, r := range text {
		if r == utf8.RuneError {
			if _, size := utf8.DecodeRuneInString(text[i:]); size == 1 {
				return 1 + strings.Count(text[:i], "\n")
			}
		}
	}
	return 0
}

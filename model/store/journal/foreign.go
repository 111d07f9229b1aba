package journal

import (
	"errors"
	"fmt"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"washeve/model"
	"washeve/model/store/fault"
)

// A statement is one key with its value, in any form that TOML has.
type statement struct {
	key, text string
	line, end int // end: the byte behind its line
	section   string
}

// foreign reads a block that is not in the program's own form: one that a
// person wrote or changed, or that needed escapes.
func (s *scanner) foreign(start, end, line int) {
	before := len(s.all)
	statements, ok := s.statements(start, end, line)
	if !ok {
		return
	}
	if !s.begin(statements, line) {
		return
	}
	last, sound := start, true
	for _, st := range statements {
		last = max(last, st.end)
		if st.key != kindKey || st.section != "" {
			sound = s.state(st) && sound
		}
	}
	for _, p := range s.reader.Faults() {
		switch {
		case p.Key == idKey:
		case p.Unused:
			s.add(fault.Unread, lineOf(p.Key, statements, line), p.Key, p.Problem+notUsed)
		default:
			s.add(fault.Error, line, p.Key, p.Problem+leftOut)
			sound = false
		}
	}
	if !sound {
		return
	}
	e := s.reader.Entry()
	own := strings.TrimSuffix(strings.ReplaceAll(s.text[start:last], "\r\n", "\n"), "\n") + "\n"
	if own != encode(e) && len(s.all) == before && e.ID != "" {
		s.add(fault.Notice, line, "", "this entry was written or changed by hand; it counts as it stands")
	}
	s.keep(e, span{start, last}, line)
}

// lineOf is where a key is stated, else where its entry begins.
func lineOf(key string, statements []statement, line int) int {
	for _, st := range statements {
		if st.key == key && st.section == "" {
			return st.line
		}
	}
	return line
}

// begin starts the entry by its kind.
func (s *scanner) begin(statements []statement, line int) bool {
	for _, st := range statements {
		if st.key != kindKey || st.section != "" {
			continue
		}
		if err := s.reader.Start(strings.TrimSpace(st.text)); err != nil {
			s.add(fault.Error, st.line, kindKey, err.Error()+leftOut)
			return false
		}
		return true
	}
	s.add(fault.Error, line, kindKey, (&model.Entry{}).Faults()[0].Problem+leftOut)
	return false
}

// state puts one statement into the entry, and tells whether the entry may
// still count.
func (s *scanner) state(st statement) bool {
	if st.section != "" {
		s.add(fault.Unread, st.line, st.key, fmt.Sprintf("stands under %s, which this program does not know"+notUsed, st.section))
		return true
	}
	err := s.reader.Set(st.key, st.text)
	switch {
	case errors.Is(err, model.ErrUnknownKey):
		s.add(fault.Unread, st.line, st.key, "is no field of this kind of entry"+notUsed+meant(st.key, s.reader.Keys()))
	case err != nil:
		s.add(fault.Error, st.line, st.key, err.Error()+leftOut)
		return false
	}
	return true
}

// statements reads a piece of the file with the TOML library.
func (s *scanner) statements(start, end, line int) ([]statement, bool) {
	data := []byte(s.text[start:end])
	var p unstable.Parser
	p.Reset(data)
	var all []statement
	section, seen := "", 0
	for p.NextExpression() {
		n := p.Expression()
		name, first := dotted(n.Key())
		line += strings.Count(s.text[start+seen:start+int(first.Offset)], "\n")
		seen = int(first.Offset)
		if n.Kind != unstable.KeyValue {
			if section = bracketed(name, n.Kind); section == blockStart {
				section = ""
			}
			continue
		}
		from, to := int(n.Raw.Offset), int(n.Raw.Offset+n.Raw.Length)
		stop := start + to
		if i := strings.IndexByte(s.text[stop:end], '\n'); i >= 0 {
			stop += i + 1
		} else {
			stop = end
		}
		all = append(all, statement{key: name, text: valueOf(n, data[from:to]), line: line, end: stop, section: section})
	}
	if err := p.Error(); err != nil {
		s.add(fault.Error, line+s.linesTo(start, start+seen, err, data), "", "cannot be read: "+err.Error()+leftOut)
		return nil, false
	}
	return all, true
}

// linesTo counts the lines from a place to where the parser gave up. Its
// highlight is a slice of data, and both end with the same capacity.
func (s *scanner) linesTo(start, from int, err error, data []byte) int {
	var at *unstable.ParserError
	if !errors.As(err, &at) {
		return 0
	}
	offset := max(from-start, min(cap(data)-cap(at.Highlight), len(data)))
	return strings.Count(s.text[from:start+offset], "\n")
}

func bracketed(name string, kind unstable.Kind) string {
	if kind == unstable.ArrayTable {
		return "[[" + name + "]]"
	}
	return "[" + name + "]"
}

// dotted joins the parts of a key, and gives the place of the first.
func dotted(it unstable.Iterator) (name string, first unstable.Range) {
	var parts []string
	for it.Next() {
		if parts == nil {
			first = it.Node().Raw
		}
		parts = append(parts, string(it.Node().Data))
	}
	return strings.Join(parts, "."), first
}

// valueOf is a value as text: a string's content, the words of an array with
// commas, or the value as it is written.
func valueOf(n *unstable.Node, raw []byte) string {
	v := n.Value()
	switch v.Kind {
	case unstable.String:
		return string(v.Data)
	case unstable.Array:
		var words []string
		for it := v.Children(); it.Next(); {
			words = append(words, string(it.Node().Data))
		}
		return strings.Join(words, ", ")
	case unstable.InlineTable:
		return string(raw)
	}
	return string(v.Data)
}

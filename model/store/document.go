package store

import (
	"bytes"
	"errors"
	"strconv"
	"strings"
	"unicode"

	"github.com/pelletier/go-toml/v2/unstable"

	"washeve/model/store/fault"
)

// A document is the text of a file with the place of everything in it, so that
// faults name lines and edits touch single values.
type document struct {
	file    string
	data    []byte
	tables  []*table // in order; the first is the top of the file
	faults  []fault.Fault
	asides  []fault.Fault // what is right and yet worth a word, for a check
	broken  bool          // a line is no TOML
	refused bool          // the format is another: nothing was read
}

// A table is a section header with the entries under it.
type table struct {
	name       string // "bed", "vehicle.face"; "" for the top
	double     bool   // [[name]], not [name]
	line       int
	start, end int // the whole header line
	entries    []*entry
}

// An entry is one key with its value. Spans are bytes of the document.
type entry struct {
	key        string
	line       int
	start, end int // whole lines, with the comment after the value
	from, to   int // the value alone
	kind       unstable.Kind
	text       string   // a string's content; else the bytes of the value
	words      []string // of an array of strings
	failed     bool     // an error was told about it
}

var byteOrderMark = []byte("\xef\xbb\xbf")

// parse reads the structure. Lines that are no TOML are told and skipped, so
// that all of them are told at once.
func parse(file string, data []byte) *document {
	d := &document{file: file, data: data}
	base := 0
	if bytes.HasPrefix(data, byteOrderMark) {
		base = len(byteOrderMark)
	}
	d.tables = []*table{{line: 1, start: base, end: base}}
	lines := lineCounter{data: data}
	for base < len(data) {
		var p unstable.Parser
		p.Reset(data[base:])
		for p.NextExpression() {
			d.add(&p, base, &lines)
		}
		if p.Error() == nil {
			break
		}
		at := offsetOf(p.Error(), data)
		if at < base {
			at = base
		}
		d.syntax(at, lines.at(at), p.Error().Error())
		base = d.lineEnd(at)
	}
	return d
}

func (d *document) add(p *unstable.Parser, base int, lines *lineCounter) {
	n := p.Expression()
	at := func(r unstable.Range) (int, int) {
		return base + int(r.Offset), base + int(r.Offset+r.Length)
	}
	name, first, last := dotted(n.Key())
	start, _ := at(first)
	if n.Kind != unstable.KeyValue {
		_, end := at(last)
		d.tables = append(d.tables, &table{
			name: name, double: n.Kind == unstable.ArrayTable, line: lines.at(start),
			start: d.lineStart(start), end: d.lineEnd(end),
		})
		return
	}
	_, to := at(n.Raw)
	_, keyEnd := at(last)
	e := &entry{key: name, line: lines.at(start), start: d.lineStart(start), end: d.lineEnd(to), to: to}
	e.from = keyEnd + bytes.IndexByte(d.data[keyEnd:to], '=') + 1
	e.from += len(d.data[e.from:to]) - len(bytes.TrimLeft(d.data[e.from:to], " \t"))
	e.value(n.Value(), d.data)
	t := d.tables[len(d.tables)-1]
	t.entries = append(t.entries, e)
}

func (e *entry) value(v *unstable.Node, data []byte) {
	e.kind, e.text = v.Kind, string(data[e.from:e.to])
	switch v.Kind {
	case unstable.String:
		e.text = string(v.Data)
	case unstable.Array:
		e.words = []string{}
		for it := v.Children(); it.Next(); {
			if it.Node().Kind != unstable.String {
				e.words = nil
				return
			}
			e.words = append(e.words, string(it.Node().Data))
		}
	}
}

// dotted joins the parts of a key, and gives the spans of its first and last.
func dotted(it unstable.Iterator) (name string, first, last unstable.Range) {
	var parts []string
	for it.Next() {
		if parts == nil {
			first = it.Node().Raw
		}
		last = it.Node().Raw
		parts = append(parts, plain(string(it.Node().Data)))
	}
	return strings.Join(parts, "."), first, last
}

// plain is a part of a key as it may be shown; one that needs quotes keeps them.
func plain(part string) string {
	odd := func(r rune) bool {
		return r != '_' && r != '-' && (r > unicode.MaxASCII || !unicode.IsLetter(r) && !unicode.IsDigit(r))
	}
	if part == "" || strings.ContainsFunc(part, odd) {
		return strconv.Quote(part)
	}
	return part
}

func (d *document) lineStart(at int) int {
	start := bytes.LastIndexByte(d.data[:at], '\n') + 1
	if start == 0 {
		return d.tables[0].start
	}
	return start
}

// lineEnd is behind the end of the line that at is in.
func (d *document) lineEnd(at int) int {
	if n := bytes.IndexByte(d.data[at:], '\n'); n >= 0 {
		return at + n + 1
	}
	return len(d.data)
}

func (t *table) entry(key string) *entry {
	for _, e := range t.entries {
		if e.key == key {
			return e
		}
	}
	return nil
}

// offsetOf gives the place of a syntax error in data: its highlight is a slice
// of data, and both end with the same capacity.
func offsetOf(err error, data []byte) int {
	var at *unstable.ParserError
	if !errors.As(err, &at) {
		return 0
	}
	offset := cap(data) - cap(at.Highlight)
	return max(0, min(offset, len(data)-1))
}

// lineCounter numbers the lines of places that come in order.
type lineCounter struct {
	data       []byte
	seen, line int
}

func (c *lineCounter) at(offset int) int {
	if offset < c.seen {
		c.seen, c.line = 0, 0
	}
	c.line += bytes.Count(c.data[c.seen:offset], []byte("\n"))
	c.seen = offset
	return c.line + 1
}

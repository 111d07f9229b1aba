package store

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/model/store/fault"
)

// formatNumber is the format of the files that this program reads and writes.
const formatNumber = 1

// A decoding is a document while its values go into nouns.
type decoding struct {
	*document
	items map[string][]*table // the tables of each section, in order
}

// decode puts the values of the document into the nouns of a schema.
func (d *document) decode(s schema) decoding {
	dec := decoding{document: d, items: map[string][]*table{"": d.tables[:1]}}
	if d.refused = !dec.format(); d.refused {
		return dec
	}
	dec.fill(d.tables[0], s.top)
	for _, t := range d.tables[1:] {
		dec.section(t, s)
	}
	return dec
}

func (d *decoding) fault(line int, key string, severity fault.Severity, format string, args ...any) {
	d.faults = append(d.faults, fault.Fault{File: d.file, Line: line, Key: key, Severity: severity, Problem: fmt.Sprintf(format, args...)})
}

// format reads the number at the top and tells whether to go on.
func (d *decoding) format() bool {
	e := d.tables[0].entry("format")
	if e == nil && len(d.tables) == 1 && len(d.tables[0].entries) == 0 {
		d.fault(1, "", fault.Notice, "holds nothing yet; take it away and run washeve init for one to start from")
		return true
	}
	if e == nil {
		d.fault(1, "format", fault.Notice, "is missing, and taken as %d; write format = %d at the top of the file", formatNumber, formatNumber)
		return true
	}
	number, err := strconv.Atoi(e.text)
	switch {
	case err != nil || number < 1 || e.kind != unstable.Integer:
		d.fault(e.line, "format", fault.Error, "%s is no format; write format = %d", shown(e.text), formatNumber)
	case number > formatNumber:
		d.fault(e.line, "", fault.Error, "format = %d: this file is from a newer washeve; this one reads format = %d, so bring the program up to date", number, formatNumber)
		return false
	}
	return true
}

func (d *decoding) section(t *table, s schema) {
	sec := s.section(t.name)
	if sec == nil {
		d.unknownSection(t, s)
		return
	}
	if t.double == sec.single {
		d.fault(t.line, "", fault.Error, "%s is written %s in this file", header(t.name, !t.double), header(t.name, t.double))
	}
	if sec.single && len(d.items[t.name]) > 0 {
		d.fault(t.line, "", fault.Error, "%s is there already, in line %d; put both together", header(t.name, true), d.items[t.name][0].line)
	}
	fields := sec.add()
	if fields == nil {
		parent, _, _ := strings.Cut(t.name, ".")
		d.fault(t.line, "", fault.Error, "[[%s]] stands before any [[%s]]; put it below the %s it belongs to", t.name, parent, parent)
		return
	}
	d.items[t.name] = append(d.items[t.name], t)
	d.fill(t, fields)
}

func header(name string, single bool) string {
	if single {
		return "[" + name + "]"
	}
	return "[[" + name + "]]"
}

func (d *decoding) unknownSection(t *table, s schema) {
	names := make([]string, len(s.sections))
	for i, sec := range s.sections {
		names[i] = sec.name
	}
	text := header(t.name, !t.double)
	switch home := otherHome(t.name); {
	case home != "":
		d.fault(t.line, "", fault.Unread, "%s belongs in %s; here it is not read", text, home)
	default:
		d.fault(t.line, "", fault.Unread, "%s is no section of this file, and is not read%s", text, meant(t.name, names))
	}
}

// fill sets the fields of one entry from its table.
func (d *decoding) fill(t *table, fields []model.Field) {
	seen := make(map[string]int, len(t.entries))
	for _, e := range t.entries {
		if line, twice := seen[e.key]; twice {
			d.fault(e.line, e.key, fault.Error, "is stated twice, first in line %d; keep one", line)
			continue
		}
		seen[e.key] = e.line
		if e.key == "format" && t.name == "" {
			continue
		}
		f, known := find(fields, e.key)
		if !known {
			d.unknownKey(e, t, fields)
			continue
		}
		if problem := set(f, e); problem != "" {
			e.failed = true
			d.fault(e.line, e.key, fault.Error, "%s", problem)
		}
		if said := readAs(f); said != "" {
			d.asides = append(d.asides, fault.Fault{File: d.file, Line: e.line, Key: e.key, Severity: fault.Notice, Problem: shown(f.Text()) + " is read as " + said})
		}
	}
}

// readAs tells how a value was read, where that may surprise; "" where it cannot.
func readAs(f model.Field) string {
	if read, comma := f.ReadAs(); comma {
		return read + ": the comma is one of decimals"
	}
	if note := model.WestNote(f.Text()); f.Key == model.LongitudeKey && note != "" {
		return model.WithSide(f.Text(), f.Sides) + "; " + note
	}
	return ""
}

func find(fields []model.Field, key string) (model.Field, bool) {
	for _, f := range fields {
		if f.Key == key {
			return f, true
		}
	}
	return model.Field{}, false
}

func (d *decoding) unknownKey(e *entry, t *table, fields []model.Field) {
	if e.kind == unstable.InlineTable || (e.kind == unstable.Array && otherHome(e.key) != "") {
		d.fault(e.line, e.key, fault.Error, "is written in one line; write it as a section of its own, with a header such as [[bed]]")
		return
	}
	where := "at the top of this file"
	if t.name != "" {
		where = "in " + header(t.name, !t.double)
	}
	d.fault(e.line, e.key, fault.Unread, "is no key %s, and is not read%s", where, meantKey(e.key, fields, t.name == ""))
}

// meantKey ends a message with the key that was likely meant, if any was: by the key, or by
// what the screens call its field.
func meantKey(word string, fields []model.Field, atTop bool) string {
	var keys, called []string
	if atTop {
		keys, called = append(keys, "format"), append(called, "format")
	}
	for _, f := range fields {
		keys, called = append(keys, f.Key), append(called, strings.ReplaceAll(strings.ToLower(f.Label), " ", "_"))
	}
	i := fault.Nearest(word, append(slices.Clone(keys), called...), lettersOff(word))
	if i < 0 {
		return ""
	}
	return fault.DidYouMean(keys[i%len(keys)])
}

// meant ends a message with the known word that was likely meant, if any was.
func meant(word string, known []string) string {
	return fault.Meant(word, known, lettersOff(word))
}

// lettersOff is how many letters of a word may be wrong.
func lettersOff(word string) int { return max(1, len(word)/3) }

// set puts an entry into its field, or tells what is wrong.
func set(f model.Field, e *entry) string {
	text := e.text
	switch e.kind {
	case unstable.String:
	case unstable.Array:
		if !f.List || e.words == nil {
			return fmt.Sprintf("is a list; write it like %s = %s", f.Key, sample(f))
		}
		text = strings.Join(e.words, ", ")
	case unstable.Bool:
		if slices.Contains(f.Choices, string(model.Yes)) {
			text = map[string]string{"true": string(model.Yes), "false": string(model.No)}[text]
		}
	case unstable.Integer, unstable.Float:
		text = strings.ReplaceAll(text, "_", "")
	case unstable.InlineTable:
		return fmt.Sprintf("is a table; write it like %s = %s", f.Key, sample(f))
	}
	err := f.Set(text)
	var wrong *quantity.ParseError
	switch {
	case err == nil:
		return ""
	case e.kind == unstable.Bool:
		return fmt.Sprintf("%s is no value here; write it like %s = %s", e.text, f.Key, sample(f))
	case (e.kind == unstable.Integer || e.kind == unstable.Float) && errors.As(err, &wrong) && wrong.Reason == quantity.NoUnit:
		return fmt.Sprintf("%s has no unit; write it in quotes with its unit, like %s = %s", e.text, f.Key, sample(f))
	}
	return err.Error()
}

// sample is the example of a field as a value in a file.
func sample(f model.Field) string {
	switch {
	case f.List:
		return array(f.Example)
	case f.Scalar:
		return f.Example
	}
	return quote(f.Example)
}

func shown(text string) string { return strconv.Quote(text) }

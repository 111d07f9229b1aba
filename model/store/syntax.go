package store

import (
	"fmt"
	"strings"

	"washeve/model/pattern"
	"washeve/model/store/fault"
)

// mostSyntax is how many lines that are no TOML are told: past it the file is
// of another kind, and more words do not help.
const mostSyntax = 50

// syntax tells a line that is no TOML, in words that say what to write.
func (d *document) syntax(at, line int, message string) {
	if d.broken = true; len(d.faults) > mostSyntax {
		return
	}
	f := fault.Fault{File: d.file, Line: line, Problem: "cannot be read: " + message}
	text := strings.TrimSpace(string(d.data[d.lineStart(at):d.lineEnd(at)]))
	if key, hint := hintFor(text); hint != "" {
		f.Key, f.Problem = key, hint
	}
	if len(d.faults) == mostSyntax {
		f.Key, f.Problem = "", "and more lines cannot be read; is this the right file?"
	}
	d.faults = append(d.faults, f)
}

var (
	keyLine    = pattern.Of(`^([A-Za-z0-9_-]+)\s*=\s*(.*)$`)
	colonLine  = pattern.Of(`^([A-Za-z0-9_-]+)\s*:\s*(.*)$`)
	headerLine = pattern.Of(`^\[+\s*([A-Za-z0-9_.-]+)\s*\]*$`)
)

// hintFor knows the slips that people make most: a value without quotes, one
// quote missing, curly quotes, a colon for the equals sign, a bracket missing.
func hintFor(text string) (key, hint string) {
	if m := keyLine().FindStringSubmatch(text); m != nil {
		return m[1], valueHint(m[1], m[2])
	}
	if m := colonLine().FindStringSubmatch(text); m != nil {
		return m[1], fmt.Sprintf("has a colon; write an equals sign, as in %s = %s", m[1], quote(bare(m[2])))
	}
	if m := headerLine().FindStringSubmatch(text); m != nil {
		return "", fmt.Sprintf("%q has brackets missing; write [[%s]]", text, m[1])
	}
	return "", ""
}

func valueHint(key, value string) string {
	switch {
	case value == "" || value[0] == '#':
		return "has no value; write one, or put # before the line"
	case strings.ContainsAny(value, "\u201c\u201d\u201e\u2018\u2019"):
		return fmt.Sprintf("has curly quotes; write straight ones, as in %s = %s", key, quote(bare(value)))
	case value[0] == '"' && strings.Count(value, `"`) == 1:
		return fmt.Sprintf("has no closing quote; write %s = %s", key, quote(bare(value)))
	case strings.ContainsAny(value[:1], `"'[{`):
		return ""
	}
	return fmt.Sprintf("%q is not in quotes; write %s = %s", bare(value), key, quote(bare(value)))
}

// bare is a value as it was meant: without its comment and its quotes.
func bare(value string) string {
	value, _, _ = strings.Cut(value, " #")
	return strings.Trim(strings.TrimSpace(value), "\"'\u201c\u201d\u201e\u2018\u2019")
}

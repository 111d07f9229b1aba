package main

import (
	"cmp"
	"errors"
	"fmt"
	"strings"

	"washeve/model"
	"washeve/model/quantity"
	"washeve/ui/entry"
	"washeve/ui/form"
)

// flagHelp is what a field is, and how it is typed behind its flag, in either family of units.
func flagHelp(f model.Field) string {
	switch {
	case len(f.Choices) > 0 && strings.Contains(f.Help, quantity.OneOf(f.Choices)):
		return f.Help
	case len(f.Choices) > 0:
		return f.Help + ": " + quantity.OneOf(f.Choices)
	case strings.Contains(f.Example, "$"):
		return fmt.Sprintf("%s, like '%s', in single quotes", f.Help, f.Example)
	}
	metric := f.In(quantity.Metric)
	if metric.Example == f.Example {
		return form.Help(f, true)
	}
	return form.Help(f, true) + " or " + metric.Example
}

// readingKey is the field that an argument states as well as its flag.
const readingKey = "reading"

// statedBy is what the command line states of an entry.
type statedBy struct {
	texts      map[string]*string // by key
	byArgument bool               // the reading is an argument, not a flag
}

// called is what the person knows a field by: its flag, or the argument's name.
func (s statedBy) called(key string) string {
	if key == readingKey && s.byArgument {
		return "READING"
	}
	return "--" + strings.ReplaceAll(key, "_", "-")
}

// wrong says what is wrong with what is stated of a field. Of a reading or a price that is a
// bare number it gives the whole text that would be right; the currency is that of the rig's
// prices, "" where it states none.
func (s statedBy) wrong(key string, err error, currency string) error {
	var bare *quantity.ParseError
	if !errors.As(err, &bare) {
		return wrongf("%s: %w", s.called(key), err)
	}
	switch _, odd := quantity.ParseReading(bare.Text + " ppm"); {
	case bare.Reason == quantity.NoUnit && key == readingKey && odd == nil:
		return wrongf("%s: %q has no unit; write it like %q", s.called(key), bare.Text, bare.Text+" ppm")
	case bare.Reason == quantity.NoCurrency:
		return s.noCurrency(key, strings.TrimSpace(bare.Text), currency)
	}
	return wrongf("%s: %w", s.called(key), err)
}

// noCurrency gives a price that is a bare number as it is typed at a shell, most of which
// take a $ and the digit behind it for their own.
func (s statedBy) noCurrency(key, number, currency string) error {
	flag := s.called(key)
	right := fmt.Sprintf("%s '%s'", flag, quantity.InCurrency(number, cmp.Or(currency, "$")))
	if currency == "" {
		right += fmt.Sprintf(" or %s '%s'", flag, quantity.InCurrency(number, "EUR"))
	}
	return wrongf("%s: %q has no currency; write %s, in single quotes: out of others a shell may take $ and the digit behind it", flag, number, right)
}

// lacksOrErrs tells a fault of an entry by what the command line calls its fields, and what
// is lacking with an example.
func (s statedBy) lacksOrErrs(e *model.Entry, fault model.Fault) error {
	if !fault.Lacks {
		return wrongf("%s %s", s.called(fault.Key), fault.Problem)
	}
	if fault.Key == readingKey {
		return wrongf("what did the pen show? Say for example: washeve log reading %q", "3 ppm NaCl")
	}
	for _, f := range e.Fields() {
		if f.Key == fault.Key {
			return wrongf("%s is missing; say for example %s %q", s.called(f.Key), s.called(f.Key), f.Example)
		}
	}
	return wrongf("%s %s", s.called(fault.Key), fault.Problem)
}

// stateAll reads what the flags state into fields, and notes what is read otherwise than it
// was typed.
func (p *program) stateAll(fields []model.Field, stated statedBy, lib library) error {
	sys, err := p.system(lib.Rig)
	if err != nil {
		return err
	}
	for _, f := range fields {
		text, ok := stated.texts[f.Key]
		if !ok || *text == "" {
			continue
		}
		if err := p.state(f, *text); err != nil {
			return stated.wrong(f.Key, quantity.InUnits(err, sys), entry.KnownOf(lib.Rig, lib.Places, p.now).Currency)
		}
		if at, err := model.ParseMoment(f.Text(), p.now().Location()); f.Moment && err == nil && f.Text() != strings.TrimSpace(*text) {
			fmt.Fprintf(p.errs, "note: %s: %s is read as %s\n", stated.called(f.Key), *text, at.Full())
		}
		if read, comma := f.ReadAs(); comma {
			fmt.Fprintf(p.errs, "note: %s: %s is read as %s\n", stated.called(f.Key), f.Text(), read)
		}
	}
	return nil
}

// state reads what a flag states: a moment as a person types it, all else as files hold it.
func (p *program) state(f model.Field, text string) error {
	if !f.Moment {
		return f.Set(text)
	}
	m, err := model.PastMoment(text, p.now())
	if err != nil {
		return err
	}
	return f.Set(m.String())
}

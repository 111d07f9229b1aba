package report

import (
	"strings"
	"time"

	"washeve/model"
	"washeve/model/quantity"
)

// EntryDay is the day and the minute of an entry of the log, as its own clock had them;
// with its zone, where that was not the reader's.
func EntryDay(r *model.Row, reader *time.Location) string { return r.Now.At.Told(reader) }

// EntryName names an entry of the log in a sentence: "the wash of 2026-06-12 09:30".
func EntryName(r *model.Row, reader *time.Location) string {
	return "the " + string(r.Entry.Kind()) + " of " + EntryDay(r, reader)
}

// EntrySays is what an entry of the log says, in a line, with what became of it. What a
// correction is about is called as named says of its identifier.
func EntrySays(r *model.Row, sys quantity.System, named func(id string) string) string {
	var b strings.Builder
	switch {
	case r.Standing == model.Struck && r.Entry.Kind() == model.CorrectionKind:
		b.WriteString("struck out (does nothing): ")
	case r.Standing == model.Struck && r.With != "":
		b.WriteString("struck out with its wash: ")
	case r.Standing == model.Struck:
		b.WriteString("struck out: ")
	case r.Standing == model.Doubled:
		b.WriteString("doubled, not counted: ")
	case r.Standing == model.Corrected:
		b.WriteString("corrected: ")
	}
	note := "; "
	if c, corrects := r.Now.Body.(*model.Correction); corrects {
		note = "; why: "
		sayCorrection(&b, c, named(c.Of))
	} else {
		sayEntry(&b, r.Now.Body, sys)
	}
	if r.Standing != model.Struck && r.With != "" {
		b.WriteString("; its wash is struck out, it was read all the same")
	}
	if r.Now.Note != "" {
		b.WriteString(note + r.Now.Note)
	}
	return b.String()
}

func sayEntry(b *strings.Builder, body model.Body, sys quantity.System) {
	switch e := body.(type) {
	case *model.WashDone:
		parts(b, shown("", e.DI, " DI", sys), shown("", e.Softened, " softened", sys), shown("", e.Raw, " raw", sys), shown("in ", e.Duration, "", sys), e.Place, e.Vehicle)
	case *model.StageDone:
		parts(b, e.Stage, shown("", e.Used, lead(" ", waterWord(e.Water)), sys), shown("in ", e.Duration, "", sys))
	case *model.Sample:
		sayReading(b, e, sys)
	case *model.Refill:
		price := ""
		if money, given := e.Price.Get(); given {
			price = money.String()
		}
		amount := ""
		if v, given := e.Resin.Get(); given {
			amount = v.AsResin().Show(sys)
		}
		parts(b, amount, string(e.State), lead("lot ", e.Lot), price, e.Bed)
	case *model.Regeneration:
		parts(b, e.Softener, shown("", e.Salt, " salt", sys))
	}
}

func sayReading(b *strings.Builder, s *model.Sample, sys quantity.System) {
	value := ""
	if r, given := s.Reading.Get(); given {
		value = r.String()
	}
	how := ""
	switch {
	case s.Point != model.AfterBed:
	case s.Flushed == model.Yes:
		how = "flushed"
	case s.Anyway == model.Yes:
		how = "first cup, used anyway"
	default:
		how = "first cup, not used"
	}
	if how != "" {
		how += shown(" ", s.FlushWater, "", sys)
	}
	parts(b, value, how, shown("", s.SoFar, " so far", sys), string(s.Point), shown("at ", s.Flow, "", sys), s.Place)
}

// sayCorrection says what a correction states anew of an entry, by the labels of its fields.
func sayCorrection(b *strings.Builder, c *model.Correction, of string) {
	if c.Strike == model.Yes {
		parts(b, "strikes out "+of)
		return
	}
	changes := make([]string, 0, len(c.Changes)+2)
	label := labelsOf(c)
	for _, ch := range c.Changes {
		changes = append(changes, label(ch.Key)+" "+ch.Text)
	}
	if len(c.Clear) > 0 {
		gone := make([]string, len(c.Clear))
		for i, key := range c.Clear {
			gone[i] = label(key)
		}
		changes = append(changes, "without "+strings.Join(gone, ", "))
	}
	if c.At.Given() {
		changes = append(changes, "really was "+c.At.Told(c.At.Time().Location()))
	}
	parts(b, "corrects "+of+": "+strings.Join(changes, ", "))
}

// labelsOf calls the fields that a correction states by their labels.
func labelsOf(c *model.Correction) func(key string) string {
	fields := c.Fields()
	return func(key string) string {
		for _, f := range fields {
			if f.Key == key {
				return f.Label
			}
		}
		return key
	}
}

func shown[Q quantity.Quantity](before string, o quantity.Opt[Q], after string, sys quantity.System) string {
	v, given := o.Get()
	if !given {
		return ""
	}
	return before + quantity.Show(v, sys) + after
}

func lead(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

// parts joins what is not empty.
func parts(b *strings.Builder, all ...string) {
	first := true
	for _, text := range all {
		if text == "" {
			continue
		}
		if !first {
			b.WriteString(", ")
		}
		b.WriteString(text)
		first = false
	}
}

// waterWord is a water as it is said.
func waterWord(w model.Water) string {
	if w == model.DI {
		return "DI"
	}
	return string(w)
}
